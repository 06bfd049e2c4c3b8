// Notes against the book: drafts stand as due, booked ones move their pieces at their moment, in order of time.
import { createHash } from 'node:crypto';
import type { BookReader } from '../book/book.ts';
import { Refused } from '../book/refused.ts';
import { momentMs } from '../yard/moment.ts';
import { noteMovements } from '../yard/note-movements.ts';
import { timeZoneOf } from './import-stock.ts';
import { readNotes } from './notes-csv.ts';
import type { ImportContext, ImportInput, Prepared } from './prepared.ts';

export async function importNotes(
  book: BookReader,
  { text, job, columns = {}, commandId }: ImportInput,
  { at, who }: ImportContext,
): Promise<Prepared> {
  const [components, locations, owners, notes] = await Promise.all([
    book.components(),
    book.locations(),
    book.owners(),
    book.notes(),
  ]);
  const digest = createHash('sha256').update(`notes ${commandId}`).digest('hex').slice(0, 32);
  const parsed = readNotes(text, columns, {
    components: components.map(({ code }) => code),
    locations: locations.map(({ code }) => code),
    owners: owners.map(({ code }) => code),
    timeZone: await timeZoneOf(book, job),
    taken: new Set(notes.map(({ kind, number }) => `${kind} ${number}`)),
    idOfLine: (line) => `${digest}-${line}`,
  });
  return {
    parsed,
    added: parsed.values.length,
    changed: 0,
    store: async (writer) => {
      const inTime = [...parsed.values].sort((one, other) => timeOf(one.bookedAt) - timeOf(other.bookedAt));
      for (const { note, bookedAt } of inTime) {
        if (bookedAt === null) {
          await writer.putNote(note);
          continue;
        }
        const idOf = (line: number): string => `${note.id}/${line + 1}`;
        const movements = noteMovements(note, { at: bookedAt, who, idOf });
        if (!movements.ok) throw new Refused(movements.error);
        await writer.appendMovements(movements.value, at);
        await writer.putNote({ ...note, state: 'booked', version: 2 });
      }
    },
  };
}

/** Drafts last. */
function timeOf(bookedAt: string | null): number {
  return bookedAt === null ? Number.MAX_SAFE_INTEGER : (momentMs(bookedAt) ?? 0);
}
