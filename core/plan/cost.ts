// The cost of a plan, exact: labour by the hours of its assemblies, follows and break-downs, hire by the
// greatest excess of every component on every day. Formula: `calc plan` of the contracts.
import type { Instruction } from './choices.ts';
import { holdsByComponent, stretchesOf } from './excess.ts';
import { followGrains } from './follows.ts';
import { excessDays } from './hire-days.ts';
import { firstTurns, holdsOf, type Followers } from './holding.ts';
import type { Model } from './model.ts';
import { isFollowed, leadersOf } from './model-choices.ts';
import { roundHalfUp } from './money.ts';

/** Amounts in grains (see money.ts); `unmet` counts pieces short for a day that cannot be hired. */
export interface ExactCost {
  readonly labour: bigint;
  readonly hire: bigint;
  /** The told instructions that the plan changes, at their price. */
  readonly changes: bigint;
  readonly unmet: number;
}

/** Whole minor units, adding up to the total. */
export interface RoundedCost {
  readonly labour: number;
  readonly hire: number;
  /** Only where something was told. */
  readonly changes?: number;
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
  const changes = BigInt(changedOf(model, followers).length) * model.changeGrains;
  return { labour: labourGrains(model, followers), hire, changes, unmet };
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

/** The told instructions that the plan does not follow, in the order in which they were given. */
export function changedOf(model: Model, followers: Followers): Instruction[] {
  const told = model.told ?? [];
  if (told.length === 0) return [];
  const leader = leadersOf(followers);
  return told.filter((each) => !isFollowed(each, followers, leader)).map(({ instruction }) => instruction);
}

export function grainsOfCost({ labour, hire, changes }: ExactCost): bigint {
  return labour + hire + changes;
}

/**
 * Labour, then labour with the changes, then all of it are rounded, each once and half up; what stands between two of them is
 * the share of changes and of hire. So none falls under 0 and all add up.
 */
export function roundedCost(model: Model, cost: ExactCost): RoundedCost {
  const { places } = model.grains;
  const rounded = (grains: bigint): number => Number(roundHalfUp(grains, places));
  const labour = rounded(cost.labour);
  const before = rounded(cost.labour + cost.changes);
  const total = rounded(grainsOfCost(cost));
  const changes = model.told === null ? {} : { changes: before - labour };
  return { labour, hire: total - before, ...changes, total, unmet: cost.unmet };
}
