// What a door shows before anything else: which book is open and which jobs it holds.
import { z } from 'zod';
import { query } from './procedure.ts';

export const bookState = query({
  name: 'book.state',
  input: z.strictObject({}),
  output: z.strictObject({
    jobs: z.array(z.strictObject({ code: z.string(), name: z.string(), units: z.enum(['us', 'metric']) })),
    changeNumber: z.int(),
    components: z.int(),
    designs: z.int(),
    movements: z.int(),
  }),
  run: () => Promise.reject(new Error('being built')),
});
