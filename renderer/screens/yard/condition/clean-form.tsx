// Books cleaning done of a quantity at one place: how many, and what they are then. Scrap asks for a second name.
import { type ReactNode, useMemo, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { errorFor, FormEnd, readMoment, TextField, whenHint } from '../gangs/form-parts.tsx';
import { useKept } from '../gangs/use-kept.ts';
import type { CleanRow } from './care-words.ts';
import { type OutcomeDraft, readOutcome } from './clean-draft.ts';

const fields = ['done', 'quantity', 'readyHidden', 'toRepair', 'scrapped', 'secondName', 'at'] as const;

interface CleanDraft extends OutcomeDraft {
  readonly secondName: string;
  readonly at: string;
}

export function CleanForm(given: { readonly row: CleanRow; readonly onDone: () => void }): ReactNode {
  const { row } = given;
  const clock = useJobClock();
  const clean = useCommand('yard.clean');
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const begin = useMemo(
    (): CleanDraft => ({
      done: String(row.quantity),
      readyHidden: '',
      toRepair: '',
      scrapped: '',
      secondName: '',
      at: '',
    }),
    [row.quantity],
  );
  const key = `clean ${row.component} ${row.owner} ${row.location} ${row.since ?? ''}`;
  const { draft, set, clear } = useKept<CleanDraft>(key, begin);
  const error = (field: string) => errorFor(wrong, clean.error, field);
  const edit = (part: Partial<CleanDraft>): void => {
    clean.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || clean.isPending) return;
    const read = readOutcome(draft);
    const at = readMoment(draft.at, clock);
    setWrong({
      ...(read.ok ? {} : { [read.error.field ?? 'done']: read.error }),
      ...(at.ok ? {} : { at: at.error }),
    });
    if (!read.ok || !at.ok) return;
    const { component, owner, location } = row;
    const secondName = draft.secondName.trim();
    clean.mutate(
      {
        component,
        owner,
        location,
        ...read.value,
        at: at.value,
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
        <TextField
          label="Done"
          value={draft.done}
          error={error('done') ?? error('quantity')}
          onChange={(done) => edit({ done })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(at) => edit({ at })}
        />
        <TextField
          label="of them good for hidden faces only"
          value={draft.readyHidden}
          placeholder="none"
          error={error('readyHidden')}
          onChange={(readyHidden) => edit({ readyHidden })}
        />
        <TextField
          label="of them to repair"
          value={draft.toRepair}
          placeholder="none"
          error={error('toRepair')}
          onChange={(toRepair) => edit({ toRepair })}
        />
        <TextField
          label="of them scrapped"
          value={draft.scrapped}
          placeholder="none"
          error={error('scrapped')}
          onChange={(scrapped) => edit({ scrapped })}
        />
        {draft.scrapped.trim() === '' && error('secondName') === undefined ? null : (
          <TextField
            label="Second name for the scrap"
            value={draft.secondName}
            maxLength={80}
            error={error('secondName')}
            onChange={(secondName) => edit({ secondName })}
          />
        )}
      </div>
      <p className="soft">The others came out ready, good for exposed faces.</p>
      <FormEnd
        words="Book cleaned"
        busy={clean.isPending}
        done={null}
        refused={clean.error}
        fields={fields}
      />
    </form>
  );
}
