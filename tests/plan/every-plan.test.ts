// Plans of 500 random small inputs against every plan that there is, looked at one by one by a second reading of the
// definition: at once, bettered with the solver, and out of the solver's model alone; the same again with told instructions and
// fixed choices.
import { describe, expect, test } from 'vitest';
import { planAnswer, planInput, type PlanAnswer, type PlanInput } from '../../core/plan/contract.ts';
import { planReuse } from '../../core/plan/plan-reuse.ts';
import { planSolver } from '../../core/procedures/plan-solver.ts';
import { bettered } from './bettered.ts';
import { modelAlone } from './model-alone.ts';
import { randomInput } from './random-input.ts';
import { everyPlan, refCost, refRound, type RefCost } from './reference.ts';
import { refChanged, refObeys, withChoices } from './told-and-fixed.ts';

const cases = 500;
const firstSeed = 20_000;
const minor = 10n ** 18n;

function plan(input: PlanInput): PlanAnswer {
  const made = planReuse(planInput.parse(input), () => 0);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return planAnswer.parse(made.value);
}

const solver = await planSolver();

/** Labour, hire and changes of the second reading. */
interface Whole extends RefCost {
  readonly changes: bigint;
}

function costOf(input: PlanInput, runs: readonly (readonly string[])[]): Whole {
  const changed = refChanged(runs, input.told ?? []).length;
  const [whole = '0', part = ''] = String(input.changePerInstruction ?? 0).split('.');
  const each = BigInt(whole + part.padEnd(18, '0'));
  return { ...refCost(input, runs), changes: BigInt(changed) * each };
}

function sum({ labour, hire, changes }: Whole): bigint {
  return labour + hire + changes;
}

function bestOf(input: PlanInput): { readonly best: Whole; readonly plans: number } {
  let best: Whole | undefined;
  let plans = 0;
  everyPlan(input, (runs) => {
    if (!refObeys(input, runs)) return;
    plans += 1;
    const cost = costOf(input, runs);
    if (best === undefined || cost.unmet < best.unmet || (cost.unmet === best.unmet && sum(cost) < sum(best)))
      best = cost;
  });
  if (best === undefined) throw new Error('No plan was looked at');
  return { best, plans };
}

const inputs = Array.from({ length: cases }, (_, index) => {
  const seed = firstSeed + index;
  return { seed, input: randomInput(seed, 4 + (seed % 4)) };
});

describe.each([
  ['with nothing told or fixed', (input: PlanInput) => input],
  ['with told instructions and fixed choices', withChoices],
])(`${cases} random inputs of 4 to 7 turns, seeds from ${firstSeed}, %s`, (_, choices) => {
  const made = inputs.map(({ seed, input }) => {
    const asked = choices(input, seed);
    return { seed, input: asked, answer: plan(asked), ...bestOf(asked) };
  });

  test('leave as few pieces wanting as the best plan, and lie within 0.5 % of it on average', () => {
    let [over, dear, plans] = [0, 0, 0];
    for (const { seed, answer, best, plans: some } of made) {
      plans += some;
      expect(answer.cost.unmet, `seed ${seed}`).toBe(best.unmet);
      if (sum(best) === 0n) continue;
      dear += 1;
      over += answer.cost.total / (Number(sum(best)) / 1e18) - 1;
    }
    expect(plans).toBeGreaterThan(cases * 10);
    expect(dear).toBeGreaterThan(cases / 2);
    expect(over / dear).toBeLessThan(0.005);
  });

  test('have a bound that is never above the best, and are called proven only where they cost no more than it', () => {
    let proven = 0;
    for (const { seed, answer, best } of made) {
      expect(BigInt(answer.bound) * minor <= sum(best), `seed ${seed}: bound ${answer.bound}`).toBe(true);
      if (!answer.proven) continue;
      proven += 1;
      expect(answer.cost.total - refRound(sum(best)), `seed ${seed}`).toBeLessThanOrEqual(1);
    }
    expect(proven).toBeGreaterThan(cases / 2);
  });

  test('bettered with the solver are the best, proven, with a bound that is not above it', () => {
    for (const { seed, input, best } of made) {
      const { runs, cost, bound, proven } = bettered({ ...input, improveSteps: 5000 });
      expect([cost.unmet, cost.total, proven], `seed ${seed}`).toEqual([
        best.unmet,
        refRound(sum(best)),
        true,
      ]);
      expect(BigInt(bound) * minor <= sum(best), `seed ${seed}: bound ${bound}`).toBe(true);
      expect(
        refObeys(
          input,
          runs.map(({ turns }) => turns),
        ),
        `seed ${seed}`,
      ).toBe(true);
    }
  });

  test('out of the model alone are the best, with everything in it or without what prices rule out, and no bound of it is above it', () => {
    let leftOut = 0;
    for (const { seed, input, best } of made) {
      const alone = modelAlone(planInput.parse(input), solver, seed % 2 === 0 ? 'all' : 'priced');
      const found = costOf(input, alone.runs);
      expect([found.unmet, sum(found), alone.complete], `seed ${seed}`).toEqual([
        best.unmet,
        sum(best),
        true,
      ]);
      expect(alone.unmetBound, `seed ${seed}`).toBeLessThanOrEqual(best.unmet + 1e-6);
      const least = Number(sum(best)) / 1e18;
      expect(alone.bound, `seed ${seed}`).toBeLessThanOrEqual(least + 1e-6 + least * 1e-9);
      leftOut += alone.leftOut;
    }
    expect(leftOut).toBeGreaterThan(cases / 2);
  });

  test('obey every fixed choice, name every told instruction that they change, and cost what that and the rest come to', () => {
    let [fixed, changed] = [0, 0];
    for (const { seed, input, answer } of made) {
      const runs = answer.runs.map(({ turns }) => turns);
      fixed += input.fixed?.length ?? 0;
      expect(refObeys(input, runs), `seed ${seed}`).toBe(true);
      const { told } = input;
      const expected = told === undefined ? undefined : refChanged(runs, told);
      changed += expected?.length ?? 0;
      expect(answer.changed, `seed ${seed}`).toEqual(expected);
      const { labour, changes, unmet, hire } = costOf(input, runs);
      const [first, second, total] = [labour, labour + changes, labour + changes + hire].map(refRound);
      expect(answer.cost, `seed ${seed}`).toEqual({
        labour: first,
        ...(told === undefined ? {} : { changes: (second ?? 0) - (first ?? 0) }),
        hire: (total ?? 0) - (second ?? 0),
        total,
        unmet,
      });
    }
    if (choices !== withChoices) return;
    expect(fixed).toBeGreaterThan(cases);
    expect(changed).toBeGreaterThan(cases / 4);
  });
});
