// The components that are next to be short: none is missing yet, and the fewest are to spare at some moment.
import { answer, type Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from './contract.ts';
import { holdsByComponent, stretchesOf } from './excess.ts';
import { holdsOf } from './holding.ts';
import { followersOf, readModel } from './plan-reuse.ts';

export interface Tight {
  readonly component: string;
  /** The first moment at which the fewest are to spare. */
  readonly at: string;
  readonly held: number;
  readonly stock: number;
}

/** Fewest to spare first; of as many, the larger share in use first. */
export function tightest(input: PlanInput, { runs, shortfalls }: PlanAnswer, most: number): Answer<Tight[]> {
  const model = readModel(input);
  if (!model.ok) return model;
  const followers = followersOf(model.value, runs);
  if (!followers.ok) return followers;
  const short = new Set(shortfalls.map((each) => each.component));
  const found: Tight[] = [];
  for (const [index, holds] of holdsByComponent(
    model.value,
    holdsOf(model.value, followers.value),
  ).entries()) {
    const component = model.value.codes[index] ?? '';
    if (short.has(component)) continue;
    let least: Tight | undefined;
    for (const { from, held, stock } of stretchesOf(model.value, index, holds))
      if (held > 0 && (least === undefined || stock - held < least.stock - least.held))
        least = { component, at: model.value.instants.textOf(from), held, stock };
    if (least !== undefined) found.push(least);
  }
  const spare = ({ held, stock }: Tight): number => stock - held;
  found.sort((one, other) => spare(one) - spare(other) || other.held - one.held);
  return answer(found.slice(0, most));
}
