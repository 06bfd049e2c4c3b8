// Enters a repair, or changes one that is open.
import { type ReactNode, useMemo, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import type { JobClock } from '../../../parts/job-clock.ts';
import { useJobClock, useTimeWords } from '../../../parts/job-time.ts';
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
import type { RepairRow, WaitingRow } from './care-words.ts';
import { DonorLines } from './donor-lines.tsx';
import { heldKinds } from './held-kinds.ts';
import { OwnerSelect } from './owner-select.tsx';
import { beginRepair, readRepair, type RepairDraft } from './repair-draft.ts';

const fields = ['component', 'owner', 'place', 'quantity', 'fault', 'hours', 'dueAt', 'partsFrom'] as const;
const conditions = [
  ['to-repair', 'to repair'],
  ['ready', 'ready'],
  ['ready-hidden', 'ready, hidden faces only'],
  ['to-clean', 'to clean'],
  ['quarantine', 'quarantine'],
] as const;

interface WrittenRepair {
  /** An open repair, pieces that wait for one, or nothing yet. */
  readonly of: RepairRow | WaitingRow | null;
  readonly onDone: () => void;
}

export function RepairForm(given: WrittenRepair): ReactNode {
  const clock = useJobClock();
  // The day it is due stands in the field in words: those are known once the clock is.
  return clock === null ? null : <KnownForm {...given} clock={clock} />;
}

function KnownForm({ of, onDone, clock }: WrittenRepair & { readonly clock: JobClock }): ReactNode {
  const words = useTimeWords();
  const components = useCore('component.list', {});
  const save = useCommand('repair.save');
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const known = of !== null && 'fault' in of ? of : null;
  const begin = useMemo(() => beginRepair(of, words.full), [of, words]);
  const key =
    known === null
      ? `repair of ${begin.component} ${begin.owner} ${begin.place}`
      : `repair ${known.id} ${known.version}`;
  const { draft, set, clear } = useKept<RepairDraft>(key, begin);
  const error = (field: string) => errorFor(wrong, save.error, field);
  const edit = (part: Partial<RepairDraft>): void => {
    save.reset();
    setWrong({});
    set(part);
  };
  const keep = (): void => {
    if (save.isPending) return;
    const read = readRepair(draft, clock.timeZone, clock.planFrom);
    const at = readMoment(draft.at, clock);
    setWrong({ ...read.wrong, ...(at.ok ? {} : { at: at.error }) });
    if (read.repair === null || !at.ok) return;
    save.mutate(
      {
        id: known?.id ?? crypto.randomUUID(),
        ...(known === null ? {} : { version: known.version }),
        repair: read.repair,
        was: draft.was,
        ...(draft.sendTo === '' ? {} : { sendTo: draft.sendTo }),
        at: at.value,
      },
      {
        onSuccess: () => {
          clear();
          onDone();
        },
      },
    );
  };
  const isNew = of === null;
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
        {isNew ? (
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
              value={draft.place}
              kinds={heldKinds}
              error={error('place')}
              onChange={(place) => edit({ place })}
            />
            <SelectField
              label="Booked until now as"
              value={draft.was}
              options={conditions}
              onChange={(was) => edit({ was: was === '' ? 'to-repair' : was })}
            />
          </>
        ) : null}
        <TextField
          label="Pieces"
          value={draft.quantity}
          error={error('quantity')}
          onChange={(quantity) => edit({ quantity })}
        />
        <TextField
          label="Hours it takes"
          value={draft.hours}
          placeholder="not said"
          error={error('hours')}
          onChange={(hours) => edit({ hours })}
        />
        <TextField
          label="What is wrong"
          className="wide"
          value={draft.fault}
          error={error('fault')}
          onChange={(fault) => edit({ fault })}
        />
        <TextField
          label="Due back"
          value={draft.due}
          placeholder="not said: no plan counts on it"
          error={error('dueAt')}
          onChange={(due) => edit({ due })}
        />
        <PlaceSelect
          label="Send them to (else they stay)"
          value={draft.sendTo}
          kinds={['repair']}
          error={error('sendTo')}
          onChange={(sendTo) => edit({ sendTo })}
        />
        {draft.sendTo === '' && draft.was === 'to-repair' ? null : (
          <TextField
            label="When"
            value={draft.at}
            placeholder={whenHint}
            error={error('at')}
            onChange={(at) => edit({ at })}
          />
        )}
        <TextField
          label="Remark"
          className="wide"
          value={draft.remark}
          onChange={(remark) => edit({ remark })}
        />
      </div>
      <DonorLines donors={draft.donors} error={error('partsFrom')} onChange={(donors) => edit({ donors })} />
      <FormEnd
        words={known === null ? 'Enter repair' : 'Keep changes'}
        busy={save.isPending}
        done={null}
        refused={save.error}
        fields={fields}
      />
    </form>
  );
}
