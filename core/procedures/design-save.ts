// Keeps a design: a new one, or a changed one as its next state. Refused where revision or hand contradict
// what the book holds (save-design.ts).
import { z } from 'zod';
import { command } from './procedure.ts';
import { likenessShape } from './design-likeness.ts';
import { saveDesign, savedDesign } from './save-design.ts';
import { commandId } from './shapes.ts';

export const designSave = command({
  name: 'design.save',
  input: z.strictObject({ commandId, design: savedDesign, isNew: z.boolean() }),
  output: z.strictObject({
    /** Of the state in force; the one before where nothing differs. */
    number: z.int(),
    sameAs: likenessShape.sameAs,
  }),
  run: (book, { design, isNew }) => saveDesign(book, design, isNew),
});
