// Re-gangs a gang: what would be taken out and put in stands below before it is booked.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { type Condition, conditionWords } from '../yard-words.ts';
import {
  errorFor,
  FormEnd,
  looseKinds,
  PlaceSelect,
  readMoment,
  SelectField,
  TextField,
  whenHint,
} from './form-parts.tsx';
import { GangLines } from './gang-lines-table.tsx';
import type { GangRow } from './gang-words.ts';
import { TurnSelect } from './turn-select.tsx';
import { useKept } from './use-kept.ts';

export type FoundCondition = Exclude<Condition, 'scrapped'>;
const found = ['to-clean', 'ready', 'ready-hidden', 'to-repair', 'quarantine'] as const;
export const foundConditions = found.map((each) => [each, conditionWords[each]] as const);

const fields = ['design', 'from', 'to', 'at', 'turn'] as const;

interface RegangDraft {
  readonly design: string;
  readonly from: string;
  readonly to: string;
  readonly condition: FoundCondition;
  readonly at: string;
  readonly turn: string;
}

export function RegangForm({
  gang,
  onDone,
}: {
  readonly gang: GangRow;
  readonly onDone: () => void;
}): ReactNode {
  const designs = useCore('design.list', {});
  const places = useCore('yard.places', {});
  const clock = useJobClock();
  const job = useJob();
  const regang = useCommand('gang.regang');
  const yard = places.data?.locations.find((place) => place.kind === 'yard')?.code ?? '';
  const { draft, set, clear } = useKept<RegangDraft>(`regang ${gang.gang}`, {
    design: '',
    from: '',
    to: '',
    condition: 'to-clean',
    at: '',
    turn: '',
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const from = draft.from === '' ? yard : draft.from;
  const to = draft.to === '' ? from : draft.to;
  const error = (field: string) => errorFor(wrong, regang.error, field);
  const at = clock === null || draft.at.trim() === '' ? null : readMoment(draft.at, clock);
  const edit = (part: Parameters<typeof set>[0]): void => {
    regang.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || regang.isPending) return;
    const when = readMoment(draft.at, clock);
    const missing = {
      ...(draft.design === '' ? { design: { message: 'The design is missing.' } } : {}),
      ...(when.ok ? {} : { at: when.error }),
    };
    setWrong(missing);
    if (!when.ok || Object.keys(missing).length > 0) return;
    const turn = draft.turn === '' ? {} : { turn: draft.turn, job: job.code };
    regang.mutate(
      {
        gang: gang.gang,
        design: draft.design,
        from,
        to,
        condition: draft.condition,
        at: when.value,
        ...turn,
      },
      {
        onSuccess: () => {
          clear();
          onDone();
        },
      },
    );
  };
  return (
    <form
      className="slip act-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        book();
      }}
    >
      <div className="slip-fields">
        <SelectField
          label="Into the design"
          value={draft.design}
          none="choose …"
          options={(designs.data?.designs ?? []).map(
            (each) => [each.code, `${each.code} · ${each.name}`] as const,
          )}
          error={error('design')}
          onChange={(design) => edit({ design, turn: '' })}
        />
        <TurnSelect
          label="For the turn"
          value={draft.turn}
          design={draft.design}
          error={error('turn')}
          onChange={(turn) => edit({ turn })}
        />
        <PlaceSelect
          label="Put in from"
          value={from}
          kinds={looseKinds}
          error={error('from')}
          onChange={(code) => edit({ from: code })}
        />
        <PlaceSelect
          label="Taken out to"
          value={to}
          kinds={looseKinds}
          error={error('to')}
          onChange={(code) => edit({ to: code })}
        />
        <SelectField
          label="What is taken out is"
          value={draft.condition}
          options={foundConditions}
          onChange={(condition) => edit({ condition: condition === '' ? 'to-clean' : condition })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(text) => edit({ at: text })}
        />
      </div>
      <GangLines design={draft.design} from={from} gang={gang.gang} at={at?.ok === true ? at.value : null} />
      <FormEnd
        words={`Re-gang ${gang.gang}`}
        busy={regang.isPending}
        done={null}
        refused={regang.error}
        fields={fields}
        onCancel={onDone}
      />
    </form>
  );
}
