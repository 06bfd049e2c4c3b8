// Lengths: whole nanometres inside, so that 1/64 in (396 875 nm) and 1 mm (1 000 000 nm) are both exact and
// every comparison with a limit is exact. Reading what people type is here, printing in length-format.ts.
import { type Answer, answer, refuse } from '../answer.ts';
import { decimalRatio, numberRatio, type Ratio, roundHalfAway, safeNumber } from './exact.ts';
import { normalLengthText } from './length-text.ts';

export {
  formatLength,
  formatLengthMetric,
  formatLengthUs,
  lengthMm,
  type UnitSystem,
} from './length-format.ts';

/** 1 ft = 304.8 mm and 1 in = 25.4 mm by definition (international yard and pound agreement, 1959). */
export const footNm = 304_800_000;
export const inchNm = 25_400_000;
export const millimetreNm = 1_000_000;

type Unit = 'ft' | 'in' | 'mm' | 'cm' | 'm';
const unitNm: Readonly<Record<Unit, bigint>> = {
  ft: 304_800_000n,
  in: 25_400_000n,
  mm: 1_000_000n,
  cm: 10_000_000n,
  m: 1_000_000_000n,
};

// A plain number, with a decimal point or comma; "6 1/2", "6-1/2"; "1/2".
const number = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const amount = String.raw`(?:\d+\s*[ -]\s*\d+\s*/\s*\d+|\d+\s*/\s*\d+|${number})`;
const feetMark = String.raw`(?:'|ft\.?|feet|foot)`;
const inchMark = String.raw`(?:"|in\.?|inch|inches)`;
const feetAndInches = new RegExp(`^(\\d+) ?${feetMark} ?-? ?(${amount})(?: ?${inchMark})?$`);
const oneUnit = new RegExp(`^(${amount}) ?([a-z'"]+\\.?)$`);
const unitNames: Readonly<Record<string, Unit>> = {
  "'": 'ft', ft: 'ft', 'ft.': 'ft', feet: 'ft', foot: 'ft',
  '"': 'in', in: 'in', 'in.': 'in', inch: 'in', inches: 'in',
  mm: 'mm', millimetre: 'mm', millimetres: 'mm', millimeter: 'mm', millimeters: 'mm',
  cm: 'cm', centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm',
  m: 'm', metre: 'm', metres: 'm', meter: 'm', meters: 'm',
}; // prettier-ignore

const examples = `12'-6 1/2", 18 in, 2.7 m, 240 cm or 2700 mm`;

/**
 * Reads a length: a number is millimetres, a text carries its unit (feet and inches with fractions, ft, in,
 * mm, cm, m). Answers whole nanometres within ±9 007 km; what is not a whole nanometre is rounded half away
 * from zero, once. Refuses: length-without-unit, length-ambiguous, length-unreadable, length-out-of-range.
 */
export function parseLength(input: string | number): Answer<number> {
  if (typeof input === 'number') {
    const ratio = numberRatio(input);
    return ratio === undefined ? unreadable(String(input)) : whole(ratio, unitNm.mm, String(input));
  }
  if (input.length > 60) return unreadable(`${input.slice(0, 20)}...`);
  const text = normalLengthText(input);
  const negative = text.startsWith('-');
  const size = negative ? text.slice(1).trimStart() : text;
  const refusal = ambiguous(size, input);
  if (refusal !== undefined) return refusal;
  const nanometres = sizeNm(size);
  if (nanometres === undefined) return explain(size, input);
  const { over, under } = nanometres;
  return whole({ over: negative ? -over : over, under }, 1n, input);
}

function sizeNm(text: string): Ratio | undefined {
  const both = feetAndInches.exec(text);
  if (both !== null) {
    const [, feet = '', inches = ''] = both;
    const part = amountRatio(inches);
    if (part === undefined) return undefined;
    return { over: BigInt(feet) * unitNm.ft * part.under + part.over * unitNm.in, under: part.under };
  }
  const [, value, name] = oneUnit.exec(text) ?? [];
  const unit = name === undefined ? undefined : unitNames[name];
  const ratio = value === undefined ? undefined : amountRatio(value);
  if (unit === undefined || ratio === undefined) return undefined;
  return { over: ratio.over * unitNm[unit], under: ratio.under };
}

/** "6 1/2", "1/2", "6.5" or "6,5". A fraction of one or more is not read: "11/2" may have been 1½. */
function amountRatio(text: string): Ratio | undefined {
  const parts = /^(?:(\d+)\s*[ -]\s*)?(\d+)\s*\/\s*(\d+)$/.exec(text);
  if (parts === null) return decimalRatio(text.replace(',', '.'));
  const [, units = '0', top = '', bottom = ''] = parts;
  const [over, under] = [BigInt(top), BigInt(bottom)];
  return over < under ? { over: BigInt(units) * under + over, under } : undefined;
}

function whole(ratio: Ratio, scale: bigint, shown: string): Answer<number> {
  const nanometres = safeNumber(roundHalfAway(ratio.over * scale, ratio.under));
  if (nanometres !== undefined) return answer(nanometres);
  return refuse(
    'length-out-of-range',
    `The length ${shown} is beyond 9,007 km, the most that is kept exactly.`,
  );
}

function ambiguous(text: string, shown: string): Answer<number> | undefined {
  if (/,\d{3}(?!\d)/.test(text)) {
    return refuse(
      'length-ambiguous',
      `"${shown}" can be read in two ways: the comma may part thousands or decimals.`,
      {
        hint: 'Maybe leave the comma out of thousands, and write decimals with a point.',
      },
    );
  }
  if (/^\d+ ?- ?\d+$/.test(text)) {
    return refuse('length-ambiguous', `"${shown}" does not say whether it is feet and inches.`, {
      hint: `Maybe ${text.replace(/ ?- ?/, "'-")}" was meant.`,
    });
  }
  return undefined;
}

function explain(text: string, shown: string): Answer<number> {
  if (new RegExp(`^${amount}$`).test(text)) {
    return refuse('length-without-unit', `"${shown}" is a length without a unit.`, {
      hint: `Maybe ${text} mm, ${text} in or ${text} ft was meant.`,
    });
  }
  return unreadable(shown);
}

function unreadable(shown: string): Answer<number> {
  return refuse('length-unreadable', `"${shown}" cannot be read as a length.`, {
    hint: `Maybe write it like ${examples}.`,
  });
}
