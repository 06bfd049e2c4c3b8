// How a gang is picked, as it was entered; where nothing was, what to begin with, which the page marks so.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { nothingEntered, pickSetup } from '../pick/setup.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';
import { unknownDesign } from './unknown.ts';

export const pickRead = query({
  name: 'pick.read',
  input: z.strictObject({ design: code }),
  output: z.strictObject({ setup: pickSetup, isEntered: z.boolean() }),
  run: async (book, { design }) => {
    const [designs, setup, cranes] = await Promise.all([
      book.designs(),
      book.pickSetup(design),
      book.cranes(),
    ]);
    if (!designs.some((each) => each.code === design)) return unknownDesign(design);
    const [only] = cranes.length === 1 ? cranes : [];
    return answer({
      setup: setup ?? { ...nothingEntered, crane: only?.code ?? null },
      isEntered: setup !== null,
    });
  },
});
