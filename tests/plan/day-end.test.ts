// How a day ends: what did not happen goes on to the next shift with what hangs on it of the same pour, and to nothing
// else; misses by week and own rates out of reports. Expected instants are counted by hand on the calendar of 2026.
import { describe, expect, test } from 'vitest';
import { dayLines, notEnded } from '../../core/plan/day-end/day-lines.ts';
import { dayMoves, type EndedLine } from '../../core/plan/day-end/day-moves.ts';
import { missesByWeek } from '../../core/plan/day-end/misses.ts';
import { oneShiftOn } from '../../core/plan/day-end/one-shift-on.ts';
import { ownRates } from '../../core/plan/day-end/own-rates.ts';
import type { MissReason } from '../../core/plan/day-end/reasons.ts';
import { countingReports, type DayReport, leftOverBefore } from '../../core/plan/day-end/reports.ts';
import { instantText, msOf } from '../../core/plan/local-time.ts';
import { pourTimes } from '../../core/plan/pour-times.ts';
import { pourWork } from '../../core/plan/pour-work.ts';
import type { Pour } from '../../core/plan/pours.ts';
import { type Step, stepsOf } from '../../core/plan/steps.ts';
import { turnsFromPours } from '../../core/plan/turns-from-pours.ts';
import { job, pourOf } from './pours-for-tests.ts';

const text = (ms: number): string => instantText(ms, job.timeZone);

describe('one shift on', () => {
  test.each([
    ['a set of Monday 07:00', '2026-03-02T07:00:00-05:00', '2026-03-03T07:00:00-05:00'],
    [
      'a finish of Friday 14:00, over the weekend of the clock change',
      '2026-03-06T14:00:00-05:00',
      '2026-03-09T14:00:00-04:00',
    ],
    ['what ends with the shift', '2026-03-02T15:30:00-05:00', '2026-03-03T15:30:00-05:00'],
    ['a pour at night', '2026-03-02T22:00:00-05:00', '2026-03-03T22:00:00-05:00'],
    ['a pour on a Saturday off', '2026-03-07T10:00:00-05:00', '2026-03-09T10:00:00-04:00'],
  ])('%s goes on by one', (_, from, to) => {
    expect(text(oneShiftOn(msOf(from), job))).toBe(to);
  });

  test('a day lost to weather is passed over', () => {
    const wet = { ...job, shifts: { ...job.shifts, off: ['2026-03-03'] } };
    expect(text(oneShiftOn(msOf('2026-03-02T07:00:00-05:00'), wet))).toBe('2026-03-04T07:00:00-05:00');
  });
});

const stepsOfPours = (pours: readonly Pour[]): readonly Step[] => {
  const { turns } = turnsFromPours(job, pours, new Map());
  return stepsOf(
    pours.flatMap((pour) => pourWork(pour, pourTimes(pour, job), turns)),
    job,
  );
};

/** The day's list, all done but those named `KIND POUR`. */
const ended = (
  pours: readonly Pour[],
  date: string,
  missed: Readonly<Record<string, MissReason>>,
  endedAt: string | null = null,
): readonly EndedLine[] => {
  const lines = dayLines(date, stepsOfPours(pours), [], msOf);
  for (const name of Object.keys(missed))
    if (!lines.some(({ kind, pour }) => name === `${kind} ${pour}`)) throw new Error(`No step ${name}.`);
  return lines.map((line) => {
    const reason = missed[`${line.kind} ${line.pour}`] ?? null;
    return { ...line, done: reason === null, reason, endedAt: endedAt === null ? null : msOf(endedAt) };
  });
};

const movesOf = (pours: readonly Pour[], lines: readonly EndedLine[]) =>
  dayMoves(
    lines,
    { job, pours, times: new Map(pours.map((pour) => [pour.code, pourTimes(pour, job)])) },
    'AB',
  );

const short = ({ moves }: ReturnType<typeof dayMoves>): readonly string[] =>
  moves.map(
    ({ pour, what, side, from, to, because }) =>
      `${pour} ${what}${side ?? ''} ${text(from).slice(5, 16)} > ${text(to).slice(5, 16)} ${because}`,
  );

describe('what did not happen', () => {
  // W1: set Monday, closed Tuesday, poured Wednesday 12:00, 24 h of strength, stripped Thursday.
  const pours = [pourOf(), pourOf({ code: 'W2', after: ['W1'] })];

  test('a set goes on with the close and the pour of the same pour, and with no other', () => {
    const moves = movesOf(pours, ended(pours, '2026-03-02', { 'set W1': 'weather' }));
    expect(short(moves)).toEqual([
      'W1 setA 03-02T07:00 > 03-03T07:00 not-done',
      'W1 closeB 03-03T07:00 > 03-04T07:00 comes-after',
      'W1 pour 03-04T12:00 > 03-05T12:00 comes-after',
    ]);
    expect(moves.changes).toEqual([
      {
        kind: 'pour-times',
        pour: 'W1',
        sides: [
          { side: 'A', setAt: '2026-03-03T07:00:00-05:00', setH: 4 },
          { side: 'B', setAt: '2026-03-04T07:00:00-05:00', setH: 3 },
        ],
        finishAt: '2026-03-05T12:00:00-05:00',
      },
    ]);
  });

  test('a close goes on with the pour; the side that stands stays', () => {
    expect(short(movesOf(pours, ended(pours, '2026-03-03', { 'close W1': 'not-ready' })))).toEqual([
      'W1 closeB 03-03T07:00 > 03-04T07:00 not-done',
      'W1 pour 03-04T12:00 > 03-05T12:00 comes-after',
    ]);
  });

  test('a pour goes on alone', () => {
    expect(short(movesOf(pours, ended(pours, '2026-03-04', { 'pour W2': 'concrete' })))).toEqual([
      'W2 pour 03-04T12:00 > 03-05T12:00 not-done',
    ]);
  });

  test('close and pour missed on one day go on by one shift, not by two', () => {
    const late = [pourOf({ finishAt: '2026-03-03T14:00:00-05:00' })];
    const moves = movesOf(late, ended(late, '2026-03-03', { 'close W1': 'people', 'pour W1': 'people' }));
    expect(short(moves)).toEqual([
      'W1 closeB 03-03T07:00 > 03-04T07:00 not-done',
      'W1 pour 03-03T14:00 > 03-04T14:00 not-done',
    ]);
  });

  test('a strip waits for the next shift, and the reason says why the set stands', () => {
    const moves = movesOf(pours, ended(pours, '2026-03-05', { 'strip W1': 'crane' }));
    expect(short(moves)).toEqual(['W1 strip 03-05T12:00 > 03-06T07:00 not-done']);
    expect(moves.changes).toEqual([
      {
        kind: 'hold',
        pour: 'W1',
        hold: { reason: 'strip not done: crane', who: 'AB', until: '2026-03-06T07:00:00-05:00' },
      },
    ]);
  });

  test('a setting begun the day before takes so much longer as was not done of it', () => {
    // 12 h from Monday 07:00: 8.5 h on Monday, 3.5 h on Tuesday until 10:30.
    const long = [
      pourOf({
        sides: [
          { side: 'A', setAt: '2026-03-02T07:00:00-05:00', setH: 12, gangs: [{ design: 'GA', atNm: 0 }] },
          { side: 'B', setAt: '2026-03-04T07:00:00-05:00', setH: 3, gangs: [{ design: 'GA', atNm: 0 }] },
        ],
        finishAt: '2026-03-05T12:00:00-05:00',
      }),
    ];
    const { moves, changes } = movesOf(long, ended(long, '2026-03-03', { 'set W1': 'people' }));
    expect(short({ moves, changes })).toEqual([
      'W1 setA 03-03T10:30 > 03-04T10:30 not-done',
      'W1 closeB 03-04T07:00 > 03-05T07:00 comes-after',
      'W1 pour 03-05T12:00 > 03-06T12:00 comes-after',
    ]);
    expect(changes).toMatchObject([{ sides: [{ setAt: '2026-03-02T07:00:00-05:00', setH: 15.5 }, {}] }]);
  });

  test('nothing moves where all was done, but a finish that was written down is the finish', () => {
    expect(movesOf(pours, ended(pours, '2026-03-02', {})).changes).toEqual([]);
    const late = [pourOf()];
    const moves = movesOf(late, ended(late, '2026-03-04', {}, '2026-03-04T14:20:00-05:00'));
    expect(short(moves)).toEqual(['W1 pour 03-04T12:00 > 03-04T14:20 really']);
  });
});

type Reported = DayReport['entry']['steps'][number];
const reported = (changes: Partial<Reported>): Reported => ({
  kind: 'set',
  pour: 'W1',
  toPour: null,
  turns: ['W1/A1'],
  designs: [{ design: 'GA', quantity: 1 }],
  areaNm2: '0',
  plannedFrom: '2026-03-02T07:00:00-05:00',
  plannedTo: '2026-03-02T11:00:00-05:00',
  leftFrom: null,
  done: true,
  reason: null,
  from: null,
  to: null,
  people: null,
  ...changes,
});
const missed = (reason: MissReason, changes: Partial<Reported> = {}): Reported =>
  reported({ done: false, reason, ...changes });
let number = 0;
const report = (date: string, steps: readonly Reported[], takesBack: string | null = null): DayReport => ({
  id: `${date} ${(number += 1)}`,
  number,
  entered: null,
  entry: {
    date,
    at: `${date}T15:30:00-05:00`,
    who: 'AB',
    steps: [...steps],
    remark: null,
    applied: null,
    takesBack,
  },
});

describe('reports', () => {
  test('by week: steps planned, done, and not done by reason, counted by hand', () => {
    const reports = [
      // Monday of one week: 4 planned, 1 missed; Friday: 2 planned, both missed.
      report('2026-03-02', [
        reported({}),
        reported({ pour: 'W2' }),
        reported({ pour: 'W3' }),
        missed('crane', { pour: 'W4' }),
      ]),
      report('2026-03-06', [missed('weather'), missed('crane', { pour: 'W5' })]),
      // Monday of the next: 1 planned and done, 1 left over from Friday and done.
      report('2026-03-09', [reported({}), reported({ pour: 'W5', leftFrom: '2026-03-06' })]),
    ];
    expect(missesByWeek(reports)).toEqual([
      { week: '2026-03-09', daysEnded: 1, planned: 1, done: 1, notDone: [], leftOver: 1, leftOverDone: 1 },
      {
        week: '2026-03-02',
        daysEnded: 2,
        planned: 6,
        done: 3,
        notDone: [
          { reason: 'weather', steps: 1 },
          { reason: 'crane', steps: 2 },
        ],
        leftOver: 0,
        leftOverDone: 0,
      },
    ]);
  });

  test('the last end of a day counts; one taken back counts no more', () => {
    const first = report('2026-03-02', [missed('crane')]);
    const second = report('2026-03-02', [reported({})]);
    expect(countingReports([first, second]).map(({ id }) => id)).toEqual([second.id]);
    expect(countingReports([first, second, report('2026-03-02', [], second.id)])).toEqual([first]);
  });

  test('what was not done stays left over until a report says it was', () => {
    const assemble = missed('pieces', { kind: 'assemble' });
    const monday = report('2026-03-02', [assemble, reported({})]);
    const tuesday = report('2026-03-03', [{ ...assemble, leftFrom: '2026-03-02' }]);
    expect(leftOverBefore('2026-03-04', [monday, tuesday])).toMatchObject([
      { id: '2026-03-02/assemble/W1', date: '2026-03-02' },
    ]);
    const done = report('2026-03-04', [reported({ kind: 'assemble', leftFrom: '2026-03-02' })]);
    expect(leftOverBefore('2026-03-05', [monday, tuesday, done])).toEqual([]);
  });

  test('a day between reports that nobody has ended is named', () => {
    const steps = stepsOfPours([pourOf()]);
    expect(notEnded('2026-03-05', steps, [])).toEqual([]);
    expect(notEnded('2026-03-05', steps, [report('2026-03-02', [])])).toEqual(['2026-03-03', '2026-03-04']);
  });
});

describe('labour', () => {
  // Estimating in Building Construction, example 10-17 and figure 10.31 (as in the notes of the trade): walls of
  // 303'-0" by 3'-8", both sides, are 2,222 square feet of contact area; at 0.28 h a square foot 622.16 hours.
  const foot = 304_800_000n;
  const face = 303n * foot * ((11n * foot) / 3n) * 2n;

  test('622.16 person hours on 2,222 square feet are 0.28 h a square foot', () => {
    expect(face / (foot * foot)).toBe(2222n);
    // 8 people from 07:00 for 77.77 hours: 622.16 person hours.
    const from = '2026-03-02T07:00:00-05:00';
    const to = text(msOf(from) + 77.77 * 3_600_000);
    const set = reported({ areaNm2: String(face), from, to, people: 8 });
    const [rate] = ownRates([report('2026-03-02', [set])], msOf);
    expect(rate?.personHours).toBeCloseTo(622.16, 6);
    expect(rate?.perFt2).toBeCloseTo(0.28, 9);
    // One square metre is 10.7639 square feet.
    expect(rate?.perM2).toBeCloseTo(0.28 * 10.7639, 4);
  });

  test('unlike steps are never added, and only steps with times and people count', () => {
    const timed = { areaNm2: String(100n * foot * foot), from: '2026-03-02T07:00:00-05:00', people: 4 };
    const day = report('2026-03-02', [
      // 4 people for 2 h and for 1 h: 12 person hours on 200 square feet, 0.06 h a square foot.
      reported({ ...timed, to: '2026-03-02T09:00:00-05:00' }),
      reported({ ...timed, pour: 'W2', to: '2026-03-02T08:00:00-05:00' }),
      reported({ ...timed, pour: 'W3', to: null }),
      // 4 people for half an hour on 2 gangs: 1 person hour a gang.
      reported({
        ...timed,
        kind: 'fly-on',
        toPour: 'W4',
        designs: [{ design: 'GA', quantity: 2 }],
        to: '2026-03-02T07:30:00-05:00',
      }),
    ]);
    const rates = ownRates([day], msOf);
    expect(rates.map(({ step, records, personHours, gangs }) => [step, records, personHours, gangs])).toEqual(
      [
        ['set', 2, 12, 2],
        ['fly-on', 1, 2, 2],
      ],
    );
    expect(rates[0]?.perFt2).toBeCloseTo(0.06, 12);
    expect(rates[1]?.perGang).toBe(1);
  });
});
