// What was given in the end, line by line, and what was given in place of it: kept as the draft of an issue note. A
// substitution is told at once and stays written beside its line.
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { useCommand, useCore } from '../../../client/core.tsx';
import { ComponentField } from '../component-field.tsx';
import { FieldError } from '../field.tsx';
import { errorFor, FormEnd, looseKinds, PlaceSelect, TextField } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import { emptyGiven, type GivenDraft, givenRows, type GivenRow, readGiven } from './given-draft.ts';
import { GivenTold } from './given-told.tsx';
import type { PickList } from './pick-view.tsx';

const goingTo = ['site', 'pour', 'yard', 'rack'] as const;
const fields = ['note.number', 'note.to', 'note.from'] as const;

export function GivenForm({ list }: { readonly list: PickList }): ReactNode {
  const places = useCore('yard.places', {});
  const components = useCore('component.list', {});
  const given = useCommand('picklist.given');
  const { draft, set, clear } = useKept<GivenDraft>(`given ${list.id}`, emptyGiven);
  const [wrong, setWrong] = useState<Readonly<Record<string, { readonly message: string }>>>({});
  const ours = places.data?.owners.find(({ kind }) => kind === 'ours')?.code ?? '';
  const from = draft.from === '' ? (list.places[0]?.location ?? list.from ?? '') : draft.from;
  const to = draft.to === '' ? (list.to ?? '') : draft.to;
  const rows = givenRows(list, from, ours);
  const edit = (part: Partial<GivenDraft>): void => {
    given.reset();
    setWrong({});
    set(part);
  };
  const keep = (): void => {
    if (given.isPending) return;
    const { lines, errors } = readGiven(rows, draft, ours);
    const missing = {
      ...(draft.number.trim() === ''
        ? { 'note.number': { message: 'The number of the note is missing.' } }
        : {}),
      ...(from === '' ? { 'note.from': { message: 'Where it comes from is missing.' } } : {}),
      ...(to === '' ? { 'note.to': { message: 'Where it goes to is missing.' } } : {}),
      ...(lines.length === 0 && errors.length === 0 ? { lines: { message: 'Nothing was given.' } } : {}),
      ...Object.fromEntries(errors.map(({ field, message }) => [field, { message }])),
    };
    setWrong(missing);
    if (Object.keys(missing).length > 0) return;
    const id = crypto.randomUUID();
    given.mutate(
      { pick: list.id, id, number: draft.number.trim(), from, to, lines },
      { onSuccess: () => clear() },
    );
  };
  if (given.data !== undefined)
    return (
      <div className="side-words">
        <GivenTold answer={given.data} />
        <p>
          <Link href={`/yard/papers/${encodeURIComponent(given.data.note)}`}>The draft of its note</Link>{' '}
          holds the lines; nothing has moved before it is booked.
        </p>
      </div>
    );
  const error = (field: string) => errorFor(wrong, given.error, field);
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <div className="slip-fields">
        <TextField
          label="Number of the issue note"
          value={draft.number}
          maxLength={60}
          error={error('note.number')}
          onChange={(number) => edit({ number })}
        />
        <PlaceSelect
          label="From"
          value={from}
          kinds={looseKinds}
          error={error('note.from')}
          onChange={(place) => edit({ from: place })}
        />
        <PlaceSelect
          label="To"
          value={to}
          kinds={goingTo}
          error={error('note.to')}
          onChange={(place) => edit({ to: place })}
        />
      </div>
      <table className="side-table given-table">
        <thead>
          <tr>
            <th scope="col">Listed</th>
            <th scope="col" className="numeric">
              Given
            </th>
            <th scope="col">Given instead</th>
            <th scope="col" className="numeric">
              How many
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <GivenLine
              key={row.key}
              row={row}
              draft={draft}
              wrong={wrong}
              components={components.data?.components ?? []}
              onEdit={edit}
            />
          ))}
        </tbody>
      </table>
      {wrong['lines'] === undefined ? null : (
        <FieldError error={{ line: null, field: 'lines', message: wrong['lines'].message }} />
      )}
      <p className="soft">
        What is given in place of something is written beside its line and told to the designer. No rail of
        another length is built in before the designer has answered.
      </p>
      <FormEnd
        words="Keep as the draft of a note"
        busy={given.isPending}
        done={null}
        refused={given.error}
        fields={fields}
      />
    </form>
  );
}

function GivenLine(props: {
  readonly row: GivenRow;
  readonly draft: GivenDraft;
  readonly wrong: Readonly<Record<string, { readonly message: string }>>;
  readonly components: Parameters<typeof ComponentField>[0]['components'];
  readonly onEdit: (part: Partial<GivenDraft>) => void;
}): ReactNode {
  const { row, draft, wrong, onEdit } = props;
  const instead = draft.insteadOf[row.key] ?? { component: '', quantity: '' };
  const problems = [`given ${row.key}`, `instead ${row.key}`].flatMap((field) => {
    const found = wrong[field];
    return found === undefined ? [] : [{ field, line: null, message: found.message }];
  });
  const other = (part: Partial<typeof instead>): void =>
    onEdit({ insteadOf: { ...draft.insteadOf, [row.key]: { ...instead, ...part } } });
  return (
    <>
      <tr>
        <td>
          <b>
            {row.listed === 0 ? row.missing : row.listed} {row.component}
          </b>{' '}
          <span className="soft">
            {row.name}, {row.owner}
            {row.listed === 0 ? ', short' : ''}
          </span>
        </td>
        <td className="numeric">
          <input
            className="quantity"
            inputMode="numeric"
            aria-label={`Given of ${row.component} of ${row.owner}`}
            aria-invalid={problems.some(({ field }) => field.startsWith('given'))}
            value={draft.given[row.key] ?? String(row.listed)}
            onChange={(event) => onEdit({ given: { ...draft.given, [row.key]: event.target.value } })}
          />
        </td>
        <td>
          <ComponentField
            label={`Given in place of ${row.component} of ${row.owner}`}
            value={instead.component}
            invalid={problems.some(({ field }) => field.startsWith('instead'))}
            components={props.components}
            onChange={(component) => other({ component })}
          />
        </td>
        <td className="numeric">
          <input
            className="quantity"
            inputMode="numeric"
            aria-label={`How many in place of ${row.component} of ${row.owner}`}
            value={instead.quantity}
            onChange={(event) => other({ quantity: event.target.value })}
          />
        </td>
      </tr>
      {problems.length === 0 ? null : (
        <tr className="line-errors">
          <td colSpan={4}>
            {problems.map((error) => (
              <FieldError key={error.field} error={error} />
            ))}
          </td>
        </tr>
      )}
    </>
  );
}
