// What proposed changes would do, before they are carried out: who is then short, what it costs, what today's and
// tomorrow's crew does instead, which gangs are held, whom to call. Enter keeps them, Escape leaves them.
import { type ReactNode, useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { PlanChange } from '../../parts/changes/change-text.ts';
import { type ChangeNames, changeWords } from '../../parts/changes/change-words.ts';
import { grouped, type Says } from '../../parts/changes/difference.ts';
import {
  CallPart,
  CostPart,
  FindingsPart,
  HeldPart,
  LoadPart,
  PourParts,
  ReroutedPart,
  ShortPart,
  ToldPart,
} from '../../parts/changes/difference-parts.tsx';
import { KeepWhatif } from '../../parts/changes/keep-whatif.tsx';
import { capital, Part } from '../../parts/changes/part.tsx';
import { dateWords } from '../../parts/time-words.ts';
import { isField } from '../../parts/undo.tsx';
import { useUnits } from '../../parts/units.tsx';
import { useWindowKeys } from '../../parts/window-keys.ts';
import type { BoardModel } from './board-rows.ts';
import type { Step, Whatif } from './board-types.ts';
import { stepWords } from './step-words.ts';

interface WhatifPaneProps {
  readonly model: BoardModel;
  readonly changes: readonly PlanChange[];
  readonly names: ChangeNames;
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
  const { answer, changes, names, working, onKeep, onLeave } = props;
  const canKeep = answer !== undefined && !working && !props.keeping && !props.readOnly;
  useWindowKeys((event) => {
    if (event.defaultPrevented) return;
    if (event.key === 'Escape') onLeave();
    else if (event.key === 'Enter' && canKeep && !isField(event.target) && !isButton(event.target)) onKeep();
    else return;
    event.preventDefault();
  });
  const onlyMoves = changes.every(({ kind }) => kind === 'move');
  return (
    <aside
      className="pane side whatif"
      aria-label={onlyMoves ? 'What the move changes' : 'What it changes'}
      aria-busy={working}
    >
      <h2>{capital(changeWords(changes, names))}?</h2>
      <div className="pane-keep">
        <Button className="primary" isDisabled={!canKeep} onPress={onKeep}>
          Keep it
        </Button>
        <Button onPress={onLeave}>Leave as it was</Button>
        <kbd>Enter · Esc</kbd>
      </div>
      {props.readOnly ? (
        <p className="caution-word-ink">The book is read only here: nothing can be kept.</p>
      ) : (
        <KeepWhatif job={props.model.board.job.code} changes={changes} words={changeWords(changes, names)} />
      )}
      {props.refusal}
      {answer === undefined ? (
        props.refusal === null ? (
          <output className="soft">Planning it …</output>
        ) : null
      ) : (
        <WholeDifference model={props.model} answer={answer} isToday={props.isToday} />
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

function WholeDifference(props: {
  readonly model: BoardModel;
  readonly answer: Whatif;
  readonly isToday: boolean;
}): ReactNode {
  const { answer, model } = props;
  const { money } = useUnits();
  const { words } = model;
  const { currency, timeZone } = model.board.job;
  const says = useMemo<Says>(
    () => ({ words, timeZone, money: (cents) => money(cents, currency) }),
    [words, timeZone, money, currency],
  );
  const part = { difference: answer, says };
  return (
    <div className="difference">
      <PourParts {...part} heads={['as it is', 'then']} />
      <ShortPart {...part} left={answer.after.shortfalls.length} />
      <CostPart {...part} before={answer.before} after={answer.after} />
      <Part
        title={props.isToday ? 'Today and tomorrow' : `${dateWords(answer.today)} and the day after`}
        none={
          answer.droppedSteps.length + answer.addedSteps.length === 0
            ? 'The crew does what the plan had.'
            : null
        }
      >
        <StepLines word="off" list={answer.droppedSteps} model={model} />
        <StepLines word="new" list={answer.addedSteps} model={model} />
      </Part>
      <ToldPart difference={answer} />
      <CallPart difference={answer} />
      <LoadPart difference={answer} />
      <HeldPart {...part} />
      <ReroutedPart difference={answer} />
      <FindingsPart {...part} />
    </div>
  );
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
