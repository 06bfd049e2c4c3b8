// Adds a pour or replaces one of the same code, as a whole. Refused where it contradicts itself.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { checkPour } from '../plan/check-pour.ts';
import { unknownJob } from './unknown.ts';
import { command } from './procedure.ts';
import { code, commandId, pour } from './shapes.ts';
import { readWorkingJob } from './working-job.ts';

export const pourSave = command({
  name: 'pour.save',
  input: z.strictObject({ commandId, job: code, pour }),
  output: z.strictObject({ pour, added: z.boolean() }),
  run: async (book, { job: jobCode, pour: given }) => {
    const working = await readWorkingJob(book, jobCode);
    if (working === null) return unknownJob(jobCode);
    const [pours, designs, components] = await Promise.all([
      book.pours(jobCode),
      book.designs(),
      book.components(),
    ]);
    const known = {
      designs: new Set(designs.map((each) => each.code)),
      components: new Set(components.map((each) => each.code)),
    };
    const wrong = checkPour(working.job, given, pours, known);
    if (wrong !== undefined) return { ok: false, error: wrong };
    await book.putPour(jobCode, given);
    return answer({ pour: given, added: !pours.some((each) => each.code === given.code) });
  },
});
