// Entering a change by a small form where somebody would rather not type it: one kind at a time, errors at their field.
import { type ReactNode, useId, useState } from 'react';
import { never, type Refusal } from '../../../core/answer.ts';
import type { Known, PlanChange } from '../../parts/changes/change-text.ts';
import { changeKinds, type ChangeKind, type FormField, readForm, type Values } from './change-kinds.ts';

export function AddChangeForm(given: {
  readonly known: Known;
  readonly onAdd: (changes: readonly PlanChange[]) => void;
}): ReactNode {
  const [kind, setKind] = useState<ChangeKind>('move');
  const [typed, setTyped] = useState<Values>({});
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const { known } = given;
  const fields = changeKinds.find((each) => each.kind === kind)?.fields ?? [];
  const valueOf = (field: FormField): string =>
    typed[field.name] ?? field.first ?? optionsOf(field, known)[0]?.[0] ?? '';
  const send = (): void => {
    const values = Object.fromEntries(fields.map((field) => [field.name, valueOf(field)]));
    const read = readForm(kind, values, known);
    setRefusal(read.ok ? null : read.error);
    if (read.ok) given.onAdd(read.value);
  };
  return (
    <form
      className="add-change"
      aria-label="Add a change"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <label>
        <span>What changes</span>
        <select
          value={kind}
          onChange={(event) => {
            const next = changeKinds.find((each) => each.kind === event.target.value);
            if (next !== undefined) setKind(next.kind);
            setRefusal(null);
          }}
        >
          {changeKinds.map((each) => (
            <option key={each.kind} value={each.kind}>
              {each.name}
            </option>
          ))}
        </select>
      </label>
      {fields.map((field) => (
        <Entry
          key={field.name}
          field={field}
          known={known}
          value={valueOf(field)}
          problem={refusal?.field === field.name ? refusal.message : null}
          onChange={(value) => {
            setTyped({ ...typed, [field.name]: value });
            setRefusal(null);
          }}
        />
      ))}
      <button type="submit">Add</button>
    </form>
  );
}

function Entry(props: {
  readonly field: FormField;
  readonly known: Known;
  readonly value: string;
  readonly problem: string | null;
  readonly onChange: (value: string) => void;
}): ReactNode {
  const { field, value, problem } = props;
  const problemId = useId();
  const more = {
    value,
    'aria-invalid': problem !== null,
    ...(problem === null ? {} : { 'aria-describedby': problemId }),
  };
  const options = optionsOf(field, props.known);
  return (
    <label>
      <span>{field.label}</span>
      {field.from === 'text' ? (
        <input
          {...more}
          autoComplete="off"
          placeholder={field.placeholder}
          onChange={(event) => props.onChange(event.target.value)}
        />
      ) : (
        <select {...more} onChange={(event) => props.onChange(event.target.value)}>
          {options.length === 0 ? <option value="">none</option> : null}
          {options.map(([id, words]) => (
            <option key={id} value={id}>
              {words}
            </option>
          ))}
        </select>
      )}
      {problem === null ? null : (
        <span id={problemId} className="problem" role="alert">
          {problem}
        </span>
      )}
    </label>
  );
}

function optionsOf(field: FormField, known: Known): readonly (readonly [string, string])[] {
  switch (field.from) {
    case 'pours':
      return known.pours.map(({ code, name }) => [code, `${code} ${name}`]);
    case 'components':
      return known.components.map(({ code }) => [code, code]);
    case 'designs':
      return known.designs.map(({ code }) => [code, code]);
    case 'notes':
      return known.notes.map(({ id, number }) => [id, number]);
    case 'text':
      return [];
    default:
      return never(field.from);
  }
}
