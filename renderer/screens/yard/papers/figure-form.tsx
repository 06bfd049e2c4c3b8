// Adding a signed figure: whose it is, of which day, how many, and who signed it.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { timeWords } from '../../../parts/time-words.ts';
import { readWhen } from '../../../parts/when-text.ts';
import { ComponentField } from '../component-field.tsx';
import { Field } from '../field.tsx';
import { errorFor, FormEnd, SelectField, TextField } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import { atForm } from './form-refusal.ts';
import { readPieces } from './note-draft.ts';

type Side = 'owner' | 'ours' | 'agreed';

const sides: readonly (readonly [Side, string])[] = [
  ['owner', 'the owner says'],
  ['ours', 'we say'],
  ['agreed', 'both agreed'],
];
const fields = ['owner', 'component', 'whose', 'asOf', 'quantity', 'signedBy'];
const empty = {
  owner: '',
  component: '',
  whose: 'owner' as Side | '',
  asOf: '',
  quantity: '',
  signedBy: '',
  paper: '',
  remark: '',
};

export function FigureForm(given: {
  readonly owner: string | null;
  readonly component: string | null;
  readonly onDone: (key: string) => void;
}): ReactNode {
  const places = useCore('yard.places', {});
  const list = useCore('component.list', {});
  const clock = useJobClock();
  const add = useCommand('figure.add');
  const [begin] = useState({ ...empty, owner: given.owner ?? '', component: given.component ?? '' });
  const { draft, set, clear } = useKept(`figure ${given.owner} ${given.component}`, begin);
  const [wrong, setWrong] = useState<
    Readonly<Record<string, { message: string; hint?: string | undefined }>>
  >({});
  const [done, setDone] = useState<string | null>(null);
  const refused = atForm(add.error, (field) => field.replace(/^figure\./u, ''));
  const at = (field: string) => errorFor(wrong, refused, field);
  const change = (part: Partial<typeof empty>): void => {
    setDone(null);
    setWrong({});
    add.reset();
    set(part);
  };
  const submit = (): void => {
    if (clock === null || add.isPending) return;
    const found: Record<string, { message: string; hint?: string | undefined }> = {};
    for (const [field, words] of missing)
      if (draft[field].trim() === '') found[field] = { message: `${words} is missing.` };
    const day = readWhen(draft.asOf, clock.planFrom, clock.timeZone);
    if (draft.asOf.trim() !== '' && !day.ok) found['asOf'] = day.error;
    const quantity = readPieces(draft.quantity, draft.component);
    if (draft.quantity.trim() !== '' && !quantity.ok) found['quantity'] = quantity.error;
    setWrong(found);
    if (Object.keys(found).length > 0 || !day.ok || !quantity.ok || draft.whose === '') return;
    const figure = {
      owner: draft.owner,
      component: draft.component.trim(),
      asOf: timeWords(clock.timeZone).date(day.value),
      whose: draft.whose,
      quantity: quantity.value,
      signedBy: draft.signedBy.trim(),
      paper: draft.paper.trim() === '' ? null : draft.paper.trim(),
      remark: draft.remark.trim() === '' ? null : draft.remark.trim(),
    };
    add.mutate(
      { figure },
      {
        onSuccess: (added) => {
          clear();
          setDone('Added.');
          given.onDone(`${added.owner} ${added.component}`);
        },
      },
    );
  };
  return (
    <form
      className="slip"
      aria-label="Add a signed figure"
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <div className="slip-fields">
        <SelectField
          label="Pieces of"
          value={draft.owner}
          none="choose …"
          options={(places.data?.owners ?? []).map(({ code, name }) => [code, `${code} · ${name}`] as const)}
          error={at('owner')}
          onChange={(owner) => change({ owner })}
        />
        <Field label="Component" error={at('component')}>
          <ComponentField
            label="Component"
            value={draft.component}
            invalid={at('component') !== undefined}
            components={list.data?.components ?? []}
            onChange={(component) => change({ component })}
          />
        </Field>
        <SelectField
          label="Whose figure"
          value={draft.whose}
          options={sides}
          error={at('whose')}
          onChange={(whose) => change({ whose })}
        />
        <TextField
          label="Pieces with us"
          value={draft.quantity}
          error={at('quantity')}
          onChange={(quantity) => change({ quantity })}
        />
        <TextField
          label="Of the day"
          placeholder="as 1 Mar"
          value={draft.asOf}
          error={at('asOf')}
          onChange={(asOf) => change({ asOf })}
        />
        <TextField
          label="Signed by"
          maxLength={80}
          value={draft.signedBy}
          error={at('signedBy')}
          onChange={(signedBy) => change({ signedBy })}
        />
        <TextField label="Paper" maxLength={64} value={draft.paper} onChange={(paper) => change({ paper })} />
        <TextField label="Remark" value={draft.remark} onChange={(remark) => change({ remark })} />
      </div>
      <p className="soft">A signed figure is never changed; a later one is added.</p>
      <FormEnd words="Add it" busy={add.isPending} done={done} refused={refused} fields={fields} />
    </form>
  );
}

const missing = [
  ['owner', 'Whose pieces'],
  ['component', 'The component'],
  ['asOf', 'The day it speaks of'],
  ['quantity', 'How many'],
  ['signedBy', 'Who signed it'],
] as const;
