import { describe, expect, test } from 'vitest';
import { describeRuns } from '../../core/plan/describe-runs.ts';
import { msOf } from '../../core/plan/local-time.ts';
import { pourTimes } from '../../core/plan/pour-times.ts';
import { pourWork } from '../../core/plan/pour-work.ts';
import { runWork } from '../../core/plan/run-work.ts';
import { hoursByDate, stepsOf, type Work } from '../../core/plan/steps.ts';
import { planInputOf, turnsFromPours } from '../../core/plan/turns-from-pours.ts';
import { job, pourOf } from './pours-for-tests.ts';

const work = (changes: Partial<Work>): Work => ({
  kind: 'set',
  from: msOf('2026-03-02T07:00:00-05:00'),
  to: msOf('2026-03-02T11:00:00-05:00'),
  pour: 'W1',
  toPour: null,
  designs: ['GA'],
  turns: ['W1/A1'],
  ...changes,
});

describe('steps of a day', () => {
  test('12 shift hours from Monday 07:00 are 8.5 hours on Monday and 3.5 on Tuesday', () => {
    const steps = stepsOf([work({ to: msOf('2026-03-03T10:30:00-05:00') })], job);
    expect(steps.map(({ date, hours }) => [date, hours])).toEqual([
      ['2026-03-02', 8.5],
      ['2026-03-03', 3.5],
    ]);
  });

  test('over a weekend with a clock change no hour is won or lost: 8.5 on Friday, 1.5 on Monday', () => {
    const over = work({ from: msOf('2026-03-06T07:00:00-05:00'), to: msOf('2026-03-09T08:30:00-04:00') });
    expect([...hoursByDate(stepsOf([over], job))]).toEqual([
      ['2026-03-06', 8.5],
      ['2026-03-09', 1.5],
    ]);
  });

  test('gangs set together are one step with their numbers, and their hours add up', () => {
    const steps = stepsOf(
      [work({}), work({ turns: ['W1/A2'] }), work({ designs: ['GB'], turns: ['W1/A3'] })],
      job,
    );
    expect(steps).toMatchObject([
      {
        hours: 12,
        designs: [
          { design: 'GA', quantity: 2 },
          { design: 'GB', quantity: 1 },
        ],
        turns: ['W1/A1', 'W1/A2', 'W1/A3'],
      },
    ]);
  });

  test('a pour that ends at night stays on its day and takes no crew hours', () => {
    const at = msOf('2026-03-02T22:00:00-05:00');
    expect(stepsOf([work({ kind: 'pour', from: at, to: at })], job)).toMatchObject([
      { date: '2026-03-02', hours: 0 },
    ]);
  });
});

describe('the work of a pour and of the runs', () => {
  const designs = new Map([
    ['GA', { widthNm: 1, holes: [] }],
    ['GB', { widthNm: 1, holes: [] }],
  ]);
  const [sideA, sideB] = pourOf().sides;
  const early = pourOf();
  /** A week later, with a GB on side B. */
  const late = pourOf({
    code: 'W2',
    order: 'steel-first',
    sides: [
      { ...sideA, setAt: '2026-03-09T07:00:00-04:00' },
      { ...sideB, setAt: '2026-03-10T07:00:00-04:00', gangs: [{ design: 'GB', atNm: 0 }] },
    ],
    finishAt: '2026-03-11T12:00:00-04:00',
  });
  const turnsOf = turnsFromPours(job, [early, late], designs);
  const input = planInputOf(
    job,
    turnsOf,
    [
      { code: 'GA', pieces: { P: 4, R: 1 }, assembleH: 3, breakDownH: 2 },
      { code: 'GB', pieces: { P: 2, S: 1 }, assembleH: 3, breakDownH: 1 },
    ],
    [
      { code: 'P', stock: 100, hirePerDay: 100 },
      { code: 'R', stock: 100, hirePerDay: 100 },
      { code: 'S', stock: 100, hirePerDay: 100 },
    ],
    { P: 0.5 },
  );
  const runs = describeRuns(input, [{ turns: ['W1/A1', 'W2/A1'] }, { turns: ['W1/B1', 'W2/B1'] }]);
  if (!runs.ok) throw new Error(runs.error.message);
  const byId = new Map(turnsOf.turns.map((turn) => [turn.id, turn]));

  test('the second side of a face-first pour closes, of a steel-first pour it is set', () => {
    const of = (pour: typeof early) => told(pourWork(pour, pourTimes(pour, job), turnsOf.turns));
    expect(of(early)).toEqual([
      '03-02 set W1 4',
      '03-03 close W1 3',
      '03-04 pour W1 0',
      '03-05 ready W1 0',
      '03-05 strip W1 3',
    ]);
    expect(of(late).slice(0, 2)).toEqual(['03-09 set W2 4', '03-10 set W2 3']);
  });

  test('a gang is assembled before it is set, flown on, re-ganged just before its next set, and broken down', () => {
    // Strip of W1 ends on Thursday 5 March at 15:00: half an hour of flying falls there, the rest on Friday.
    // The re-gang of GA into GB: 1 h, and half an hour for each of the two panels taken out.
    // Both gangs are broken down at 15:00 of Thursday 12 March: half an hour each, then 1.5 h of GA and 0.5 h of GB.
    expect(told(runWork(runs.value, byId, job))).toEqual([
      '02-27 assemble W1 3',
      '03-02 assemble W1 3',
      '03-05 fly-on W1>W2 1',
      '03-06 fly-on W1>W2 3',
      '03-09 regang W1>W2 2',
      '03-12 break-down W2 1',
      '03-13 break-down W2 2',
    ]);
  });
});

function told(list: readonly Work[]): string[] {
  return stepsOf(list, job).map(
    ({ date, kind, pour, toPour, hours }) =>
      `${date.slice(5)} ${kind} ${pour}${toPour === null ? '' : `>${toPour}`} ${hours}`,
  );
}
