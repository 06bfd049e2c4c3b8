// The head of a slip: reason, owner, places, time, note and remark; for an opening figure how it was got.
import type { ReactNode } from 'react';
import { type BookingDraft, type DraftError } from './booking-draft.ts';
import { type NamedPlace, placesFirst, reasonHints } from './booking-hints.ts';
import { errorAt, Field } from './field.tsx';
import { placeKindWords, type Places, reasonWords } from './yard-words.ts';

type Change = (change: (draft: BookingDraft) => BookingDraft) => void;

const bookable = Object.keys(reasonHints).filter(isBookable);

function isBookable(name: string): name is BookingDraft['reason'] {
  return name in reasonHints;
}

export function SlipFields(props: {
  readonly draft: BookingDraft;
  readonly errors: readonly DraftError[];
  readonly places: Places;
  readonly onReason: (reason: BookingDraft['reason']) => void;
  readonly onChange: Change;
}): ReactNode {
  const { draft, errors, places, onChange } = props;
  const hint = reasonHints[draft.reason];
  const set = (part: Partial<BookingDraft>): void => onChange((old) => ({ ...old, ...part }));
  return (
    <div className="slip-fields">
      <Field label="Reason" error={errorAt(errors, null, 'reason')}>
        <select
          value={draft.reason}
          onChange={(event) => {
            if (isBookable(event.target.value)) props.onReason(event.target.value);
          }}
        >
          {bookable.map((reason) => (
            <option key={reason} value={reason}>
              {reasonWords[reason]}
            </option>
          ))}
        </select>
      </Field>
      <Field label="Whose pieces" error={errorAt(errors, null, 'owner')}>
        <select
          value={draft.owner}
          aria-invalid={errorAt(errors, null, 'owner') !== undefined}
          onChange={(event) => set({ owner: event.target.value })}
        >
          <option value="">choose …</option>
          {places.owners.map((owner) => (
            <option key={owner.code} value={owner.code}>
              {owner.code} · {owner.name}
            </option>
          ))}
        </select>
      </Field>
      <PlaceField
        label="From"
        value={draft.from}
        places={placesFirst(places.locations, hint.from)}
        error={errorAt(errors, null, 'from')}
        onChange={(from) => set({ from })}
      />
      <PlaceField
        label="To"
        value={draft.to}
        places={placesFirst(places.locations, hint.to)}
        error={errorAt(errors, null, 'to')}
        onChange={(to) => set({ to })}
      />
      <Field label="When" error={errorAt(errors, null, 'at')}>
        <input
          value={draft.at}
          placeholder="now, or as 10 Mar 16:00"
          aria-invalid={errorAt(errors, null, 'at') !== undefined}
          onChange={(event) => set({ at: event.target.value })}
        />
      </Field>
      <Field label="Note number" error={errorAt(errors, null, 'noteNumber')}>
        <input
          value={draft.noteNumber}
          maxLength={60}
          onChange={(event) => set({ noteNumber: event.target.value })}
        />
      </Field>
      <Field label="Remark" className="wide" error={errorAt(errors, null, 'remark')}>
        <input
          value={draft.remark}
          maxLength={400}
          onChange={(event) => set({ remark: event.target.value })}
        />
      </Field>
      {draft.reason === 'opening' ? (
        <BasisField basis={draft.basis} onChange={(basis) => set({ basis })} />
      ) : null}
    </div>
  );
}

function PlaceField(props: {
  readonly label: string;
  readonly value: string;
  readonly places: readonly (NamedPlace & { readonly name: string })[];
  readonly error: DraftError | undefined;
  readonly onChange: (code: string) => void;
}): ReactNode {
  return (
    <Field label={props.label} error={props.error}>
      <select
        value={props.value}
        aria-invalid={props.error !== undefined}
        onChange={(event) => props.onChange(event.target.value)}
      >
        <option value="">choose …</option>
        {props.places.map((place) => (
          <option key={place.code} value={place.code}>
            {place.code} · {place.name} ({placeKindWords[place.kind]})
          </option>
        ))}
      </select>
    </Field>
  );
}

const basisChoices: readonly (readonly [BookingDraft['basis'], string])[] = [
  ['counted', 'counted'],
  ['estimated', 'estimated'],
  ['taken-from-list', 'from a list'],
];

function BasisField(props: {
  readonly basis: BookingDraft['basis'];
  readonly onChange: (basis: BookingDraft['basis']) => void;
}): ReactNode {
  return (
    <Field label="How the figure was got">
      <select
        value={props.basis}
        onChange={(event) => {
          const chosen = basisChoices.find(([basis]) => basis === event.target.value);
          if (chosen !== undefined) props.onChange(chosen[0]);
        }}
      >
        {basisChoices.map(([basis, words]) => (
          <option key={basis} value={basis}>
            {words}
          </option>
        ))}
      </select>
    </Field>
  );
}
