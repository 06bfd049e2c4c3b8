// One container at the side: what is in it, moving it with its content, and counting by weight.
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { useCommand } from '../../../client/core.tsx';
import { useJobClock, useTimeWords } from '../../../parts/job-time.ts';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { useUnits } from '../../../parts/units.tsx';
import { conditionWords } from '../yard-words.ts';
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
import { type ContainerRow, type Filling, fillingWords } from './gang-words.ts';
import { useKept } from './use-kept.ts';
import { WeighForm } from './weigh-form.tsx';

const fillings: readonly (readonly [Filling, string])[] = [
  ['empty', fillingWords.empty],
  ['part', fillingWords.part],
  ['full', fillingWords.full],
  ['unknown', fillingWords.unknown],
];
const fields = ['at', 'place', 'filling'] as const;

export function ContainerPane({ row }: { readonly row: ContainerRow }): ReactNode {
  const words = useTimeWords();
  const units = useUnits();
  return (
    <>
      <p className="side-words">
        At {row.place}, {row.placeName}, since {words.full(row.at)} ({row.who}).{' '}
        <b>{fillingWords[row.filling]}</b>. {row.remark ?? ''}{' '}
        <Link href={paperSheetAddress('tags', row.container)}>Print its tag</Link>
      </p>
      {row.content.length === 0 ? (
        <p className="soft side-words">Nothing is booked to it.</p>
      ) : (
        <table className="side-table">
          <caption>
            What is in it: {units.weight(row.contentGrams)}, with the container{' '}
            {units.weight(row.reckonedGrams)}
            {row.grossGrams === null ? '' : `; weighed ${units.weight(row.grossGrams)}`}
          </caption>
          <thead>
            <tr>
              <th scope="col">Component</th>
              <th scope="col">Owner</th>
              <th scope="col">Condition</th>
              <th scope="col" className="numeric">
                Pieces
              </th>
            </tr>
          </thead>
          <tbody>
            {row.content.map((line) => (
              <tr key={`${line.component} ${line.owner} ${line.condition}`}>
                <td>
                  <b>{line.component}</b> <span className="soft">{line.name}</span>
                </td>
                <td>{line.owner}</td>
                <td>{conditionWords[line.condition]}</td>
                <td className="numeric">{line.quantity}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <WeighForm row={row} />
      <MoveForm row={row} />
    </>
  );
}

interface MoveDraft {
  readonly place: string;
  readonly filling: Filling | '';
  readonly at: string;
  readonly remark: string;
}

function MoveForm({ row }: { readonly row: ContainerRow }): ReactNode {
  const clock = useJobClock();
  const step = useCommand('container.step');
  const [done, setDone] = useState<string | null>(null);
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const { draft, set, clear } = useKept<MoveDraft>(`container ${row.container}`, {
    place: '',
    filling: '',
    at: '',
    remark: '',
  });
  const error = (field: string) => errorFor(wrong, step.error, field);
  const edit = (part: Parameters<typeof set>[0]): void => {
    step.reset();
    setWrong({});
    setDone(null);
    set(part);
  };
  const book = (): void => {
    if (clock === null || step.isPending) return;
    const when = readMoment(draft.at, clock);
    setWrong(when.ok ? {} : { at: when.error });
    if (!when.ok) return;
    step.mutate(
      {
        container: row.container,
        at: when.value,
        ...(draft.place === '' ? {} : { place: draft.place }),
        ...(draft.filling === '' ? {} : { filling: draft.filling }),
        ...(draft.remark.trim() === '' ? {} : { remark: draft.remark.trim() }),
      },
      {
        onSuccess: (made) => {
          clear();
          setDone(
            made.moved ? `Moved to ${made.place} with what is in it.` : `Now ${fillingWords[made.filling]}.`,
          );
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
      <h3>Move it, or say how full it is</h3>
      <div className="slip-fields">
        <PlaceSelect
          label={`Place, if not ${row.place}`}
          value={draft.place}
          kinds={[...standingKinds, 'supplier']}
          error={error('place')}
          onChange={(place) => edit({ place })}
        />
        <SelectField
          label="Filling"
          value={draft.filling}
          none={`stays ${fillingWords[row.filling]}`}
          options={fillings}
          error={error('filling')}
          onChange={(filling) => edit({ filling })}
        />
        <TextField
          label="When"
          value={draft.at}
          placeholder={whenHint}
          error={error('at')}
          onChange={(at) => edit({ at })}
        />
        <TextField label="Remark" value={draft.remark} onChange={(remark) => edit({ remark })} />
      </div>
      <FormEnd words="Book" busy={step.isPending} done={done} refused={step.error} fields={fields} />
    </form>
  );
}
