// Leaves a shortfall as it is, with the reason, or puts its pieces on the hire list. It stays shown either way, and comes
// back where it grows.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { shownShortfalls } from './shown-plan.ts';

export const shortfallDecide = command({
  name: 'shortfall.decide',
  input: z.strictObject({
    commandId,
    job: code,
    component: code,
    from: instant,
    decision: z.enum(['ignored', 'hire-list']),
    reason: z.string().trim().max(200),
    now: instant.optional(),
  }),
  output: z.strictObject({ id: z.string() }),
  run: async (book, { job, component, from, decision, reason, now }, { at, who }) => {
    if (decision === 'ignored' && reason === '')
      return refuse('reason-missing', 'A shortfall is left as it is only with a reason.', {
        field: 'reason',
        hint: 'Maybe who said so, or what makes up for the pieces.',
      });
    const facts = await readJobFacts(book, job, now);
    if (!facts.ok) return facts;
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const shortfall = shownShortfalls(plan.value).find((each) => each.id === `${component}@${from}`);
    if (shortfall === undefined)
      return refuse('no-such-shortfall', `Nothing of ${component} becomes short at ${from}.`, {
        field: 'from',
        hint: 'Maybe the plan has changed since.',
      });
    if (decision === 'hire-list' && !shortfall.canBeHired)
      return refuse('cannot-be-hired', `${component} cannot be hired: the catalogue has no rate for it.`, {
        field: 'decision',
        hint: 'Maybe another way out helps, or the rate is still to be entered.',
      });
    const { id, to, quantity } = shortfall;
    await book.putJobEntry(
      { job, kind: 'shortfall-decision', id },
      { component, from, to, quantity, decision, reason, who, at },
    );
    return answer({ id });
  },
});
