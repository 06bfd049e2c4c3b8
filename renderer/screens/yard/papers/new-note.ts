// What a new note begins with: the next free number of its kind, and the places that this kind usually goes between.
import type { Places } from '../yard-words.ts';
import { firstPlace, reasonHints } from '../booking-hints.ts';
import { emptyNoteLine, type NoteDraft } from './note-draft.ts';
import type { NoteKind } from './note-words.ts';

export function newNote(kind: NoteKind, number: string, places: Places, ids: () => string): NoteDraft {
  const hint = reasonHints[kind];
  const from = firstPlace(places.locations, hint.from);
  const others = places.locations.filter(({ code }) => code !== from);
  const to = firstPlace(others, hint.to);
  return {
    id: ids(),
    version: 0,
    kind,
    number,
    from,
    to,
    job: null,
    expectedAt: '',
    arrivedAt: '',
    leftAt: '',
    vehicle: '',
    signedHere: '',
    signedThere: '',
    protest: '',
    remark: '',
    lines: [emptyNoteLine(ids(), usualOwner({ from, to }, places))],
  };
}

/** A depot bears the code of its owner: pieces from or for it are theirs; else they are ours. */
export function usualOwner(ends: { readonly from: string; readonly to: string }, { owners }: Places): string {
  const theirs = owners.find(
    ({ code, kind }) => kind === 'supplier' && (code === ends.from || code === ends.to),
  );
  return (theirs ?? owners.find(({ kind }) => kind === 'ours') ?? owners[0])?.code ?? '';
}
