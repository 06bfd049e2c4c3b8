// Takes back what was told: the crew knows that it need not be done, and the plan may do otherwise at no cost.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { instruction } from '../plan/choices.ts';
import { toldNow } from '../plan/told-now.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';
import { textOf } from './told-facts.ts';
import { unknownJob } from './unknown.ts';

export const toldRelease = command({
  name: 'told.release',
  input: z.strictObject({
    commandId,
    job: code,
    instructions: z.array(instruction).min(1).max(2000),
    now: instant.optional(),
  }),
  output: z.strictObject({ job: code, released: z.int() }),
  run: async (book, { commandId: id, job, instructions, now }, { at, who }) => {
    if ((await book.job(job)) === null) return unknownJob(job);
    const tellings = await book.jobEntries(job, 'telling');
    const standing = new Set(toldNow(tellings.map(({ entry }) => entry)).map(textOf));
    for (const [index, each] of instructions.entries()) {
      if (standing.has(textOf(each))) continue;
      const about = each.kind === 'follow' ? `from ${each.from} to ${each.to}` : `of ${each.turn}`;
      return refuse('not-told', `The instruction ${about} does not stand told.`, {
        field: `instructions[${index}]`,
        hint: 'Maybe it was released already, or something else was told since.',
      });
    }
    const moment = now ?? at;
    const entry = { at: moment, who, until: moment, instructions: [], released: instructions };
    await book.putJobEntry({ job, kind: 'telling', id }, entry);
    return answer({ job, released: instructions.length });
  },
});
