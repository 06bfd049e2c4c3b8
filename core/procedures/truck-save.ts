// Adds a truck or replaces one by its code. Loads made for it before stay as they were.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { truckShape } from './load-shapes.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const truckSave = command({
  name: 'truck.save',
  input: z.strictObject({
    commandId,
    truck: truckShape,
    /** A truck of this code must not be there yet. */
    isNew: z.exactOptional(z.boolean()),
  }),
  output: z.strictObject({ code }),
  run: async (book, { truck, isNew }) => {
    const there = (await book.trucks()).find(({ code: each }) => each === truck.code);
    if (isNew === true && there !== undefined)
      return refuse('truck-exists', `There is a truck ${there.code} already: ${there.name}.`, {
        field: 'code',
        hint: 'Maybe change that one, or give this one another code.',
      });
    await book.putTruck(truck);
    return answer({ code: truck.code });
  },
});
