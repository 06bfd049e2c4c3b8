// Drops a kept what-if. Nothing of the plan changes by it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { keptWhatif, unknownWhatif } from './kept-whatif.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const whatifDrop = command({
  name: 'whatif.drop',
  input: z.strictObject({ commandId, job: code, id: z.string() }),
  /** As it was, so that it can be kept again. */
  output: z.strictObject({ dropped: keptWhatif }),
  run: async (book, { job, id }) => {
    const kept = (await book.jobEntries(job, 'kept-what-if')).find((each) => each.id === id);
    if (kept === undefined) return unknownWhatif(id, job, 'id');
    await book.removeJobEntry({ job, kind: 'kept-what-if', id });
    return answer({ dropped: { id, ...kept.entry } });
  },
});
