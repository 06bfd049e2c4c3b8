// A step of a gang in which no piece moves in the ledger: stood at a turn, stripped, standing by, moved or turned over.
import { type ReactNode, useState } from 'react';
import { useCommand } from '../../../client/core.tsx';
import { useJob } from '../../../parts/job.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import {
  errorFor,
  FormEnd,
  PlaceSelect,
  readMoment,
  SelectField,
  standingKinds,
  TextField,
  whenHint,
} from './form-parts.tsx';
import { type GangAct, type GangRow, type GangState, type Laying, layingWords } from './gang-words.ts';
import { TurnSelect } from './turn-select.tsx';
import { useKept } from './use-kept.ts';

export type StepAct = Exclude<GangAct, 'regang' | 'break' | 'build'>;

const fields = ['state', 'at', 'place', 'turn', 'nextTurn', 'fliesOnOlder'] as const;
const layings = [
  ['laid-down', layingWords['laid-down']],
  ['upright', layingWords.upright],
] as const;

interface StepDraft {
  readonly at: string;
  readonly place: string;
  readonly laying: Laying;
  readonly turn: string;
  readonly nextTurn: string;
  readonly fliesOnOlder: boolean;
  readonly remark: string;
}

export function StepForm(given: {
  readonly act: StepAct;
  readonly gang: GangRow;
  readonly onDone: () => void;
}): ReactNode {
  const { act, gang, onDone } = given;
  const clock = useJobClock();
  const job = useJob();
  const step = useCommand('gang.step');
  const { draft, set, clear } = useKept<StepDraft>(`${act} ${gang.gang}`, {
    at: '',
    place: '',
    laying: gang.laying,
    turn: gang.nextTurn ?? '',
    nextTurn: gang.nextTurn ?? '',
    fliesOnOlder: false,
    remark: '',
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const error = (field: string) => errorFor(wrong, step.error, field);
  const stands = act === 'stand';
  const isOlder = gang.stateInForce !== null && gang.designState < gang.stateInForce;
  const edit = (part: Parameters<typeof set>[0]): void => {
    step.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || step.isPending) return;
    const when = readMoment(draft.at, clock);
    const missing = {
      ...(when.ok ? {} : { at: when.error }),
      ...(stands && draft.turn === '' ? { turn: { message: 'For which turn it stands is missing.' } } : {}),
    };
    setWrong(missing);
    if (!when.ok || Object.keys(missing).length > 0) return;
    step.mutate(
      {
        gang: gang.gang,
        state: stateAfter(act, gang.state),
        at: when.value,
        ...(draft.place === '' ? {} : { place: draft.place }),
        ...(stands
          ? { turn: draft.turn, job: job.code, ...(draft.fliesOnOlder ? { fliesOnOlder: true } : {}) }
          : {
              laying: draft.laying,
              nextTurn: draft.nextTurn === '' ? null : draft.nextTurn,
              ...(draft.nextTurn === '' ? {} : { job: job.code }),
            }),
        ...(draft.remark.trim() === '' ? {} : { remark: draft.remark.trim() }),
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
        {stands ? (
          <TurnSelect
            label="At the turn"
            value={draft.turn}
            design={gang.design}
            error={error('turn')}
            onChange={(turn) => edit({ turn })}
          />
        ) : (
          <TurnSelect
            label="Goes next to"
            value={draft.nextTurn}
            error={error('nextTurn')}
            onChange={(nextTurn) => edit({ nextTurn })}
          />
        )}
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(text) => edit({ at: text })}
        />
        <PlaceSelect
          label={stands ? 'Place, if not its pour' : `Place, if not ${gang.place}`}
          value={draft.place}
          kinds={standingKinds}
          error={error('place')}
          onChange={(place) => edit({ place })}
        />
        {stands ? null : (
          <SelectField
            label="Then it lies"
            value={draft.laying}
            options={layings}
            onChange={(laying) => edit({ laying: laying === '' ? gang.laying : laying })}
          />
        )}
        <TextField
          label="Remark"
          className="wide"
          value={draft.remark}
          onChange={(remark) => edit({ remark })}
        />
        {stands && isOlder ? (
          <label className="tick wide">
            <input
              type="checkbox"
              checked={draft.fliesOnOlder}
              onChange={(event) => edit({ fliesOnOlder: event.target.checked })}
            />
            I say that it flies on, built to state {gang.designState} of {gang.design} while state{' '}
            {gang.stateInForce} is in force
          </label>
        ) : null}
      </div>
      <FormEnd
        words="Book this step"
        busy={step.isPending}
        done={null}
        refused={step.error}
        fields={error('fliesOnOlder') === undefined ? fields : fields.slice(0, 5)}
        onCancel={onDone}
      />
    </form>
  );
}

function stateAfter(act: StepAct, state: GangState): Exclude<GangState, 'broken-down'> {
  switch (act) {
    case 'stand':
      return 'standing';
    case 'strip':
      return 'stripped';
    case 'stand-by':
      return 'standing-by';
    case 'move':
      return state === 'broken-down' ? 'assembled' : state;
    default:
      throw new Error(`No state after ${String(act satisfies never)}.`);
  }
}
