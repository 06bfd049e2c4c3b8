// Takes a change of the plan back that was carried out: everything it touched is as it was before.
import { z } from 'zod';
import { takeBack } from './carried-out.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const planTakeback = command({
  name: 'plan.takeback',
  input: z.strictObject({ commandId, job: code, applied: z.string() }),
  output: z.null(),
  run: (book, { job, applied }, context) => takeBack(book, job, applied, context),
});
