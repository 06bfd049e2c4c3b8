// The notes of the yard: drafts that are due, and what was booked, each with its pieces, weight and claims.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { momentMs } from '../yard/moment.ts';
import { noteClaims } from '../yard/note-claims.ts';
import { noteKinds, noteStates, type YardNote } from '../yard/note.ts';
import { byCode, found } from './by-code.ts';
import { noteId } from './note-shapes.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { yardNow } from './yard-now.ts';

const row = z.strictObject({
  id: noteId,
  kind: z.enum(noteKinds),
  number: z.string(),
  state: z.enum(noteStates),
  from: code,
  to: code,
  expectedAt: instant.nullable(),
  /** A draft whose day has passed: no plan counts on it until it has a new one. */
  late: z.boolean(),
  lines: z.int(),
  sent: z.int(),
  counted: z.int(),
  weightGrams: z.int(),
  claims: z.int(),
  attachments: z.int(),
});

export const noteList = query({
  name: 'note.list',
  input: z.strictObject({
    state: z.enum(noteStates).optional(),
    kind: z.enum(noteKinds).optional(),
    now: instant.optional(),
  }),
  output: z.strictObject({
    now: instant,
    notes: z.array(row),
    /** A number for the next note of each kind, free in this book. */
    nextNumbers: z.record(z.string(), z.string()),
  }),
  run: async (book, asked) => {
    const [notes, components, attachments, now] = await Promise.all([
      book.notes(asked.state === undefined ? {} : { state: asked.state }),
      book.components(),
      book.attachments(),
      yardNow(book, asked.now),
    ]);
    const component = byCode(components);
    const shown = notes.filter(({ kind }) => asked.kind === undefined || kind === asked.kind);
    const nowMs = momentMs(now) ?? 0;
    const rows = shown.map((note) => ({
      id: note.id,
      kind: note.kind,
      number: note.number,
      state: note.state,
      from: note.from,
      to: note.to,
      expectedAt: note.expectedAt,
      late: isLate(note, nowMs),
      lines: note.lines.length,
      sent: sum(note, (line) => line.sent),
      counted: sum(note, (line) => line.counted ?? 0),
      weightGrams: sum(
        note,
        (line) => (line.counted ?? line.sent) * found(component, line.component).weightGrams,
      ),
      claims: noteClaims(note).length,
      attachments: attachments.filter(({ paper }) => paper === note.id).length,
    }));
    return answer({ now, notes: rows, nextNumbers: nextNumbers(await book.notes()) });
  },
});

function isLate({ state, expectedAt }: YardNote, nowMs: number): boolean {
  return state === 'draft' && expectedAt !== null && (momentMs(expectedAt) ?? nowMs) < nowMs;
}

function sum(note: YardNote, of: (line: YardNote['lines'][number]) => number): number {
  return note.lines.reduce((total, line) => total + of(line), 0);
}

const letters: Readonly<Record<YardNote['kind'], string>> = {
  delivery: 'D',
  return: 'R',
  transfer: 'T',
  issue: 'I',
  'hire-on': 'H',
  'hire-off': 'O',
};

/** The letter of the kind and one more than the greatest number written so. */
function nextNumbers(notes: readonly YardNote[]): Record<string, string> {
  return Object.fromEntries(
    noteKinds.map((kind) => {
      const own = new RegExp(`^${letters[kind]}-(\\d{1,9})$`, 'u');
      const numbers = notes
        .filter((note) => note.kind === kind)
        .map(({ number }) => Number(own.exec(number)?.[1] ?? 0));
      return [kind, `${letters[kind]}-${Math.max(100, ...numbers) + 1}`];
    }),
  );
}
