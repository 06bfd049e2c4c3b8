// Schedules made moment by moment: at each, whatever may begin and fits begins, first things first (parallel schedule
// generation: Kolisch, EJOR 90 (1996) 320-333). It leaves no resource idle that something could use, which is often short
// but need not be the shortest; so only the first schedules of a search are made this way.
import type { Network } from './network.ts';
import type { MakeSchedule } from './serial.ts';

export function parallelOf(network: Network): MakeSchedule {
  const { count, resources, capacity, duration, needs, quantity, before, after } = network;
  const free = new Float64Array(resources);
  const waitsFor = new Int32Array(count);
  const ends = new Float64Array(count);

  const fits = (activity: number): boolean => {
    const end = needs.from[activity + 1] ?? 0;
    for (let row = needs.from[activity] ?? 0; row < end; row += 1)
      if ((quantity[row] ?? 0) > (free[needs.of[row] ?? 0] ?? 0)) return false;
    return true;
  };
  const take = (activity: number, sign: 1 | -1): void => {
    const end = needs.from[activity + 1] ?? 0;
    for (let row = needs.from[activity] ?? 0; row < end; row += 1) {
      const resource = needs.of[row] ?? 0;
      free[resource] = (free[resource] ?? 0) - sign * (quantity[row] ?? 0);
    }
  };
  const finish = (activity: number): void => {
    take(activity, -1);
    const end = after.from[activity + 1] ?? 0;
    for (let row = after.from[activity] ?? 0; row < end; row += 1) {
      const next = after.of[row] ?? 0;
      waitsFor[next] = (waitsFor[next] ?? 0) - 1;
    }
  };

  return (order, starts) => {
    free.set(capacity);
    for (let each = 0; each < count; each += 1)
      waitsFor[each] = (before.from[each + 1] ?? 0) - (before.from[each] ?? 0);
    let waiting = [...order];
    let running: number[] = [];
    let now = 0;
    while (waiting.length + running.length > 0) {
      for (let began = true; began;) {
        began = false;
        const still: number[] = [];
        for (const activity of waiting) {
          if (waitsFor[activity] !== 0 || !fits(activity)) {
            still.push(activity);
            continue;
          }
          starts[activity] = now;
          take(activity, 1);
          ends[activity] = now + (duration[activity] ?? 0);
          if (ends[activity] !== now) running.push(activity);
          else {
            // What lasts no time frees those behind it at once.
            finish(activity);
            began = true;
          }
        }
        waiting = still;
      }
      if (running.length === 0) break;
      now = Infinity;
      for (const activity of running) now = Math.min(now, ends[activity] ?? Infinity);
      const on: number[] = [];
      for (const activity of running)
        if (ends[activity] === now) finish(activity);
        else on.push(activity);
      running = on;
    }
    return now;
  };
}
