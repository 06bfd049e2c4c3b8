// One shortfall beside the list: the curve of its component around the days, and everyone who holds the
// pieces, with how many.
import { type ReactNode, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCore } from '../../client/core.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import type { YardNote } from '../../parts/yard-note-words.ts';
import { YardNoteLink } from '../../parts/yard-strip.tsx';
import { useEscape } from '../../parts/use-escape.ts';
import { addDays, mondayOf } from '../../parts/zoned.ts';
import type { Board } from '../board/board-types.ts';
import { Curve, CurveEnds } from '../board/curve-row.tsx';
import { DayHead } from '../board/day-head.tsx';
import { makeDayScale } from '../board/day-scale.ts';
import { useWidth } from '../board/use-size.ts';
import { WhyShort } from './why-short.tsx';
import { type Decision, DecisionPart } from './decision-part.tsx';
import { holders, restsOnWords, type Shortfall, spanWords } from './shortfall-rows.ts';
import { WaysPart } from './ways-part.tsx';

export function ShortfallPane(props: {
  readonly shortfall: Shortfall;
  readonly board: Board;
  readonly words: TimeWords;
  readonly decision: Decision | undefined;
  readonly readOnly: boolean;
  /** What the yard changes that bears on it. */
  readonly notes: readonly YardNote[];
  readonly onClose: () => void;
}): ReactNode {
  const { shortfall, words } = props;
  useEscape(props.onClose);
  return (
    <aside className="pane side wide" aria-label={`Shortfall of ${shortfall.component}`}>
      <div className="pane-head">
        <h2>
          <span className="short-word">
            {shortfall.quantity} {shortfall.component} short
          </span>{' '}
          <span className="pane-name">{shortfall.name}</span>
        </h2>
        <Button className="quiet" onPress={props.onClose}>
          Close <kbd>Esc</kbd>
        </Button>
      </div>
      <p>{spanWords(shortfall.from, shortfall.to, words)}</p>
      <p className="soft">
        {shortfall.held} held of {shortfall.stock} in stock and ready. The figure rests on:{' '}
        {restsOnWords(shortfall.restsOn)}
        {shortfall.restsOnDate === null ? '' : `, ${dateWords(shortfall.restsOnDate)}`}
        {shortfall.restsOnOld ? ', which is old' : ''}.
      </p>
      {props.notes.length === 0 ? null : (
        <ul className="yard-bears">
          {props.notes.map((note) => (
            <li key={`${note.kind} ${note.paper?.id ?? ''} ${note.since ?? ''} ${note.until ?? ''}`}>
              <YardNoteLink note={note} words={words} />
            </li>
          ))}
        </ul>
      )}
      <PaneCurve shortfall={shortfall} board={props.board} words={words} />
      <WaysPart
        key={`ways ${shortfall.id}`}
        job={props.board.job.code}
        shortfall={shortfall}
        words={words}
        readOnly={props.readOnly}
      />
      {props.readOnly ? null : (
        <DecisionPart
          key={`decision ${shortfall.id}`}
          job={props.board.job.code}
          shortfall={shortfall}
          decision={props.decision}
          words={words}
        />
      )}
      <section className="pane-part">
        <h3>Who holds them</h3>
        <table className="plain holders">
          <thead>
            <tr>
              <th scope="col">Pour</th>
              <th scope="col">In</th>
              <th scope="col" className="numeric">
                Pieces
              </th>
            </tr>
          </thead>
          <tbody>
            {holders(shortfall).map((one) => (
              <tr key={`${one.pour}${one.what}`}>
                <td>
                  <Link href={boardAddress(shortfall, one.pour, words)}>{one.pour}</Link>
                </td>
                <td>
                  {one.design === null ? (
                    one.what
                  ) : (
                    <Link href={`/designs/${encodeURIComponent(one.design)}`}>{one.what}</Link>
                  )}
                </td>
                <td className="numeric">{one.pieces}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <WhyShort
        key={shortfall.id}
        job={props.board.job.code}
        component={shortfall.component}
        from={shortfall.from}
        words={words}
      />
    </aside>
  );
}

function boardAddress(shortfall: Shortfall, pour: string, words: TimeWords): string {
  const from = mondayOf(words.date(shortfall.from));
  return `/board?pour=${encodeURIComponent(pour)}&from=${from}&curve=${encodeURIComponent(shortfall.component)}`;
}

/** The week of the shortfall and as much on either side as makes three. */
function PaneCurve(props: {
  readonly shortfall: Shortfall;
  readonly board: Board;
  readonly words: TimeWords;
}): ReactNode {
  const { shortfall, board, words } = props;
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box);
  const curve = useCore('curve.read', {
    job: board.job.code,
    component: shortfall.component,
    ...useLiveNow(board.job.code),
  });
  const scale = useMemo(() => {
    const from = addDays(mondayOf(words.date(shortfall.from)), -7);
    const until = addDays(mondayOf(words.date(shortfall.to)), 14);
    const days = Math.max(21, Math.round((Date.parse(until) - Date.parse(from)) / 86_400_000));
    return makeDayScale(board.days, { from, days }, board.job.timeZone, Math.max(100, width));
  }, [shortfall, board, words, width]);
  return (
    <div className="pane-curve" ref={box}>
      <DayHead scale={scale} text={12} />
      {curve.data === undefined || curve.data.component !== shortfall.component ? null : (
        <>
          <Curve curves={curve.data} scale={scale} nowMs={0} />
          <CurveEnds curves={curve.data} scale={scale} atMs={Date.parse(shortfall.from)} level />
        </>
      )}
    </div>
  );
}
