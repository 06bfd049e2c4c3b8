// What stands behind a shortfall: how many are held and how many there are when it begins, who holds how
// many, and what hiring the missing pieces for its days would cost.
import { answer, type Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput, Shortfall } from './contract.ts';
import { holdsOf, type Hold } from './holding.ts';
import { msOf, zoneOf } from './local-time.ts';
import { levelAt } from './model.ts';
import { followersOf, readModel } from './plan-reuse.ts';

export interface Holder {
  readonly id: string;
  readonly pieces: number;
}

export interface ShortfallFacts {
  readonly shortfall: Shortfall;
  readonly held: number;
  readonly stock: number;
  readonly turns: readonly Holder[];
  readonly loose: readonly Holder[];
  /** Minor units, at the daily rate for every calendar day it touches; null where it cannot be hired. */
  readonly hireCents: number | null;
}

/** Held, stock and holders are those of the shortfall's first moment. */
export function shortfallFacts(
  input: PlanInput,
  { runs, shortfalls }: PlanAnswer,
  timeZone: string,
): Answer<ShortfallFacts[]> {
  const read = readModel(input);
  if (!read.ok) return read;
  const model = read.value;
  const followers = followersOf(model, runs);
  if (!followers.ok) return followers;
  const holds = Map.groupBy(holdsOf(model, followers.value), (hold) => hold.component);
  const components = new Map(model.codes.map((code, index) => [code, index]));
  const looseIds = model.loose.map(({ id }) => id);
  const facts = shortfalls.map((shortfall) => {
    const component = components.get(shortfall.component) ?? -1;
    const at = model.instants.unitsOf(shortfall.from);
    const there = (holds.get(component) ?? []).filter((hold) => hold.from <= at && at < hold.to);
    const rate = input.components[component]?.hirePerDay ?? null;
    const steps = model.stock[component];
    const days = daysTouched(shortfall, timeZone);
    return {
      shortfall,
      held: there.reduce((sum, hold) => sum + hold.quantity, 0),
      stock: steps === undefined ? 0 : levelAt(steps, at),
      turns: holders(there, (hold) => hold.turn, model.turnIds),
      loose: holders(there, (hold) => hold.loose, looseIds),
      hireCents: rate === null ? null : Math.round(rate * shortfall.quantity * days),
    };
  });
  return answer(facts);
}

function holders(
  holds: readonly Hold[],
  who: (hold: Hold) => number | undefined,
  ids: readonly string[],
): Holder[] {
  const pieces = new Map<number, number>();
  for (const hold of holds) {
    const place = who(hold);
    if (place !== undefined) pieces.set(place, (pieces.get(place) ?? 0) + hold.quantity);
  }
  return [...pieces]
    .sort(([one], [other]) => one - other)
    .map(([place, quantity]) => ({ id: ids[place] ?? '', pieces: quantity }));
}

/** Calendar days that a stretch touches; one that ends at midnight does not touch the day after. */
function daysTouched({ from, to }: Shortfall, timeZone: string): number {
  const days = zoneOf(timeZone);
  return days.dayOf(msOf(to) - 1) - days.dayOf(msOf(from)) + 1;
}
