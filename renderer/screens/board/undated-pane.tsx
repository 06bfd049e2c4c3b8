// Pours whose day nobody has set yet: for one of them three possible dates with what each breaks, or days for all of them
// together. Only when somebody asks, and nothing is stored before somebody takes a date.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useApply } from '../../parts/changes/use-apply.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { notBeforeWords } from '../pours/place-words.ts';
import type { BoardModel } from './board-rows.ts';
import { breaksWords, heldBackWords, meritWords } from './date-words.ts';
import { costWords } from './gang-words.ts';
import { BoardPane } from './side-pane.tsx';

type Dates = Output<'pour.dates'>;
type OneDate = Dates['dates'][number];

interface UndatedProps {
  readonly model: BoardModel;
  readonly readOnly: boolean;
  readonly onClose: () => void;
}

export function UndatedPane(props: UndatedProps): ReactNode {
  const { board } = props.model;
  const [asked, setAsked] = useState<string | null>(null);
  const apply = useApply(board.job.code);
  const off = props.readOnly || apply.busy;
  return (
    <BoardPane title="Without a date" onClose={props.onClose}>
      {apply.error === null ? null : <RefusalNote error={apply.error} />}
      {board.undated.length === 0 ? (
        <p className="soft">
          Every pour has a date. In <Link href="/pours">Pours</Link> one can be said to have none yet.
        </p>
      ) : null}
      <ul>
        {board.undated.map((pour) => (
          <li key={pour.code} className="pane-part">
            <b>{pour.code}</b> {pour.name}{' '}
            <Button
              aria-expanded={asked === pour.code}
              aria-label={`Three dates for ${pour.code}`}
              onPress={() => setAsked(asked === pour.code ? null : pour.code)}
            >
              Three dates
            </Button>
            {asked === pour.code ? (
              <DatesOf
                model={props.model}
                pour={pour.code}
                off={off}
                onTake={(date) =>
                  void apply
                    .apply(
                      [{ kind: 'date', pour: pour.code, finishAt: date.times.finishAt }],
                      `${pour.code} on ${props.model.words.full(date.times.finishAt)}`,
                    )
                    .catch(() => undefined)
                }
              />
            ) : null}
          </li>
        ))}
      </ul>
      {board.undated.length > 1 ? <PlaceAll {...props} off={off} apply={apply.apply} /> : null}
    </BoardPane>
  );
}

function DatesOf(props: {
  readonly model: BoardModel;
  readonly pour: string;
  readonly off: boolean;
  readonly onTake: (date: OneDate) => void;
}): ReactNode {
  const { pour, model } = props;
  const { code, currency } = model.board.job;
  const units = useUnits();
  const dates = useCore('pour.dates', { job: code, pour, ...useLiveNow(code) });
  if (dates.error !== null) return <RefusalNote error={dates.error} />;
  if (dates.data === undefined || dates.data.pour !== pour)
    return <output className="soft">Planning every day of four weeks …</output>;
  const { heldBack, waitsForUndated } = dates.data;
  return (
    <>
      {heldBack === null ? null : <p className="soft">{heldBackWords(heldBack, model.words)}</p>}
      {waitsForUndated.length === 0 ? null : (
        <p className="caution-word-ink">Comes after {waitsForUndated.join(', ')}, without a date too.</p>
      )}
      <table className="why-ways" aria-label={`Dates for ${pour}`}>
        <thead>
          <tr>
            <th scope="col">Pour ends</th>
            <th scope="col">Whole plan</th>
            <td aria-label="Take" />
          </tr>
        </thead>
        <tbody>
          {dates.data.dates.map((date) => (
            <tr key={date.times.finishAt}>
              <th scope="row">
                <b>{model.words.full(date.times.finishAt)}</b>{' '}
                <span className="soft">{meritWords(date.merits)}</span>
                <span className={date.breaks === 0 ? 'why-effect soft' : 'why-effect short-word'}>
                  {breaksWords(date)}
                </span>
              </th>
              <td className="amount">
                {costWords(date.costChangeCents, (cents) => units.money(cents, currency))}
              </td>
              <td>
                <Button
                  isDisabled={props.off}
                  aria-label={`Take ${model.words.full(date.times.finishAt)} for ${pour}`}
                  onPress={() => props.onTake(date)}
                >
                  Take
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function PlaceAll(
  props: UndatedProps & {
    readonly off: boolean;
    readonly apply: ReturnType<typeof useApply>['apply'];
  },
): ReactNode {
  const { board, words } = props.model;
  const [asked, setAsked] = useState(false);
  const pours = board.undated.map(({ code }) => code);
  const job = board.job.code;
  const placed = useCore('pour.place', { job, pours, ...useLiveNow(job) }, { enabled: asked });
  return (
    <section className="pane-part" aria-label="All together">
      <h3>All {pours.length} together</h3>
      {asked ? null : (
        <p className="gang-acts">
          <Button onPress={() => setAsked(true)}>Find days for all</Button>
          <span className="soft">beside everything that has a date</span>
        </p>
      )}
      {asked && placed.error !== null ? <RefusalNote error={placed.error} /> : null}
      {asked && placed.data === undefined && placed.error === null ? (
        <output className="soft">Placing them …</output>
      ) : null}
      {asked && placed.data !== undefined && !placed.isPlaceholderData ? (
        <Placing
          placing={placed.data}
          words={words}
          currency={board.job.currency}
          off={props.off}
          onTake={(changes) =>
            void props.apply(changes, `dates for ${pours.join(', ')}`).catch(() => undefined)
          }
        />
      ) : null}
    </section>
  );
}

type Placed = Output<'pour.place'>;

function Placing(props: {
  readonly placing: Placed;
  readonly words: TimeWords;
  readonly currency: string;
  readonly off: boolean;
  readonly onTake: (changes: Placed['changes']) => void;
}): ReactNode {
  const { placing, words } = props;
  const units = useUnits();
  return (
    <>
      <ul>
        {placing.placed.map((each) => (
          <li key={each.pour}>
            <b>{each.pour}</b> {words.full(each.times.finishAt)}{' '}
            <span className="soft">
              {each.notBefore === null ? '' : notBeforeWords(each.notBefore, words)}
            </span>
          </li>
        ))}
      </ul>
      {placing.unplaced.length === 0 ? null : (
        <p className="short-word">No day was found for {placing.unplaced.join(', ')}.</p>
      )}
      <p className={placing.breaks === 0 ? 'soft' : 'short-word'}>{breaksWords(placing)}</p>
      <p>
        Whole plan {costWords(placing.costChangeCents, (cents) => units.money(cents, props.currency))}; all
        stripped by {dateWords(placing.lastDate)}
        {placing.lastDate === placing.boundDate
          ? ', which cannot be sooner'
          : `, and not before ${dateWords(placing.boundDate)} however they are placed`}
        .
      </p>
      <p className="gang-acts">
        <Button
          className="primary"
          isDisabled={props.off || placing.changes.length === 0}
          onPress={() => props.onTake(placing.changes)}
        >
          Take these dates
        </Button>
      </p>
    </>
  );
}
