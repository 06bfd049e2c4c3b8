// Adds a truck or replaces one by its code. Loads made for it before stay as they were.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { truckShape } from './load-shapes.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const truckSave = command({
  name: 'truck.save',
  input: z.strictObject({ commandId, truck: truckShape }),
  output: z.strictObject({ code }),
  run: async (book, { truck }) => {
    await book.putTruck(truck);
    return answer({ code: truck.code });
  },
});
