// Every gang that was built, as its last step left it, and the tag that a new one of each design would bear.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { gangRow, nextTags, readGangFacts } from './gang-facts.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';

export const gangList = query({
  name: 'gang.list',
  input: z.strictObject({}),
  output: z.strictObject({ gangs: z.array(gangRow), nextTags: z.record(code, z.string()) }),
  run: async (book) => {
    const [facts, designs, locations] = await Promise.all([
      readGangFacts(book),
      book.designs(),
      book.locations(),
    ]);
    return answer({ gangs: facts.gangs.map(facts.row), nextTags: nextTags(designs, locations) });
  },
});
