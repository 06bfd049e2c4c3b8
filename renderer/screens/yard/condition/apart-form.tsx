// Sets pieces apart, or takes back pieces that were: with a reason each time.
import { type ReactNode, useMemo, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { ComponentField } from '../component-field.tsx';
import { Field } from '../field.tsx';
import {
  errorFor,
  FormEnd,
  PlaceSelect,
  readMoment,
  SelectField,
  TextField,
  whenHint,
} from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import { OwnerSelect } from './owner-select.tsx';
import type { ApartRow } from './care-words.ts';
import { heldKinds } from './held-kinds.ts';
import { readPieces } from './clean-draft.ts';

const fields = ['component', 'owner', 'location', 'quantity', 'why', 'at'] as const;
const conditions = [
  ['ready', 'ready'],
  ['ready-hidden', 'ready, hidden faces only'],
  ['to-clean', 'to clean'],
  ['to-repair', 'to repair'],
] as const;

interface ApartDraft {
  readonly component: string;
  readonly owner: string;
  readonly location: string;
  readonly quantity: string;
  readonly condition: (typeof conditions)[number][0];
  readonly why: string;
  readonly at: string;
}

export function ApartForm(given: { readonly row: ApartRow | null; readonly onDone: () => void }): ReactNode {
  const { row } = given;
  const clock = useJobClock();
  const components = useCore('component.list', {});
  const move = useCommand('yard.quarantine');
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const begin = useMemo(
    (): ApartDraft => ({
      component: row?.component ?? '',
      owner: row?.owner ?? '',
      location: row?.location ?? '',
      quantity: row === null ? '' : String(row.quantity),
      condition: 'ready',
      why: '',
      at: '',
    }),
    [row],
  );
  const key = row === null ? 'set apart' : `take back ${row.component} ${row.owner} ${row.location}`;
  const { draft, set, clear } = useKept<ApartDraft>(key, begin);
  const error = (field: string) =>
    errorFor(wrong, move.error, field) ?? errorFor(wrong, move.error, `movements.0.${field}`);
  const edit = (part: Partial<ApartDraft>): void => {
    move.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || move.isPending) return;
    const quantity = readPieces(draft.quantity, 'quantity');
    const at = readMoment(draft.at, clock);
    const missing = {
      ...(draft.component.trim() === '' ? { component: { message: 'The component is missing.' } } : {}),
      ...(draft.owner === '' ? { owner: { message: 'Whose pieces they are is missing.' } } : {}),
      ...(draft.location === '' ? { location: { message: 'Where they lie is missing.' } } : {}),
      ...(quantity.ok && quantity.value > 0
        ? {}
        : { quantity: quantity.ok ? { message: 'How many is missing.' } : quantity.error }),
      ...(at.ok ? {} : { at: at.error }),
    };
    setWrong(missing);
    if (Object.keys(missing).length > 0 || !quantity.ok || !at.ok) return;
    move.mutate(
      {
        way: row === null ? 'in' : 'out',
        component: draft.component.trim(),
        owner: draft.owner,
        location: draft.location,
        quantity: quantity.value,
        condition: draft.condition,
        why: draft.why,
        at: at.value,
      },
      {
        onSuccess: () => {
          clear();
          given.onDone();
        },
      },
    );
  };
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        book();
      }}
    >
      <div className="slip-fields">
        {row === null ? (
          <>
            <Field label="Component" error={error('component')}>
              <ComponentField
                label="Component"
                value={draft.component}
                invalid={error('component') !== undefined}
                components={components.data?.components ?? []}
                onChange={(component) => edit({ component })}
              />
            </Field>
            <OwnerSelect value={draft.owner} error={error('owner')} onChange={(owner) => edit({ owner })} />
            <PlaceSelect
              label="Where they lie"
              value={draft.location}
              kinds={heldKinds}
              error={error('location') ?? error('from')}
              onChange={(location) => edit({ location })}
            />
          </>
        ) : null}
        <TextField
          label="Pieces"
          value={draft.quantity}
          error={error('quantity')}
          onChange={(quantity) => edit({ quantity })}
        />
        <SelectField
          label={row === null ? 'Booked until now as' : 'They are then'}
          value={draft.condition}
          options={conditions}
          onChange={(condition) => edit({ condition: condition === '' ? 'ready' : condition })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(at) => edit({ at })}
        />
        <TextField
          label={row === null ? 'Why' : 'What was found'}
          className="wide"
          value={draft.why}
          error={error('why')}
          onChange={(why) => edit({ why })}
        />
      </div>
      <FormEnd
        words={row === null ? 'Set apart' : 'Take back'}
        busy={move.isPending}
        done={null}
        refused={move.error}
        fields={[...fields, 'movements.0.quantity', 'movements.0.from', 'movements.0.component']}
      />
    </form>
  );
}
