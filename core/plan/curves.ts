// Three curves of every component that must not be taken for each other: *demand standing*, what turns and
// loose turns hold while they stand; *demand held by the plan*, which adds what is held between turns, in
// assembly, in breaking down and in cleaning; and *stock*.
import { answer, type Answer } from '../answer.ts';
import type { PlanInput } from './contract.ts';
import { holdsByComponent, stretchesOf } from './excess.ts';
import { holdsOf, standingHolds, type Hold } from './holding.ts';
import type { Model } from './model.ts';
import { followersOf, readModel } from './plan-reuse.ts';

/** A quantity from an instant on, until that of the next step. */
export interface CurveStep {
  readonly from: string;
  readonly quantity: number;
}

export interface ComponentCurves {
  readonly component: string;
  readonly demandStanding: readonly CurveStep[];
  readonly demandHeldByPlan: readonly CurveStep[];
  readonly stock: readonly CurveStep[];
}

/** The curves of all components under runs given by the ids of their turns, in the order of the components. */
export function curvesOf(
  input: PlanInput,
  runs: readonly { readonly turns: readonly string[] }[],
): Answer<ComponentCurves[]> {
  const model = readModel(input);
  if (!model.ok) return model;
  const followers = followersOf(model.value, runs);
  if (!followers.ok) return followers;
  const held = holdsByComponent(model.value, holdsOf(model.value, followers.value));
  const standing = holdsByComponent(model.value, standingHolds(model.value, 'until-strip'));
  const first = held.flat().reduce((least, { from }) => Math.min(least, from), Infinity);
  return answer(
    model.value.codes.map((component, index) => ({
      component,
      demandStanding: stepsOf(model.value, index, standing[index] ?? []),
      demandHeldByPlan: stepsOf(model.value, index, held[index] ?? []),
      stock: stockSteps(model.value, index, first),
    })),
  );
}

/** What turns and loose turns hold while they stand, without a plan; loose pieces until they are stripped. */
export function standingCurves(
  input: PlanInput,
): Answer<{ component: string; demandStanding: readonly CurveStep[] }[]> {
  const model = readModel(input);
  if (!model.ok) return model;
  const standing = holdsByComponent(model.value, standingHolds(model.value, 'until-strip'));
  return answer(
    model.value.codes.map((component, index) => ({
      component,
      demandStanding: stepsOf(model.value, index, standing[index] ?? []),
    })),
  );
}

function stepsOf(model: Model, component: number, holds: readonly Hold[]): CurveStep[] {
  const steps: CurveStep[] = [];
  const stretches = stretchesOf(model, component, holds);
  for (const { from, held } of stretches) {
    if (steps.at(-1)?.quantity !== held) steps.push({ from: model.instants.textOf(from), quantity: held });
  }
  const end = stretches.at(-1);
  if (end !== undefined) steps.push({ from: model.instants.textOf(end.to), quantity: 0 });
  return steps;
}

/** The levels of stock; one that holds from the beginning is given from the first instant that the plan holds. */
function stockSteps(model: Model, component: number, first: number): CurveStep[] {
  const { times, levels } = model.stock[component] ?? { times: [], levels: [] };
  return times.flatMap((time, index) => {
    const from = time === -Infinity ? first : time;
    return Number.isFinite(from) ? [{ from: model.instants.textOf(from), quantity: levels[index] ?? 0 }] : [];
  });
}
