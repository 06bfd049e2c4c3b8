// Writes a draft, new or edited. Of two people who edit one, the second is told and loses nothing of what was typed.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { noteName, noteStart } from '../yard/note-movements.ts';
import type { YardNote } from '../yard/note.ts';
import { noteShape, overtaken } from './note-shapes.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const noteSave = command({
  name: 'note.save',
  /** `version` is that of the note which was edited; 0 for a new one. */
  input: z.strictObject({ commandId, note: noteShape.omit({ state: true, countedThere: true }) }),
  output: z.strictObject({ version: z.int() }),
  run: async (book, { note: written }) => {
    const note: YardNote = { ...written, state: 'draft', countedThere: null };
    const refusal = (await checkDraft(book, note)) ?? (await checkCodes(book, note));
    if (refusal !== null) return refusal;
    const version = note.version + 1;
    await book.putNote({ ...note, version });
    return answer({ version });
  },
});

async function checkDraft(book: BookReader, note: YardNote): Promise<Answer<never> | null> {
  const notes = await book.notes();
  const before = notes.find(({ id }) => id === note.id);
  if (before !== undefined && before.state !== 'draft')
    return refuse(`note-${before.state}`, `${noteStart(before)} is ${before.state} and cannot be edited.`, {
      field: 'note',
      hint: 'Maybe reverse it and write it anew.',
    });
  const changed = overtaken(note, before?.version ?? 0, note.version, 'note.version');
  if (changed !== null) return changed;
  const twin = notes.find(
    ({ id, kind, number }) => id !== note.id && kind === note.kind && number === note.number,
  );
  return twin === undefined
    ? null
    : refuse('number-used', `There is a ${noteName(twin)} already, ${twin.state}.`, { field: 'note.number' });
}

async function checkCodes(book: BookReader, note: YardNote): Promise<Answer<never> | null> {
  const [components, owners, locations] = await Promise.all([
    book.components(),
    book.owners(),
    book.locations(),
  ]);
  const places = new Set(locations.map(({ code }) => code));
  const known = {
    component: new Set(components.map(({ code }) => code)),
    owner: new Set(owners.map(({ code }) => code)),
  };
  for (const end of ['from', 'to'] as const)
    if (!places.has(note[end])) return unknown('location', note[end], `note.${end}`);
  for (const [index, line] of note.lines.entries()) {
    const field = `note.lines.${index}`;
    if (!known.component.has(line.component))
      return unknown('component', line.component, `${field}.component`);
    if (!known.owner.has(line.owner)) return unknown('owner', line.owner, `${field}.owner`);
    if (line.container !== null && !places.has(line.container))
      return unknown('location', line.container, `${field}.container`);
  }
  return null;
}

function unknown(what: string, code: string, field: string): Answer<never> {
  return refuse(`unknown-${what}`, `The book has no ${what} ${code}.`, {
    field,
    hint: 'Maybe it is spelt in another way, or has to be entered first.',
  });
}
