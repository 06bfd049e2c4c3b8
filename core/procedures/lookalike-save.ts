// Enters two components as look-alikes, with what tells them apart in words.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownComponent } from './unknown.ts';

export const lookalikeSave = command({
  name: 'lookalike.save',
  input: z.strictObject({ commandId, component: code, other: code, tellApart: z.string().trim().max(200) }),
  output: z.strictObject({ added: z.boolean() }),
  run: async (book, { component, other, tellApart }) => {
    if (component === other)
      return refuse('same-component', `${component} is no look-alike of itself.`, {
        field: 'other',
        hint: 'Maybe pieces of two owners are meant: those are told apart by their mark.',
      });
    const known = new Set((await book.components()).map((each) => each.code));
    for (const each of [component, other]) if (!known.has(each)) return unknownComponent(each);
    const pairs = await book.lookAlikes();
    const isThere = pairs.some(
      (pair) =>
        [pair.component, pair.other].includes(component) && [pair.component, pair.other].includes(other),
    );
    await book.putLookAlike({ component, other, tellApart });
    return answer({ added: !isThere });
  },
});
