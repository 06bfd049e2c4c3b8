// The demand of standing pours alone, as plan input: every piece of a pour is held from the start of its set day
// through its strip day.
import type { PlanAnswer, PlanInput } from '../../core/plan/contract.ts';
import { gangs, owned, pourTypes, type twoWeeks } from './fixtures/two-and-eight-weeks.ts';

/** The calendar date of a working day. */
export function dateOf(day: number): string {
  const weeks = Math.floor((day - 1) / 5);
  return new Date(Date.UTC(2026, 2, 2 + weeks * 7 + ((day - 1) % 5))).toISOString().slice(0, 10);
}

/** Every piece of a pour as loose pieces from the start of its set day through its strip day: demand and nothing else. */
export function standingInput(pours: typeof twoWeeks, stock = owned): PlanInput {
  return {
    components: Object.keys(owned).map((code) => ({ code, stock: stock[code] ?? 0, hirePerDay: 1 })),
    designs: [],
    turns: [],
    loose: pours.map(([id, type, set, strip]) => {
      const pieces: Record<string, number> = {};
      const kind = pourTypes[type]!;
      const add = (list: Readonly<Record<string, number>>, times: number): void => {
        for (const [code, quantity] of Object.entries(list))
          pieces[code] = (pieces[code] ?? 0) + quantity * times;
      };
      for (const [gang, count] of Object.entries(kind.gangs)) add(gangs[gang]!, count);
      add(kind.loose, 1);
      // Eastern standard time until Sunday 8 March 2026, daylight time after.
      return { id, pieces, from: midnight(dateOf(set)), to: midnight(dayAfter(dateOf(strip))) };
    }),
    turnaround: { flyOnH: 0, regangBaseH: 0, regangPerPieceH: 0 },
    labourPerH: 0,
    shifts: { timeZone: 'America/New_York', days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30' },
  };
}

export function midnight(date: string): string {
  return `${date}T00:00:00${date > '2026-03-08' ? '-04:00' : '-05:00'}`;
}

export function dayAfter(date: string): string {
  return new Date(Date.parse(`${date}T12:00:00Z`) + 86_400_000).toISOString().slice(0, 10);
}

/** What is short at noon of a working day. */
export function shortOn(answer: PlanAnswer, day: number): Record<string, number> {
  const noon = Date.parse(`${dateOf(day)}T12:00:00Z`);
  const short: Record<string, number> = {};
  for (const { component, from, to, quantity } of answer.shortfalls) {
    if (Date.parse(from) <= noon && noon < Date.parse(to)) short[component] = quantity;
  }
  return short;
}
