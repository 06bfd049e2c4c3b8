// Entering a place or an owner that a note needs: another job, a supplier's depot, an owner of pieces that are not
// ours. The same code again renames it.
import { type ReactNode, useState } from 'react';
import { type Input, useCommand } from '../../../client/core.tsx';
import { errorFor, FormEnd, SelectField, TextField } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import { placeKindWords } from '../yard-words.ts';
import { atForm } from './form-refusal.ts';

type Place = Input<'yard.placeSave'>['place'];
type LocationKind = Extract<Place, { what: 'location' }>['kind'];
type OwnerKind = Extract<Place, { what: 'owner' }>['kind'];

const locationKinds: readonly (readonly [LocationKind, string])[] = (
  ['other-job', 'supplier', 'yard', 'rack', 'site', 'repair', 'scrap', 'lost'] as const
).map((kind) => [kind, placeKindWords[kind]] as const);
const ownerKinds: readonly (readonly [OwnerKind, string])[] = [
  ['others', 'others: found, not ours'],
  ['supplier', 'a supplier'],
  ['ours', 'ours'],
];
const whats: readonly (readonly ['location' | 'owner', string])[] = [
  ['location', 'a place'],
  ['owner', 'an owner'],
];
const empty = {
  what: 'location' as 'location' | 'owner',
  code: '',
  name: '',
  locationKind: 'other-job' as LocationKind,
  ownerKind: 'others' as OwnerKind,
  agreement: '',
};

export function PlaceForm(): ReactNode {
  const save = useCommand('yard.placeSave');
  const { draft, set, clear } = useKept('place', empty);
  const [wrong, setWrong] = useState<Readonly<Record<string, { message: string }>>>({});
  const [done, setDone] = useState<string | null>(null);
  const refused = atForm(save.error, (field) => field.replace(/^place\./u, ''));
  const at = (field: string) => errorFor(wrong, refused, field);
  const change = (part: Partial<typeof empty>): void => {
    setDone(null);
    setWrong({});
    save.reset();
    set(part);
  };
  const submit = (): void => {
    const [code, name, agreement] = [draft.code.trim(), draft.name.trim(), draft.agreement.trim()];
    const found = {
      ...(code === '' ? { code: { message: 'The code is missing.' } } : {}),
      ...(name === '' ? { name: { message: 'The name is missing.' } } : {}),
    };
    setWrong(found);
    if (Object.keys(found).length > 0 || save.isPending) return;
    const place: Place =
      draft.what === 'location'
        ? { what: 'location', code, name, kind: draft.locationKind }
        : {
            what: 'owner',
            code,
            name,
            kind: draft.ownerKind,
            agreement: agreement === '' ? null : agreement,
          };
    save.mutate(
      { place },
      {
        onSuccess: (saved) => {
          clear();
          setDone(`Entered: ${saved.code}.`);
        },
      },
    );
  };
  return (
    <form
      className="slip"
      aria-label="Enter a place or an owner"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <div className="slip-fields">
        <SelectField
          label="What"
          value={draft.what}
          options={whats}
          onChange={(what) => change({ what: what === 'owner' ? 'owner' : 'location' })}
        />
        {draft.what === 'location' ? (
          <SelectField
            label="Kind"
            value={draft.locationKind}
            options={locationKinds}
            error={at('kind')}
            onChange={(kind) => change({ locationKind: kind === '' ? 'other-job' : kind })}
          />
        ) : (
          <SelectField
            label="Kind"
            value={draft.ownerKind}
            options={ownerKinds}
            error={at('kind')}
            onChange={(kind) => change({ ownerKind: kind === '' ? 'others' : kind })}
          />
        )}
        <TextField
          label="Code"
          maxLength={40}
          value={draft.code}
          error={at('code')}
          onChange={(code) => change({ code })}
        />
        <TextField
          label="Name"
          maxLength={120}
          value={draft.name}
          error={at('name')}
          onChange={(name) => change({ name })}
        />
        {draft.what === 'owner' ? (
          <TextField
            label="Agreement"
            maxLength={60}
            value={draft.agreement}
            onChange={(agreement) => change({ agreement })}
          />
        ) : null}
      </div>
      <p className="soft">
        A supplier’s depot bears the code of its owner: then what comes from it is theirs, and only theirs
        goes back to it. A code that is there already is given the new name.
      </p>
      <FormEnd
        words="Enter it"
        busy={save.isPending}
        done={done}
        refused={refused}
        fields={['code', 'name', 'kind']}
      />
    </form>
  );
}
