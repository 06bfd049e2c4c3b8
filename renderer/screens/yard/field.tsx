// A labelled field with what is wrong with it right under it.
import type { ReactNode } from 'react';
import type { DraftError } from './booking-draft.ts';

export function Field(props: {
  readonly label: string;
  readonly error?: DraftError | undefined;
  readonly className?: string;
  readonly children: ReactNode;
}): ReactNode {
  return (
    <label className={`field ${props.className ?? ''}`}>
      <span className="field-label">{props.label}</span>
      {props.children}
      {props.error === undefined ? null : <FieldError error={props.error} />}
    </label>
  );
}

export function FieldError(props: { readonly error: DraftError }): ReactNode {
  return (
    <span className="field-error" role="alert">
      {props.error.message} {props.error.hint}
    </span>
  );
}

export function errorAt(
  errors: readonly DraftError[],
  line: number | null,
  field: string,
): DraftError | undefined {
  return errors.find((error) => error.line === line && error.field === field);
}
