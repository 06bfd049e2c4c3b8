// Fixes what is to happen with a gang: from now on every plan of the job obeys it. Refused where no plan could.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { fixedChoice } from '../plan/choices.ts';
import { splitFixedOf } from '../plan/plan-reuse.ts';
import { readJobFacts } from './job-facts.ts';
import { turnsOfJob } from './job-plan.ts';
import { jobPlanInput } from './job-plan-input.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const fixedSet = command({
  name: 'fixed.set',
  input: z.strictObject({ commandId, job: code, choice: fixedChoice }),
  output: z.strictObject({ job: code, id: z.string() }),
  run: async (book, { commandId: id, job, choice }) => {
    const facts = await readJobFacts(book, job);
    if (!facts.ok) return facts;
    const entries = await book.jobEntries(job, 'fixed-choice');
    const same = entries.find(({ entry }) => JSON.stringify(entry) === JSON.stringify(choice));
    if (same !== undefined)
      return refuse('fixed-already', 'This is fixed already.', {
        field: 'choice',
        hint: 'Maybe another turn is meant.',
      });
    const turnsOf = turnsOfJob(facts.value);
    const { input } = jobPlanInput(facts.value, turnsOf);
    // After those that are obeyed now: where two contradict each other the new one is at fault.
    const split = splitFixedOf({ ...input, fixed: [...(input.fixed ?? []), choice] });
    if (!split.ok) return split;
    const [impossible] = split.value.impossible;
    if (impossible !== undefined)
      return refuse('fixed-impossible', impossible.message, {
        field: 'choice',
        hint:
          impossible.other === null
            ? 'Maybe another turn is meant, or a pour is to be moved first.'
            : 'Maybe the other one is to be dropped first.',
      });
    await book.putJobEntry({ job, kind: 'fixed-choice', id }, choice);
    return answer({ job, id });
  },
});
