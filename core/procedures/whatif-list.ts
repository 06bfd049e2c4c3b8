// The what-ifs of a job that were kept, the newest first, and of each whether it can still be asked as it was.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { changedSource } from './changed-source.ts';
import { readJobSource } from './job-source.ts';
import { keptWhatif } from './kept-whatif.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';

export const whatifList = query({
  name: 'whatif.list',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    kept: z.array(
      keptWhatif.extend({
        /** What stands in the way since the book has changed; null: nothing. */
        whyNot: z.string().nullable(),
      }),
    ),
  }),
  run: async (book, { job }) => {
    const source = await readJobSource(book, job);
    if (!source.ok) return source;
    const kept = await book.jobEntries(job, 'kept-what-if');
    return answer({
      kept: [...kept].reverse().map(({ id, entry }) => {
        const changed = changedSource(source.value, entry.changes);
        return { id, ...entry, whyNot: changed.ok ? null : changed.error.message };
      }),
    });
  },
});
