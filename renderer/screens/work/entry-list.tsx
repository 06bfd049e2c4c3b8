// Entries of one kind as lines that can be taken out, with a form under them that adds one. What was typed stays until it is
// kept.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { FieldError } from '../yard/field.tsx';

export interface EntryField {
  readonly name: string;
  readonly label: string;
  readonly placeholder?: string;
  /** Chosen and not typed. */
  readonly options?: readonly (readonly [value: string, name: string])[];
}

export interface WrongField {
  readonly name: string;
  readonly message: string;
}

export function EntryList(props: {
  readonly title: string;
  readonly note: string;
  readonly lines: readonly {
    readonly key: string;
    readonly cells: readonly ReactNode[];
    readonly name: string;
  }[];
  readonly fields: readonly EntryField[];
  /** What is wrong with it, or null where it was kept. */
  readonly onAdd: (typed: Readonly<Record<string, string>>) => Promise<WrongField | null>;
  readonly onTakeOut: (index: number) => unknown;
  /** What the button says; Add where it is left out. */
  readonly addWord?: string;
}): ReactNode {
  const { title, lines, fields } = props;
  const first = Object.fromEntries(fields.map(({ name, options }) => [name, options?.[0]?.[0] ?? '']));
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>(first);
  const [wrong, setWrong] = useState<WrongField | null>(null);
  const add = async (): Promise<void> => {
    const found = await props.onAdd(typed);
    setWrong(found);
    if (found === null) setTyped(first);
  };
  return (
    <section className="work-part" aria-label={title}>
      <h2>{title}</h2>
      <p className="soft">{props.note}</p>
      <ul className="work-lines">
        {lines.map((line, index) => (
          <li key={line.key}>
            {line.cells.map((cell, place) => (
              // Cells have no names of their own; their places never change.
              // eslint-disable-next-line react/no-array-index-key
              <span key={place}>{cell}</span>
            ))}
            <Button
              className="quiet"
              aria-label={`Take out ${line.name}`}
              onPress={() => props.onTakeOut(index)}
            >
              Take out
            </Button>
          </li>
        ))}
      </ul>
      <form
        className="work-form"
        onSubmit={(event) => {
          event.preventDefault();
          void add();
        }}
      >
        {fields.map((field) => (
          <label key={field.name} className="field">
            <span className="field-label">{field.label}</span>
            {field.options === undefined ? (
              <input
                value={typed[field.name] ?? ''}
                placeholder={field.placeholder}
                aria-invalid={wrong?.name === field.name}
                onChange={(event) => setTyped({ ...typed, [field.name]: event.target.value })}
              />
            ) : (
              <select
                value={typed[field.name] ?? ''}
                onChange={(event) => setTyped({ ...typed, [field.name]: event.target.value })}
              >
                {field.options.map(([value, name]) => (
                  <option key={value} value={value}>
                    {name}
                  </option>
                ))}
              </select>
            )}
            {wrong?.name === field.name ? (
              <FieldError error={{ line: null, field: field.name, message: wrong.message }} />
            ) : null}
          </label>
        ))}
        <button type="submit">{props.addWord ?? 'Add'}</button>
      </form>
    </section>
  );
}
