// The search of a thread beside: better and better plans with a bound under all of them, reported as they are found.
import type { Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import { better } from '../plan/better-plan.ts';
import { planReuse } from '../plan/plan-reuse.ts';

/** Every plan reported is the best so far, with the best bound so far. */
export type Report = (plan: Answer<PlanAnswer>) => void;

const firstSliceSeconds = 1;
const longestSliceSeconds = 8;

/** Ends when its best is proven or the time is up; by what was reported last it may also be stopped from outside. */
export function improveSearch(input: PlanInput, seconds: number, nowMs: () => number, report: Report): void {
  const endMs = nowMs() + seconds * 1000;
  const first = planReuse(input, nowMs);
  report(first);
  if (!first.ok) return;
  let best = first.value;
  let slice = firstSliceSeconds;
  for (let seed = 1; !best.proven && nowMs() < endMs; seed += 1) {
    const left = (endMs - nowMs()) / 1000;
    const found = planReuse(
      { ...input, start: best.runs, seed, improveSeconds: Math.min(slice, left) },
      nowMs,
    );
    if (!found.ok) return;
    best = better(best, found.value);
    report({ ok: true, value: best });
    slice = Math.min(longestSliceSeconds, slice * 2);
  }
}
