// The sheets of notes: those of pieces that come, and those of pieces that go.
import { type Answer, refuse, answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { instantText } from '../plan/local-time.ts';
import { noteSheet } from '../sheets/note-sheet.ts';
import { momentMs } from '../yard/moment.ts';
import { noteClaims, type NoteClaim } from '../yard/note-claims.ts';
import { isComing, noteName } from '../yard/note-movements.ts';
import type { NoteKind, YardNote } from '../yard/note.ts';
import { asData } from './as-data.ts';
import { byCode, found } from './by-code.ts';
import { readNote } from './note-shapes.ts';

const kindWords: Readonly<Record<NoteKind, string>> = {
  delivery: 'Delivery note',
  return: 'Return note',
  transfer: 'Transfer note',
  issue: 'Issue note',
  'hire-on': 'Hire-on note',
  'hire-off': 'Off-hire note',
};

const stateWords = {
  draft: 'draft: nothing of it is booked',
  booked: 'booked',
  dropped: 'dropped',
  reversed: 'reversed: none of it holds',
} as const;

/** @param kinds those that this sheet is for */
export async function sheetOfNote(
  book: BookReader,
  asked: { readonly id: string; readonly units?: 'us' | 'metric' },
  kinds: readonly NoteKind[],
) {
  const read = await readNamed(book, asked.id, kinds);
  if (!read.ok) return { ok: false as const, error: { ...read.error, field: 'id' } };
  const note = read.value;
  if (!kinds.includes(note.kind)) return anotherKind(noteName(note), kinds);
  const [locations, owners, components, jobs] = await Promise.all([
    book.locations(),
    book.owners(),
    book.components(),
    book.jobs(),
  ]);
  const [place, owner, component] = [byCode(locations), byCode(owners), byCode(components)];
  const job = jobs.find(({ code }) => code === note.job);
  const { lines, countedThere, from, to, state, kind, expectedAt, arrivedAt, leftAt, ...rest } = note;
  const timeZone = (job ?? jobs[0])?.timeZone;
  const local = (at: string | null): string | null =>
    at === null || timeZone === undefined ? at : instantText(momentMs(at) ?? 0, timeZone);
  return answer(
    asData(
      noteSheet({
        ...rest,
        expectedAt: local(expectedAt),
        arrivedAt: local(arrivedAt),
        leftAt: local(leftAt),
        kind: kindWords[kind],
        state: stateWords[state],
        isComing: isComing(kind),
        from: `${from} ${found(place, from).name}`,
        to: `${to} ${found(place, to).name}`,
        job: job === undefined ? note.job : `${job.code} ${job.name}`,
        lines: lines.map((line, index) => ({
          ...line,
          name: found(component, line.component).name,
          weightGrams: found(component, line.component).weightGrams,
          owner: found(owner, line.owner).name,
          countedThere: countedThere?.[index] ?? null,
        })),
        claims: noteClaims(note).map(claimWords),
        units: asked.units ?? jobs[0]?.units ?? 'us',
      }),
    ),
  );
}

/** By its id, or as people say it, by its number; that is used once a kind. */
async function readNamed(
  book: BookReader,
  id: string,
  kinds: readonly NoteKind[],
): Promise<Answer<YardNote>> {
  const numbered = (await book.notes()).find((note) => note.number === id && kinds.includes(note.kind));
  return numbered === undefined ? readNote(book, id) : answer(numbered);
}

function anotherKind(name: string, kinds: readonly NoteKind[]): Answer<never> {
  return refuse('another-kind', `This sheet is for notes of ${kinds.join(', ')}; ${name} is none.`, {
    field: 'id',
    hint: 'Maybe the other of the two sheets, delivery or return, is meant.',
  });
}

function claimWords({ component, owner, where, theirs, ours }: NoteClaim): string {
  return where === 'arrival'
    ? `${component} (${owner}): ${theirs} on the paper, ${ours} counted here.`
    : `${component} (${owner}): ${ours} counted at loading, ${theirs} at the depot.`;
}
