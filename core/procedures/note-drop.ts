// Drops a draft that comes to nothing. It stays in the book, and its number stays used.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { noteStart } from '../yard/note-movements.ts';
import { noteId, readNote } from './note-shapes.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const noteDrop = command({
  name: 'note.drop',
  input: z.strictObject({ commandId, note: noteId }),
  output: z.strictObject({ number: z.string() }),
  run: async (book, { note: id }) => {
    const read = await readNote(book, id);
    if (!read.ok) return read;
    const note = read.value;
    if (note.state !== 'draft')
      return refuse(`note-${note.state}`, `${noteStart(note)} is ${note.state} and cannot be dropped.`, {
        hint: 'Maybe reverse it.',
      });
    await book.putNote({ ...note, state: 'dropped', version: note.version + 1 });
    return answer({ number: note.number });
  },
});
