// Plans of 25 to 40 turns, too many to try every one: bettered with the solver, against the best of a plain model that is written
// apart from the planner and solved by HiGHS to its end. And what must hold whenever the search is ended.
import { describe, expect, test } from 'vitest';
import { planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { jobOf } from '../bench/jobs.ts';
import { bettered } from './bettered.ts';
import { loadPlain, plainPlan } from './plain-model.ts';
import { randomInput } from './random-input.ts';
import { refCost, refRound } from './reference.ts';
import { refObeys, withChoices } from './told-and-fixed.ts';

const highs = await loadPlain();

describe.each([
  ['with nothing told or fixed', (input: PlanInput) => input],
  ['with told instructions and fixed choices', withChoices],
])('20 random inputs of 25 to 40 turns, seeds from 700, %s', (_, choices) => {
  const inputs = Array.from({ length: 20 }, (__, index) => {
    const seed = 700 + index;
    return { seed, input: choices(randomInput(seed, 25 + (seed % 16)), seed) };
  });

  test('bettered, cost what the best of the plain model costs, and are proven', () => {
    let nearer = 0;
    for (const { seed, input } of inputs) {
      const plain = plainPlan(highs, input);
      expect(plain.isBest, `seed ${seed}`).toBe(true);
      const found = bettered({ ...input, improveSteps: 200_000 });
      const runs = found.runs.map(({ turns }) => turns);
      expect([found.cost.unmet, found.cost.total], `seed ${seed}`).toEqual([plain.cost.unmet, plain.total]);
      expect(found.bound, `seed ${seed}`).toBeLessThanOrEqual(plain.total);
      expect(found.proven, `seed ${seed}`).toBe(true);
      expect(refObeys(input, runs), `seed ${seed}`).toBe(true);
      const { labour, unmet } = refCost(input, runs);
      expect([found.cost.labour, found.cost.unmet], `seed ${seed}`).toEqual([refRound(labour), unmet]);
      const atOnce = planReuse(planInput.parse(input), () => 0);
      if (atOnce.ok && !atOnce.value.proven) nearer += 1;
    }
    // Else the search would have had nothing to do.
    expect(nearer).toBeGreaterThan(5);
  });
});

describe('a search that is ended', () => {
  const input = jobOf({ seed: 1, turns: 90, components: 20, weeks: 6 });

  test('has reported better and better plans with rising bounds, the last of which is its answer', () => {
    const reported: PlanAnswer[] = [];
    const found = bettered(
      { ...input, improveSteps: 40_000 },
      { nowMs: () => 0, report: (plan) => reported.push(plan) },
    );
    expect(reported.length).toBeGreaterThan(1);
    for (const [index, plan] of reported.entries()) {
      const before = reported[index - 1];
      if (before === undefined) continue;
      expect(plan.cost.total).toBeLessThanOrEqual(before.cost.total);
      expect(plan.bound).toBeGreaterThanOrEqual(before.bound);
    }
    expect(reported.at(-1)?.cost).toEqual(found.cost);
    for (const { bound } of reported) expect(bound).toBeLessThanOrEqual(found.cost.total);
  });

  test('keeps its best so far, wherever it is ended', () => {
    const whole = bettered({ ...input, improveSteps: 40_000 });
    const instant = bettered({ ...input, improveSteps: 0 });
    let earlier = 0;
    for (let asked = 1; asked < 5000; asked *= 7) {
      let left = asked;
      const found = bettered(
        { ...input, improveSeconds: 600 },
        { nowMs: () => 0, isStopped: () => (left -= 1) < 0 },
      );
      if (left < 0) earlier += 1;
      const runs = found.runs.map(({ turns }) => turns);
      const { labour, hire, unmet } = refCost(input, runs);
      expect([found.cost.total, found.cost.unmet]).toEqual([refRound(labour + hire), unmet]);
      expect(found.cost.total).toBeLessThanOrEqual(instant.cost.total);
      expect(found.bound).toBeLessThanOrEqual(whole.cost.total);
    }
    expect(earlier).toBeGreaterThan(2);
  });

  test('by steps is the same for the same seed', () => {
    const asked = { ...input, improveSteps: 3000, seed: 4 };
    expect(bettered(asked)).toEqual(bettered(asked));
  });
});
