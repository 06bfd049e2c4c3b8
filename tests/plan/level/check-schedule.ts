// Whether a schedule keeps what was asked, counted unit of time by unit of time: shares no code with what made it.
import type { LevelAnswer, LevelInput } from '../../../core/plan/level/contract.ts';

export function problemsOf(input: LevelInput, { starts, makespan }: LevelAnswer): string[] {
  const problems: string[] = [];
  const ids = input.activities.map(({ id }) => id);
  if (Object.keys(starts).sort().join() !== [...ids].sort().join()) problems.push('not the same activities');
  const startOf = (id: string): number => starts[id] ?? Number.NaN;
  let last = 0;
  const used = new Map<string, number>();
  for (const { id, duration, demand, successors } of input.activities) {
    const start = startOf(id);
    if (!Number.isInteger(start) || start < 0) problems.push(`${id} begins at ${start}`);
    last = Math.max(last, start + duration);
    for (const next of successors)
      if (!(startOf(next) >= start + duration)) problems.push(`${next} begins before ${id} has ended`);
    for (let unit = start; unit < start + duration; unit += 1)
      for (const [resource, quantity] of Object.entries(demand)) {
        const key = `${resource} at ${unit}`;
        used.set(key, (used.get(key) ?? 0) + quantity);
      }
  }
  for (const [key, quantity] of used) {
    const resource = key.slice(0, key.lastIndexOf(' at '));
    if (quantity > (input.capacity[resource] ?? 0)) problems.push(`${quantity} of ${key}`);
  }
  if (last !== makespan) problems.push(`ends at ${last}, not at ${makespan}`);
  return problems;
}
