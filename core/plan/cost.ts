// The cost of a plan, exact: labour by the hours of its assemblies, follows and break-downs, hire by the
// greatest excess of every component on every day. Formula: `calc plan` of the contracts.
import { holdsByComponent, stretchesOf } from './excess.ts';
import { followGrains } from './follows.ts';
import { excessDays } from './hire-days.ts';
import { firstTurns, holdsOf, type Followers } from './holding.ts';
import type { Model } from './model.ts';
import { roundHalfUp } from './money.ts';

/** Amounts in grains (see money.ts); `unmet` counts pieces short for a day that cannot be hired. */
export interface ExactCost {
  readonly labour: bigint;
  readonly hire: bigint;
  readonly unmet: number;
}

/** Whole minor units; total and labour are rounded once, hire is their difference. */
export interface RoundedCost {
  readonly labour: number;
  readonly hire: number;
  readonly total: number;
  readonly unmet: number;
}

export function exactCost(model: Model, followers: Followers): ExactCost {
  const holds = holdsByComponent(model, holdsOf(model, followers));
  let hire = 0n;
  let unmet = 0;
  for (const [component, own] of holds.entries()) {
    const rate = model.hire[component] ?? null;
    const pieceDays = excessDays(model, stretchesOf(model, component, own));
    if (rate === null) unmet += pieceDays;
    else hire += rate * BigInt(pieceDays);
  }
  return { labour: labourGrains(model, followers), hire, unmet };
}

function labourGrains(model: Model, followers: Followers): bigint {
  let labour = 0n;
  for (const first of firstTurns(followers)) {
    if (model.built[first] !== true) labour += model.assembleGrains[model.design[first] ?? 0] ?? 0n;
  }
  for (const [earlier, later] of followers.entries()) {
    labour +=
      later < 0
        ? (model.breakDownGrains[model.design[earlier] ?? 0] ?? 0n)
        : followGrains(model, earlier, later);
  }
  return labour;
}

export function roundedCost(model: Model, { labour, hire, unmet }: ExactCost): RoundedCost {
  const { places } = model.grains;
  const total = Number(roundHalfUp(labour + hire, places));
  const labourMinor = Number(roundHalfUp(labour, places));
  return { labour: labourMinor, hire: total - labourMinor, total, unmet };
}
