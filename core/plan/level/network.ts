// Activities as numbers in flat arrays, for the search; and the same read backwards in time, so that one way of making
// schedules serves both directions.
import type { LevelInput } from './contract.ts';

/** Lists of numbers one behind the other: those of entry i lie from `from[i]` to before `from[i + 1]`. */
export interface Lists {
  readonly from: Int32Array;
  readonly of: Int32Array;
}

export interface Network {
  readonly count: number;
  readonly duration: Float64Array;
  readonly resources: number;
  readonly capacity: Float64Array;
  /** The resources that each needs, with how much of them beside. */
  readonly needs: Lists;
  readonly quantity: Float64Array;
  /** Those that must have ended, those that must wait: direct ones only. */
  readonly before: Lists;
  readonly after: Lists;
  /** Each behind all that come before it. */
  readonly order: Int32Array;
  /** Its place in the order. */
  readonly rank: Int32Array;
}

/** Of an input that was checked. */
export function networkOf({ activities, capacity }: LevelInput): Network {
  const place = new Map(activities.map(({ id }, index) => [id, index]));
  const resourcePlace = new Map(Object.keys(capacity).map((name, index) => [name, index]));
  const successors = activities.map(({ successors: ids }) => [
    ...new Set(ids.map((id) => place.get(id) ?? -1)),
  ]);
  const predecessors: number[][] = activities.map(() => []);
  for (const [index, list] of successors.entries()) for (const each of list) predecessors[each]?.push(index);
  const demands = activities.map(({ demand, duration }) =>
    duration === 0 ? [] : Object.entries(demand).filter(([, quantity]) => quantity > 0),
  );
  const [before, after] = [listsOf(predecessors), listsOf(successors)];
  const order = orderOf(before, after);
  return {
    count: activities.length,
    duration: Float64Array.from(activities, ({ duration }) => duration),
    resources: resourcePlace.size,
    capacity: Float64Array.from(Object.values(capacity)),
    needs: listsOf(demands.map((list) => list.map(([name]) => resourcePlace.get(name) ?? -1))),
    quantity: Float64Array.from(demands.flatMap((list) => list.map(([, quantity]) => quantity))),
    before,
    after,
    order,
    rank: placesIn(order),
  };
}

export function reversed(network: Network): Network {
  const order = network.order.toReversed();
  return { ...network, before: network.after, after: network.before, order, rank: placesIn(order) };
}

function listsOf(lists: readonly (readonly number[])[]): Lists {
  const from = new Int32Array(lists.length + 1);
  for (const [index, list] of lists.entries()) from[index + 1] = (from[index] ?? 0) + list.length;
  return { from, of: Int32Array.from(lists.flat()) };
}

/** In the order of the input as far as what comes before allows it. */
function orderOf(before: Lists, after: Lists): Int32Array {
  const count = before.from.length - 1;
  const open = Int32Array.from(
    { length: count },
    (_, each) => (before.from[each + 1] ?? 0) - (before.from[each] ?? 0),
  );
  const order: number[] = [];
  for (let each = 0; each < count; each += 1) if (open[each] === 0) order.push(each);
  for (let at = 0; at < order.length; at += 1) {
    const each = order[at] ?? 0;
    for (const next of after.of.subarray(after.from[each], after.from[each + 1])) {
      const left = (open[next] ?? 0) - 1;
      open[next] = left;
      if (left === 0) order.push(next);
    }
  }
  return Int32Array.from(order);
}

function placesIn(order: Int32Array): Int32Array {
  const places = new Int32Array(order.length);
  for (const [place, each] of order.entries()) places[each] = place;
  return places;
}
