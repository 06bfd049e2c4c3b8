// Carries out changes that were asked about: all of them or none, to be taken back in one step.
import { z } from 'zod';
import { planChange } from '../plan/plan-changes.ts';
import { carryOut } from './carried-out.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const planApply = command({
  name: 'plan.apply',
  input: z.strictObject({
    commandId,
    job: code,
    changes: z.array(planChange).min(1).max(60),
    /** What is done, in words, for the list of changes and for undoing. */
    about: z.string().trim().min(1).max(300),
  }),
  /** By which it can be taken back. */
  output: z.strictObject({ applied: z.string() }),
  run: (book, { commandId: id, job, changes, about }, context) =>
    carryOut(book, { id, job, changes, about }, context),
});
