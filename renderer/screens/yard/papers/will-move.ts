// What booking a note would do, said before it is done: by the core's own reckoning of its movements and claims.
import { noteClaims } from '../../../../core/yard/note-claims.ts';
import { noteMoment, noteMovements } from '../../../../core/yard/note-movements.ts';
import type { YardNote } from '../../../../core/yard/note.ts';
import type { WrittenNote } from './note-draft.ts';
import type { Claim } from './note-words.ts';

export type WillMove =
  | { readonly can: false; readonly why: string; readonly hint: string | undefined }
  | {
      readonly can: true;
      readonly lines: number;
      readonly pieces: number;
      readonly from: string;
      readonly to: string;
      /** By the truck's times; null: at the moment of the booking. */
      readonly at: string | null;
      readonly claims: readonly Claim[];
    };

export function willMove(written: WrittenNote): WillMove {
  const note: YardNote = { ...written, state: 'draft', countedThere: null };
  const movements = noteMovements(note, { at: '', who: '', idOf: String });
  if (!movements.ok) return { can: false, why: movements.error.message, hint: movements.error.hint };
  return {
    can: true,
    lines: movements.value.length,
    pieces: movements.value.reduce((sum, { quantity }) => sum + quantity, 0),
    from: note.from,
    to: note.to,
    at: noteMoment(note),
    claims: noteClaims({ ...note, state: 'booked' }),
  };
}

/** "Books 38 pieces on 2 lines, TFH to ENN, as of Fri 20 Feb 14:10." */
export function willMoveWords(
  moving: Extract<WillMove, { can: true }>,
  full: (at: string) => string,
): string {
  const { lines, pieces, from, to, at } = moving;
  const when = at === null ? 'as of now, since no time of the truck is entered' : `as of ${full(at)}`;
  if (lines === 0) return `Nothing was counted: nothing moves, and the note says so.`;
  return `Books ${pieces} ${pieces === 1 ? 'piece' : 'pieces'} on ${lines} ${lines === 1 ? 'line' : 'lines'}, ${from} to ${to}, ${when}.`;
}
