// What draft notes say is coming and going: a delivery counts from the day it is promised for, marked so, and one
// whose day has passed counts for nothing until a new one is entered; a return is taken off from its day on.
import { momentMs } from './moment.ts';
import { isInHand, type Location, type Movement } from './movement.ts';
import type { NoteKind, NoteLine, YardNote } from './note.ts';

export interface NoteShare {
  readonly component: string;
  readonly owner: string;
  readonly quantity: number;
  readonly note: { readonly id: string; readonly number: string; readonly kind: NoteKind };
  /** ISO 8601; null where nobody said when. */
  readonly expectedAt: string | null;
}

export interface Drafts {
  /** As if the drafts that count were booked on their days. */
  readonly movements: readonly Movement[];
  readonly promised: readonly NoteShare[];
  /** The day has passed, or nobody said one. */
  readonly late: readonly NoteShare[];
  readonly goingOut: readonly NoteShare[];
}

export function draftsOf(notes: readonly YardNote[], locations: readonly Location[], nowMs: number): Drafts {
  const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
  const inHand = (code: string): boolean => isInHand(kinds.get(code) ?? 'supplier');
  const movements: Movement[] = [];
  const promised: NoteShare[] = [];
  const late: NoteShare[] = [];
  const goingOut: NoteShare[] = [];
  for (const note of notes) {
    const comes = !inHand(note.from) && inHand(note.to);
    const goes = inHand(note.from) && !inHand(note.to);
    if (note.state !== 'draft' || (!comes && !goes)) continue;
    const expectedMs = note.expectedAt === null ? null : momentMs(note.expectedAt);
    const counts = expectedMs !== null && (goes || expectedMs > nowMs);
    const list = goes ? goingOut : counts ? promised : late;
    for (const [index, line] of note.lines.entries()) {
      const quantity = line.counted ?? line.sent;
      if (quantity === 0) continue;
      list.push(shareOf(note, line, quantity));
      if (counts) movements.push(asBooked(note, line, quantity, index));
    }
  }
  return { movements, promised, late, goingOut };
}

function shareOf(note: YardNote, line: NoteLine, quantity: number): NoteShare {
  const { id, number, kind, expectedAt } = note;
  return {
    component: line.component,
    owner: line.owner,
    quantity,
    note: { id, number, kind },
    expectedAt,
  };
}

function asBooked(note: YardNote, line: NoteLine, quantity: number, index: number): Movement {
  return {
    id: `${note.id}/${index}`,
    component: line.component,
    quantity,
    owner: line.owner,
    from: note.from,
    to: note.to,
    condition: line.condition,
    conditionAfter: line.condition,
    reason: note.kind,
    at: note.expectedAt ?? '',
    who: '',
    noteNumber: note.number,
    remark: null,
    basis: null,
    basisDate: null,
    reverses: null,
    paper: note.id,
  };
}
