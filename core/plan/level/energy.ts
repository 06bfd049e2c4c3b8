// What a resource must give between two times, whatever the schedule: of each activity the least part that lies between
// them, pushed as far out as its window allows (energetic reasoning: Erschler and Lopez 1990; Baptiste, Le Pape and Nuijten,
// Annals of Operations Research 92 (1999) 305-333). Where the rest does not hold an activity pushed to one side, it goes the
// other way.
import type { Network } from './network.ts';
import type { Effort, Narrowed, Windows } from './windows.ts';

/** For one resource: who needs it and how much. */
export interface Users {
  readonly of: Int32Array;
  readonly quantity: Float64Array;
  readonly capacity: number;
}

export function usersOf(network: Network): Users[] {
  const { count, needs, quantity, capacity } = network;
  return Array.from(capacity, (there, resource) => {
    const [of, amounts]: [number[], number[]] = [[], []];
    for (let each = 0; each < count; each += 1)
      for (let row = needs.from[each] ?? 0; row < (needs.from[each + 1] ?? 0); row += 1)
        if (needs.of[row] === resource) {
          of.push(each);
          amounts.push(quantity[row] ?? 0);
        }
    return { of: Int32Array.from(of), quantity: Float64Array.from(amounts), capacity: there };
  });
}

export function byEnergy(network: Network, users: Users, windows: Windows, effort: Effort): Narrowed {
  const { duration } = network;
  const { earliest, latest } = windows;
  const sum = users.quantity.reduce((total, each) => total + each, 0);
  if (sum <= users.capacity) return 'no';
  const begins = new Set<number>();
  const ends = new Set<number>();
  for (const each of users.of) {
    const lasts = duration[each] ?? 0;
    begins.add(earliest[each] ?? 0).add(latest[each] ?? 0);
    ends.add((latest[each] ?? 0) + lasts).add((earliest[each] ?? 0) + lasts);
  }
  const fromTimes = [...begins].sort((a, b) => a - b);
  const toTimes = [...ends].sort((a, b) => a - b);
  let narrowed: Narrowed = 'no';
  for (const from of fromTimes) {
    if (effort.left <= 0) return narrowed;
    for (const to of toTimes) {
      if (to <= from) continue;
      effort.left -= users.of.length;
      const found = between(users, windows, duration, from, to);
      if (found === 'impossible') return found;
      if (found === 'yes') narrowed = found;
    }
  }
  return narrowed;
}

function between(
  { of, quantity, capacity }: Users,
  { earliest, latest }: Windows,
  duration: Float64Array,
  from: number,
  to: number,
): Narrowed {
  const length = to - from;
  let rest = capacity * length;
  let greatest = 0;
  for (let at = 0; at < of.length; at += 1) {
    const each = of[at] ?? 0;
    const lasts = duration[each] ?? 0;
    const left = Math.min(length, lasts, (earliest[each] ?? 0) + lasts - from);
    const right = Math.min(length, lasts, to - (latest[each] ?? 0));
    const least = Math.max(0, Math.min(left, right));
    const most = Math.max(left, right);
    rest -= least * (quantity[at] ?? 0);
    greatest = Math.max(greatest, (most - least) * (quantity[at] ?? 0));
  }
  if (rest < 0) return 'impossible';
  if (greatest <= rest) return 'no';
  let narrowed: Narrowed = 'no';
  for (let at = 0; at < of.length; at += 1) {
    const each = of[at] ?? 0;
    const lasts = duration[each] ?? 0;
    const needs = quantity[at] ?? 0;
    const left = Math.min(length, lasts, (earliest[each] ?? 0) + lasts - from);
    const right = Math.min(length, lasts, to - (latest[each] ?? 0));
    const least = Math.max(0, Math.min(left, right));
    const room = Math.floor((rest + least * needs) / needs);
    if (left > room && to - room > (earliest[each] ?? 0)) {
      earliest[each] = to - room;
      narrowed = 'yes';
    }
    if (right > room && from + room - lasts < (latest[each] ?? 0)) {
      latest[each] = from + room - lasts;
      narrowed = 'yes';
    }
    if ((earliest[each] ?? 0) > (latest[each] ?? 0)) return 'impossible';
  }
  return narrowed;
}
