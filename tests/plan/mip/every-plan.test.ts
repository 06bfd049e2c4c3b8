// The mixed-integer model on 500 random small inputs against every plan that there is, looked at one by one by a second
// reading of the definition: asked by itself, without what the prices rule out and beginning from the plainest plan, and
// as a part of the improvement. The same with told instructions and fixed choices.
import { beforeAll, describe, expect, test } from 'vitest';
import { planInput, type PlanInput } from '../../../core/plan/contract.ts';
import { exactCost, grainsOfCost } from '../../../core/plan/cost.ts';
import { edgesOf, type Edges } from '../../../core/plan/edges.ts';
import { instantPlan } from '../../../core/plan/instant-plan.ts';
import { improveWhole } from '../../../core/plan/mip/improve-whole.ts';
import { keepAll } from '../../../core/plan/mip/kept.ts';
import { solveModel } from '../../../core/plan/mip/solve-model.ts';
import type { PlanSolver } from '../../../core/plan/mip/solver.ts';
import type { Model } from '../../../core/plan/model.ts';
import { readModel } from '../../../core/plan/plan-reuse.ts';
import { startOf } from '../../../core/plan/start-plan.ts';
import { planSolver } from '../../../core/procedures/plan-solver.ts';
import { randomInput } from '../random-input.ts';
import { everyPlan, refCost } from '../reference.ts';
import { refChanged, refObeys, withChoices } from '../told-and-fixed.ts';

const cases = 500;
const firstSeed = 40_000;

let solver: PlanSolver;

beforeAll(async () => {
  solver = await planSolver();
});

/** Money in billionths of billionths of a minor unit, as the second reading counts. */
interface Best {
  readonly unmet: number;
  readonly money: bigint;
}

function isLess(one: Best, other: Best): boolean {
  return one.unmet < other.unmet || (one.unmet === other.unmet && one.money < other.money);
}

function bestOf(input: PlanInput): Best {
  const [whole = '0', part = ''] = String(input.changePerInstruction ?? 0).split('.');
  const each = BigInt(whole + part.padEnd(18, '0'));
  let best: Best | undefined;
  everyPlan(input, (runs) => {
    if (!refObeys(input, runs)) return;
    const { labour, hire, unmet } = refCost(input, runs);
    const money = labour + hire + BigInt(refChanged(runs, input.told ?? []).length) * each;
    if (best === undefined || isLess({ unmet, money }, best)) best = { unmet, money };
  });
  if (best === undefined) throw new Error('No plan was looked at');
  return best;
}

function costOf(model: Model, followers: Int32Array): Best {
  const exact = exactCost(model, followers);
  return { unmet: exact.unmet, money: grainsOfCost(exact) * 10n ** BigInt(18 - model.grains.places) };
}

/** In the money of the search. */
function inSearchMoney({ money }: Best, model: Model, edges: Edges): number {
  return (Number(money) / 10 ** (18 - model.grains.places)) * edges.money.perGrain;
}

const limits = { nodes: 100_000, isOver: () => false };

function solvedAlone(model: Model, edges: Edges, unmet: number): { best: Best; bound: number } {
  const known = startOf(model, edges, []) ?? new Int32Array(edges.turns).fill(-1);
  let best = costOf(model, known);
  const answer = solveModel(
    { model, edges, kept: keepAll(edges), aim: { kind: 'cost', mostUnmet: unmet }, known },
    solver,
    {
      ...limits,
      onPlan: (followers) => {
        const cost = costOf(model, followers);
        if (isLess(cost, best)) best = cost;
      },
    },
  );
  expect(answer.complete).toBe(true);
  return { best, bound: answer.bound };
}

describe.each([
  ['with nothing told or fixed', (input: PlanInput) => input],
  ['with told instructions and fixed choices', withChoices],
])(`${cases} random inputs of 4 to 6 turns, seeds from ${firstSeed}, %s`, (_, choices) => {
  test('the model finds the best plan, its bound is not above it, and the improvement proves it', () => {
    let [hired, short] = [0, 0];
    for (let seed = firstSeed; seed < firstSeed + cases; seed += 1) {
      const input = planInput.parse(choices(randomInput(seed, 4 + (seed % 3)), seed));
      const read = readModel(input);
      if (!read.ok) throw new Error(read.error.message);
      const model = read.value;
      const edges = edgesOf(model);
      const best = bestOf(input);
      const least = inSearchMoney(best, model, edges);
      const room = Math.abs(least) * 1e-8 + edges.money.tolerance / 50;
      const alone = solvedAlone(model, edges, best.unmet);
      expect([seed, alone.best]).toEqual([seed, best]);
      expect(alone.bound - least, `seed ${seed}`).toBeLessThanOrEqual(room);
      const sketch = { ...instantPlan(model, edges), complete: false };
      const { sketch: improved, proved } = improveWhole(
        model,
        edges,
        sketch,
        { seed: 1, steps: 1_000_000, used: () => 0 },
        solver,
      );
      expect([seed, costOf(model, improved.standing.chains.follower)]).toEqual([seed, best]);
      expect(proved.least, `seed ${seed}`).toBeLessThanOrEqual(least);
      expect(proved.unmetIsLeast, `seed ${seed}`).toBe(true);
      if (best.unmet > 0) short += 1;
      else if (best.money > 0n) hired += 1;
    }
    expect(hired).toBeGreaterThan(cases / 4);
    expect(short).toBeGreaterThan(cases / 20);
  });
});
