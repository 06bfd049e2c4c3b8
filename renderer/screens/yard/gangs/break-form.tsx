// Breaks a gang down: all its pieces back to a place; those that are found in another condition are told apart.
import { type ReactNode, useState } from 'react';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { useJobClock } from '../../../parts/job-time.ts';
import { conditionWords } from '../yard-words.ts';
import { bookedOf, foundKey, readFound } from './break-draft.ts';
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
import type { GangRow } from './gang-words.ts';
import { type FoundCondition, foundConditions } from './regang-form.tsx';
import { useKept } from './use-kept.ts';

const fields = ['to', 'at', 'lines'] as const;

interface BreakDraft {
  readonly to: string;
  readonly at: string;
  readonly rest: FoundCondition;
  /** By component and condition. */
  readonly typed: Readonly<Record<string, string>>;
}

export function BreakForm(given: {
  readonly gang: GangRow;
  readonly content: Output<'gang.read'>['content'];
  readonly onDone: () => void;
}): ReactNode {
  const { gang, content, onDone } = given;
  const places = useCore('yard.places', {});
  const clock = useJobClock();
  const breakDown = useCommand('gang.break');
  const yard = places.data?.locations.find((place) => place.kind === 'yard')?.code ?? '';
  const { draft, set, clear } = useKept<BreakDraft>(`break ${gang.gang}`, {
    to: '',
    at: '',
    rest: 'to-clean',
    typed: {},
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const to = draft.to === '' ? yard : draft.to;
  const booked = bookedOf(content);
  const others = foundConditions.map(([each]) => each).filter((each) => each !== draft.rest);
  const error = (field: string) => errorFor(wrong, breakDown.error, field);
  const edit = (part: Parameters<typeof set>[0]): void => {
    breakDown.reset();
    setWrong({});
    set(part);
  };
  const book = (): void => {
    if (clock === null || breakDown.isPending) return;
    const when = readMoment(draft.at, clock);
    const lines = readFound(booked, draft.rest, others, draft.typed);
    setWrong({
      ...(when.ok ? {} : { at: when.error }),
      ...(lines.ok ? {} : { [lines.error.field ?? 'lines']: lines.error }),
    });
    if (!when.ok || !lines.ok) return;
    breakDown.mutate(
      { gang: gang.gang, to, at: when.value, lines: [...lines.value] },
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
        <PlaceSelect
          label="Pieces to"
          value={to}
          kinds={[...looseKinds, 'repair']}
          error={error('to')}
          onChange={(code) => edit({ to: code })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(text) => edit({ at: text })}
        />
        <SelectField
          label="What is not told apart below is"
          value={draft.rest}
          options={foundConditions}
          onChange={(rest) => edit({ rest: rest === '' ? 'to-clean' : rest })}
        />
      </div>
      <table className="side-table">
        <caption>How its pieces are found, where otherwise</caption>
        <thead>
          <tr>
            <th scope="col">Component</th>
            <th scope="col" className="numeric">
              In it
            </th>
            {others.map((condition) => (
              <th key={condition} scope="col" className="numeric">
                {conditionWords[condition]}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {booked.map(({ component, quantity }) => {
            const why = error(component);
            return (
              <tr key={component}>
                <td>
                  <b>{component}</b>
                  {why === undefined ? null : (
                    <span className="field-error" role="alert">
                      {why.message}
                    </span>
                  )}
                </td>
                <td className="numeric">{quantity}</td>
                {others.map((condition) => {
                  const key = foundKey(component, condition);
                  return (
                    <td key={condition} className="numeric">
                      <input
                        className="quantity"
                        inputMode="numeric"
                        aria-label={`${component}, ${conditionWords[condition]}`}
                        aria-invalid={why !== undefined}
                        value={draft.typed[key] ?? ''}
                        onChange={(event) => edit({ typed: { ...draft.typed, [key]: event.target.value } })}
                      />
                    </td>
                  );
                })}
              </tr>
            );
          })}
        </tbody>
      </table>
      <FormEnd
        words={`Break ${gang.gang} down`}
        busy={breakDown.isPending}
        done={null}
        refused={breakDown.error}
        fields={fields}
        onCancel={onDone}
      />
    </form>
  );
}
