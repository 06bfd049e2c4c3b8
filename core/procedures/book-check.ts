// Looks the book over: file integrity, foreign keys, and whether the ledger balances.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { query } from './procedure.ts';

export const bookCheck = query({
  name: 'book.check',
  input: z.strictObject({}),
  output: z.strictObject({
    problems: z.array(
      z.strictObject({ check: z.enum(['integrity', 'foreign-keys', 'ledger']), message: z.string() }),
    ),
    movements: z.int(),
    components: z.int(),
  }),
  run: async (book) => {
    const problems = await book.check();
    // What cannot be read is among the problems, and counts as none.
    const components = await book.components().catch(() => []);
    const newest = await book.movements({ limit: 1 }).catch(() => []);
    return answer({
      problems: [...problems],
      movements: newest[0]?.number ?? 0,
      components: components.length,
    });
  },
});
