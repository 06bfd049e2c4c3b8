// A draft at its desk: what is typed, what is wrong with it, saving it, booking it, dropping it.
import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useCommand } from '../../../client/core.tsx';
import { Refused } from '../../../client/refused.ts';
import type { JobClock } from '../../../parts/job-clock.ts';
import { withSpokenInstants } from '../../../parts/spoken-instants.ts';
import type { DraftError } from '../booking-draft.ts';
import type { ComponentChoice } from '../component-field.tsx';
import { keepRefusal, takeRefusal, useKeptNote } from './kept-notes.ts';
import { draftOf, type NoteDraft, readNote, refusedField } from './note-draft.ts';
import { type Note, noteAddress } from './note-words.ts';
import { type WillMove, willMove } from './will-move.ts';

export interface NoteDesk {
  readonly draft: NoteDraft;
  readonly touched: boolean;
  /** Of what was last tried to be saved or booked. */
  readonly errors: readonly DraftError[];
  /** A refusal that names no field of the note. */
  readonly error: unknown;
  readonly busy: boolean;
  readonly done: string | null;
  readonly moving: WillMove;
  /** The version in the book is another than the one that was edited. */
  readonly overtaken: number | null;
  readonly edit: (by: (old: NoteDraft) => NoteDraft) => void;
  readonly save: () => Promise<void>;
  readonly book: () => Promise<void>;
  /** Takes what the book has; what was typed is gone. */
  readonly takeBook: () => void;
  /** Goes on with what was typed, over what the book has. */
  readonly keepMine: () => void;
}

export function useNote(
  before: Note | null,
  fresh: NoteDraft,
  components: readonly ComponentChoice[],
  clock: JobClock,
): NoteDesk {
  const base = useMemo(() => (before === null ? fresh : draftOf(before, clock)), [before, fresh, clock]);
  const kept = useKeptNote(before?.id ?? `new/${fresh.kind}`);
  const draft = kept.typed ?? base;
  const known = useMemo(() => new Set(components.map(({ code }) => code)), [components]);
  const read = useMemo(() => readNote(draft, before, clock, known), [draft, before, clock, known]);
  const moving = useMemo(() => willMove(read.note), [read]);
  const [errors, setErrors] = useState<readonly DraftError[]>([]);
  const [error, setError] = useState<unknown>(() => (before === null ? null : takeRefusal(before.id)));
  const [done, setDone] = useState<string | null>(null);
  const saving = useCommand('note.save');
  const booking = useCommand('note.book');
  const [, navigate] = useLocation();
  const busy = saving.isPending || booking.isPending;
  const overtaken = before === null || draft.version === before.version ? null : before.version;

  const clearWords = (): void => {
    setErrors([]);
    setError(null);
    setDone(null);
  };
  const refuse = (refusal: unknown): void => {
    const field = refusal instanceof Refused ? refusedField(refusal, read.lineOf) : undefined;
    if (field === undefined) setError(refusal);
    else setErrors([{ ...field, message: withSpokenInstants(field.message, clock.timeZone) }]);
  };
  /** The version in the book; null where it was not saved. */
  const saved = async (): Promise<number | null> => {
    clearWords();
    if (busy) return null;
    if (read.errors.length > 0) {
      setErrors(read.errors);
      return null;
    }
    if (before !== null && kept.typed === null) return before.version;
    try {
      const { version } = await saving.mutateAsync({ note: read.note });
      kept.clear();
      return version;
    } catch (refusal) {
      refuse(refusal);
      return null;
    }
  };
  const arrive = (): void => {
    if (before === null) navigate(noteAddress(draft.id), { replace: true });
  };
  return {
    draft,
    touched: kept.typed !== null,
    errors,
    error,
    busy,
    done,
    moving,
    overtaken,
    edit: (by) => {
      clearWords();
      kept.set(by(draft));
    },
    save: async () => {
      if ((await saved()) === null) return;
      setDone('Saved.');
      arrive();
    },
    book: async () => {
      const version = await saved();
      if (version === null) return;
      try {
        await booking.mutateAsync({ note: draft.id, version });
      } catch (refusal) {
        // A new note is a draft of the book by now: the refusal goes along to its own address.
        if (before === null) keepRefusal(draft.id, refusal);
        else refuse(refusal);
      }
      arrive();
    },
    takeBook: () => {
      clearWords();
      kept.clear();
    },
    keepMine: () => {
      clearWords();
      if (before !== null) kept.set({ ...draft, version: before.version });
    },
  };
}
