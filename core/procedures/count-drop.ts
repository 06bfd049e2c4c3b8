// Gives a count up: nothing of it is booked, and what was entered stays readable.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { countName } from '../yard/stock-count.ts';
import { countId } from './count-shapes.ts';
import { findCount } from './find-count.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const countDrop = command({
  name: 'count.drop',
  input: z.strictObject({ commandId, count: countId }),
  output: z.strictObject({ dropped: z.string() }),
  run: async (book, { count: id }) => {
    const found = await findCount(book, id);
    if (!found.ok) return found;
    const count = found.value;
    const name = countName(count);
    if (count.state !== 'open')
      return refuse(`count-${count.state}`, `Count ${name} is ${count.state} and cannot be dropped.`, {
        field: 'count',
      });
    await book.putCount({ ...count, state: 'dropped' });
    return answer({ dropped: name });
  },
});
