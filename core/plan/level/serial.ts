// Schedules made activity by activity, each at its earliest place that leaves what was placed before where it is (serial
// schedule generation: Kelley 1963; Kolisch, EJOR 90 (1996) 320-333). What is left of the resources over time is a chain of
// stretches; a stretch begins only where an activity ends, so that the durations may be of any size.
import type { Network } from './network.ts';

/** Fills `starts` from an order in which nothing stands before what it waits for, and answers the makespan. */
export type MakeSchedule = (order: Int32Array, starts: Float64Array) => number;

export function serialOf(network: Network): MakeSchedule {
  const { count, resources, capacity, duration, needs, quantity, before } = network;
  const begins = new Float64Array(count + 1);
  const next = new Int32Array(count + 1);
  const left = new Float64Array((count + 1) * resources);
  const endsWith = new Int32Array(count);
  let stretches = 0;

  const fits = (stretch: number, activity: number): boolean => {
    const offset = stretch * resources;
    const end = needs.from[activity + 1] ?? 0;
    for (let row = needs.from[activity] ?? 0; row < end; row += 1)
      if ((quantity[row] ?? 0) > (left[offset + (needs.of[row] ?? 0)] ?? 0)) return false;
    return true;
  };

  /** The stretch that begins at the time, after `last`; made where there is none yet. */
  const stretchAt = (time: number, last: number): number => {
    const following = next[last] ?? -1;
    if (following >= 0 && begins[following] === time) return following;
    const made = stretches;
    stretches += 1;
    begins[made] = time;
    next[made] = following;
    next[last] = made;
    left.copyWithin(made * resources, last * resources, (last + 1) * resources);
    return made;
  };

  const place = (activity: number, earliest: number): number => {
    const lasts = duration[activity] ?? 0;
    let start = earliest;
    let last = start;
    let stretch = start;
    // The last stretch has everything free: what fits at all fits there.
    while (stretch >= 0 && (begins[stretch] ?? 0) < (begins[start] ?? 0) + lasts) {
      if (fits(stretch, activity)) last = stretch;
      else start = next[stretch] ?? -1;
      stretch = next[stretch] ?? -1;
    }
    if (lasts === 0) {
      endsWith[activity] = start;
      return start;
    }
    const end = stretchAt((begins[start] ?? 0) + lasts, last);
    const rowEnd = needs.from[activity + 1] ?? 0;
    for (let each = start; each !== end; each = next[each] ?? -1)
      for (let row = needs.from[activity] ?? 0; row < rowEnd; row += 1) {
        const cell = each * resources + (needs.of[row] ?? 0);
        left[cell] = (left[cell] ?? 0) - (quantity[row] ?? 0);
      }
    endsWith[activity] = end;
    return start;
  };

  return (order, starts) => {
    stretches = 1;
    begins[0] = 0;
    next[0] = -1;
    left.set(capacity, 0);
    let makespan = 0;
    for (let position = 0; position < count; position += 1) {
      const activity = order[position] ?? 0;
      let earliest = 0;
      const rowEnd = before.from[activity + 1] ?? 0;
      for (let row = before.from[activity] ?? 0; row < rowEnd; row += 1) {
        const end = endsWith[before.of[row] ?? 0] ?? 0;
        if ((begins[end] ?? 0) > (begins[earliest] ?? 0)) earliest = end;
      }
      const start = begins[place(activity, earliest)] ?? 0;
      starts[activity] = start;
      makespan = Math.max(makespan, start + (duration[activity] ?? 0));
    }
    return makespan;
  };
}
