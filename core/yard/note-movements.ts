// From a note to its movements: what we counted is what moves. What the paper says, and what the other end counted,
// stays beside it as a claim and changes no figure of the ledger.
import { type Answer, answer, refuse } from '../answer.ts';
import type { Movement } from './movement.ts';
import type { NoteKind, NoteLine, YardNote } from './note.ts';

export interface NoteBooking {
  readonly at: string;
  readonly who: string;
  /** A new id for the movement of a line. */
  readonly idOf: (line: number) => string;
}

/**
 * One movement a line with something counted.
 * Codes: note-booked, note-dropped, empty-note, not-counted (every line named), same-place.
 */
export function noteMovements(note: YardNote, booking: NoteBooking): Answer<readonly Movement[]> {
  const name = noteStart(note);
  if (note.state !== 'draft') return refuse(`note-${note.state}`, `${name} is ${note.state} already.`);
  if (note.lines.length === 0)
    return refuse('empty-note', `${name} has no lines.`, { field: 'lines', hint: 'Maybe enter what came.' });
  const open = note.lines.filter((line) => line.counted === null);
  if (open.length > 0)
    return refuse('not-counted', `${name}: nobody has counted ${open.map(lineName).join(', ')}.`, {
      field: 'lines',
      hint: 'Maybe enter 0 for what did not come.',
    });
  if (note.from === note.to)
    return refuse('same-place', `${name} goes from ${note.from} to ${note.to}.`, { field: 'to' });
  return answer(
    note.lines.flatMap((line, index) => {
      const { counted } = line;
      return counted === null || counted === 0 ? [] : [movementOf(note, line, counted, booking, index)];
    }),
  );
}

/** When its pieces moved, where the truck's times tell: what comes when it came, what goes when it left. */
export function noteMoment({
  kind,
  arrivedAt,
  leftAt,
}: Pick<YardNote, 'kind' | 'arrivedAt' | 'leftAt'>): string | null {
  return isComing(kind) ? arrivedAt : (leftAt ?? arrivedAt);
}

function movementOf(
  note: YardNote,
  line: NoteLine,
  quantity: number,
  booking: NoteBooking,
  index: number,
): Movement {
  return {
    id: booking.idOf(index),
    component: line.component,
    quantity,
    owner: line.owner,
    ...endsOf(note, line),
    condition: line.condition,
    conditionAfter: line.condition,
    reason: note.kind,
    at: booking.at,
    who: booking.who,
    noteNumber: note.number,
    remark: line.remark,
    basis: null,
    basisDate: null,
    reverses: null,
    paper: note.id,
  };
}

/** Pieces that come in a container stay in it; those that go in one are taken out of its content. */
function endsOf(note: YardNote, { container }: NoteLine): { readonly from: string; readonly to: string } {
  const { from, to } = note;
  if (container === null) return { from, to };
  return isComing(note.kind) ? { from, to: container } : { from: container, to };
}

export function isComing(kind: NoteKind): boolean {
  return kind === 'delivery' || kind === 'hire-on';
}

function lineName({ component, owner }: NoteLine): string {
  return `${component} (${owner})`;
}

/** At the start of a sentence. */
export function noteStart(note: Pick<YardNote, 'kind' | 'number'>): string {
  const name = noteName(note);
  return `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`;
}

export function noteName({ kind, number }: Pick<YardNote, 'kind' | 'number'>): string {
  return `${kind} note ${number}`;
}
