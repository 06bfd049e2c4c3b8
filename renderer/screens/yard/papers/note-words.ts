// The words of notes on this screen, and the order in which a yard looks at them: late ones first, then what is due,
// drafts of no day, what is booked, and last what holds no more.
import type { Output } from '../../../client/shapes.ts';

export type NoteRow = Output<'note.list'>['notes'][number];
export type Note = Output<'note.read'>['note'];
export type NoteKind = Note['kind'];
export type NoteState = Note['state'];
export type Claim = Output<'note.read'>['claims'][number];

export const noteKindWords: Readonly<Record<NoteKind, string>> = {
  delivery: 'Delivery',
  return: 'Return',
  transfer: 'Transfer',
  issue: 'Issue',
  'hire-on': 'Hire on',
  'hire-off': 'Off hire',
};

/** What each kind is for, in one line. */
export const noteKindSense: Readonly<Record<NoteKind, string>> = {
  delivery: 'pieces come from a supplier',
  return: 'pieces go back to their supplier',
  transfer: 'between yards, racks, sites and other jobs',
  issue: 'out of the yard to a gang, a pour or the site',
  'hire-on': 'on hire from here on, with its paper',
  'hire-off': 'off hire, back to the owner, with its paper',
};

export const noteKindList = Object.keys(noteKindWords).filter(isNoteKind);

export function isNoteKind(text: string): text is NoteKind {
  return Object.hasOwn(noteKindWords, text);
}

export const noteStateWords: Readonly<Record<NoteState, string>> = {
  draft: 'draft',
  booked: 'booked',
  dropped: 'dropped',
  reversed: 'reversed',
};

/** Pieces come to us from outside. */
export function comesIn(kind: NoteKind): boolean {
  return kind === 'delivery' || kind === 'hire-on';
}

/** Pieces leave us for their owner, who counts them again. */
export function goesBack(kind: NoteKind): boolean {
  return kind === 'return' || kind === 'hire-off';
}

/** The two figures of a line as this kind of note calls them: the paper's, and what we counted. */
export function figureWords(kind: NoteKind): { readonly paper: string; readonly ours: string } {
  return comesIn(kind) ? { paper: 'Sent', ours: 'Received' } : { paper: 'To go', ours: 'Loaded' };
}

export function noteAddress(id: string): string {
  return `/yard/papers/${encodeURIComponent(id)}`;
}

function rank(row: NoteRow): number {
  if (row.late) return 0;
  if (row.state === 'draft') return row.expectedAt === null ? 2 : 1;
  return row.state === 'booked' ? 3 : 4;
}

/** Rows of one rank by their day, the earliest first; without a day by number. */
export function inLookingOrder(rows: readonly NoteRow[]): readonly NoteRow[] {
  const day = (row: NoteRow): number => (row.expectedAt === null ? 0 : Date.parse(row.expectedAt));
  return rows.toSorted(
    (one, other) =>
      rank(one) - rank(other) ||
      day(one) - day(other) ||
      one.number.localeCompare(other.number, undefined, { numeric: true }),
  );
}

/** "late", "due", "draft", "booked", ...: a state in one word, never by colour alone. */
export function standingWord(row: NoteRow): string {
  if (row.late) return 'late';
  if (row.state === 'draft' && row.expectedAt !== null) return comesIn(row.kind) ? 'due in' : 'due out';
  return noteStateWords[row.state];
}

/** "36 counted, 40 on the paper: 4 short" */
export function claimWords({ where, theirs, ours, disputed }: Claim): string {
  const by = Math.abs(disputed);
  return where === 'arrival'
    ? `${theirs} on the paper, ${ours} counted here: ${by} ${disputed > 0 ? 'short' : 'over'}`
    : `${ours} counted at loading, ${theirs} at the depot: ${by} ${disputed > 0 ? 'fewer' : 'more'} there`;
}
