// A what-if that was kept, as doors show it.
import { z } from 'zod';
import { refuse } from '../answer.ts';
import { planChange } from '../plan/plan-changes.ts';
import { instant } from './shapes.ts';

export const keptWhatif = z.strictObject({
  id: z.string(),
  name: z.string(),
  madeAt: instant,
  who: z.string(),
  changes: z.array(planChange),
});

export function unknownWhatif(id: string, job: string, field: string) {
  return refuse('unknown-what-if', `Job ${job} has no kept what-if ${id}.`, {
    field,
    hint: 'Maybe somebody has dropped it.',
  });
}
