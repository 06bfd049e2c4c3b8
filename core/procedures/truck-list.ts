// The trucks that loads are made for.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { truckShape } from './load-shapes.ts';
import { query } from './procedure.ts';

export const truckList = query({
  name: 'truck.list',
  input: z.strictObject({}),
  output: z.strictObject({ trucks: z.array(truckShape) }),
  run: async (book) => answer({ trucks: [...(await book.trucks())] }),
});
