// Looks the book over: file integrity, foreign keys, and whether the ledger balances.
import { z } from 'zod';
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
  run: () => Promise.reject(new Error('being built')),
});
