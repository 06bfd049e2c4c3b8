// A slip while it is written: its draft, what is wrong with it, and booking it.
import type { Places } from './yard-words.ts';
import { useMemo, useState } from 'react';
import { answer } from '../../../core/answer.ts';
import { useCommand } from '../../client/core.tsx';
import type { JobClock } from '../../parts/job-clock.ts';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { readWhen } from '../../parts/when-text.ts';
import {
  type BookingDraft,
  type DraftError,
  type DraftLine,
  emptyLine,
  errorOfRefusal,
  lineIsEmpty,
  movementsOf,
} from './booking-draft.ts';
import { firstPlace, reasonHints } from './booking-hints.ts';
import type { ComponentChoice } from './component-field.tsx';
import { useKeptDraft } from './kept-draft.ts';

export interface Slip {
  readonly draft: BookingDraft;
  readonly errors: readonly DraftError[];
  /** A refusal that names no field of the slip. */
  readonly error: unknown;
  readonly busy: boolean;
  readonly booked: string | null;
  readonly edit: (by: (old: BookingDraft) => BookingDraft) => void;
  readonly book: () => void;
}

export function useSlip(
  begin: () => BookingDraft,
  components: readonly ComponentChoice[],
  clock: JobClock,
): Slip {
  const [draft, change] = useKeptDraft(begin);
  const [errors, setErrors] = useState<readonly DraftError[]>([]);
  const [booked, setBooked] = useState<string | null>(null);
  const move = useCommand('yard.move');
  const known = useMemo(() => new Set(components.map(({ code }) => code)), [components]);
  const refusedAt = move.error === null ? undefined : errorOfRefusal(move.error, draft.lines);
  const spoken =
    refusedAt === undefined
      ? []
      : [{ ...refusedAt, message: withSpokenInstants(refusedAt.message, clock.timeZone) }];

  const edit = (by: (old: BookingDraft) => BookingDraft): void => {
    setBooked(null);
    setErrors([]);
    move.reset();
    change(by);
  };
  const book = (): void => {
    const read = movementsOf(draft, readAt(draft.at, clock), known);
    setErrors(read.errors);
    setBooked(null);
    if (read.errors.length > 0 || move.isPending) return;
    move.mutate(
      { movements: read.movements },
      {
        onSuccess: (done) => {
          setBooked(`Booked: ${done.booked} ${done.booked === 1 ? 'movement' : 'movements'}.`);
          change(emptied);
        },
      },
    );
  };
  return {
    draft,
    errors: [...errors, ...spoken],
    error: refusedAt === undefined ? move.error : null,
    busy: move.isPending,
    booked,
    edit,
    book,
  };
}

/** An empty field is this moment. */
function readAt(text: string, clock: JobClock): ReturnType<typeof readWhen> {
  const words = text.trim().toLowerCase();
  if (words === '' || words === 'now') return answer(new Date().toISOString());
  return readWhen(text, clock.planFrom, clock.timeZone);
}

export function beginDraft(places: Places, component: string | null, location: string | null): BookingDraft {
  const hint = reasonHints.delivery;
  return {
    reason: 'delivery',
    owner: places.owners.length === 1 ? (places.owners[0]?.code ?? '') : '',
    from: firstPlace(places.locations, hint.from),
    to: location ?? firstPlace(places.locations, hint.to),
    at: '',
    noteNumber: '',
    remark: '',
    basis: 'counted',
    lines: [{ ...emptyLine(crypto.randomUUID()), component: component ?? '' }],
  };
}

/** Another reason brings its usual places and conditions; what was counted stays. */
export function withReason(
  draft: BookingDraft,
  reason: BookingDraft['reason'],
  places: Places,
): BookingDraft {
  const { from, to, condition, conditionAfter } = reasonHints[reason];
  return {
    ...draft,
    reason,
    from: firstPlace(places.locations, from),
    to: firstPlace(places.locations, to),
    lines: draft.lines.map((line) => ({ ...line, condition, conditionAfter })),
  };
}

export function withLine(draft: BookingDraft, index: number, part: Partial<DraftLine>): BookingDraft {
  return { ...draft, lines: draft.lines.map((line, at) => (at === index ? { ...line, ...part } : line)) };
}

export function withAnotherLine(draft: BookingDraft): BookingDraft {
  return { ...draft, lines: [...draft.lines, emptyLine(crypto.randomUUID(), draft.lines.at(-1))] };
}

/** Beside the lines that are there; empty ones give way. */
export function withLines(draft: BookingDraft, lines: readonly DraftLine[]): BookingDraft {
  return { ...draft, lines: [...draft.lines.filter((line) => !lineIsEmpty(line)), ...lines] };
}

/** A slip keeps at least one line. */
export function withoutLine(draft: BookingDraft, index: number): BookingDraft {
  const rest = draft.lines.filter((_, at) => at !== index);
  return { ...draft, lines: rest.length > 0 ? rest : [freshLine(draft)] };
}

/** For the next slip: reason, owner and places stay. */
function emptied(draft: BookingDraft): BookingDraft {
  return { ...draft, noteNumber: '', remark: '', lines: [freshLine(draft)] };
}

function freshLine(draft: BookingDraft): DraftLine {
  return emptyLine(crypto.randomUUID(), draft.lines[0]);
}
