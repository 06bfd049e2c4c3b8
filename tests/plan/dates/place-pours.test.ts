// Pours without a date placed together: every placing is checked day by day by other code, small ones against all days there are.
import { expect, test } from 'vitest';
import { type PlaceAsk, placePours } from '../../../core/plan/dates/place-pours.ts';
import { workAfter } from '../../../core/plan/calendar.ts';
import { msOf } from '../../../core/plan/local-time.ts';
import { pourFinishingAt } from '../../../core/plan/move-pour.ts';
import { pourTimes, type PourTimes } from '../../../core/plan/pour-times.ts';
import type { Pour } from '../../../core/plan/pours.ts';
import { randomFrom } from '../../../core/plan/random.ts';
import { job, pourOf } from '../pours-for-tests.ts';

const firstSeed = Number(process.env['REGANG_TEST_SEED'] ?? 1);
const hourMs = 3_600_000;

interface Small {
  readonly pours: readonly Pour[];
  readonly panels: ReadonlyMap<string, number>;
  readonly stock: number;
  /** Hours of a crew of which the shift has 8.5, taken by others on each of the first days. */
  readonly taken: readonly number[];
}

test('30 small sequences: valid day by day, as short as the shortest of all days tried, the bound not above', () => {
  let waiting = 0;
  for (let seed = firstSeed; seed < firstSeed + 30; seed += 1) {
    const small = randomSmall(seed);
    const found = placed(askOf(small, seed));
    expect(found.unplaced, `seed ${seed}`).toEqual([]);
    const prints = found.placed.map(({ pour, times }) => footprintOf(pour, times));
    expect(problemsOf(small, prints), `seed ${seed}`).toEqual([]);
    expect(found.lastDate, `seed ${seed}`).toBe(shortestByTrying(small));
    expect(found.boundDate <= found.lastDate, `seed ${seed}`).toBe(true);
    if (found.placed.some(({ notBefore }) => notBefore?.kind === 'component')) waiting += 1;
  }
  // A check in which nobody waits for pieces would look at nothing.
  expect(waiting).toBeGreaterThan(10);
});

test('the same seed gives the same days', () => {
  const small = randomSmall(7);
  expect(placed(askOf(small, 3))).toEqual(placed(askOf(small, 3)));
});

test('two pours of one set of forms come one after the other, and the second says what it waits for', () => {
  const pours = [pourOf(), pourOf({ code: 'W2' })];
  const small = {
    pours,
    panels: new Map([
      ['W1', 6],
      ['W2', 6],
    ]),
    stock: 10,
    taken: [],
  };
  const { placed: both } = placed(askOf(small, 1));
  const order = both.toSorted((one, other) => one.times.finish - other.times.finish);
  // Monday to Thursday 24 h after Wednesday noon; stripped from Thursday noon to 15:00, clean 16 h later, on Friday.
  expect(order.map(({ pour }) => pour.finishAt.slice(0, 10))).toEqual(['2026-03-04', '2026-03-11']);
  expect(order[1]?.notBefore).toMatchObject({ kind: 'component', component: 'P', missing: 2 });
});

test('more pieces than there ever are: placed all the same, and said', () => {
  const small = { pours: [pourOf()], panels: new Map([['W1', 12]]), stock: 10, taken: [] };
  const found = placed(askOf(small, 1));
  expect(found.placed).toHaveLength(1);
  expect(found.shortAnyway).toEqual([{ pour: 'W1', component: 'P', needed: 12, there: 10 }]);
});

test('pours that wait for one another in a circle are refused by name', () => {
  const pours = [pourOf({ after: ['W2'] }), pourOf({ code: 'W2', after: ['W1'] })];
  const refused = placePours(askOf({ pours, panels: new Map(), stock: 1, taken: [] }, 1));
  expect(refused).toMatchObject({ ok: false, error: { code: 'circle', field: 'pours' } });
});

function placed(ask: PlaceAsk) {
  const found = placePours(ask);
  if (!found.ok) throw new Error(found.error.message);
  return found.value;
}

/** Monday 2 March, six in the morning. */
const nowMs = msOf('2026-03-02T06:00:00-05:00');

function askOf({ pours, panels, stock, taken }: Small, seed: number): PlaceAsk {
  return {
    around: { job, times: new Map(), standsOn: new Map(), nowMs },
    free: pours,
    piecesOf: ({ code }, times) => [held(panels.get(code) ?? 0, times)],
    workOf: (_, { sides, stripFrom, stripTo }) => [
      ...sides.map(({ setFrom, setTo }) => ({ from: setFrom, to: setTo })),
      { from: stripFrom, to: stripTo },
    ],
    workOfDated: taken.map((hours, at) => {
      const from = workAfter(nowMs, at * 8.5 + 0.001, job.shifts);
      return { from, to: from + hours * hourMs };
    }),
    levels: new Map([['P', [{ fromMs: -Infinity, quantity: stock }]]]),
    schedules: 200,
    seed,
  };
}

function held(quantity: number, times: PourTimes) {
  const from = Math.min(...times.sides.map(({ setFrom }) => setFrom));
  return { component: 'P', quantity, from, to: times.free };
}

function randomSmall(seed: number): Small {
  const random = randomFrom(seed);
  const pours = Array.from({ length: 3 }, (_, at) =>
    pourOf({
      code: `W${at + 1}`,
      stripMinimumH: random() < 0.5 ? 12 : 40,
      stripH: 1 + Math.floor(random() * 4),
      after: at > 0 && random() < 0.4 ? [`W${at}`] : [],
    }),
  );
  return {
    pours,
    panels: new Map(pours.map(({ code }) => [code, 2 + Math.floor(random() * 7)])),
    stock: 10,
    taken: Array.from({ length: 6 }, () => (random() < 0.3 ? 6 : 0)),
  };
}

/** What a pour takes of the days, counted from scratch: by place in the list of weekdays. */
interface Footprint {
  readonly finish: number;
  readonly lastDay: number;
  readonly firstHeld: number;
  readonly lastHeld: number;
  readonly hours: readonly (readonly [day: number, hours: number])[];
}

function footprintOf({ stripH }: Pour, { sides, finish, stripFrom, stripTo, free }: PourTimes): Footprint {
  const [stripped, done] = [dayOf(stripFrom), dayOf(stripTo)];
  // What is left of a strip at half past three goes on the next morning.
  const firstPart = stripped === done ? stripH : 15.5 - clockH(stripFrom);
  return {
    finish,
    lastDay: done,
    firstHeld: Math.min(...sides.map(({ setFrom }) => dayOf(setFrom))),
    lastHeld: dayOf(free - 1),
    hours: [
      ...sides.map(({ setFrom, setTo }) => [dayOf(setFrom), (setTo - setFrom) / hourMs] as const),
      [stripped, firstPart],
      [done, stripH - firstPart],
    ],
  };
}

function problemsOf({ pours, panels, stock, taken }: Small, prints: readonly Footprint[]): string[] {
  const problems: string[] = [];
  const hours = weekdays.map((_, at) => taken[at] ?? 0);
  const pieces = weekdays.map(() => 0);
  for (const [at, { finish, firstHeld, lastHeld, hours: own }] of prints.entries()) {
    const { code, after } = pours[at] ?? pourOf();
    for (const before of after) {
      const first = prints[pours.findIndex((each) => each.code === before)];
      if (finish <= (first?.finish ?? Infinity)) problems.push(`${code} not after ${before}`);
    }
    for (const [day, more] of own) hours[day] = (hours[day] ?? 0) + more;
    for (let day = firstHeld; day <= lastHeld; day += 1)
      pieces[day] = (pieces[day] ?? 0) + (panels.get(code) ?? 0);
  }
  for (const [day, sum] of hours.entries()) if (sum > 8.5 + 1e-6) problems.push(`${sum} h on day ${day}`);
  for (const [day, sum] of pieces.entries()) if (sum > stock) problems.push(`${sum} pieces on day ${day}`);
  return problems;
}

/** Mondays to Fridays from Monday 2 March on. */
const weekdays = Array.from({ length: 60 }, (_, at) =>
  new Date(Date.UTC(2026, 2, 2 + at)).toISOString().slice(0, 10),
).filter((date) => ![0, 6].includes(new Date(`${date}T00:00:00Z`).getUTCDay()));

const clock = new Intl.DateTimeFormat('sv-SE', {
  timeZone: job.timeZone,
  dateStyle: 'short',
  timeStyle: 'short',
});

function dayOf(ms: number): number {
  // A Saturday counts for the Friday before: nothing is held longer by it.
  return weekdays.findLastIndex((date) => date <= clock.format(ms).slice(0, 10));
}

function clockH(ms: number): number {
  const [hour, minute] = clock.format(ms).slice(11).split(':').map(Number);
  return (hour ?? 0) + (minute ?? 0) / 60;
}

/** The last day of the shortest of all placings on the first four weeks. */
function shortestByTrying(small: Small): string {
  const choices = small.pours.map((pour) =>
    weekdays.slice(2, 24).map((date) => {
      const offset = date < '2026-03-08' ? '-05:00' : '-04:00';
      return footprintOf(pour, pourTimes(pourFinishingAt(pour, `${date}T12:00:00${offset}`, job), job));
    }),
  );
  const [first = [], second = [], third = []] = choices;
  let shortest = Infinity;
  for (const one of first)
    for (const two of second)
      for (const three of third) {
        const last = Math.max(one.lastDay, two.lastDay, three.lastDay);
        if (last < shortest && problemsOf(small, [one, two, three]).length === 0) shortest = last;
      }
  return weekdays[shortest] ?? '';
}
