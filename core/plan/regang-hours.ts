// Hours of re-ganging one design into another, exact: nothing for the same design, the entry of the table
// where there is one, else a base and so much for every piece by which the two differ.
import type { PlanInput } from './contract.ts';
import { decimalOf, digitsAt, unitsOfDecimal } from './hours.ts';

export interface RegangHours {
  /** Decimal places at which all hours of the plan are whole digits. */
  readonly places: number;
  digitsOf(hours: number): bigint;
  /** Digits of the hours from design `from` to design `to`, by their place in the list. */
  digits(from: number, to: number): bigint;
  /** The same as whole units of time, rounded up. */
  units(from: number, to: number): number;
  /** The same as a plain number of hours, for estimates. */
  hours(from: number, to: number): number;
}

/** `pieces` holds for every design the quantity of every component, one design after another. */
export function regangHoursOf(input: PlanInput, pieces: Int32Array, unitsPerMs: number): RegangHours {
  const { regangBaseH, regangPerPieceH, regangH = [], flyOnH } = input.turnaround;
  const count = input.components.length;
  const perPiece = input.components.map(({ code }) =>
    typeof regangPerPieceH === 'number' ? regangPerPieceH : (ownEntry(regangPerPieceH, code) ?? 0),
  );
  const all = [regangBaseH, flyOnH, ...perPiece, ...regangH.map(({ hours }) => hours)];
  for (const { assembleH, breakDownH } of input.designs) all.push(assembleH, breakDownH);
  const places = Math.max(0, ...all.map((hours) => decimalOf(hours).places));
  const digitsOf = (hours: number): bigint => digitsAt(decimalOf(hours), places);
  const place = new Map(input.designs.map(({ code }, index) => [code, index]));
  const table = new Map<number, bigint>();
  for (const { from, to, hours } of regangH) {
    table.set((place.get(from) ?? 0) * input.designs.length + (place.get(to) ?? 0), digitsOf(hours));
  }
  const base = digitsOf(regangBaseH);
  const rates = perPiece.map((hours) => digitsOf(hours));
  const plainRates = Float64Array.from(rates, Number);
  // A sum of whole numbers under 2^53 is exact in plain numbers, which are many times faster.
  const plain = Number(base) + plainRates.reduce((sum, rate) => sum + rate, 0) * greatest(pieces) < 2 ** 53;
  const sum = (from: number, to: number): number => {
    let total = Number(base);
    const [left, right] = [from * count, to * count];
    for (let index = 0; index < count; index += 1) {
      const difference = (pieces[left + index] ?? 0) - (pieces[right + index] ?? 0);
      if (difference !== 0) total += (plainRates[index] ?? 0) * Math.abs(difference);
    }
    return total;
  };
  const exactSum = (from: number, to: number): bigint => {
    let total = base;
    for (let index = 0; index < count; index += 1) {
      const difference = (pieces[from * count + index] ?? 0) - (pieces[to * count + index] ?? 0);
      total += (rates[index] ?? 0n) * BigInt(Math.abs(difference));
    }
    return total;
  };
  const digits = (from: number, to: number): bigint =>
    from === to
      ? 0n
      : (table.get(from * input.designs.length + to) ?? (plain ? BigInt(sum(from, to)) : exactSum(from, to)));
  const plainDigits = (from: number, to: number): number => {
    if (from === to) return 0;
    const entry = table.get(from * input.designs.length + to);
    if (entry !== undefined) return Number(entry);
    return plain ? sum(from, to) : Number(exactSum(from, to));
  };
  const unitsPerDigit = (3_600_000 * unitsPerMs) / 10 ** places;
  const units = (from: number, to: number): number => {
    const quick = plainDigits(from, to) * unitsPerDigit;
    return plain && Number.isInteger(unitsPerDigit) && Number.isSafeInteger(quick)
      ? quick
      : unitsOfDecimal({ digits: digits(from, to), places }, unitsPerMs);
  };
  return { places, digitsOf, digits, units, hours: (from, to) => plainDigits(from, to) / 10 ** places };
}

/** A map's own entry: a code such as `constructor` must not find what every object has. */
function ownEntry(map: Readonly<Record<string, number>>, code: string): number | undefined {
  return Object.hasOwn(map, code) ? map[code] : undefined;
}

function greatest(pieces: Int32Array): number {
  let most = 1;
  for (const quantity of pieces) most = Math.max(most, quantity);
  return most;
}
