// The head of a note: number, places, the day it is due, the truck with its times, signatures and what was written
// under protest.
import type { ReactNode } from 'react';
import { useCore } from '../../../client/core.tsx';
import type { DraftError } from '../booking-draft.ts';
import { placesFirst, reasonHints } from '../booking-hints.ts';
import { errorAt, Field } from '../field.tsx';
import { placeKindWords, type Places } from '../yard-words.ts';
import type { NoteDraft } from './note-draft.ts';
import { comesIn, goesBack } from './note-words.ts';

type TextField = Exclude<keyof NoteDraft, 'id' | 'version' | 'kind' | 'job' | 'lines'>;

export function NoteFields(props: {
  readonly draft: NoteDraft;
  readonly errors: readonly DraftError[];
  readonly places: Places;
  readonly onChange: (part: Partial<NoteDraft>) => void;
}): ReactNode {
  const { draft, errors, places, onChange } = props;
  const book = useCore('book.state', {});
  const text = (field: TextField, label: string, maxLength: number, more: More = {}): ReactNode => {
    const error = errorAt(errors, null, field);
    return (
      <Field
        label={label}
        error={error}
        {...(more.className === undefined ? {} : { className: more.className })}
      >
        <input
          value={draft[field]}
          maxLength={maxLength}
          aria-invalid={error !== undefined}
          {...(more.hint === undefined ? {} : { placeholder: more.hint })}
          onChange={(event) => onChange({ [field]: event.target.value })}
        />
      </Field>
    );
  };
  const place = (field: 'from' | 'to', label: string): ReactNode => {
    const error = errorAt(errors, null, field);
    return (
      <Field label={label} error={error}>
        <select
          value={draft[field]}
          aria-invalid={error !== undefined}
          onChange={(event) => onChange({ [field]: event.target.value })}
        >
          <option value="">choose …</option>
          {placesFirst(places.locations, reasonHints[draft.kind][field]).map(({ code, name, kind }) => (
            <option key={code} value={code}>
              {code} · {name} ({placeKindWords[kind]})
            </option>
          ))}
        </select>
      </Field>
    );
  };
  return (
    <div className="note-fields">
      {text('number', 'Number on the paper', 60)}
      {place('from', 'From')}
      {place('to', 'To')}
      {text('expectedAt', comesIn(draft.kind) ? 'Due in' : 'Due out', 40, { hint: 'as 12 Mar 09:00' })}
      {text('arrivedAt', 'Truck came', 40, { hint: 'as 12 Mar 09:20' })}
      {text('leftAt', 'Truck left', 40, { hint: 'as 10:05' })}
      {text('vehicle', 'Vehicle', 80)}
      <Field label="Job">
        <select
          value={draft.job ?? ''}
          onChange={(event) => onChange({ job: event.target.value === '' ? null : event.target.value })}
        >
          <option value="">none named</option>
          {(book.data?.jobs ?? []).map(({ code, name }) => (
            <option key={code} value={code}>
              {code} {name}
            </option>
          ))}
        </select>
      </Field>
      {text('signedHere', 'Signed for us', 80)}
      {text('signedThere', goesBack(draft.kind) ? 'Signed by driver or depot' : 'Signed by the driver', 80)}
      {text('protest', 'Under protest', 400, { hint: 'what was written beside the signature' })}
      {text('remark', 'Remark', 400)}
    </div>
  );
}

interface More {
  readonly hint?: string;
  readonly className?: string;
}
