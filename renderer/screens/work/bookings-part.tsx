// What the crane is booked for on a day besides the forms, lost to wind, or added; typed as hours of that day.
import { type ReactNode, useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Refusal } from '../../../core/answer.ts';
import { useCommand, useCore } from '../../client/core.tsx';
import type { Input } from '../../client/shapes.ts';
import { useJob } from '../../parts/job.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { type TimeWords } from '../../parts/time-words.ts';
import { useUndo } from '../../parts/undo.tsx';
import { readWhen } from '../../parts/when-text.ts';
import { FieldError } from '../yard/field.tsx';
import type { WorkDay } from './work-words.ts';

type Booking = Input<'crane.book'>['booking'];
const kinds: Readonly<Record<Booking['kind'], string>> = {
  'other-trade': 'another trade',
  wind: 'lost to wind',
  extra: 'added for the forms',
};

export function BookingsPart(props: {
  readonly day: WorkDay;
  readonly words: TimeWords;
  readonly readOnly: boolean;
}): ReactNode {
  const { day, words, readOnly } = props;
  const job = useJob().code;
  const list = useCore('crane.bookings', { job });
  const book = useCommand('crane.book');
  const unbook = useCommand('crane.unbook');
  const { remember } = useUndo();
  const own = (list.data?.bookings ?? []).filter(({ booking }) => words.date(booking.from) === day.date);
  const keep = async (booking: Booking): Promise<void> => {
    const { id } = await book.mutateAsync({ job, booking });
    remember({
      words: `crane ${booking.crane}: ${kinds[booking.kind]}`,
      undo: () => unbook.mutateAsync({ job, id }),
      redo: () => book.mutateAsync({ job, booking, id }),
    });
  };
  const drop = async (id: string, booking: Booking): Promise<void> => {
    await unbook.mutateAsync({ job, id });
    remember({
      words: `crane ${booking.crane}: no longer ${kinds[booking.kind]}`,
      undo: () => book.mutateAsync({ job, booking, id }),
      redo: () => unbook.mutateAsync({ job, id }),
    });
  };
  const error = book.error ?? unbook.error;
  return (
    <section className="pane-part" aria-label="Bookings of the crane">
      <h3>Bookings of the crane</h3>
      {error === null ? null : <RefusalNote error={error} />}
      <ul className="work-lines">
        {own.map(({ id, booking }) => (
          <li key={id}>
            <span>
              {booking.crane} {words.time(booking.from)}-{words.time(booking.to)}
            </span>
            <span>
              {kinds[booking.kind]} {booking.who}
            </span>
            <Button
              className="quiet"
              isDisabled={readOnly}
              aria-label={`Take back ${booking.crane} ${words.time(booking.from)}`}
              onPress={() => void drop(id, booking).catch(() => undefined)}
            >
              Take back
            </Button>
          </li>
        ))}
      </ul>
      {readOnly || day.cranes.length === 0 ? (
        <p className="soft">{day.cranes.length === 0 ? 'No hours of a crane are set yet.' : ''}</p>
      ) : (
        <NewBooking day={day} onKeep={keep} />
      )}
    </section>
  );
}

function NewBooking(props: {
  readonly day: WorkDay;
  readonly onKeep: (booking: Booking) => Promise<void>;
}): ReactNode {
  const { day } = props;
  const { timeZone } = useZone();
  const id = useId();
  const [draft, setDraft] = useState({ crane: day.cranes[0]?.crane ?? '', from: '', to: '', who: '' });
  const [kind, setKind] = useState<Booking['kind']>('other-trade');
  const [wrong, setWrong] = useState<{ readonly field: 'from' | 'to'; readonly refusal: Refusal } | null>(
    null,
  );
  const submit = async (): Promise<void> => {
    const noon = `${day.date}T12:00:00Z`;
    const [from, to] = [readWhen(draft.from, noon, timeZone), readWhen(draft.to, noon, timeZone)];
    if (!from.ok) return setWrong({ field: 'from', refusal: from.error });
    if (!to.ok) return setWrong({ field: 'to', refusal: to.error });
    setWrong(null);
    await props.onKeep({
      crane: draft.crane,
      from: from.value,
      to: to.value,
      kind,
      who: draft.who,
      about: '',
    });
    setDraft({ ...draft, from: '', to: '', who: '' });
  };
  const text = (name: 'from' | 'to' | 'who', label: string, placeholder: string): ReactNode => (
    <label className="field">
      <span className="field-label">{label}</span>
      <input
        id={`${id}-${name}`}
        value={draft[name]}
        placeholder={placeholder}
        aria-invalid={wrong?.field === name}
        onChange={(event) => setDraft({ ...draft, [name]: event.target.value })}
      />
      {wrong?.field === name ? (
        <FieldError
          error={{ line: null, field: name, message: wrong.refusal.message, hint: wrong.refusal.hint ?? '' }}
        />
      ) : null}
    </label>
  );
  return (
    <form
      className="work-form"
      onSubmit={(event) => {
        event.preventDefault();
        void submit().catch(() => undefined);
      }}
    >
      {day.cranes.length < 2 ? null : (
        <label className="field">
          <span className="field-label">Crane</span>
          <select value={draft.crane} onChange={(event) => setDraft({ ...draft, crane: event.target.value })}>
            {day.cranes.map(({ crane }) => (
              <option key={crane}>{crane}</option>
            ))}
          </select>
        </label>
      )}
      {text('from', 'From', '9:00')}
      {text('to', 'To', '11:00')}
      <label className="field">
        <span className="field-label">For</span>
        <select value={kind} onChange={(event) => setKind(event.target.value as Booking['kind'])}>
          {Object.entries(kinds).map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {text('who', 'Who', 'steel crew')}
      <button type="submit">Book</button>
    </form>
  );
}

function useZone(): { readonly timeZone: string } {
  const planning = useCore('planning.read', { job: useJob().code });
  return { timeZone: planning.data?.timeZone ?? 'UTC' };
}
