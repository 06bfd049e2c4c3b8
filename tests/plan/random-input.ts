// Random small inputs of `calc plan` by a seed, with everything the contract speaks of: shifts in zones that
// change their clocks, lists of stock, pieces that cannot be hired, tables of re-ganging, fractions of hours.
import type { PlanInput } from '../../core/plan/contract.ts';
import { numbersFrom } from '../bench/jobs.ts';

const extra = [
  { date: '2026-03-07', start: '07:00', end: '12:00' },
  { date: '2026-03-05', start: '20:00', end: '02:00' },
  { date: '2026-03-04', start: '11:30', end: '13:00' },
];

export function randomInput(seed: number, turnCount: number): PlanInput {
  const next = numbersFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  const pick = <T>(list: readonly T[]): T => list[whole(0, list.length - 1)] as T;
  const chance = (part: number): boolean => next() < part;
  const codes = ['P', 'Q', 'R', 'S', 'L'].slice(0, whole(2, 5));
  const offset = pick(['Z', '-05:00', '+05:30', '+00:00']);
  const startMs = Date.UTC(2026, 2, 2, 5);
  const at = (hours: number): string => written(startMs + Math.round(hours * 4) * 900_000, offset);
  const span = whole(4, 12) * 24;
  const hours = (most: number): number =>
    pick([0, whole(1, most), whole(1, most * 10) / 10, whole(1, most * 1000) / 1000]);
  const pieces = (): Record<string, number> =>
    Object.fromEntries(codes.filter(() => chance(0.7)).map((code) => [code, whole(0, 8)]));
  const designs = Array.from({ length: whole(1, 4) }, (_, index) => ({
    code: `D${index}`,
    pieces: { ...pieces(), [pick(codes)]: whole(1, 6) },
    assembleH: hours(9),
    breakDownH: hours(5),
  }));
  const stretch = (): { from: string; to: string } => {
    const from = next() * span;
    return { from: at(from), to: at(from + 0.5 + next() * 60) };
  };
  const level = (): number => whole(0, 14);
  const shifts = {
    timeZone: pick(['America/New_York', 'Europe/Berlin', 'Asia/Kolkata', 'UTC']),
    days: pick([
      [1, 2, 3, 4, 5],
      [1, 2, 3, 4, 5, 6, 7],
      [6, 7],
      [2, 3, 5],
    ]),
    start: pick(['07:00', '06:30', '00:00', '04:15']),
    end: pick(['15:30', '12:00', '23:45']),
    ...(chance(0.4) ? { off: ['2026-03-04', '2026-03-09'] } : {}),
    // By the seed and not by chance, so that every input is else what it was: a Saturday, a night, an hour that counts once.
    ...(seed % 3 === 0 ? { extra } : {}),
  };
  return {
    components: codes.map((code) => ({
      code,
      stock: chance(0.75)
        ? level()
        : Array.from({ length: whole(1, 3) }, (_, index) => ({
            from: at(next() * span + index / 2),
            quantity: level(),
          })).filter(({ from }, index, list) => list.findIndex((other) => other.from === from) === index),
      hirePerDay: chance(0.15) ? null : pick([0, whole(1, 90), whole(10, 900), whole(1, 999) / 100]),
    })),
    designs,
    turns: Array.from({ length: turnCount }, (_, index) => ({
      id: `T${index}`,
      design: pick(designs).code,
      ...stretch(),
      ...(chance(0.15) ? { built: true } : {}),
    })),
    ...(chance(0.5)
      ? {
          loose: Array.from({ length: whole(1, 2) }, (_, index) => ({
            id: `L${index}`,
            pieces: pieces(),
            ...stretch(),
          })),
        }
      : {}),
    turnaround: {
      flyOnH: hours(4),
      regangBaseH: hours(3),
      regangPerPieceH: chance(0.5)
        ? pick([0, 0.05, 0.125, 0.333])
        : Object.fromEntries(codes.filter(() => chance(0.8)).map((code) => [code, whole(0, 300) / 1000])),
      ...(chance(0.5) ? { cleanH: hours(30) } : {}),
      ...(chance(0.4) && designs.length > 1 ? { regangH: [{ from: 'D0', to: 'D1', hours: hours(6) }] } : {}),
    },
    labourPerH: pick([0, 55, 4200, 38.75]),
    ...(chance(0.5) ? { crew: pick([2, 4, 1.5]) } : {}),
    ...(chance(0.55) ? { shifts } : {}),
  };
}

function written(epochMs: number, offset: string): string {
  const [, sign, hours, minutes] = /([+-])(\d\d):(\d\d)/u.exec(offset) ?? [];
  const ahead =
    sign === undefined ? 0 : (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) * 60_000;
  return `${new Date(epochMs + ahead).toISOString().slice(0, 19)}${offset}`;
}
