// Pieces that are given up for their parts, a line each: scrapped when the repair is booked done.
import type { ReactNode } from 'react';
import { useCore } from '../../../client/core.tsx';
import type { DraftError } from '../booking-draft.ts';
import { ComponentField } from '../component-field.tsx';
import { Field, FieldError } from '../field.tsx';
import { PlaceSelect } from '../gangs/form-parts.tsx';
import { heldKinds } from './held-kinds.ts';
import { OwnerSelect } from './owner-select.tsx';
import { type DonorDraft, emptyDonor } from './repair-draft.ts';

export function DonorLines(props: {
  readonly donors: readonly DonorDraft[];
  readonly error: DraftError | undefined;
  readonly onChange: (donors: readonly DonorDraft[]) => void;
}): ReactNode {
  const { donors, onChange } = props;
  const components = useCore('component.list', {});
  const edit = (index: number, part: Partial<DonorDraft>): void =>
    onChange(donors.map((donor, place) => (place === index ? { ...donor, ...part } : donor)));
  return (
    <fieldset className="donors">
      <legend>Parts taken from other pieces</legend>
      {donors.map((donor, index) => (
        // A line has no name of its own: it is what stands at its place.
        // oxlint-disable-next-line react/no-array-index-key
        <div key={index} className="slip-fields">
          <Field label={`Component ${index + 1}`}>
            <ComponentField
              label={`Component ${index + 1} that gives parts`}
              value={donor.component}
              invalid={false}
              components={components.data?.components ?? []}
              onChange={(component) => edit(index, { component })}
            />
          </Field>
          <Field label="Pieces">
            <input
              inputMode="numeric"
              value={donor.quantity}
              onChange={(event) => edit(index, { quantity: event.target.value })}
            />
          </Field>
          <OwnerSelect value={donor.owner} error={undefined} onChange={(owner) => edit(index, { owner })} />
          <PlaceSelect
            label="Where it lies"
            value={donor.place}
            kinds={[...heldKinds, 'scrap']}
            onChange={(place) => edit(index, { place })}
          />
          <button
            type="button"
            className="quiet"
            onClick={() => onChange(donors.filter((_, place) => place !== index))}
          >
            Take no parts from it
          </button>
        </div>
      ))}
      {props.error === undefined ? null : <FieldError error={props.error} />}
      <button type="button" onClick={() => onChange([...donors, emptyDonor])}>
        Take parts from a piece
      </button>
    </fieldset>
  );
}
