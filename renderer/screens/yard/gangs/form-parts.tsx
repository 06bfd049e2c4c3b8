// Parts that the forms of this screen share: a place chosen from those there are, a moment typed in words, a refusal
// at its field, and the end of a form.
import type { ReactNode } from 'react';
import { type Answer, answer } from '../../../../core/answer.ts';
import { useCore } from '../../../client/core.tsx';
import type { Refused } from '../../../client/refused.ts';
import type { JobClock } from '../../../parts/job-clock.ts';
import { RefusalNote } from '../../../parts/notes.tsx';
import { readWhen } from '../../../parts/when-text.ts';
import { withSpokenInstants } from '../../../parts/spoken-instants.ts';
import type { DraftError } from '../booking-draft.ts';
import { Field } from '../field.tsx';
import { placeKindWords, type StockRow } from '../yard-words.ts';

type PlaceKind = StockRow['locationKind'];

/** Where loose pieces lie, in the order in which they are offered. */
export const looseKinds: readonly PlaceKind[] = ['yard', 'site', 'rack', 'container'];
export const standingKinds: readonly PlaceKind[] = ['yard', 'site', 'rack', 'pour'];

export function PlaceSelect(props: {
  readonly label: string;
  readonly value: string;
  readonly kinds: readonly PlaceKind[];
  readonly error?: DraftError | undefined;
  readonly onChange: (code: string) => void;
}): ReactNode {
  const places = useCore('yard.places', {});
  const shown = (places.data?.locations ?? [])
    .filter((place) => props.kinds.includes(place.kind))
    .toSorted((one, other) => props.kinds.indexOf(one.kind) - props.kinds.indexOf(other.kind));
  return (
    <Field label={props.label} error={props.error}>
      <select
        value={props.value}
        aria-invalid={props.error !== undefined}
        onChange={(event) => props.onChange(event.target.value)}
      >
        <option value="">choose …</option>
        {shown.map((place) => (
          <option key={place.code} value={place.code}>
            {place.code} · {place.name} ({placeKindWords[place.kind]})
          </option>
        ))}
      </select>
    </Field>
  );
}

export function TextField(props: {
  readonly label: string;
  readonly value: string;
  readonly placeholder?: string;
  readonly className?: string;
  readonly error?: DraftError | undefined;
  readonly maxLength?: number;
  readonly onChange: (text: string) => void;
}): ReactNode {
  return (
    <Field
      label={props.label}
      error={props.error}
      {...(props.className === undefined ? {} : { className: props.className })}
    >
      <input
        value={props.value}
        maxLength={props.maxLength ?? 400}
        aria-invalid={props.error !== undefined}
        {...(props.placeholder === undefined ? {} : { placeholder: props.placeholder })}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </Field>
  );
}

export function SelectField<T extends string>(props: {
  readonly label: string;
  readonly value: T | '';
  readonly options: readonly (readonly [T, string])[];
  /** Offered first where nothing has to be chosen. */
  readonly none?: string;
  readonly error?: DraftError | undefined;
  readonly onChange: (value: T | '') => void;
}): ReactNode {
  return (
    <Field label={props.label} error={props.error}>
      <select
        value={props.value}
        aria-invalid={props.error !== undefined}
        onChange={(event) => {
          const chosen = props.options.find(([value]) => value === event.target.value);
          props.onChange(chosen?.[0] ?? '');
        }}
      >
        {props.none === undefined ? null : <option value="">{props.none}</option>}
        {props.options.map(([value, words]) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </Field>
  );
}

export const whenHint = 'now, or as 10 Mar 16:00';

/** An empty field is this moment. */
export function readMoment(text: string, clock: JobClock): Answer<string> {
  const words = text.trim().toLowerCase();
  if (words === '' || words === 'now') return answer(new Date().toISOString());
  return readWhen(text, clock.planFrom, clock.timeZone);
}

/** What is wrong at a field: read in the form, or refused by the core. */
export function errorFor(
  fields: Readonly<
    Record<string, { readonly message: string; readonly hint?: string | undefined } | undefined>
  >,
  refused: Refused | null,
  field: string,
): DraftError | undefined {
  const own = fields[field];
  const found = own ?? (refused?.field === field ? refused : undefined);
  if (found === undefined) return undefined;
  const words = { line: null, field, message: withSpokenInstants(found.message) };
  return found.hint === undefined ? words : { ...words, hint: withSpokenInstants(found.hint) };
}

/** The button of a form, what came of it, and a refusal that stands at none of its fields. */
export function FormEnd(props: {
  readonly words: string;
  readonly busy: boolean;
  readonly done: string | null;
  readonly refused: Refused | null;
  /** Fields of the form: a refusal at one of them stands there. */
  readonly fields: readonly string[];
  readonly onCancel?: () => void;
}): ReactNode {
  const { refused, fields } = props;
  const isAtField = refused?.field !== undefined && fields.includes(refused.field);
  return (
    <>
      {refused === null || isAtField ? null : <RefusalNote error={refused} />}
      <div className="slip-end">
        <button type="submit" className="primary" aria-disabled={props.busy}>
          {props.words}
        </button>
        {props.onCancel === undefined ? null : (
          <button type="button" className="quiet" onClick={props.onCancel}>
            Cancel
          </button>
        )}
        <output>{props.done ?? (isAtField ? 'Not booked: see the fields above.' : '')}</output>
      </div>
    </>
  );
}
