// Where the two ends of a note counted differently: a claim that stays open until a figure is agreed. Never netted
// across components.
import { isComing } from './note-movements.ts';
import type { YardNote } from './note.ts';

export interface NoteClaim {
  readonly note: string;
  readonly number: string;
  readonly component: string;
  readonly owner: string;
  /** `arrival`: the paper against our count; `depot`: our count at loading against theirs. */
  readonly where: 'arrival' | 'depot';
  /** What the other end says moved, and what we counted. */
  readonly theirs: number;
  readonly ours: number;
  /** In pieces that they would say we owe and we say we do not; below zero the other way. */
  readonly disputed: number;
}

/** In the order of the lines. */
export function noteClaims(note: YardNote): readonly NoteClaim[] {
  if (note.state !== 'booked') return [];
  return note.lines.flatMap((line, index): NoteClaim[] => {
    const { component, owner, sent, counted } = line;
    const countedThere = note.countedThere?.[index] ?? null;
    if (counted === null) return [];
    const of = { note: note.id, number: note.number, component, owner };
    if (isComing(note.kind))
      return sent === counted
        ? []
        : [{ ...of, where: 'arrival', theirs: sent, ours: counted, disputed: sent - counted }];
    return countedThere === null || countedThere === counted
      ? []
      : [{ ...of, where: 'depot', theirs: countedThere, ours: counted, disputed: counted - countedThere }];
  });
}
