// When a plan comes near to what there is of a component: stretches over which fewer pieces are to spare than its figure
// may be off by. Where the figure is weak, the days of such a stretch rest on it.
import { answer, type Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from './contract.ts';
import { holdsByComponent, stretchesOf } from './excess.ts';
import { holdsOf } from './holding.ts';
import { followersOf, readModel } from './plan-reuse.ts';

export interface NearStretch {
  readonly component: string;
  readonly from: string;
  readonly to: string;
}

/**
 * Only of the components asked for. What is short already is near as well.
 * @param percent of the stock, by which its figure may be off
 */
export function nearlyUsedUp(
  input: PlanInput,
  { runs }: PlanAnswer,
  components: ReadonlySet<string>,
  percent: number,
): Answer<readonly NearStretch[]> {
  if (components.size === 0) return answer([]);
  const read = readModel(input);
  if (!read.ok) return read;
  const model = read.value;
  const followers = followersOf(model, runs);
  if (!followers.ok) return followers;
  const near: NearStretch[] = [];
  for (const [index, holds] of holdsByComponent(model, holdsOf(model, followers.value)).entries()) {
    const component = model.codes[index] ?? '';
    if (!components.has(component)) continue;
    for (const { from, to, held, stock } of stretchesOf(model, index, holds))
      if (held > 0 && (stock - held) * 100 < stock * percent)
        near.push({ component, from: model.instants.textOf(from), to: model.instants.textOf(to) });
  }
  return answer(near);
}
