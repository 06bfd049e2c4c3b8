// A piece of lifting gear by its serial number: entered, or said to be at another place. Books nothing.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { errorFor, FormEnd, PlaceSelect, SelectField, standingKinds, TextField } from './form-parts.tsx';
import type { GearRow } from './gang-words.ts';
import { useKept } from './use-kept.ts';

const fields = ['serial', 'component', 'owner', 'place'] as const;

export function GearForm(given: {
  /** Null for a new piece. */
  readonly row: GearRow | null;
  readonly onDone: (serial: string) => void;
}): ReactNode {
  const { row } = given;
  const components = useCore('component.list', {});
  const places = useCore('yard.places', {});
  const save = useCommand('gear.save');
  const [done, setDone] = useState<string | null>(null);
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const yard = places.data?.locations.find((place) => place.kind === 'yard')?.code ?? '';
  const ours = places.data?.owners.find((owner) => owner.kind === 'ours')?.code ?? '';
  const hooks = (components.data?.components ?? []).filter((each) => each.kind === 'hook');
  const { draft, set, clear } = useKept(`gear ${row?.serial ?? ''}`, {
    serial: '',
    component: row?.component ?? '',
    owner: row?.owner ?? '',
    place: row?.place ?? '',
  });
  const component = draft.component === '' ? (hooks[0]?.code ?? '') : draft.component;
  const owner = draft.owner === '' ? ours : draft.owner;
  const place = draft.place === '' ? yard : draft.place;
  const error = (field: string) => errorFor(wrong, save.error, field);
  const edit = (part: Parameters<typeof set>[0]): void => {
    save.reset();
    setWrong({});
    setDone(null);
    set(part);
  };
  const book = (): void => {
    if (save.isPending) return;
    const serial = row?.serial ?? draft.serial.trim();
    const missing = serial === '' ? { serial: { message: 'The serial number is missing.' } } : {};
    setWrong(missing);
    if (serial === '') return;
    save.mutate(
      { serial, component, owner, place, isNew: row === null },
      {
        onSuccess: () => {
          clear();
          if (row === null) given.onDone(serial);
          else setDone(`${serial} is at ${place}.`);
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
      {row === null ? null : <h3>Where it is</h3>}
      <div className="slip-fields">
        {row === null ? (
          <TextField
            label="Serial number"
            value={draft.serial}
            maxLength={40}
            error={error('serial')}
            onChange={(serial) => edit({ serial })}
          />
        ) : null}
        <SelectField
          label="Component"
          value={component}
          options={(components.data?.components ?? [])
            .toSorted((one, other) => Number(other.kind === 'hook') - Number(one.kind === 'hook'))
            .map((each) => [each.code, `${each.code} · ${each.name}`] as const)}
          error={error('component')}
          onChange={(code) => edit({ component: code })}
        />
        <SelectField
          label="Whose"
          value={owner}
          options={(places.data?.owners ?? []).map(
            (each) => [each.code, `${each.code} · ${each.name}`] as const,
          )}
          error={error('owner')}
          onChange={(code) => edit({ owner: code })}
        />
        <PlaceSelect
          label="Place"
          value={place}
          kinds={[...standingKinds, 'container', 'repair']}
          error={error('place')}
          onChange={(code) => edit({ place: code })}
        />
      </div>
      <p className="soft">The ledger counts pieces; this only says where the number is.</p>
      <FormEnd
        words={row === null ? 'Enter' : 'Save'}
        busy={save.isPending}
        done={done}
        refused={save.error}
        fields={fields}
      />
    </form>
  );
}
