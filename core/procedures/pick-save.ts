// Keeps how a gang is picked; its pick sheet prints by it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { pickSetup } from '../pick/setup.ts';
import { unknownCrane } from './pick-check.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';
import { unknownDesign } from './unknown.ts';

export const pickSave = command({
  name: 'pick.save',
  input: z.strictObject({ commandId, design: code, setup: pickSetup }),
  output: z.strictObject({ design: code }),
  run: async (book, { design, setup }) => {
    const [designs, cranes] = await Promise.all([book.designs(), book.cranes()]);
    if (!designs.some((each) => each.code === design)) return unknownDesign(design);
    if (setup.crane !== null && !cranes.some((each) => each.code === setup.crane))
      return unknownCrane(setup.crane);
    await book.putPickSetup(design, setup);
    return answer({ design });
  },
});
