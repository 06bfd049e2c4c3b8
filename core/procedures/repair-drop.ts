// Gives a repair up: nothing is booked, its pieces stay to repair where they are.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { paperId } from '../yard/paper-shapes.ts';
import { command } from './procedure.ts';
import { openRepair } from './repair-facts.ts';
import { commandId } from './shapes.ts';

export const repairDrop = command({
  name: 'repair.drop',
  input: z.strictObject({ commandId, repair: paperId, version: z.int() }),
  output: z.strictObject({ dropped: z.string() }),
  run: async (book, input) => {
    const repair = await openRepair(book, input.repair, input.version);
    if (!repair.ok) return repair;
    await book.putRepair({ ...repair.value, state: 'dropped', version: repair.value.version + 1 });
    return answer({ dropped: repair.value.id });
  },
});
