// What a move would change, before it is kept: the moved pour, who is then short, what today's and
// tomorrow's crew does instead, which gangs are held, whom to call. Enter keeps it, Escape leaves it.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { isField } from '../../parts/undo.tsx';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { dateWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { useWindowKeys } from '../../parts/window-keys.ts';
import type { BoardModel } from './board-rows.ts';
import type { Move, Shortfall, Step, Whatif } from './board-types.ts';
import { moveWords } from './move-text.ts';
import { stepWords } from './step-words.ts';

interface WhatifPaneProps {
  readonly model: BoardModel;
  readonly moves: readonly Move[];
  readonly answer: Whatif | undefined;
  /** Whether the two days compared are really today and tomorrow. */
  readonly isToday: boolean;
  readonly working: boolean;
  readonly keeping: boolean;
  readonly readOnly: boolean;
  readonly refusal: ReactNode;
  readonly onKeep: () => void;
  readonly onLeave: () => void;
}

export function WhatifPane(props: WhatifPaneProps): ReactNode {
  const { answer, moves, working, onKeep, onLeave } = props;
  const canKeep = answer !== undefined && !working && !props.keeping && !props.readOnly;
  useWindowKeys((event) => {
    if (event.defaultPrevented) return;
    if (event.key === 'Escape') onLeave();
    else if (event.key === 'Enter' && canKeep && !isField(event.target) && !isButton(event.target)) onKeep();
    else return;
    event.preventDefault();
  });
  return (
    <aside className="pane side whatif" aria-label="What the move changes" aria-busy={working}>
      <h2>{capital(moveWords(moves))}?</h2>
      <div className="pane-keep">
        <Button className="primary" isDisabled={!canKeep} onPress={onKeep}>
          Keep it
        </Button>
        <Button onPress={onLeave}>Leave as it was</Button>
        <kbd>Enter · Esc</kbd>
      </div>
      {props.readOnly ? (
        <p className="caution-word-ink">The book is read only here: nothing can be kept.</p>
      ) : null}
      {props.refusal}
      {answer === undefined ? (
        props.refusal === null ? (
          <output className="soft">Planning it …</output>
        ) : null
      ) : (
        <Difference model={props.model} answer={answer} isToday={props.isToday} />
      )}
    </aside>
  );
}

/** A head of the board is a button that opens its pour; there Enter keeps, as everywhere but on real buttons. */
function isButton(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement && target.closest('button:not(.row-head), a, [role="option"]') !== null
  );
}

function Difference(props: {
  readonly model: BoardModel;
  readonly answer: Whatif;
  readonly isToday: boolean;
}): ReactNode {
  const { answer, model } = props;
  const units = useUnits();
  const { words } = model;
  const money = (cents: number): string => units.money(cents, model.board.job.currency);
  const { newShortfalls, goneShortfalls, changedShortfalls } = answer;
  const same = newShortfalls.length + goneShortfalls.length + changedShortfalls.length === 0;
  return (
    <div className="difference">
      {answer.moves.map((one) => (
        <table key={one.pour} className="before-after">
          <caption>
            {one.pour} {one.name}
          </caption>
          <thead>
            <tr>
              <td aria-label="What" />
              <th scope="col">as it is</th>
              <th scope="col">moved</th>
            </tr>
          </thead>
          <tbody>
            {(
              [
                ['Pour ends', one.finishBefore, one.finishAfter],
                ['First strip', one.stripBefore, one.stripAfter],
                ['Pieces free', one.freeBefore, one.freeAfter],
              ] as const
            ).map(([name, before, after]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{words.full(before)}</td>
                <td>
                  {before === after ? <span className="soft">the same</span> : <b>{words.full(after)}</b>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ))}
      <Part title="Short" none={same ? `No change: ${countWords(answer.after.shortfalls.length)}.` : null}>
        <ShortLines word="new" list={newShortfalls} model={model} />
        {changedShortfalls.map(({ before, after }) => (
          <li key={after.id}>
            <b className="change-word">changed</b>{' '}
            <span className="short-word">
              {after.quantity} {after.component}
            </span>{' '}
            <span className="soft">
              {after.name}, {words.full(after.from)}; was {before.quantity}
              {before.from === after.from ? '' : `, ${words.full(before.from)}`}
            </span>
          </li>
        ))}
        <ShortLines word="gone" list={goneShortfalls} model={model} />
      </Part>
      <Part title="Cost" none={null}>
        <li>
          <b>
            {answer.costChangeCents === 0
              ? 'No change'
              : `${answer.costChangeCents > 0 ? '+' : '−'}${money(Math.abs(answer.costChangeCents))}`}
          </b>{' '}
          <span className="soft">
            {money(answer.before.cost.totalCents)} to {money(answer.after.cost.totalCents)}
          </span>
        </li>
      </Part>
      <Part
        title={props.isToday ? 'Today and tomorrow' : `${dateWords(answer.today)} and the day after`}
        none={
          answer.droppedSteps.length + answer.addedSteps.length === 0
            ? 'The crew does what it was told.'
            : null
        }
      >
        <StepLines word="off" list={answer.droppedSteps} model={model} />
        <StepLines word="new" list={answer.addedSteps} model={model} />
      </Part>
      <Part title="Gangs held longer" none={answer.heldLonger.length === 0 ? 'None.' : null}>
        {grouped(
          answer.heldLonger.map((one) => `${one.design} at ${one.pour}, until ${words.dayTime(one.until)}`),
        ).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </Part>
      <Part title="Gangs that go another way" none={answer.rerouted.length === 0 ? 'None.' : null}>
        {answer.rerouted.map((one) => (
          <li key={one.turn}>
            <b>{one.pour}</b> {one.after} <span className="soft">was {one.before}</span>
          </li>
        ))}
      </Part>
      <Part title="Call" none={answer.call.length === 0 ? 'Nobody waits for this pour by the book.' : null}>
        {answer.call.map((one) => (
          <li key={`${one.who}${one.about}${one.pour}`}>
            <b>{one.who}</b> {one.about}{' '}
            <span className="soft">
              {[one.pour, one.phone, one.promised === null ? null : `promised ${dateWords(one.promised)}`]
                .filter((each) => each !== null)
                .join(', ')}
            </span>
          </li>
        ))}
      </Part>
      {answer.findings.map((finding) => (
        <p
          key={`${finding.rule}${finding.message}${placeOf(finding.where)}`}
          className={`finding ${finding.severity}`}
        >
          <b>{finding.severity}</b> {placeOf(finding.where)}
          {withSpokenInstants(finding.message, model.board.job.timeZone)}
        </p>
      ))}
    </div>
  );
}

/** "P08: ": which of the moved pours and those after them it is said of. */
function placeOf(where: Whatif['findings'][number]['where']): string {
  return typeof where === 'string' ? `${where}: ` : '';
}

function Part(props: {
  readonly title: string;
  readonly none: string | null;
  readonly children: ReactNode;
}): ReactNode {
  return (
    <section className="pane-part">
      <h3>{props.title}</h3>
      {props.none === null ? <ul>{props.children}</ul> : <p className="soft">{props.none}</p>}
    </section>
  );
}

function ShortLines(props: {
  readonly word: 'new' | 'gone';
  readonly list: readonly Shortfall[];
  readonly model: BoardModel;
}): ReactNode {
  return props.list.map((one) => (
    <li key={one.id}>
      <b className="change-word">{props.word}</b>{' '}
      <span className={props.word === 'new' ? 'short-word' : 'gone-words'}>
        {one.quantity} {one.component}
      </span>{' '}
      <span className="soft">
        {one.name}, {props.model.words.full(one.from)}
      </span>
    </li>
  ));
}

function StepLines(props: {
  readonly word: 'off' | 'new';
  readonly list: readonly Step[];
  readonly model: BoardModel;
}): ReactNode {
  return grouped(props.list.map((step) => stepWords(step, props.model.words))).map((line) => (
    <li key={line}>
      <b className="change-word">{props.word}</b>{' '}
      <span className={props.word === 'off' ? 'gone-words' : undefined}>{line}</span>
    </li>
  ));
}

/** Lines that say the same once, with their number in front. */
function grouped(lines: readonly string[]): readonly string[] {
  return [...Map.groupBy(lines, (line) => line)].map(([line, all]) =>
    all.length === 1 ? line : `${all.length} × ${line}`,
  );
}

function countWords(count: number): string {
  if (count === 0) return 'nothing is short';
  return count === 1 ? 'the one shortfall stays' : `the ${count} shortfalls stay`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
