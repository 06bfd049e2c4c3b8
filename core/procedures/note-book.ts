// Books a draft: all its lines move at once, as they were counted, at the moment of its truck or now, and the note is
// never edited again.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { noteClaims } from '../yard/note-claims.ts';
import { noteMoment, noteMovements } from '../yard/note-movements.ts';
import { claimShape, noteId, overtaken, readNote } from './note-shapes.ts';
import { command } from './procedure.ts';
import { commandId, instant } from './shapes.ts';

export const noteBook = command({
  name: 'note.book',
  /** `version`: of the draft that whoever books it looked at; another one is refused. */
  input: z.strictObject({
    commandId,
    note: noteId,
    version: z.int().min(1).optional(),
    at: instant.optional(),
  }),
  output: z.strictObject({ booked: z.int(), claims: z.array(claimShape) }),
  run: async (book, { note: id, version, at, commandId: byCommand }, context) => {
    const read = await readNote(book, id);
    if (!read.ok) return read;
    const note = read.value;
    const changed =
      note.state !== 'draft' || version === undefined
        ? null
        : overtaken(note, note.version, version, 'version');
    if (changed !== null) return changed;
    const when = at ?? noteMoment(note) ?? context.at;
    const idOf = (line: number): string => `${byCommand}/${line + 1}`;
    const movements = noteMovements(note, { at: when, who: context.who, idOf });
    if (!movements.ok) return movements;
    await book.appendMovements(movements.value, context.at);
    const booked = { ...note, state: 'booked' as const, version: note.version + 1 };
    await book.putNote(booked);
    return answer({ booked: movements.value.length, claims: [...noteClaims(booked)] });
  },
});
