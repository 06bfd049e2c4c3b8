// A time that no schedule can beat: the longest path, the work of each resource with the least time before and behind it, and
// the times that reasoning proves impossible (destructive improvement: Klein and Scholl, EJOR 112 (1999) 322-346).
import { byEnergy, type Users, usersOf } from './energy.ts';
import { type Network, reversed } from './network.ts';
import { byPairs, pairsApart } from './pairs.ts';
import { tailsOf } from './sampling.ts';
import { byOrder, type Effort, type Narrowed, type Windows, windowsBy } from './windows.ts';

export interface LevelBound {
  readonly criticalPath: number;
  /** By the work of the resources too. */
  readonly byWork: number;
  /** By all of it. */
  readonly least: number;
}

/** Looks at an activity in a stretch of time, in all. */
const effortFor = 8_000_000;

export function boundOf(network: Network): LevelBound {
  const tails = tailsOf(network);
  const heads = tailsOf(reversed(network));
  let criticalPath = 0;
  for (let each = 0; each < network.count; each += 1)
    criticalPath = Math.max(
      criticalPath,
      (heads[each] ?? 0) + (network.duration[each] ?? 0) + (tails[each] ?? 0),
    );
  const users = usersOf(network);
  const byWork = Math.max(criticalPath, ...users.map((each) => workOf(network, each, heads, tails)));
  return { criticalPath, byWork, least: reasonedBound(network, users, byWork) };
}

/**
 * Whoever begins no earlier than a head and is followed by no less than a tail shares the time between them: their work over the
 * capacity, rounded up, with the head before and the tail behind it.
 */
function workOf(
  { duration }: Network,
  { of, quantity, capacity }: Users,
  heads: Float64Array,
  tails: Float64Array,
): number {
  const rows = [...of.keys()].map((at) => ({
    head: heads[of[at] ?? 0] ?? 0,
    tail: tails[of[at] ?? 0] ?? 0,
    work: (duration[of[at] ?? 0] ?? 0) * (quantity[at] ?? 0),
  }));
  rows.sort((one, other) => other.tail - one.tail);
  let most = 0;
  for (const from of new Set(rows.map(({ head }) => head))) {
    let work = 0;
    for (const { head, tail, work: more } of rows) {
      if (head < from) continue;
      work += more;
      most = Math.max(most, from + Math.ceil(work / capacity) + tail);
    }
  }
  return most;
}

function reasonedBound(network: Network, users: readonly Users[], known: number): number {
  const pairs = pairsApart(network);
  const effort: Effort = { left: effortFor };
  const isImpossible = (end: number, shaving: boolean): boolean => {
    const windows = windowsBy(network, end);
    if (narrow(network, users, pairs, windows, effort) === 'impossible') return true;
    return shaving && shave(network, users, pairs, windows, effort) === 'impossible';
  };
  let least = known;
  for (const shaving of [false, true]) {
    // What proves one time impossible proves every earlier one so: ever longer steps up, then halves back.
    let step = 1;
    while (effort.left > 0 && isImpossible(least + step - 1, shaving)) {
      least += step;
      step *= 2;
    }
    for (step = Math.floor(step / 2); step >= 1 && effort.left > 0; step = Math.floor(step / 2))
      if (isImpossible(least + step - 1, shaving)) least += step;
  }
  return least;
}

/** By all rules until none finds more; 'no' only says that nothing was proved. */
function narrow(
  network: Network,
  users: readonly Users[],
  pairs: Int32Array,
  windows: Windows,
  effort: Effort,
): Narrowed {
  let any: Narrowed = 'no';
  for (;;) {
    let found = quick(network, pairs, windows, effort);
    if (found === 'impossible') return found;
    for (const each of users) {
      if (effort.left <= 0) return any;
      const more = byEnergy(network, each, windows, effort);
      if (more === 'impossible') return more;
      if (more === 'yes') found = more;
    }
    if (found === 'no') return any;
    any = 'yes';
  }
}

function quick(network: Network, pairs: Int32Array, windows: Windows, effort: Effort): Narrowed {
  let any: Narrowed = 'no';
  for (;;) {
    effort.left -= 2 * network.count + pairs.length;
    const found = [byOrder(network, windows), byPairs(network, pairs, windows)];
    if (found.includes('impossible')) return 'impossible';
    if (!found.includes('yes')) return any;
    any = 'yes';
  }
}

/** One half of each window is tried by itself: if it is impossible, the other half is left. */
function shave(
  network: Network,
  users: readonly Users[],
  pairs: Int32Array,
  windows: Windows,
  effort: Effort,
): Narrowed {
  const tried: Windows = {
    earliest: new Float64Array(network.count),
    latest: new Float64Array(network.count),
  };
  const isOut = (each: number, earliest: number, latest: number): boolean => {
    tried.earliest.set(windows.earliest);
    tried.latest.set(windows.latest);
    tried.earliest[each] = earliest;
    tried.latest[each] = latest;
    return narrow(network, users, pairs, tried, effort) === 'impossible';
  };
  for (let found = true; found && effort.left > 0;) {
    found = false;
    for (let each = 0; each < network.count && effort.left > 0; each += 1) {
      const [from, to] = [windows.earliest[each] ?? 0, windows.latest[each] ?? 0];
      if (from === to) continue;
      const middle = Math.floor((from + to) / 2);
      const firstOut = isOut(each, from, middle);
      const secondOut = !firstOut && isOut(each, middle + 1, to);
      if (!firstOut && !secondOut) continue;
      found = true;
      if (firstOut) windows.earliest[each] = middle + 1;
      else windows.latest[each] = middle;
      if (narrow(network, users, pairs, windows, effort) === 'impossible') return 'impossible';
    }
  }
  return 'no';
}
