// The pours of a job that have a date: the others are in no plan, and what follows from plans leaves them out.
import type { Pour } from '../plan/pours.ts';
import type { JobPlanning } from './job-planning.ts';

export function datedPours(
  pours: readonly Pour[],
  { pourFacts }: Pick<JobPlanning, 'pourFacts'>,
): readonly Pour[] {
  return pours.filter(({ code }) => pourFacts.get(code)?.dateOpen !== true);
}
