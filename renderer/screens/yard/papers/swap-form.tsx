// Like pieces of two owners that were taken for each other: so many of each change places, each keeps its owner.
import { type ReactNode, useState } from 'react';
import { conditions } from '../../../../core/yard/movement.ts';
import { useCommand, useCore } from '../../../client/core.tsx';
import { ComponentField } from '../component-field.tsx';
import { Field } from '../field.tsx';
import { errorFor, FormEnd, SelectField, TextField } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import { conditionWords } from '../yard-words.ts';
import { atForm } from './form-refusal.ts';
import { readPieces } from './note-draft.ts';

const empty = {
  component: '',
  quantity: '',
  oneOwner: '',
  oneLocation: '',
  oneCondition: 'ready',
  otherOwner: '',
  otherLocation: '',
  otherCondition: 'ready',
  remark: '',
};
type Draft = typeof empty;
const required: readonly (readonly [keyof Draft, string])[] = [
  ['component', 'The component'],
  ['quantity', 'How many'],
  ['oneOwner', 'Whose pieces'],
  ['oneLocation', 'Where they are'],
  ['otherOwner', 'Whose pieces'],
  ['otherLocation', 'Where they are'],
  ['remark', 'Why'],
];
/** As the core names the fields of a swap, and as this form does. */
const named: Readonly<Record<string, keyof Draft>> = {
  'one.owner': 'oneOwner',
  'other.owner': 'otherOwner',
  'one.location': 'oneLocation',
  'other.location': 'otherLocation',
};

export function SwapForm(): ReactNode {
  const places = useCore('yard.places', {});
  const list = useCore('component.list', {});
  const swap = useCommand('yard.swap');
  const { draft, set, clear } = useKept('swap', empty);
  const [wrong, setWrong] = useState<
    Readonly<Record<string, { message: string; hint?: string | undefined }>>
  >({});
  const [done, setDone] = useState<string | null>(null);
  const refused = atForm(swap.error, (field) => named[field] ?? field);
  const at = (field: keyof Draft) => errorFor(wrong, refused, field);
  const change = (part: Partial<Draft>): void => {
    setDone(null);
    setWrong({});
    swap.reset();
    set(part);
  };
  const submit = (): void => {
    const found: Record<string, { message: string; hint?: string | undefined }> = {};
    for (const [field, words] of required)
      if (draft[field].trim() === '') found[field] = { message: `${words} is missing.` };
    const quantity = readPieces(draft.quantity, draft.component);
    if (draft.quantity.trim() !== '' && !quantity.ok) found['quantity'] = quantity.error;
    setWrong(found);
    if (Object.keys(found).length > 0 || !quantity.ok || swap.isPending) return;
    swap.mutate(
      {
        component: draft.component.trim(),
        quantity: quantity.value,
        one: {
          owner: draft.oneOwner,
          location: draft.oneLocation,
          condition: conditionAt(draft.oneCondition),
        },
        other: {
          owner: draft.otherOwner,
          location: draft.otherLocation,
          condition: conditionAt(draft.otherCondition),
        },
        remark: draft.remark.trim(),
      },
      {
        onSuccess: () => {
          clear();
          setDone('Swapped: each is where the other was.');
        },
      },
    );
  };
  const owners = (places.data?.owners ?? []).map(({ code, name }) => [code, `${code} · ${name}`] as const);
  const locations = (places.data?.locations ?? []).map(
    ({ code, name }) => [code, `${code} · ${name}`] as const,
  );
  const side = (which: 'one' | 'other', words: string): ReactNode => (
    <fieldset className="swap-side">
      <legend>{words}</legend>
      <SelectField
        label="Pieces of"
        value={draft[`${which}Owner`]}
        none="choose …"
        options={owners}
        error={at(`${which}Owner`)}
        onChange={(owner) => change({ [`${which}Owner`]: owner })}
      />
      <SelectField
        label="They are booked at"
        value={draft[`${which}Location`]}
        none="choose …"
        options={locations}
        error={at(`${which}Location`)}
        onChange={(location) => change({ [`${which}Location`]: location })}
      />
      <SelectField
        label="Condition"
        value={draft[`${which}Condition`]}
        options={conditions.map((each) => [each, conditionWords[each]] as const)}
        onChange={(condition) => change({ [`${which}Condition`]: condition })}
      />
    </fieldset>
  );
  return (
    <form
      className="slip"
      aria-label="Swap like pieces between owners"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <div className="slip-fields">
        <Field label="Component" error={at('component')}>
          <ComponentField
            label="Component"
            value={draft.component}
            invalid={at('component') !== undefined}
            components={list.data?.components ?? []}
            onChange={(component) => change({ component })}
          />
        </Field>
        <TextField
          label="How many of each"
          value={draft.quantity}
          error={at('quantity')}
          onChange={(quantity) => change({ quantity })}
        />
        {side('one', 'One owner')}
        {side('other', 'The other')}
        <TextField
          className="wide"
          label="Why"
          placeholder="as: ours went back in place of theirs"
          value={draft.remark}
          error={at('remark')}
          onChange={(remark) => change({ remark })}
        />
      </div>
      <p className="soft">
        After it the pieces of each owner are booked where the other’s were, in that condition; nobody has
        more or less.
      </p>
      <FormEnd
        words="Swap them"
        busy={swap.isPending}
        done={done}
        refused={refused}
        fields={Object.keys(empty)}
      />
    </form>
  );
}

function conditionAt(text: string): (typeof conditions)[number] {
  return conditions.find((each) => each === text) ?? 'ready';
}
