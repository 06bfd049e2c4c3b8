// One pour in full beside the board: its hours, gates, gangs and where they go, what it is short of, and
// the ways from here to its own screens.
import type { ReactNode } from 'react';
import { Button, Group } from 'react-aria-components';
import { Link } from 'wouter';
import { useUnits } from '../../parts/units.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { useEscape } from '../../parts/use-escape.ts';
import type { BoardModel, PourRow } from './board-rows.ts';
import type { Move } from './board-types.ts';

export function PourPane(props: {
  readonly model: BoardModel;
  readonly row: PourRow;
  readonly onMove: (move: Move) => void;
  readonly onGang: (turn: string) => void;
  readonly onClose: () => void;
}): ReactNode {
  const { model, row } = props;
  const { pour, times } = row.row;
  const { words } = model;
  useEscape(props.onClose);
  return (
    <aside className="pane side" aria-label={`Pour ${pour.code}`}>
      <div className="pane-head">
        <h2>
          {pour.code} <span className="pane-name">{pour.name}</span>
        </h2>
        <Button className="quiet" onPress={props.onClose}>
          Close <kbd>Esc</kbd>
        </Button>
      </div>
      <p className="soft">
        {pour.element},{' '}
        {pour.order === 'face-first' ? 'face first: side, steel, close' : 'steel first: steel, both sides'}
      </p>
      <Group className="pane-move" aria-label="Move by working days">
        <span>Move</span>
        {[-2, -1, 1, 2].map((days) => (
          <Button key={days} onPress={() => props.onMove({ pour: pour.code, workingDays: days })}>
            {days > 0 ? `+${days} d` : `−${-days} d`}
          </Button>
        ))}
        <kbd>Shift ← →</kbd>
      </Group>
      <dl className="facts">
        {times.sides.map((side) => (
          <Fact key={side.side} name={`Side ${side.side} set`}>
            {words.full(side.setFrom)}{' '}
            <span className="soft">to {untilWords(side.setFrom, side.setTo, words)}</span>
          </Fact>
        ))}
        <Fact name="Pour ends">{words.full(times.finishAt)}</Fact>
        <Fact name="Strength forecast">
          {words.full(times.readyAt)} <span className="soft">after {pour.stripMinimumH} h</span>
        </Fact>
        <Fact name="First strip shift">
          <b>{words.full(times.stripFrom)}</b>{' '}
          <span className="soft">to {untilWords(times.stripFrom, times.stripTo, words)}</span>
        </Fact>
        <Fact name="Pieces free">{words.full(times.freeAt)}</Fact>
        {pour.after.length === 0 ? null : <Fact name="After">{pour.after.join(', ')}</Fact>}
      </dl>
      <Gates row={row} />
      <Gangs row={row} onGang={props.onGang} />
      <Shorts row={row} model={model} />
      {pour.loose.length === 0 ? null : (
        <section className="pane-part">
          <h3>Loose pieces</h3>
          <ul>
            {pour.loose.map((line) => (
              <li key={`${line.side}${line.component}${line.purpose}`}>
                {line.quantity} {line.component}{' '}
                <span className="soft">
                  {line.purpose}, side {line.side}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {row.row.findings.map((finding) => (
        <p key={`${finding.rule}${finding.message}`} className={`finding ${finding.severity}`}>
          <b>{finding.severity}</b> {withSpokenInstants(finding.message, model.board.job.timeZone)}
        </p>
      ))}
      <p className="pane-links">
        <Link href={`/pours/${encodeURIComponent(pour.code)}`}>Open in Pours</Link>
      </p>
    </aside>
  );
}

/** The hour alone where it is the same day. */
function untilWords(from: string, to: string, words: TimeWords): string {
  return words.date(from) === words.date(to) ? words.time(to) : words.dayTime(to);
}

function Fact(props: { readonly name: string; readonly children: ReactNode }): ReactNode {
  return (
    <div>
      <dt>{props.name}</dt>
      <dd>{props.children}</dd>
    </div>
  );
}

function Gates(props: { readonly row: PourRow }): ReactNode {
  const gates = props.row.row.openGates;
  if (gates.length === 0) return null;
  return (
    <section className="pane-part">
      <h3>Not ready</h3>
      <ul>
        {gates.map((gate) => (
          <li key={`${gate.name}${gate.who}${gate.before}`}>
            <span className="caution-word-ink">{gate.name}</span> by {gate.who}, before {gate.before},
            promised {dateWords(gate.promised)}
            {gate.late ? <span className="short-word"> late</span> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Gangs(props: { readonly row: PourRow; readonly onGang: (turn: string) => void }): ReactNode {
  const { row } = props;
  if (row.turns.length === 0) return <p className="soft">No gang stands here.</p>;
  const designs = [...new Set(row.turns.map((turn) => turn.design))];
  return (
    <section className="pane-part">
      <h3>
        {row.turns.length} {row.turns.length === 1 ? 'gang' : 'gangs'}
      </h3>
      <ul>
        {designs.map((design) => {
          const count = (side: 'A' | 'B'): number =>
            row.turns.filter((turn) => turn.design === design && turn.side === side).length;
          return (
            <li key={design}>
              <Link href={`/designs/${encodeURIComponent(design)}`}>{design}</Link>{' '}
              <span className="soft">
                {(['A', 'B'] as const)
                  .filter((side) => count(side) > 0)
                  .map((side) => `${count(side)} on side ${side}`)
                  .join(', ')}
              </span>
            </li>
          );
        })}
      </ul>
      <h3>Then</h3>
      <ul>
        {row.follows.map((one) => (
          <li key={one.words} className={`then-line ${one.how}`}>
            {one.words}{' '}
            {one.turns.slice(0, 1).map((turn) => (
              <Button
                key={turn}
                className="quiet"
                aria-label={`fix, why … ${one.words}`}
                onPress={() => props.onGang(turn)}
              >
                fix, why …
              </Button>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Shorts(props: { readonly row: PourRow; readonly model: BoardModel }): ReactNode {
  const units = useUnits();
  const { model } = props;
  if (props.row.shortfalls.length === 0) return null;
  return (
    <section className="pane-part">
      <h3 className="short-word">Short while it stands</h3>
      <ul>
        {props.row.shortfalls.map((one) => (
          <li key={one.id}>
            <Link href={`/shortfalls?short=${encodeURIComponent(one.id)}`}>
              {one.quantity} {one.component}
            </Link>{' '}
            <span className="soft">
              {one.name}, {model.words.dayTime(one.from)} to {model.words.dayTime(one.to)}
              {one.hireCents === null
                ? ', cannot be hired'
                : `, hire ${units.money(one.hireCents, model.board.job.currency)}`}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
