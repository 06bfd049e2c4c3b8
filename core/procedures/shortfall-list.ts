// Every shortfall of a job by the plan of this moment, the earliest first.
import { z } from 'zod';
import { query } from './procedure.ts';
import { code, instant, shortfall } from './shapes.ts';

export const shortfallList = query({
  name: 'shortfall.list',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    shortfalls: z.array(shortfall),
    /** Components with the fewest pieces to spare and no shortfall: the next to break. */
    tightest: z.array(
      z.strictObject({ component: code, name: z.string(), at: instant, held: z.int(), stock: z.int() }),
    ),
    hireCents: z.int(),
    currency: z.string(),
  }),
  run: () => Promise.reject(new Error('being built')),
});
