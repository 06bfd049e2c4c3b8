// notes.csv: deliveries, returns, transfers and issues with their paper, one line of a note a row. What speaks of
// the whole note stands on its first row; later rows repeat it or leave it blank.
import { conditions } from '../yard/movement.ts';
import { type NoteKind, noteKinds, type NoteLine, type YardNote } from '../yard/note.ts';
import { type Read, readKnown, readQuantity, readText, readWord } from './cells.ts';
import type { Column } from './columns.ts';
import type { Parsed } from './gather.ts';
import { readInstant } from './local-time.ts';
import { addTo, readTable, type Row } from './table.ts';

export const noteColumns = [
  { name: 'kind', needed: true, wanted: `one of ${noteKinds.join(', ')}, on every row` },
  { name: 'note', needed: true, wanted: 'the number of the paper, on every row' },
  { name: 'state', needed: true, wanted: 'booked, or draft for one that is due' },
  {
    name: 'at',
    needed: true,
    wanted: 'when it happened or is due, as YYYY-MM-DD HH:MM by the clock of the site',
  },
  { name: 'from', needed: true, wanted: 'the code of the location that the pieces leave' },
  { name: 'to', needed: true, wanted: 'the code of the location where they arrive' },
  { name: 'component', needed: true, wanted: 'the code of a component of the catalogue' },
  { name: 'owner', needed: true, wanted: 'the code of an owner' },
  { name: 'condition', needed: false, wanted: `one of ${conditions.join(', ')}; blank for ready` },
  { name: 'sent', needed: true, wanted: 'pieces by the paper' },
  {
    name: 'counted',
    needed: false,
    wanted: 'pieces as counted by us; blank on a draft that nobody has counted',
  },
  { name: 'counted there', needed: false, wanted: 'of a return: pieces as counted by the depot' },
  { name: 'vehicle', needed: false, wanted: 'what carried them' },
  { name: 'signed here', needed: false, wanted: 'who signed for us' },
  { name: 'signed there', needed: false, wanted: 'who signed for the other end' },
  { name: 'protest', needed: false, wanted: 'what was written beside the signature' },
  { name: 'remark', needed: false, wanted: 'a note' },
] as const satisfies readonly Column[];

type Name = (typeof noteColumns)[number]['name'];
type NoteRow = Row<Name>;
const heads = ['state', 'at', 'from', 'to', 'vehicle', 'signed here', 'signed there', 'protest'] as const;

export interface NotesContext {
  readonly components: Iterable<string>;
  readonly owners: Iterable<string>;
  readonly locations: Iterable<string>;
  /** Whose clock a time without an offset means; null where no job says. */
  readonly timeZone: string | null;
  /** Numbers by kind that the book has, as `kind number`. */
  readonly taken: ReadonlySet<string>;
  readonly idOfLine: (line: number) => string;
}

/** A note as read, still a draft; `at` of one that is to be booked. */
export interface ReadNote {
  readonly note: YardNote;
  readonly bookedAt: string | null;
}

export function readNotes(
  text: string,
  names: Readonly<Record<string, string>>,
  context: NotesContext,
): Parsed<ReadNote> {
  const table = readTable<Name>(text, noteColumns, names);
  const groups = new Map<string, NoteRow[]>();
  for (const row of table.rows) {
    const kind = row.need('kind', readWord(noteKinds));
    const number = row.need('note', readText(60));
    if (kind === undefined || number === undefined) continue;
    if (context.taken.has(`${kind} ${number}`))
      row.refuse('note', `another number: the book has a ${kind} ${number}`);
    else addTo(groups, `${kind} ${number}`, row);
  }
  const known = {
    component: readKnown('component', context.components),
    owner: readKnown('owner', context.owners),
    location: readKnown('location', context.locations),
    at: readInstant(context.timeZone),
  };
  const values = [...groups.values()].flatMap((rows) => readNote(rows, known, context) ?? []);
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

type Known = Readonly<Record<'component' | 'owner' | 'location' | 'at', Read<string>>>;

function readNote(rows: readonly NoteRow[], known: Known, context: NotesContext): ReadNote | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  for (const row of rows.slice(1)) checkHeads(row, first);
  const state = first.need('state', readWord(['booked', 'draft']));
  const at = first.need('at', known.at);
  const from = first.need('from', known.location);
  const to = first.need('to', known.location);
  const own = (column: 'vehicle' | 'signed here' | 'signed there' | 'protest'): string | null =>
    first.maybe(column, readText(column === 'protest' ? 400 : 80)) ?? null;
  const lines = rows.flatMap((row) => readLine(row, state === 'booked', known) ?? []);
  const there = rows.map((row) => row.maybe('counted there', readQuantity(0)) ?? null);
  if (from !== undefined && from === to) first.refuse('to', 'another location than it leaves');
  const remark = first.maybe('remark', readText(400)) ?? null;
  const head = { vehicle: own('vehicle'), signedHere: own('signed here'), signedThere: own('signed there') };
  const protest = own('protest');
  if (rows.some((row) => row.isBad())) return undefined;
  if (state === undefined || at === undefined || from === undefined || to === undefined) return undefined;
  const isBooked = state === 'booked';
  return {
    bookedAt: isBooked ? at : null,
    note: {
      ...head,
      id: context.idOfLine(first.line),
      kind: first.text('kind') as NoteKind,
      number: first.text('note'),
      state: 'draft',
      expectedAt: isBooked ? null : at,
      countedThere: there.some((one) => one !== null) ? there : null,
      version: 1,
      from,
      to,
      job: null,
      arrivedAt: isBooked ? at : null,
      leftAt: null,
      protest,
      remark,
      lines,
    },
  };
}

function readLine(row: NoteRow, isBooked: boolean, known: Known): NoteLine | undefined {
  const component = row.need('component', known.component);
  const owner = row.need('owner', known.owner);
  const condition = row.maybe('condition', readWord(conditions)) ?? 'ready';
  const sent = row.need('sent', readQuantity(0));
  const counted = row.maybe('counted', readQuantity(0)) ?? null;
  if (isBooked && counted === null) row.refuse('counted', 'what was counted: the note is booked');
  if (component === undefined || owner === undefined || sent === undefined) return undefined;
  return { component, owner, condition, sent, counted, container: null, remark: null };
}

/** Refuses a later row that says something else of the whole note than its first. */
function checkHeads(row: NoteRow, first: NoteRow): void {
  for (const column of heads) {
    const text = row.text(column);
    if (text !== '' && text !== first.text(column))
      row.refuse(column, `nothing, or what line ${first.line} says of the note: "${first.text(column)}"`);
  }
}
