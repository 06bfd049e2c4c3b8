// The plan against a second reading of its definition and against every other plan of small inputs.
import { describe, expect, test } from 'vitest';
import { planAnswer, planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { randomInput } from './random-input.ts';
import {
  everyPlan,
  nsOf,
  refCost,
  refMayFollow,
  refRound,
  refShortfalls,
  type RefCost,
} from './reference.ts';

const cases = 200;
const turns = 6;

function plan(input: PlanInput): PlanAnswer {
  const made = planReuse(planInput.parse(input), () => 0);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return planAnswer.parse(made.value);
}

function sorted(list: readonly string[]): string[] {
  return [...list].sort();
}

function runsOf(answer: PlanAnswer): string[][] {
  return answer.runs.map(({ turns: ids }) => ids);
}

function isLess(left: RefCost, right: RefCost): boolean {
  if (left.unmet !== right.unmet) return left.unmet < right.unmet;
  return left.labour + left.hire < right.labour + right.hire;
}

describe(`on ${cases} random inputs of ${turns} turns`, () => {
  const made = Array.from({ length: cases }, (_, index) => {
    const input = randomInput(1000 + index, turns);
    return { seed: 1000 + index, input, answer: plan(input) };
  });

  test('every turn stands in one run and follows only where the rule allows', () => {
    let follows = 0;
    for (const { seed, input, answer } of made) {
      expect(runsOf(answer).flat().sort(), `seed ${seed}`).toEqual(input.turns.map(({ id }) => id).sort());
      for (const run of runsOf(answer)) {
        for (const [place, id] of run.slice(1).entries()) {
          const [left, right] = [run[place], id].map((name) => input.turns.find((turn) => turn.id === name));
          follows += 1;
          expect(refMayFollow(input, left!, right!), `seed ${seed}: ${run[place]} then ${id}`).toBe(true);
        }
      }
    }
    expect(follows).toBeGreaterThan(cases / 2);
  });

  test('the cost is that of the definition, total and labour rounded once and hire their difference', () => {
    for (const { seed, input, answer } of made) {
      const { labour, hire, unmet } = refCost(input, runsOf(answer));
      const total = refRound(labour + hire);
      expect(answer.cost, `seed ${seed}`).toEqual({
        labour: refRound(labour),
        hire: total - refRound(labour),
        total,
        unmet,
      });
    }
  });

  test('shortfalls are the stretches of one positive excess with those who hold the component', () => {
    let shortfalls = 0;
    for (const { seed, input, answer } of made) {
      const expected = refShortfalls(input, runsOf(answer));
      shortfalls += expected.length;
      expect(
        answer.shortfalls.map((entry) => ({
          ...entry,
          from: nsOf(entry.from) / 1_000_000n,
          to: nsOf(entry.to) / 1_000_000n,
          turns: sorted(entry.turns),
          loose: sorted(entry.loose),
        })),
        `seed ${seed}`,
      ).toEqual(
        expected.map((entry) => ({
          ...entry,
          from: entry.from / 1_000_000n,
          to: entry.to / 1_000_000n,
          turns: sorted(entry.turns),
          loose: sorted(entry.loose),
        })),
      );
    }
    expect(shortfalls).toBeGreaterThan(cases);
  });

  test('the instant plan leaves the fewest pieces wanting, lies within 0.5 % of the best on average, and its bound is never above', () => {
    let [plans, over, dear] = [0, 0, 0];
    for (const { seed, input, answer } of made) {
      let best: RefCost | undefined;
      everyPlan(input, (runs) => {
        plans += 1;
        const cost = refCost(input, runs);
        if (best === undefined || isLess(cost, best)) best = cost;
      });
      if (best === undefined) throw new Error('No plan was looked at');
      const least = best.labour + best.hire;
      expect(answer.cost.unmet, `seed ${seed}`).toBe(best.unmet);
      expect(
        BigInt(answer.bound) * 10n ** 18n <= least,
        `seed ${seed}: bound ${answer.bound} of ${least}`,
      ).toBe(true);
      expect(answer.proven, `seed ${seed}`).toBe(answer.cost.total - answer.bound <= 1);
      if (least === 0n) continue;
      dear += 1;
      over += answer.cost.total / (Number(least) / 1e18) - 1;
    }
    expect(plans).toBeGreaterThan(cases * 10);
    expect(dear).toBeGreaterThan(cases / 2);
    expect(over / dear).toBeLessThan(0.005);
  });
});
