// What the pieces cost that are planned to come for a job: hire of stretches, trucks of transfers. No plan chooses
// among them, so that they stand beside its cost.
import type { JobFacts } from './job-facts.ts';

export function plannedCentsOf({ planning }: Pick<JobFacts, 'planning'>): number {
  return planning.plannedStock.reduce((sum, { costCents }) => sum + costCents, 0);
}
