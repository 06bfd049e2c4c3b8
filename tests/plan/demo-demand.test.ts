// The standing demand and its shortfalls of an invented job against tables computed by a separate routine.
import { describe, expect, test } from 'vitest';
import type { PlanInput, PlanAnswer } from '../../core/plan/contract.ts';
import { standingCurves } from '../../core/plan/curves.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import {
  dayRows,
  eightWeeks,
  hireSpans,
  owned,
  twoWeeks,
  weekPeaks,
  weekShort,
} from './fixtures/two-and-eight-weeks.ts';
import { dateOf, dayAfter, midnight, shortOn, standingInput } from './standing-input.ts';

const codes = Object.keys(owned);

/** The demand standing at noon of a working day. */
function demandOn(curves: ReturnType<typeof standingCurves>, code: string, day: number): number {
  if (!curves.ok) throw new Error(curves.error.message);
  const noon = Date.parse(`${dateOf(day)}T12:00:00Z`);
  const steps = curves.value.find(({ component }) => component === code)?.demandStanding ?? [];
  return steps.findLast(({ from }) => Date.parse(from) <= noon)?.quantity ?? 0;
}

function planned(input: PlanInput): PlanAnswer {
  const made = planReuse(input, () => 0);
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

describe('the two-week case', () => {
  const input = standingInput(twoWeeks);
  const curves = standingCurves(input);
  const answer = planned(input);

  test.each(dayRows)('day $day has the demand and the shortfalls of the table', ({ day, demand, short }) => {
    const found = Object.fromEntries(Object.keys(demand).map((code) => [code, demandOn(curves, code, day)]));
    expect(found).toEqual(demand);
    expect(shortOn(answer, day)).toEqual(short);
  });
});

describe('the eight-week case', () => {
  const input = standingInput(eightWeeks);
  const curves = standingCurves(input);
  const answer = planned(input);

  test.each(weekPeaks.map((peaks, week) => ({ week: week + 1, peaks })))(
    'week $week has the peaks of the table',
    ({ week, peaks }) => {
      const days = [1, 2, 3, 4, 5].map((day) => (week - 1) * 5 + day);
      const found = Object.fromEntries(
        Object.keys(peaks).map((code) => [code, Math.max(...days.map((day) => demandOn(curves, code, day)))]),
      );
      expect(found).toEqual(peaks);
    },
  );

  test.each(weekShort.map((short, week) => ({ week: week + 1, short })))(
    'week $week has the worst shortfalls of the table',
    ({ week, short }) => {
      const days = [1, 2, 3, 4, 5].map((day) => (week - 1) * 5 + day);
      const worst = (code: string): number => Math.max(...days.map((day) => shortOn(answer, day)[code] ?? 0));
      expect(Object.fromEntries(Object.keys(short).map((code) => [code, worst(code)]))).toEqual(short);
      if (Object.keys(short).length === 0)
        expect(codes.map((code) => worst(code)).every((quantity) => quantity === 0)).toBe(true);
    },
  );

  test.each(hireSpans)('%s is needed beyond what is owned from %s to %s', (code, first, last) => {
    const short = answer.shortfalls.filter(({ component }) => component === code);
    expect(short.at(0)?.from).toBe(midnight(first));
    expect(short.at(-1)?.to).toBe(midnight(dayAfter(last)));
  });

  test('27 pours were looked at', () => {
    expect(input.loose?.length).toBe(27);
  });

  test('the stretch over the clock change of Sunday 8 March 2026 carries both offsets', () => {
    const railsOver = answer.shortfalls.find(({ component }) => component === 'R8');
    expect(railsOver).toMatchObject({
      from: '2026-03-06T00:00:00-05:00',
      to: '2026-03-10T00:00:00-04:00',
      quantity: 3,
      loose: ['W3', 'W4'],
    });
  });
});
