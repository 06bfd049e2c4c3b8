// What a plan says of its gangs and the three curves of a component, by a case worked out by hand.
import { describe, expect, test } from 'vitest';
import type { PlanInput } from '../../core/plan/contract.ts';
import { curvesOf } from '../../core/plan/curves.ts';
import { describeRuns } from '../../core/plan/describe-runs.ts';

const input: PlanInput = {
  components: [
    { code: 'P', stock: 10, hirePerDay: 7 },
    { code: 'L', stock: [{ from: '2026-03-03T00:00:00-05:00', quantity: 30 }], hirePerDay: 1 },
  ],
  designs: [
    { code: 'A', pieces: { P: 10, L: 20 }, assembleH: 8, breakDownH: 4 },
    { code: 'B', pieces: { P: 8, L: 26 }, assembleH: 6, breakDownH: 3 },
  ],
  turns: [
    { id: 'T1', design: 'A', from: '2026-03-02T07:00:00-05:00', to: '2026-03-04T15:00:00-05:00' },
    { id: 'T2', design: 'A', from: '2026-03-05T07:00:00-05:00', to: '2026-03-06T15:00:00-05:00' },
    { id: 'T3', design: 'B', from: '2026-03-09T07:00:00-04:00', to: '2026-03-10T15:00:00-04:00' },
  ],
  loose: [{ id: 'X', pieces: { L: 4 }, from: '2026-03-02T07:00:00-05:00', to: '2026-03-02T12:00:00-05:00' }],
  turnaround: { flyOnH: 1.5, regangBaseH: 2, regangPerPieceH: { P: 0.5, L: 0.1 }, cleanH: 2 },
  labourPerH: 100,
  shifts: { timeZone: 'America/New_York', days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30' },
};

describe('one gang over two or three turns', () => {
  const described = describeRuns(input, [{ turns: ['T1', 'T2'] }, { turns: ['T3'] }]);
  const run = described.ok ? described.value[0] : undefined;

  test('is assembled for 8 shift hours: from Friday 07:30 to Monday 07:00', () => {
    expect(run?.assembly).toEqual({
      from: '2026-02-27T07:30:00-05:00',
      to: '2026-03-02T07:00:00-05:00',
      hours: 8,
    });
  });

  test('flies on overnight, 16 h apart, standing by for 14.5 h', () => {
    expect(run?.follows[0]).toEqual({
      from: 'T1',
      to: 'T2',
      kind: 'fly-on',
      gapH: 16,
      flyOnH: 1.5,
      regangH: 0,
      gap: { from: '2026-03-04T15:00:00-05:00', to: '2026-03-05T07:00:00-05:00' },
      standsByH: 14.5,
      standsBy: { from: '2026-03-04T16:30:00-05:00', to: '2026-03-05T07:00:00-05:00' },
      kept: [
        { component: 'P', quantity: 10 },
        { component: 'L', quantity: 20 },
      ],
      putIn: [],
      takenOut: [],
      takenOutFreeAt: '2026-03-04T17:00:00-05:00',
    });
  });

  test('is re-ganged in a quarter of an hour before Monday 07:00, so from Friday 15:15 at the latest; flown on by 15:06 it stands by for 0.15 h', () => {
    const tight = describeRuns(
      {
        ...input,
        turnaround: { ...input.turnaround, regangH: [{ from: 'A', to: 'B', hours: 0.25 }], flyOnH: 0.1 },
      },
      [{ turns: ['T1', 'T2', 'T3'] }],
    );
    expect(tight.ok ? tight.value[0]?.follows[1] : undefined).toMatchObject({
      kind: 'regang',
      gapH: 63,
      regangH: 0.25,
      regang: { from: '2026-03-06T15:15:00-05:00', to: '2026-03-09T07:00:00-04:00' },
      standsByH: 0.15,
      putIn: [{ component: 'L', quantity: 6 }],
      takenOut: [{ component: 'P', quantity: 2 }],
      kept: [
        { component: 'P', quantity: 8 },
        { component: 'L', quantity: 20 },
      ],
      takenOutFreeAt: '2026-03-06T17:15:00-05:00',
    });
  });

  test('is refused where 3.6 h of re-ganging do not fit into the half hour after the strip at 15:00 on Friday', () => {
    expect(describeRuns(input, [{ turns: ['T1', 'T2', 'T3'] }])).toMatchObject({
      ok: false,
      error: { code: 'cannot-follow', field: 'runs[0].turns[2]' },
    });
  });
});

describe('runs that are no plan', () => {
  test.each([
    ['unknown-turn', [{ turns: ['T1', 'T9'] }]],
    ['turn-in-two-runs', [{ turns: ['T1'] }, { turns: ['T1', 'T2'] }, { turns: ['T3'] }]],
    ['turn-without-run', [{ turns: ['T1', 'T2'] }]],
    ['cannot-follow', [{ turns: ['T2', 'T1'] }, { turns: ['T3'] }]],
  ])('%s', (code, runs) => {
    expect(describeRuns(input, runs)).toMatchObject({ ok: false, error: { code } });
  });
});

test('the curves of locks: standing 24, then 20; held from the assembly on and until clean; stock 30 from 3 March', () => {
  const curves = curvesOf({ ...input, turns: input.turns.slice(0, 2) }, [{ turns: ['T1', 'T2'] }]);
  expect(curves.ok ? curves.value[1] : undefined).toEqual({
    component: 'L',
    demandStanding: [
      { from: '2026-03-02T07:00:00-05:00', quantity: 24 },
      { from: '2026-03-02T12:00:00-05:00', quantity: 20 },
      { from: '2026-03-04T15:00:00-05:00', quantity: 0 },
      { from: '2026-03-05T07:00:00-05:00', quantity: 20 },
      { from: '2026-03-06T15:00:00-05:00', quantity: 0 },
    ],
    demandHeldByPlan: [
      { from: '2026-02-27T07:30:00-05:00', quantity: 20 },
      { from: '2026-03-02T07:00:00-05:00', quantity: 24 },
      { from: '2026-03-02T14:00:00-05:00', quantity: 20 },
      { from: '2026-03-09T12:30:00-04:00', quantity: 0 },
    ],
    stock: [{ from: '2026-03-03T00:00:00-05:00', quantity: 30 }],
  });
});
