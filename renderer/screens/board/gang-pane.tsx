// One gang of a pour in full: how it comes, where it goes, what was told and fixed of both, what fixing costs, and why it is
// planned so.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCommand, useCore } from '../../client/core.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import { useEscape } from '../../parts/use-escape.ts';
import type { BoardModel, PourRow } from './board-rows.ts';
import type { Turn } from './board-types.ts';
import { arrivalMark, departureMark, type EndMark, markWords } from './choice-words.ts';
import { arrivalWords, costWords, type Decision, departureWords, wayWords } from './gang-words.ts';
import { type FixedChoice, type FixedEntry, type Fixing, sameChoice, useFixing } from './use-fixing.ts';
import { WhyPart } from './why-part.tsx';
import './why.css';

interface GangPaneProps {
  readonly model: BoardModel;
  readonly row: PourRow;
  readonly turn: Turn;
  readonly readOnly: boolean;
  readonly onGang: (turn: string | null) => void;
}

export function GangPane(props: GangPaneProps): ReactNode {
  const { model, row, turn } = props;
  const { words, turnsById, board } = model;
  const [asked, setAsked] = useState(false);
  const live = useLiveNow(board.job.code);
  const why = useCore('plan.why', { job: board.job.code, turn: turn.id, ...live }, { enabled: asked });
  const fixing = useFixing(board.job.code);
  useEscape(() => props.onGang(null));
  const decisions = asked && !why.isPlaceholderData ? why.data : undefined;
  const ends = { model, turn, fixing, readOnly: props.readOnly };
  return (
    <aside className="pane side" aria-label={`Gang ${turn.id}`}>
      <div className="pane-head">
        <h2>
          {turn.id} <span className="pane-name">{turn.design}</span>
        </h2>
        <Button className="quiet" onPress={() => props.onGang(null)}>
          Back to {row.code} <kbd>Esc</kbd>
        </Button>
      </div>
      <p className="soft">
        {row.row.pour.name}, side {turn.side}; stands {words.full(turn.from)} to {words.full(turn.to)}; run{' '}
        {turn.run}; <Link href={`/designs/${encodeURIComponent(turn.design)}`}>design {turn.design}</Link>
      </p>
      {row.turns.length > 1 ? (
        <label className="gang-choice">
          Gang{' '}
          <select value={turn.id} onChange={(event) => props.onGang(event.target.value)}>
            {row.turns.map(({ id, design, side }) => (
              <option key={id} value={id}>
                {id} {design}, side {side}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      {fixing.error === null ? null : <RefusalNote error={fixing.error} />}
      <GangEnd
        {...ends}
        title="Comes"
        words={arrivalWords(turn, turnsById)}
        mark={arrivalMark(turn)}
        choice={arrivalChoice(turn)}
        decision={decisions?.arrival}
      />
      <GangEnd
        {...ends}
        title="Then"
        words={departureWords(turn, turnsById)}
        mark={departureMark(turn)}
        choice={departureChoice(turn)}
        decision={decisions?.departure}
      />
      {asked ? null : (
        <p className="gang-acts">
          <Button onPress={() => setAsked(true)}>Why this?</Button>
          <span className="soft">plans every other way and says what it would cost</span>
        </p>
      )}
      {why.error === null || !asked ? null : <RefusalNote error={why.error} />}
      {asked && decisions === undefined && why.error === null ? (
        <output className="soft">Planning the other ways …</output>
      ) : null}
    </aside>
  );
}

function arrivalChoice({ id, before }: Turn): FixedChoice {
  return before.how === 'fly-on' || before.how === 'regang'
    ? { kind: 'follow', from: before.turn, to: id }
    : { kind: 'assemble', turn: id };
}

function departureChoice({ id, after }: Turn): FixedChoice {
  return after.how === 'break-down'
    ? { kind: 'break-down', turn: id }
    : { kind: 'follow', from: id, to: after.turn };
}

function GangEnd(props: {
  readonly title: 'Comes' | 'Then';
  readonly model: BoardModel;
  readonly turn: Turn;
  readonly words: string;
  readonly mark: EndMark;
  readonly choice: FixedChoice;
  readonly decision: Decision | undefined;
  readonly fixing: Fixing;
  readonly readOnly: boolean;
}): ReactNode {
  const { turn, mark, choice, decision, fixing, model } = props;
  const { currency } = model.board.job;
  const release = useCommand('told.release');
  const noRegang: FixedChoice = { kind: 'no-regang', turn: turn.id };
  const own = fixing.entries.filter(
    (entry) =>
      sameChoice(entry.choice, choice) || (props.title === 'Then' && sameChoice(entry.choice, noRegang)),
  );
  const off = props.readOnly || fixing.busy;
  const state = markWords(mark);
  const mayForbid = props.title === 'Then' && turn.after.how === 'regang';
  return (
    <section className="pane-part" aria-label={props.title}>
      <h3>{props.title}</h3>
      <p>
        {props.words}
        {state === '' ? null : <b className="gang-mark"> · {state}</b>}
      </p>
      <p className="gang-acts">
        {own.some((entry) => sameChoice(entry.choice, choice)) ? null : (
          <Button isDisabled={off} onPress={() => fixing.fix(choice, [], `fix: ${turn.id} ${props.words}`)}>
            Fix this
          </Button>
        )}
        {mayForbid ? (
          <Button
            isDisabled={off}
            onPress={() =>
              fixing.fix(
                noRegang,
                own.map((entry) => entry.choice),
                `do not re-gang ${turn.id}`,
              )
            }
          >
            Do not re-gang
          </Button>
        ) : null}
        {mark.told === 'followed' && choice.kind !== 'no-regang' ? (
          <Button
            isDisabled={off || release.isPending}
            onPress={() => release.mutate({ job: model.board.job.code, instructions: [choice] })}
          >
            Release what was told
          </Button>
        ) : null}
      </p>
      {release.error === null ? null : <RefusalNote error={release.error} />}
      {own.map((entry) => (
        <FixedLine key={entry.id} entry={entry} turn={turn} currency={currency} off={off} fixing={fixing} />
      ))}
      {decision === undefined ? null : (
        <WhyPart
          decision={decision}
          design={turn.design}
          currency={currency}
          readOnly={off}
          onFix={(each) =>
            fixing.fix(each.choice, decision.fixed, `fix: ${turn.id} ${wayWords(each, decision.side)}`)
          }
        />
      )}
    </section>
  );
}

function FixedLine(props: {
  readonly entry: FixedEntry;
  readonly turn: Turn;
  readonly currency: string;
  readonly off: boolean;
  readonly fixing: Fixing;
}): ReactNode {
  const { entry, turn } = props;
  const units = useUnits();
  const money = (cents: number): string => units.money(cents, props.currency);
  const what = entry.choice.kind === 'no-regang' ? 'Not to re-gang is fixed' : 'Fixed';
  return (
    <p className="gang-acts">
      <span>
        <b>{what}</b>
        {entry.costCents === null
          ? entry.whyNot === null
            ? ''
            : `, but ${entry.whyNot}`
          : entry.costCents === 0 && entry.unmetMore === 0
            ? '; without it the plan costs the same'
            : `; it costs the plan ${costWords(entry.costCents, money)}${entry.unmetMore > 0 ? ` and ${entry.unmetMore} piece-days short` : ''}`}
      </span>
      <Button
        isDisabled={props.off}
        onPress={() => props.fixing.drop(entry, `release what was fixed of ${turn.id}`)}
      >
        Release
      </Button>
    </p>
  );
}
