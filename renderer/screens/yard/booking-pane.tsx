// The slip at the side of the yard: written, booked as a whole or refused as a whole, with what is wrong
// next to its field. After booking, places and reason stay for the next slip.
import { type ReactNode, useMemo, useState } from 'react';
import { answer } from '../../../core/answer.ts';
import { useCommand, useCore } from '../../client/core.tsx';
import { type JobClock, useJobClock } from '../../parts/job-time.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { readWhen } from '../../parts/when-text.ts';
import {
  type BookingDraft,
  type DraftError,
  type DraftLine,
  emptyLine,
  errorOfRefusal,
  movementsOf,
} from './booking-draft.ts';
import { firstPlace, reasonHints } from './booking-hints.ts';
import type { ComponentChoice } from './component-field.tsx';
import { useKeptDraft } from './kept-draft.ts';
import { SidePane } from './side-pane.tsx';
import { type Places, SlipFields } from './slip-fields.tsx';
import { SlipLines } from './slip-lines.tsx';

interface PaneProps {
  readonly component: string | null;
  readonly location: string | null;
  readonly onClose: () => void;
}

export function BookingPane(props: PaneProps): ReactNode {
  const places = useCore('yard.places', {});
  const components = useCore('component.list', {});
  const clock = useJobClock();
  const error = places.error ?? components.error;
  const ready = places.data !== undefined && components.data !== undefined && clock !== null;
  return (
    <SidePane title="Book a movement" className="booking" onClose={props.onClose}>
      {error === null ? null : <RefusalNote error={error} />}
      {ready ? (
        <Slip {...props} places={places.data} components={components.data.components} clock={clock} />
      ) : (
        <Waiting what="Reading places and components …" />
      )}
    </SidePane>
  );
}

function beginDraft(places: Places, component: string | null, location: string | null): BookingDraft {
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

/** An empty field is this moment. */
function readAt(text: string, clock: JobClock): ReturnType<typeof readWhen> {
  const words = text.trim().toLowerCase();
  if (words === '' || words === 'now') return answer(new Date().toISOString());
  return readWhen(text, clock.planFrom, clock.timeZone);
}

function Slip(
  props: PaneProps & {
    readonly places: Places;
    readonly components: readonly ComponentChoice[];
    readonly clock: JobClock;
  },
): ReactNode {
  const { places, components, clock } = props;
  const [draft, change] = useKeptDraft(() => beginDraft(places, props.component, props.location));
  const [errors, setErrors] = useState<readonly DraftError[]>([]);
  const [booked, setBooked] = useState<string | null>(null);
  const move = useCommand('yard.move');
  const known = useMemo(() => new Set(components.map(({ code }) => code)), [components]);
  const refusedAt = move.error === null ? undefined : errorOfRefusal(move.error, draft.lines);
  const shown =
    refusedAt === undefined
      ? errors
      : [...errors, { ...refusedAt, message: withSpokenInstants(refusedAt.message, clock.timeZone) }];

  const edit = (by: (old: BookingDraft) => BookingDraft): void => {
    setBooked(null);
    setErrors([]);
    move.reset();
    change(by);
  };
  const setReason = (reason: BookingDraft['reason']): void => {
    const hint = reasonHints[reason];
    edit((old) => ({
      ...old,
      reason,
      from: firstPlace(places.locations, hint.from),
      to: firstPlace(places.locations, hint.to),
      lines: old.lines.map((line) => ({
        ...line,
        condition: hint.condition,
        conditionAfter: hint.conditionAfter,
      })),
    }));
  };
  const setLine = (index: number, part: Partial<DraftLine>): void =>
    edit((old) => ({
      ...old,
      lines: old.lines.map((line, at) => (at === index ? { ...line, ...part } : line)),
    }));
  const addLine = (): void =>
    edit((old) => ({ ...old, lines: [...old.lines, emptyLine(crypto.randomUUID(), old.lines.at(-1))] }));
  const removeLine = (index: number): void =>
    edit((old) => {
      const rest = old.lines.filter((_, at) => at !== index);
      return { ...old, lines: rest.length > 0 ? rest : [emptyLine(crypto.randomUUID(), old.lines[0])] };
    });
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
          change((old) => ({
            ...old,
            noteNumber: '',
            remark: '',
            lines: [emptyLine(crypto.randomUUID(), old.lines[0])],
          }));
        },
      },
    );
  };

  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        book();
      }}
    >
      <p className="soft">{reasonHints[draft.reason].words}</p>
      <SlipFields draft={draft} errors={shown} places={places} onReason={setReason} onChange={edit} />
      <SlipLines
        lines={draft.lines}
        errors={shown}
        components={components}
        onLine={setLine}
        onRemove={removeLine}
        onAdd={addLine}
      />
      {move.error !== null && refusedAt === undefined ? <RefusalNote error={move.error} /> : null}
      <div className="slip-end">
        <button type="submit" className="primary" aria-disabled={move.isPending}>
          Book
        </button>
        <output>{booked ?? (shown.length > 0 ? 'Not booked: see the fields above.' : '')}</output>
      </div>
    </form>
  );
}
