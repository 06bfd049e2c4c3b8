// Whose pieces they are, from the owners of the book.
import type { ReactNode } from 'react';
import { useCore } from '../../../client/core.tsx';
import type { DraftError } from '../booking-draft.ts';
import { Field } from '../field.tsx';

export function OwnerSelect(props: {
  readonly value: string;
  readonly error: DraftError | undefined;
  readonly onChange: (owner: string) => void;
}): ReactNode {
  const places = useCore('yard.places', {});
  return (
    <Field label="Whose pieces" error={props.error}>
      <select
        value={props.value}
        aria-invalid={props.error !== undefined}
        onChange={(event) => props.onChange(event.target.value)}
      >
        <option value="">choose …</option>
        {(places.data?.owners ?? []).map((owner) => (
          <option key={owner.code} value={owner.code}>
            {owner.code} · {owner.name}
          </option>
        ))}
      </select>
    </Field>
  );
}
