// Books a repair done: what its pieces are then, where, and how long it took.
import { type ReactNode, useMemo, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { errorFor, FormEnd, PlaceSelect, readMoment, TextField, whenHint } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import type { RepairRow } from './care-words.ts';
import { readHours, readOutcome } from './clean-draft.ts';
import { handKinds } from './held-kinds.ts';

const fields = [
  'done',
  'quantity',
  'readyHidden',
  'scrapped',
  'hours',
  'backTo',
  'secondName',
  'at',
] as const;

interface FinishDraft {
  readonly readyHidden: string;
  readonly scrapped: string;
  readonly hours: string;
  readonly backTo: string;
  readonly secondName: string;
  readonly at: string;
}

export function FinishForm(given: { readonly row: RepairRow; readonly onDone: () => void }): ReactNode {
  const { row } = given;
  const clock = useJobClock();
  const finish = useCommand('repair.finish');
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const begin = useMemo(
    (): FinishDraft => ({
      readyHidden: '',
      scrapped: '',
      hours: row.hours === null ? '' : String(row.hours),
      backTo: '',
      secondName: '',
      at: '',
    }),
    [row.hours],
  );
  const { draft, set, clear } = useKept<FinishDraft>(`finish ${row.id} ${row.version}`, begin);
  const error = (field: string) => errorFor(wrong, finish.error, field);
  const edit = (part: Partial<FinishDraft>): void => {
    finish.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || finish.isPending) return;
    const read = readOutcome({ ...draft, done: String(row.quantity), toRepair: '' });
    const hours = readHours(draft.hours, 'hours');
    const at = readMoment(draft.at, clock);
    setWrong({
      ...(read.ok
        ? {}
        : { [read.error.field === 'done' ? 'scrapped' : (read.error.field ?? 'scrapped')]: read.error }),
      ...(hours.ok ? {} : { hours: hours.error }),
      ...(at.ok ? {} : { at: at.error }),
    });
    if (!read.ok || !hours.ok || !at.ok) return;
    const { ready, readyHidden, scrapped } = read.value;
    const secondName = draft.secondName.trim();
    finish.mutate(
      {
        repair: row.id,
        version: row.version,
        at: at.value,
        ready,
        readyHidden,
        scrapped,
        hours: hours.value,
        ...(draft.backTo === '' ? {} : { backTo: draft.backTo }),
        ...(secondName === '' ? {} : { secondName }),
      },
      {
        onSuccess: () => {
          clear();
          given.onDone();
        },
      },
    );
  };
  const needsSecond = draft.scrapped.trim() !== '' || row.partsFrom.length > 0;
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        book();
      }}
    >
      <h3>Book it done</h3>
      <p className="soft">
        {row.quantity === 1 ? 'The piece' : `All ${row.quantity} pieces`} ready, but for those named here.
      </p>
      <div className="slip-fields">
        <TextField
          label="good for hidden faces only"
          value={draft.readyHidden}
          placeholder="none"
          error={error('readyHidden')}
          onChange={(readyHidden) => edit({ readyHidden })}
        />
        <TextField
          label="scrapped"
          value={draft.scrapped}
          placeholder="none"
          error={error('scrapped') ?? error('quantity')}
          onChange={(scrapped) => edit({ scrapped })}
        />
        <TextField
          label="Hours it took"
          value={draft.hours}
          error={error('hours')}
          onChange={(hours) => edit({ hours })}
        />
        <PlaceSelect
          label="Back to"
          value={draft.backTo}
          kinds={handKinds}
          error={error('backTo')}
          onChange={(backTo) => edit({ backTo })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(at) => edit({ at })}
        />
        {needsSecond || error('secondName') !== undefined ? (
          <TextField
            label="Second name for the scrap"
            value={draft.secondName}
            maxLength={80}
            error={error('secondName')}
            onChange={(secondName) => edit({ secondName })}
          />
        ) : null}
      </div>
      <FormEnd words="Book done" busy={finish.isPending} done={null} refused={finish.error} fields={fields} />
    </form>
  );
}
