// The last few plans by their input. Several screens ask for the plan of one moment at once; the same input
// is the same plan, so it is made once.
import type { Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import { planReuse } from '../plan/plan-reuse.ts';

const most = 40;
const remembered = new Map<string, Answer<PlanAnswer>>();

export function planOf(input: PlanInput): Answer<PlanAnswer> {
  const key = JSON.stringify(input);
  const plan = remembered.get(key) ?? planReuse(input, () => performance.now());
  putLast(key, plan);
  return plan;
}

export function isRemembered(input: PlanInput): boolean {
  return remembered.has(JSON.stringify(input));
}

/** A plan that was made elsewhere, in a thread of its own. */
export function rememberPlan(input: PlanInput, plan: Answer<PlanAnswer>): void {
  putLast(JSON.stringify(input), plan);
}

/** The one that was not asked for longest goes first. */
function putLast(key: string, plan: Answer<PlanAnswer>): void {
  remembered.delete(key);
  remembered.set(key, plan);
  const [oldest] = remembered.keys();
  if (remembered.size > most && oldest !== undefined) remembered.delete(oldest);
}
