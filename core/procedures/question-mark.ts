// A short mark of what a planner is asked, so that what was proved of one question is not taken for another.
import { createHash } from 'node:crypto';
import type { PlanInput } from '../plan/contract.ts';
import { questionKey } from '../plan/proved-bound.ts';

export function questionMark(input: PlanInput): string {
  return createHash('sha256').update(questionKey(input)).digest('base64url');
}
