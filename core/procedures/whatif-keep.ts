// Keeps changes under a name, without carrying them out: to be looked at again and held against another plan.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { planChange } from '../plan/plan-changes.ts';
import { changedSource } from './changed-source.ts';
import { readJobSource } from './job-source.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const whatifKeep = command({
  name: 'whatif.keep',
  input: z.strictObject({
    commandId,
    job: code,
    name: z.string().trim().min(1).max(80),
    changes: z.array(planChange).min(1).max(60),
  }),
  output: z.strictObject({ id: z.string() }),
  run: async (book, { commandId: id, job, name, changes }, { at, who }) => {
    const source = await readJobSource(book, job);
    if (!source.ok) return source;
    const changed = changedSource(source.value, changes);
    if (!changed.ok) return changed;
    const kept = await book.jobEntries(job, 'kept-what-if');
    if (kept.some(({ entry }) => entry.name.toLowerCase() === name.toLowerCase()))
      return refuse('name-taken', `There is a what-if called "${name}" already.`, {
        field: 'name',
        hint: 'Maybe add a word, or drop the other one first.',
      });
    await book.putJobEntry({ job, kind: 'kept-what-if', id }, { name, madeAt: at, who, changes });
    return answer({ id });
  },
});
