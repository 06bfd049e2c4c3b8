// Takes two components out of the look-alikes.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

export const lookalikeRemove = command({
  name: 'lookalike.remove',
  input: z.strictObject({ commandId, component: code, other: code }),
  output: z.strictObject({ tellApart: z.string() }),
  run: async (book, { component, other }) => {
    const pair = (await book.lookAlikes()).find(
      (each) =>
        [each.component, each.other].includes(component) && [each.component, each.other].includes(other),
    );
    if (pair === undefined || component === other)
      return refuse('no-look-alike', `${component} and ${other} are not entered as look-alikes.`, {
        field: 'other',
      });
    await book.removeLookAlike(component, other);
    return answer({ tellApart: pair.tellApart });
  },
});
