// One note, with what it moved, what is claimed because of it, and what is attached to it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { noteClaims } from '../yard/note-claims.ts';
import { attachmentShape } from './attachment-shape.ts';
import { byCode, found } from './by-code.ts';
import { claimShape, noteId, noteShape, readNote, shownNote } from './note-shapes.ts';
import { query } from './procedure.ts';
import { movementRow } from './yard-movements.ts';

export const noteRead = query({
  name: 'note.read',
  input: z.strictObject({ note: noteId }),
  output: z.strictObject({
    note: noteShape,
    movements: z.array(movementRow),
    claims: z.array(claimShape),
    attachments: z.array(attachmentShape),
  }),
  run: async (book, { note: id }) => {
    const read = await readNote(book, id);
    if (!read.ok) return read;
    const [movements, components, attachments] = await Promise.all([
      book.movements({ paper: id, limit: 1000 }),
      book.components(),
      book.attachments(id),
    ]);
    const component = byCode(components);
    return answer({
      note: shownNote(read.value),
      movements: movements.map((row) => ({ ...row, name: found(component, row.component).name })),
      claims: [...noteClaims(read.value)],
      attachments: [...attachments],
    });
  },
});
