// The days of a job's plan on which crew, crane or pads are asked for more than there is.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { jobWork } from './job-work.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { overloadShape, shownOverload } from './work-shapes.ts';

export const overloadList = query({
  name: 'overload.list',
  input: z.strictObject({ job: code, now: instant.optional() }),
  output: z.strictObject({
    changeNumber: z.int(),
    overloads: z.array(shownOverload),
    /** What is not reckoned because nothing is set for it. */
    notReckoned: z.array(z.enum(['crane', 'pads'])),
  }),
  run: async (book, { job, now }) => {
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const { settings } = facts.value.planning;
    return answer({
      changeNumber: facts.value.changeNumber,
      overloads: jobWork(plan.value).overloads.map(overloadShape),
      notReckoned: [
        ...(settings.cranes.length === 0 ? ['crane' as const] : []),
        ...(settings.pads.length === 0 ? ['pads' as const] : []),
      ],
    });
  },
});
