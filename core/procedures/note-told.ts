// What the other end counted, told after the booking: once, beside our count, and a claim where the two differ.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { noteClaims } from '../yard/note-claims.ts';
import { noteName, noteStart } from '../yard/note-movements.ts';
import { claimShape, noteId, readNote } from './note-shapes.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const noteTold = command({
  name: 'note.told',
  /** In the order of the lines; null for a line of which nothing was said. */
  input: z.strictObject({
    commandId,
    note: noteId,
    countedThere: z.array(z.int().min(0).max(1_000_000_000).nullable()).max(500),
  }),
  output: z.strictObject({ claims: z.array(claimShape) }),
  run: async (book, { note: id, countedThere }) => {
    const read = await readNote(book, id);
    if (!read.ok) return read;
    const note = read.value;
    if (note.state !== 'booked')
      return refuse(`note-${note.state}`, `${noteStart(note)} is ${note.state}: it has to be booked first.`);
    if (note.countedThere !== null)
      return refuse('told-already', `What the other end counted on ${noteName(note)} is entered already.`, {
        hint: 'Maybe a signed figure is to be added instead: it stands beside this one.',
      });
    if (countedThere.length !== note.lines.length)
      return refuse(
        'lines-differ',
        `${noteStart(note)} has ${note.lines.length} lines, and ${countedThere.length} figures were given.`,
        { field: 'countedThere' },
      );
    const told = { ...note, countedThere };
    await book.putNote(told);
    return answer({ claims: [...noteClaims(told)] });
  },
});
