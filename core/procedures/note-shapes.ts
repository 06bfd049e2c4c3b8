// Notes as doors speak of them.
import { z } from 'zod';
import type { BookReader } from '../book/book.ts';
import { type Answer, answer, refuse } from '../answer.ts';
import { noteClaims } from '../yard/note-claims.ts';
import { noteStart } from '../yard/note-movements.ts';
import { noteKinds, noteStates, noteText, type YardNote } from '../yard/note.ts';
import { code, instant } from './shapes.ts';

export const noteId = z.string().min(8).max(64);

export const noteShape = noteText.extend({
  id: noteId,
  kind: z.enum(noteKinds),
  number: z.string().trim().min(1).max(60),
  state: z.enum(noteStates),
  expectedAt: instant.nullable(),
  countedThere: z.array(z.int().min(0).nullable()).nullable(),
  version: z.int().min(0),
});

export const claimShape = z.strictObject({
  note: noteId,
  number: z.string(),
  component: code,
  owner: code,
  where: z.enum(['arrival', 'depot']),
  theirs: z.int(),
  ours: z.int(),
  disputed: z.int(),
});

export function shownNote(note: YardNote) {
  return {
    ...note,
    lines: note.lines.map((line) => ({ ...line })),
    countedThere: note.countedThere === null ? null : [...note.countedThere],
  };
}

export async function readNote(book: BookReader, id: string): Promise<Answer<YardNote>> {
  const [note] = await book.notes({ id });
  if (note !== undefined) return answer(note);
  return refuse('unknown-note', `There is no note ${id} in this book.`, { field: 'note' });
}

/** Null where the note is still at the version that somebody looked at. */
export function overtaken(
  note: Pick<YardNote, 'kind' | 'number'>,
  inBook: number,
  seen: number,
  field: string,
): Answer<never> | null {
  if (inBook === seen) return null;
  return refuse(
    'changed-meanwhile',
    `${noteStart(note)} is at version ${inBook}, and you looked at version ${seen}.`,
    { field, hint: 'Maybe somebody else wrote on it: look at it again.' },
  );
}

export async function allClaims(book: BookReader) {
  return (await book.notes({ state: 'booked' })).flatMap(noteClaims);
}
