// Looking for a better plan: what it has found so far, how much could still be saved at most, for how long it looks; stopped
// at any time, with its best kept or left.
import { type ReactNode, useState } from 'react';
import { Button, ProgressBar } from 'react-aria-components';
import { never } from '../../../core/answer.ts';
import { Choice } from '../../parts/choice.tsx';
import { RefusalNote } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import type { BoardModel } from './board-rows.ts';
import { BoardPane } from './side-pane.tsx';
import { type Better, type Search, useBetter } from './use-better.ts';

const times = [
  ['30', '30 s'],
  ['120', '2 min'],
  ['600', '10 min'],
] as const;

export function BetterPane(props: {
  readonly model: BoardModel;
  readonly readOnly: boolean;
  readonly onClose: () => void;
}): ReactNode {
  const { board } = props.model;
  const better = useBetter(board.job.code);
  const [seconds, setSeconds] = useState<(typeof times)[number][0]>('120');
  const { search } = better;
  const isRunning = search?.state === 'running';
  return (
    <BoardPane title="A better plan" onClose={props.onClose}>
      {better.error === null ? null : <RefusalNote error={better.error} />}
      {search === null ? (
        <p className="soft">
          The plan on the board was made at once. A longer search may find a cheaper one, and says how much
          could still be saved at most. Nothing changes until its best is kept.
        </p>
      ) : (
        <SearchFigures search={search} currency={board.job.currency} />
      )}
      {isRunning ? (
        <div className="gang-acts">
          <Button
            className="primary"
            isDisabled={better.busy || props.readOnly || search.best === null}
            onPress={better.keep}
          >
            Stop and keep its best
          </Button>
          <Button isDisabled={better.busy} onPress={better.stop}>
            Stop and leave
          </Button>
        </div>
      ) : (
        <>
          {search === null ? null : <Kept better={better} search={search} readOnly={props.readOnly} />}
          <div className="gang-acts">
            <Button
              className={search === null ? 'primary' : ''}
              isDisabled={better.busy}
              onPress={() => better.start(Number(seconds))}
            >
              {search === null ? 'Look' : 'Look again'}
            </Button>
            <span>for at most</span>
            <Choice label="For at most" value={seconds} options={times} onChange={setSeconds} />
          </div>
        </>
      )}
      {props.readOnly ? (
        <p className="caution-word-ink">The book is read only here: nothing can be kept.</p>
      ) : null}
    </BoardPane>
  );
}

function Kept(props: {
  readonly better: Better;
  readonly search: Search;
  readonly readOnly: boolean;
}): ReactNode {
  const { better, search } = props;
  if (search.runs === null) return null;
  if (better.kept) {
    return (
      <p>
        {better.partly
          ? 'The job has changed since the search began: what still fits of its best is the plan of the board now, and how much could still be saved is not known as well any more.'
          : 'Its best is the plan of the board now.'}{' '}
        Undo takes that back.
      </p>
    );
  }
  return (
    <div className="gang-acts">
      <Button className="primary" isDisabled={better.busy || props.readOnly} onPress={better.keep}>
        Keep its best
      </Button>
      <span className="soft">or leave the plan as it is</span>
    </div>
  );
}

function SearchFigures(props: { readonly search: Search; readonly currency: string }): ReactNode {
  const { search } = props;
  const { best, before } = search;
  const units = useUnits();
  const money = (cents: number): string => units.money(cents, props.currency);
  const share = Math.min(100, (100 * search.seconds) / search.allowedSeconds);
  return (
    <section className="pane-part" aria-label="What was found">
      {search.state === 'running' ? <p>{stateWords(search)}</p> : <output>{stateWords(search)}</output>}
      {search.state === 'running' ? (
        <ProgressBar className="better-bar" aria-label="Time used" value={share}>
          <span style={{ width: `${share}%` }} />
        </ProgressBar>
      ) : null}
      {search.refusal === null ? null : <p className="short-word">{search.refusal}</p>}
      {best === null || before === null ? null : (
        <dl className="facts">
          <div>
            <dt>Best so far</dt>
            <dd>
              <b>{money(best.totalCents)}</b>{' '}
              <span className="soft">{againstWords(best.totalCents - before.totalCents, money)}</span>
            </dd>
          </div>
          <div>
            <dt>Still to be saved</dt>
            <dd>
              {best.totalCents - search.boundCents <= 1
                ? 'nothing: no plan costs less'
                : `at most ${money(best.totalCents - search.boundCents)}, ${search.gapPercent.toFixed(2)} %`}
            </dd>
          </div>
          <div>
            <dt>Shortfalls</dt>
            <dd>{countChange(best.shortfalls, before.shortfalls)}</dd>
          </div>
          {best.unmet === 0 && before.unmet === 0 ? null : (
            <div>
              <dt>Cannot be hired</dt>
              <dd>piece-days short: {countChange(best.unmet, before.unmet)}</dd>
            </div>
          )}
          <div>
            <dt>Told otherwise</dt>
            <dd>{countChange(best.changedTold, before.changedTold)}</dd>
          </div>
        </dl>
      )}
    </section>
  );
}

function stateWords(search: Search): string {
  const after = `${Math.round(search.seconds)} s`;
  switch (search.state) {
    case 'running':
      return `Looking: ${after} of at most ${search.allowedSeconds} s`;
    case 'proven':
      return `Done after ${after}: its best is proven, no plan costs less.`;
    case 'over':
      return `The time was up after ${after}.`;
    case 'stopped':
      return `Stopped after ${after}.`;
    case 'failed':
      return 'The search failed.';
    default:
      return never(search.state);
  }
}

function againstWords(cents: number, money: (cents: number) => string): string {
  if (cents === 0) return 'as much as the plan it began with';
  return cents < 0 ? `${money(-cents)} less than the plan it began with` : `${money(cents)} more`;
}

function countChange(now: number, before: number): string {
  return now === before ? `${now}, as before` : `${now}, before ${before}`;
}
