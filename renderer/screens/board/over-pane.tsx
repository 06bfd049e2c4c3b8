// A day on which crew, crane or pads are asked for more than there is: what asks for it, and the least change that clears
// it, found by planning the whole job with it.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCore } from '../../client/core.tsx';
import { changeWords } from '../../parts/changes/change-words.ts';
import { useApply } from '../../parts/changes/use-apply.ts';
import { useKnown } from '../../parts/changes/use-known.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { dateWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import type { BoardModel } from './board-rows.ts';
import { costWords } from './gang-words.ts';
import { causeWords, type Overload, overloadWords, wayEffects } from './over-words.ts';
import { BoardPane } from './side-pane.tsx';

interface OverProps {
  readonly model: BoardModel;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly readOnly: boolean;
  readonly onDay: (date: string) => void;
  readonly onClose: () => void;
}

export function OverPane(props: OverProps): ReactNode {
  const { date, model } = props;
  const job = model.board.job.code;
  const list = useCore('overload.list', { job, ...useLiveNow(job) });
  const [asked, setAsked] = useState<string | null>(null);
  const own = list.data?.overloads.filter((each) => each.date === date);
  const days = [...new Set(list.data?.overloads.map((each) => each.date))];
  const [before, after] = [days.findLast((each) => each < date), days.find((each) => each > date)];
  return (
    <BoardPane title={`${dateWords(date)}: too much`} onClose={props.onClose}>
      <p className="gang-acts">
        {before === undefined ? null : (
          <Button onPress={() => props.onDay(before)}>← {dateWords(before)}</Button>
        )}
        {after === undefined ? null : (
          <Button onPress={() => props.onDay(after)}>{dateWords(after)} →</Button>
        )}
      </p>
      {list.error === null ? null : <RefusalNote error={list.error} />}
      {own === undefined ? list.error === null ? <Waiting what="Reading the day …" /> : null : null}
      {own?.length === 0 ? <p className="soft">The day is within what is there.</p> : null}
      {own?.map((each) => (
        <section key={each.id} className="pane-part" aria-label={overloadWords(each)}>
          <h3 className="short-word">{overloadWords(each)}</h3>
          <ul>
            {each.causes.map((cause) => (
              <li key={`${cause.step} ${cause.pour} ${cause.toPour ?? ''}`}>{causeWords(cause, each)}</li>
            ))}
          </ul>
          {asked === each.id ? (
            <OverWays board={model.board} readOnly={props.readOnly} overload={each} />
          ) : (
            <p className="gang-acts">
              <Button onPress={() => setAsked(each.id)}>What clears it?</Button>
              <span className="soft">the least change, each planned through</span>
            </p>
          )}
        </section>
      ))}
      <p className="pane-links">
        <Link href="/board/work">Crew and crane</Link>
      </p>
    </BoardPane>
  );
}

export function OverWays(props: {
  readonly board: BoardModel['board'];
  readonly overload: Overload;
  readonly readOnly: boolean;
}): ReactNode {
  const { board, overload } = props;
  const { code, currency } = board.job;
  const live = useLiveNow(code);
  const clear = useCore('overload.clear', { job: code, overload: overload.id, ...live });
  const { names } = useKnown(board, live.now);
  const apply = useApply(code);
  const units = useUnits();
  if (clear.error !== null) return <RefusalNote error={clear.error} />;
  if (clear.data === undefined || clear.isPlaceholderData)
    return <output className="soft">Planning what could clear it …</output>;
  const { ways, tried, moveTheClash } = clear.data;
  return (
    <>
      {apply.error === null ? null : <RefusalNote error={apply.error} />}
      {ways.length === 0 ? (
        <p className="caution-word-ink">
          No single change clears it: {tried} were planned
          {moveTheClash === 0 ? '' : `, ${moveTheClash} of them only move it to another day`}.
        </p>
      ) : (
        <table className="why-ways" aria-label="What clears it">
          <thead>
            <tr>
              <th scope="col">Change</th>
              <th scope="col">Whole plan</th>
              <td aria-label="Do it" />
            </tr>
          </thead>
          <tbody>
            {ways.map((way) => {
              const words = changeWords([way.change], names);
              const effects = wayEffects(way);
              return (
                <tr key={words}>
                  <th scope="row">
                    {words}
                    {effects === '' ? null : (
                      <span className={way.newShortfalls > 0 ? 'why-effect short-word' : 'why-effect soft'}>
                        {effects}
                      </span>
                    )}
                  </th>
                  <td className="amount">
                    {costWords(way.costChangeCents, (cents) => units.money(cents, currency))}
                  </td>
                  <td>
                    <Button
                      isDisabled={props.readOnly || apply.busy}
                      aria-label={`Do it: ${words}`}
                      onPress={() => void apply.apply([way.change], words).catch(() => undefined)}
                    >
                      Do it
                    </Button>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      )}
    </>
  );
}
