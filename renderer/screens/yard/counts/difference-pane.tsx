// What stands behind one line: what each counter found, what the difference is a part of, where it may come from, and
// how it is explained.
import type { ReactNode } from 'react';
import type { Output } from '../../../client/core.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { SidePane } from '../side-pane.tsx';
import { conditionWords } from '../yard-words.ts';
import {
  causeWords,
  type DifferenceLine,
  differenceWords,
  howWords,
  percentWords,
  recountWords,
} from './count-words.ts';
import { type DraftLine, restOf, suggested } from './explain-draft.ts';
import { ExplainForm } from './explain-form.tsx';

type BookedLine = NonNullable<Output<'count.differences'>['result']>['lines'][number];

export function DifferencePane(props: {
  readonly line: DifferenceLine;
  readonly booked: BookedLine | undefined;
  readonly money: (cents: number) => string;
  readonly draft: DraftLine;
  readonly onDraft: (by: (old: DraftLine) => DraftLine) => void;
  readonly onRecount: (counter: 1 | 2) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { line, booked, draft } = props;
  const title = `${line.component} at ${line.location}: ${differenceWords(line)}`;
  return (
    <SidePane title={title} className="difference-pane" onClose={props.onClose}>
      <Facts line={line} money={props.money} />
      {line.recount === null || booked !== undefined ? null : (
        <p className="note note-caution">
          <span className="note-word">Count again</span>
          <span>{recountWords[line.recount]}</span>
          {line.figures
            .filter(({ counter }) => line.recount === 'counters-differ' || counter === 1)
            .map(({ counter }) => (
              <button key={counter} type="button" onClick={() => props.onRecount(counter)}>
                {line.recount === 'counters-differ' ? `Counter ${counter} counts again` : 'Count it again'}
              </button>
            ))}
        </p>
      )}
      {booked === undefined ? (
        <>
          <Causes line={line} draft={draft} onDraft={props.onDraft} />
          {line.state === 'counted' ? (
            <ExplainForm line={line} draft={draft} onDraft={props.onDraft} />
          ) : null}
        </>
      ) : (
        <Booked line={booked} />
      )}
    </SidePane>
  );
}

function Facts(props: {
  readonly line: DifferenceLine;
  readonly money: (cents: number) => string;
}): ReactNode {
  const { line, money } = props;
  const { bases } = line;
  const words = useTimeWords();
  const away = [
    [bases.standing, 'standing in forms'],
    [bases.onTheRoad, 'on the road'],
    [bases.inRepair, 'out for repair'],
    [bases.atOtherJobs, 'at other jobs'],
  ] as const;
  const expected = `${bases.owned} held${away
    .filter(([pieces]) => pieces > 0)
    .map(([pieces, what]) => ` − ${pieces} ${what}`)
    .join('')} = ${bases.expectedInYard}`;
  const hasDifference = line.state === 'counted' && line.difference !== 0;
  const facts: readonly (readonly [string, ReactNode])[] = [
    ['Component', line.name],
    ...line.figures.map(
      (figure) =>
        [
          `Counter ${figure.counter}`,
          `${figure.quantity}${figure.uncertainty > 0 ? ` ± ${figure.uncertainty}` : ''} by ${figure.who}, ${words.full(figure.at)}${figure.recounts > 0 ? `, counted ${figure.recounts + 1} times` : ''}${figure.notes.length > 0 ? ` (${figure.notes.join('; ')})` : ''}`,
        ] as const,
    ),
    ['Booked then', line.state === 'waiting' ? '' : `${line.booked} at this place`],
    ['Expected in the yard', expected],
    ...(hasDifference
      ? ([
          [
            'Difference',
            `${percentWords(bases.percentOfOwned, bases.owned, 'owned')}; ${percentWords(bases.percentOfExpected, bases.expectedInYard, 'expected in the yard')}; ${percentWords(bases.percentOfBooked, line.booked, 'booked here')}`,
          ],
          [
            'Value',
            line.valueCents === null ? 'nobody has entered what a new one costs' : money(line.valueCents),
          ],
        ] as const)
      : []),
    [
      'Tolerance',
      `class ${line.class}: ${line.within ? 'within' : 'out of'} ${line.tolerancePercent} % of the book`,
    ],
    ...(line.conditionMoves.length > 0
      ? ([
          [
            'In another condition',
            line.conditionMoves
              .map(({ from, to, quantity }) => `${quantity} ${conditionWords[from]} → ${conditionWords[to]}`)
              .join(', '),
          ],
        ] as const)
      : []),
  ];
  return (
    <dl className="detail-facts">
      {facts.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

function Causes(props: {
  readonly line: DifferenceLine;
  readonly draft: DraftLine;
  readonly onDraft: (by: (old: DraftLine) => DraftLine) => void;
}): ReactNode {
  const { line, draft, onDraft } = props;
  const words = useTimeWords();
  if (line.causes.length === 0) return null;
  const left = restOf(line, { ...draft, open: false }).pieces;
  return (
    <section className="causes" aria-label="Where it may come from">
      <h3>Where it may come from</h3>
      <ol>
        {line.causes.map((cause) => {
          const so = suggested(cause, line, left);
          return (
            <li key={JSON.stringify(cause)}>
              <span>{causeWords(cause, words)}</span>
              {so === null ? null : (
                <button
                  type="button"
                  className="quiet"
                  onClick={() => onDraft((old) => ({ ...old, explained: [...old.explained, so] }))}
                >
                  It is so: {so.quantity} {howWords[so.how]}
                </button>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function Booked(props: { readonly line: BookedLine }): ReactNode {
  const { explained, leftOpen } = props.line;
  return (
    <section className="causes" aria-label="Booked as">
      <h3>Booked as</h3>
      {explained.length === 0 && leftOpen === 0 ? <p>As booked: nothing to explain.</p> : null}
      <ul>
        {explained.map((each) => (
          <li key={JSON.stringify(each)}>
            {each.quantity} {howWords[each.how]}
            {each.place === undefined ? '' : ` (${each.place})`}
            {each.owner === undefined ? '' : ` of ${each.owner}`}
            {each.remark === null ? '' : `: ${each.remark}`}
          </li>
        ))}
        {leftOpen > 0 ? <li>{leftOpen} left open: nobody knew</li> : null}
      </ul>
    </section>
  );
}
