// Builds a gang: which design, under which tag, from which place, for which turn; with its pieces and what is short
// shown before it is booked.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
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
import { type GangRow, type Laying, layingWords } from './gang-words.ts';
import { TurnSelect } from './turn-select.tsx';
import { useKept } from './use-kept.ts';

const fields = ['gang', 'design', 'from', 'at', 'turn'] as const;
const layings = [
  ['laid-down', layingWords['laid-down']],
  ['upright', layingWords.upright],
] as const;

interface BuildDraft {
  readonly design: string;
  readonly gang: string;
  readonly from: string;
  readonly at: string;
  readonly laying: Laying;
  readonly turn: string;
  readonly remark: string;
}

export function BuildForm(given: {
  /** A gang that was broken down and is built again under its tag; null for a new one. */
  readonly tag: GangRow | null;
  readonly nextTags: Readonly<Record<string, string>>;
  readonly onBuilt: (tag: string) => void;
}): ReactNode {
  const { tag } = given;
  const designs = useCore('design.list', {});
  const places = useCore('yard.places', {});
  const clock = useJobClock();
  const job = useJob();
  const build = useCommand('gang.build');
  const yard = places.data?.locations.find((place) => place.kind === 'yard')?.code ?? '';
  const { draft, set, clear } = useKept<BuildDraft>(`build ${tag?.gang ?? ''}`, {
    design: tag?.design ?? '',
    gang: tag?.gang ?? '',
    from: '',
    at: '',
    laying: 'laid-down',
    turn: '',
    remark: '',
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const gang = draft.gang.trim() === '' ? (given.nextTags[draft.design] ?? '') : draft.gang.trim();
  const from = draft.from === '' ? yard : draft.from;
  const error = (field: string) => errorFor(wrong, build.error, field);
  const at = clock === null || draft.at.trim() === '' ? null : readMoment(draft.at, clock);
  const edit = (part: Parameters<typeof set>[0]): void => {
    build.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || build.isPending) return;
    const when = readMoment(draft.at, clock);
    const missing = {
      ...(draft.design === '' ? { design: { message: 'The design is missing.' } } : {}),
      ...(gang === '' ? { gang: { message: 'The tag is missing.' } } : {}),
      ...(from === '' ? { from: { message: 'Where its pieces come from is missing.' } } : {}),
      ...(when.ok ? {} : { at: when.error }),
    };
    setWrong(missing);
    if (!when.ok || Object.keys(missing).length > 0) return;
    build.mutate(
      {
        gang,
        design: draft.design,
        from,
        at: when.value,
        laying: draft.laying,
        job: job.code,
        ...(draft.turn === '' ? {} : { turn: draft.turn }),
        ...(draft.remark.trim() === '' ? {} : { remark: draft.remark.trim() }),
      },
      {
        onSuccess: (done) => {
          clear();
          given.onBuilt(done.gang);
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
        <SelectField
          label="Design"
          value={draft.design}
          none="choose …"
          options={(designs.data?.designs ?? []).map(
            (each) => [each.code, `${each.code} · ${each.name}`] as const,
          )}
          error={error('design')}
          onChange={(design) => edit({ design, turn: '' })}
        />
        {tag === null ? (
          <TextField
            label="Tag"
            value={draft.gang}
            placeholder={given.nextTags[draft.design] ?? ''}
            maxLength={40}
            error={error('gang')}
            onChange={(text) => edit({ gang: text })}
          />
        ) : null}
        <PlaceSelect
          label="Pieces from"
          value={from}
          kinds={looseKinds}
          error={error('from')}
          onChange={(code) => edit({ from: code })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(text) => edit({ at: text })}
        />
        <TurnSelect
          label="For the turn"
          value={draft.turn}
          design={draft.design}
          error={error('turn')}
          onChange={(turn) => edit({ turn })}
        />
        <SelectField
          label="Then it lies"
          value={draft.laying}
          options={layings}
          onChange={(laying) => edit({ laying: laying === '' ? 'laid-down' : laying })}
        />
        <TextField
          label="Remark"
          className="wide"
          value={draft.remark}
          onChange={(remark) => edit({ remark })}
        />
      </div>
      <GangLines design={draft.design} from={from} at={at?.ok === true ? at.value : null} />
      <p className="soft">
        Ours go in first, then hired pieces by supplier. Hooks fly with the crane and stay out.
      </p>
      <FormEnd
        words={gang === '' ? 'Build' : `Build ${gang}`}
        busy={build.isPending}
        done={null}
        refused={build.error}
        fields={fields}
      />
    </form>
  );
}
