// What keeps a change from being taken back: things that it touched and that are not as it left them, or that a later
// change, which still stands, touched as well.
import { never } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type JobEntryKind, jobEntryShapes, type KeptEntry } from '../plan/job-entries.ts';
import type { Pour } from '../plan/pours.ts';
import type { YardNote } from '../yard/note.ts';
import { type PlanEdit, planEdit, same } from './plan-edits.ts';

/** Their names, none twice. */
export async function changedSince(
  book: BookReader,
  job: string,
  edits: readonly PlanEdit[],
  later: readonly KeptEntry<'applied-change'>[],
): Promise<readonly string[]> {
  const there = await readThere(book, job, edits);
  // Things may be as they were left, and yet by way of another change.
  const touched = new Set(later.flatMap(({ entry }) => planEdit.array().parse(entry.before).map(keyOf)));
  const changed = edits.filter((edit) => touched.has(keyOf(edit)) || !isAsLeft(edit, there));
  return [...new Set(changed.map((edit) => editWords(edit, there)))];
}

interface There {
  readonly pours: ReadonlyMap<string, Pour>;
  readonly notes: ReadonlyMap<string, YardNote>;
  /** By kind and id. */
  readonly entries: ReadonlyMap<string, unknown>;
}

async function readThere(book: BookReader, job: string, edits: readonly PlanEdit[]): Promise<There> {
  const kinds = new Set(edits.flatMap((edit): JobEntryKind[] => (edit.what === 'entry' ? [edit.kind] : [])));
  const entries = new Map<string, unknown>();
  for (const kind of kinds)
    for (const { id, entry } of await book.jobEntries(job, kind)) entries.set(`${kind} ${id}`, entry);
  return {
    pours: new Map((await book.pours(job)).map((each) => [each.code, each])),
    notes: new Map((await book.notes()).map((each) => [each.id, each])),
    entries,
  };
}

function isAsLeft(edit: PlanEdit, { pours, notes, entries }: There): boolean {
  switch (edit.what) {
    case 'pour':
      return same(pours.get(edit.code) ?? null, edit.is);
    case 'entry':
      return same(entries.get(keyOf(edit)) ?? null, edit.is);
    case 'note': {
      const note = notes.get(edit.id);
      return note?.state === 'draft' && note.expectedAt === edit.is;
    }
    default:
      return never(edit);
  }
}

function keyOf(edit: PlanEdit): string {
  switch (edit.what) {
    case 'pour':
      return `pour ${edit.code}`;
    case 'entry':
      return `${edit.kind} ${edit.id}`;
    case 'note':
      return `note ${edit.id}`;
    default:
      return never(edit);
  }
}

function editWords(edit: PlanEdit, { notes }: There): string {
  switch (edit.what) {
    case 'pour':
      return `pour ${edit.code}`;
    case 'entry':
      return entryWords(edit);
    case 'note':
      return `note ${notes.get(edit.id)?.number ?? edit.id}`;
    default:
      return never(edit);
  }
}

function entryWords(edit: Extract<PlanEdit, { what: 'entry' }>): string {
  const entry = edit.is ?? edit.was;
  switch (edit.kind) {
    case 'calendar-exception': {
      const read = jobEntryShapes['calendar-exception'].safeParse(entry);
      return `the calendar of ${read.success ? read.data.date : 'a day'}`;
    }
    case 'crane-booking': {
      const read = jobEntryShapes['crane-booking'].safeParse(entry);
      return read.success ? `a booking of ${read.data.crane}` : 'a booking of a crane';
    }
    case 'pour-facts':
      return `what is entered of pour ${edit.id}`;
    case 'planned-stock': {
      const read = jobEntryShapes['planned-stock'].safeParse(entry);
      return read.success ? `${read.data.quantity} ${read.data.component} planned to come` : 'planned pieces';
    }
    case 'fixed-choice': {
      const read = jobEntryShapes['fixed-choice'].safeParse(entry);
      if (!read.success) return 'a fixed choice';
      return `what is fixed of ${read.data.kind === 'follow' ? read.data.from : read.data.turn}`;
    }
    default:
      return never(edit.kind);
  }
}
