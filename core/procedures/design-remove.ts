// Takes a design out of the book; its saved states stay. Refused while it stands at a pour.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { pickSetup } from '../pick/setup.ts';
import { asData } from './as-data.ts';
import { command } from './procedure.ts';
import { poursOf, poursText, savedDesign } from './save-design.ts';
import { code, commandId } from './shapes.ts';
import { unknownDesign } from './unknown.ts';

export const designRemove = command({
  name: 'design.remove',
  input: z.strictObject({ commandId, design: code }),
  /** As they were, so that they can be put back. */
  output: z.strictObject({ removed: savedDesign, pick: pickSetup.nullable() }),
  run: async (book, { design: wanted }) => {
    const removed = (await book.designs()).find((each) => each.code === wanted);
    if (removed === undefined) return unknownDesign(wanted);
    const pours = await poursOf(book, wanted);
    if (pours.length > 0)
      return refuse('design-needed', `${wanted} stands at ${poursText(pours)}, so it stays.`, {
        field: 'design',
        hint: 'Maybe put another gang there first.',
      });
    const pick = await book.pickSetup(wanted);
    await book.removeDesign(wanted);
    return answer({ removed: asData(removed), pick: pick === null ? null : asData(pick) });
  },
});
