// Takes a booked note back as a whole: the opposite of every movement that was not taken back by itself already.
// Where pieces have moved on meanwhile the ledger refuses, and nothing is done.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { reversalOf } from '../yard/movement.ts';
import { noteStart } from '../yard/note-movements.ts';
import { noteId, readNote } from './note-shapes.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const noteReverse = command({
  name: 'note.reverse',
  input: z.strictObject({ commandId, note: noteId, remark: z.string().trim().min(1).max(400) }),
  output: z.strictObject({ reversed: z.int() }),
  run: async (book, { commandId: byCommand, note: id, remark }, { at, who }) => {
    const read = await readNote(book, id);
    if (!read.ok) return read;
    const note = read.value;
    if (note.state !== 'booked')
      return refuse(
        `note-${note.state}`,
        `${noteStart(note)} is ${note.state}: there is nothing to reverse.`,
      );
    const movements = await book.movements({ paper: id, limit: 1000 });
    const standing = movements.filter((each) => each.reverses === null && each.reversedBy === null);
    await book.appendMovements(
      standing.map((each, index) =>
        reversalOf(each, { id: `${byCommand}/${index + 1}`, at: each.at, who, remark }),
      ),
      at,
    );
    await book.putNote({ ...note, state: 'reversed' });
    return answer({ reversed: standing.length });
  },
});
