// The search for a short schedule: two populations, one of schedules made from the front, one made from the back. Children of the
// one are made in the other direction, so that every child is justified as well (bi-population genetic algorithm: Debels and
// Vanhoucke, Operations Research 55 (2007) 457-469; justification: Valls, Ballestin and Quintanilla, EJOR 165 (2005) 375-386).
// Where nothing better comes for long, it begins anew. It ends by the number of schedules, never by the clock.
import { randomFrom } from '../random.ts';
import { crossoverOf, type Member } from './crossover.ts';
import { type Network, reversed } from './network.ts';
import { parallelOf } from './parallel.ts';
import { sampledOrder, tailsOf } from './sampling.ts';
import { type MakeSchedule, serialOf } from './serial.ts';

/** Found by trial on the open benchmark sets with 5,000 schedules. */
const membersOf = 20;
const childrenOf = 2;
/** Generations without a better schedule until it begins anew, for every activity. */
const staleAfter = 1;
/** Activities of a child that are brought forward, on average. */
const broughtForward = 0.7;

export interface Found {
  readonly makespan: number;
  readonly starts: Float64Array;
  /** Schedules generated. */
  readonly schedules: number;
}

/** How schedules are made: in which network, by which way. */
interface Direction {
  readonly network: Network;
  readonly make: MakeSchedule;
}

export interface Ways {
  readonly forward: Direction;
  /** The same as `forward` where there is only one direction. */
  readonly backward: Direction;
  /** Another way for every second of the first schedules. */
  readonly first: MakeSchedule;
}

export interface Limits {
  readonly schedules: number;
  readonly seed: number;
  /** No schedule is shorter: one as short ends the search. */
  readonly bound: number;
}

export function searchLevel(network: Network, limits: Limits): Found {
  const backwards = reversed(network);
  const forward = { network, make: serialOf(network) };
  const backward = { network: backwards, make: serialOf(backwards) };
  return searchBy({ forward, backward, first: parallelOf(network) }, limits);
}

export function searchBy({ forward, backward, first }: Ways, { schedules, seed, bound }: Limits): Found {
  const { network } = forward;
  const random = randomFrom(seed);
  const order = new Int32Array(network.count);
  const tails = tailsOf(network);
  const cross = crossoverOf(network, random, forward !== backward);
  let used = 0;
  let best: { readonly member: Member; readonly of: Direction } | null = null;

  const isOver = (): boolean => used >= schedules || (best?.member.makespan ?? Infinity) <= bound;
  const made = (make: MakeSchedule, of: Direction): Member => {
    const starts = new Float64Array(network.count);
    const member = { starts, makespan: make(order, starts) };
    used += 1;
    if (best === null || member.makespan < best.member.makespan) best = { member, of };
    return member;
  };
  const drawFrom = (members: readonly Member[]): Member => {
    const one = members[Math.floor(random() * members.length)];
    if (one === undefined) throw new Error('Nobody to draw from');
    return one;
  };
  const betterOfTwo = (members: readonly Member[]): Member => {
    const [one, other] = [drawFrom(members), drawFrom(members)];
    return one.makespan <= other.makespan ? one : other;
  };
  const firstMembers = (): Member[] => {
    const members: Member[] = [];
    while (members.length < membersOf && !isOver()) {
      if (used === 0) byUrgency(network, tails, order);
      else sampledOrder(network, tails, random, order);
      members.push(made(members.length % 2 === 0 ? first : forward.make, forward));
    }
    return members;
  };
  const childOf = (father: Member, members: readonly Member[], to: Direction): Member | null => {
    let better: Member | null = null;
    for (let child = 0; child < childrenOf && !isOver(); child += 1) {
      cross(father, betterOfTwo(members), to.network, order);
      bringForward(to.network, order, random);
      const next = made(to.make, to);
      if (better === null || next.makespan < better.makespan) better = next;
    }
    return better;
  };
  /** Until nothing better came for long. */
  const populate = (): void => {
    let fathers = firstMembers();
    let others: readonly Member[] = [];
    let to = backward;
    const generations = Math.ceil(staleAfter * network.count);
    for (let stale = 0; stale < generations && !isOver(); stale += 1) {
      const least = best?.member.makespan;
      const children = fathers.map((father, place) => {
        const child = childOf(father, fathers, to);
        const other = others[place];
        // Only what is as good takes a place.
        return child === null || (other !== undefined && other.makespan < child.makespan)
          ? (other ?? father)
          : child;
      });
      if (best?.member.makespan !== least) stale = -1;
      [others, fathers] = [fathers, children];
      to = to === backward ? forward : backward;
    }
  };
  while (!isOver()) populate();
  return foundOf(best, forward, network, used);
}

/** The longest way to the end first: no chance in it. */
function byUrgency({ duration, rank }: Network, tails: Float64Array, order: Int32Array): void {
  for (let each = 0; each < order.length; each += 1) order[each] = each;
  const left = (each: number): number => (tails[each] ?? 0) + (duration[each] ?? 0);
  order.sort((a, b) => left(b) - left(a) || (rank[a] ?? 0) - (rank[b] ?? 0));
}

/** Now and then one comes as early as what it waits for lets it, at most by a quarter of the list. */
function bringForward({ count, before }: Network, order: Int32Array, random: () => number): void {
  for (let from = 0; from < count; from += 1) {
    if (random() >= broughtForward / count) continue;
    const activity = order[from] ?? 0;
    const waitsFor = before.of.subarray(before.from[activity], before.from[activity + 1]);
    const steps = 1 + Math.floor((random() * count) / 4);
    for (let place = from; place > Math.max(0, from - steps); place -= 1) {
      const ahead = order[place - 1] ?? 0;
      if (waitsFor.includes(ahead)) break;
      order[place] = ahead;
      order[place - 1] = activity;
    }
  }
}

function foundOf(
  best: { readonly member: Member; readonly of: Direction } | null,
  forward: Direction,
  { count, duration }: Network,
  schedules: number,
): Found {
  if (best === null) return { makespan: 0, starts: new Float64Array(count), schedules };
  const { starts, makespan } = best.member;
  if (best.of === forward) return { makespan, starts, schedules };
  const mirrored = starts.map((start, each) => makespan - start - (duration[each] ?? 0));
  return { makespan, starts: mirrored, schedules };
}
