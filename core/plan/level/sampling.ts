// Random orders to begin a search with: whatever leaves the most behind it tends to come first. The chance of each rises with how
// much worse its being put off would be (regret-based biased random sampling: Drexl, Management Science 37 (1991) 1590-1602).
import type { Network } from './network.ts';

/** Times from the end of each to the end of all, by the durations alone. */
export function tailsOf({ order, after, duration }: Network): Float64Array {
  const tails = new Float64Array(order.length);
  for (let position = order.length - 1; position >= 0; position -= 1) {
    const activity = order[position] ?? 0;
    let longest = 0;
    const end = after.from[activity + 1] ?? 0;
    for (let row = after.from[activity] ?? 0; row < end; row += 1) {
      const next = after.of[row] ?? 0;
      longest = Math.max(longest, (duration[next] ?? 0) + (tails[next] ?? 0));
    }
    tails[activity] = longest;
  }
  return tails;
}

export function sampledOrder(
  { count, before, after }: Network,
  urgency: Float64Array,
  random: () => number,
  order: Int32Array,
): void {
  const waitsFor = new Int32Array(count);
  const open: number[] = [];
  for (let each = 0; each < count; each += 1) {
    waitsFor[each] = (before.from[each + 1] ?? 0) - (before.from[each] ?? 0);
    if (waitsFor[each] === 0) open.push(each);
  }
  for (let position = 0; position < count; position += 1) {
    let least = Infinity;
    for (const each of open) least = Math.min(least, urgency[each] ?? 0);
    let sum = 0;
    for (const each of open) sum += (urgency[each] ?? 0) - least + 1;
    let drawn = random() * sum;
    let place = 0;
    while (place < open.length - 1) {
      drawn -= (urgency[open[place] ?? 0] ?? 0) - least + 1;
      if (drawn < 0) break;
      place += 1;
    }
    const activity = open[place] ?? 0;
    open[place] = open.at(-1) ?? 0;
    open.pop();
    order[position] = activity;
    const end = after.from[activity + 1] ?? 0;
    for (let row = after.from[activity] ?? 0; row < end; row += 1) {
      const next = after.of[row] ?? 0;
      waitsFor[next] = (waitsFor[next] ?? 0) - 1;
      if (waitsFor[next] === 0) open.push(next);
    }
  }
}
