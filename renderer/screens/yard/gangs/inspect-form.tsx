// An inspection of a piece of lifting gear: when, by whom, whether it passed, and until when that holds.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { readWhen } from '../../../parts/when-text.ts';
import { errorFor, FormEnd, SelectField, TextField } from './form-parts.tsx';
import { type GearRow, standingWords } from './gang-words.ts';
import { useKept } from './use-kept.ts';

const fields = ['inspectedOn', 'goodUntil', 'by'] as const;
const results = [
  ['passed', 'passed'],
  ['failed', 'failed'],
] as const;

interface InspectDraft {
  readonly inspectedOn: string;
  readonly goodUntil: string;
  readonly result: 'passed' | 'failed';
  readonly by: string;
  readonly remark: string;
}

export function InspectForm({ row }: { readonly row: GearRow }): ReactNode {
  const clock = useJobClock();
  const inspect = useCommand('gear.inspect');
  const [done, setDone] = useState<string | null>(null);
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const { draft, set, clear } = useKept<InspectDraft>(`inspect ${row.serial}`, {
    inspectedOn: '',
    goodUntil: '',
    result: 'passed',
    by: '',
    remark: '',
  });
  const error = (field: string) => errorFor(wrong, inspect.error, field);
  const edit = (part: Parameters<typeof set>[0]): void => {
    inspect.reset();
    setWrong({});
    setDone(null);
    set(part);
  };
  const book = (): void => {
    if (clock === null || inspect.isPending) return;
    const on = readWhen(draft.inspectedOn, clock.planFrom, clock.timeZone);
    // Only one that passed holds until a later day.
    const until = draft.result === 'failed' ? on : readWhen(draft.goodUntil, clock.planFrom, clock.timeZone);
    const by = draft.by.trim();
    const missing = {
      ...(on.ok ? {} : { inspectedOn: on.error }),
      ...(until.ok ? {} : { goodUntil: until.error }),
      ...(by === '' ? { by: { message: 'Who looked at it is missing.' } } : {}),
    };
    setWrong(missing);
    if (!on.ok || !until.ok || by === '') return;
    inspect.mutate(
      {
        serial: row.serial,
        inspectedOn: on.value.slice(0, 10),
        goodUntil: until.value.slice(0, 10),
        passed: draft.result === 'passed',
        by,
        remark: draft.remark.trim() === '' ? null : draft.remark.trim(),
      },
      {
        onSuccess: () => {
          clear();
          setDone('Entered.');
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
      <h3>Enter an inspection</h3>
      <p className="soft">Now {standingWords(row)}. Inspections are only added; the newest stands.</p>
      <div className="slip-fields">
        <TextField
          label="Inspected on"
          value={draft.inspectedOn}
          placeholder="as 3 Mar"
          error={error('inspectedOn')}
          onChange={(inspectedOn) => edit({ inspectedOn })}
        />
        <SelectField
          label="It"
          value={draft.result}
          options={results}
          onChange={(result) => edit({ result: result === '' ? 'passed' : result })}
        />
        {draft.result === 'failed' ? null : (
          <TextField
            label="Good until"
            value={draft.goodUntil}
            placeholder="as 3 Jun"
            error={error('goodUntil')}
            onChange={(goodUntil) => edit({ goodUntil })}
          />
        )}
        <TextField
          label="By whom"
          value={draft.by}
          maxLength={80}
          error={error('by')}
          onChange={(by) => edit({ by })}
        />
        <TextField
          label="Remark"
          className="wide"
          value={draft.remark}
          onChange={(remark) => edit({ remark })}
        />
      </div>
      <FormEnd
        words="Enter inspection"
        busy={inspect.isPending}
        done={done}
        refused={inspect.error}
        fields={fields}
      />
    </form>
  );
}
