// The child of two schedules: between two times of the father, in which its resources are well used, as the father has it;
// what the father has before and after, in the order of the mother (peak crossover: Valls, Ballestin and Quintanilla, EJOR 185
// (2008) 495-508; times in place of places in a list: Debels and Vanhoucke, Operations Research 55 (2007) 457-469).
import type { Network } from './network.ts';

/** A schedule of one direction of time. */
export interface Member {
  readonly starts: Float64Array;
  readonly makespan: number;
}

/** So many stretches are drawn; the best used of them stays as it is. */
const drawn = 8;

/** Sorts `order` for the network that the child is made in. */
export type Cross = (father: Member, mother: Member, to: Network, order: Int32Array) => void;

/** @param mirrored the child is made in the other direction of time: what ends last comes first */
export function crossoverOf(network: Network, random: () => number, mirrored: boolean): Cross {
  const { count, duration } = network;
  const keys = new Float64Array(count);
  const use = shareUsed(network);

  const usedBetween = (starts: Float64Array, from: number, to: number): number => {
    let used = 0;
    for (let each = 0; each < count; each += 1) {
      const start = starts[each] ?? 0;
      const part = Math.min(to, start + (duration[each] ?? 0)) - Math.max(from, start);
      if (part > 0) used += part * (use[each] ?? 0);
    }
    return used;
  };

  const keyOf = ({ starts, makespan }: Member, each: number): number =>
    mirrored ? makespan - (starts[each] ?? 0) - (duration[each] ?? 0) : (starts[each] ?? 0);

  return (father, mother, to, order) => {
    const length = father.makespan * (0.25 + 0.5 * random());
    let [from, most] = [0, -1];
    for (let draw = 0; draw < drawn; draw += 1) {
      const at = random() * (father.makespan - length);
      const used = usedBetween(father.starts, at, at + length);
      if (used > most) [from, most] = [at, used];
    }
    if (mirrored) from = father.makespan - from - length;
    const behind = father.makespan + mother.makespan + 1;
    for (let each = 0; each < count; each += 1) {
      const ofFather = keyOf(father, each);
      if (ofFather < from) keys[each] = keyOf(mother, each) - behind;
      else if (ofFather > from + length) keys[each] = keyOf(mother, each) + behind;
      else keys[each] = ofFather;
      order[each] = each;
    }
    const { rank } = to;
    order.sort((a, b) => (keys[a] ?? 0) - (keys[b] ?? 0) || (rank[a] ?? 0) - (rank[b] ?? 0));
  };
}

/** Of all resources together, the part of what there is that each takes. */
function shareUsed({ count, needs, quantity, capacity }: Network): Float64Array {
  const shares = new Float64Array(count);
  for (let each = 0; each < count; each += 1)
    for (let row = needs.from[each] ?? 0; row < (needs.from[each + 1] ?? 0); row += 1)
      shares[each] = (shares[each] ?? 0) + (quantity[row] ?? 0) / (capacity[needs.of[row] ?? 0] ?? 1);
  return shares;
}
