// The cranes with their charts.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { crane } from '../pick/setup.ts';
import { query } from './procedure.ts';

export const craneList = query({
  name: 'crane.list',
  input: z.strictObject({}),
  output: z.strictObject({ cranes: z.array(crane) }),
  run: async (book) => answer({ cranes: [...(await book.cranes())] }),
});
