// What a door shows before anything else: which book is open and which jobs it holds.
import { z } from 'zod';
import { answer } from '../answer.ts';
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
  run: async (book) => {
    const [jobs, components, designs, newest] = await Promise.all([
      book.jobs(),
      book.components(),
      book.designs(),
      book.movements({ limit: 1 }),
    ]);
    return answer({
      jobs: jobs.map(({ code, name, units }) => ({ code, name, units })),
      changeNumber: await book.changeNumber(),
      components: components.length,
      designs: designs.length,
      movements: newest[0]?.number ?? 0,
    });
  },
});
