// The board's first lines: what goes wrong first, and what the plan costs against the best there could be.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useUnits } from '../../parts/units.tsx';
import type { BoardModel } from './board-rows.ts';
import { BoardTabs } from './board-tabs.tsx';
import { headlineOf } from './headline.ts';

export function BoardHead(props: {
  readonly model: BoardModel;
  readonly onPane: (pane: string) => void;
}): ReactNode {
  const { board, words } = props.model;
  const headline = headlineOf(board, words);
  return (
    <div className={`board-head ${headline.state}`}>
      <h1 title={headline.text}>
        {headline.state === 'short' ? <span className="short-block" aria-hidden="true" /> : null}
        {headline.first === undefined ? (
          <span>{headline.text}</span>
        ) : (
          <Link href={`/shortfalls?short=${encodeURIComponent(headline.first.id)}`}>{headline.text}</Link>
        )}
      </h1>
      <div className="board-line">
        <CostLine model={props.model} />
        <PlanButtons {...props} />
      </div>
      <BoardTabs />
    </div>
  );
}

/** What there is to look at of the whole plan: what was told, what clashes. */
function PlanButtons(props: {
  readonly model: BoardModel;
  readonly onPane: (pane: string) => void;
}): ReactNode {
  const { board } = props.model;
  const clashes = board.planFindings.length;
  return (
    <div className="plan-buttons">
      <Button onPress={() => props.onPane('better')}>Look for a better plan</Button>
      <Button onPress={() => props.onPane('told')}>
        {board.changedTold === 0 ? 'Told' : `Told: ${board.changedTold} otherwise`}
      </Button>
      {board.undated.length === 0 ? null : (
        <Button onPress={() => props.onPane('undated')}>
          {board.undated.length === 1
            ? '1 pour without a date'
            : `${board.undated.length} pours without a date`}
        </Button>
      )}
      {clashes === 0 ? null : (
        <Button className="clash-button" onPress={() => props.onPane('clashes')}>
          {clashes === 1 ? '1 entry clashes' : `${clashes} entries clash`}
        </Button>
      )}
    </div>
  );
}

function CostLine(props: { readonly model: BoardModel }): ReactNode {
  const units = useUnits();
  const { board } = props.model;
  const money = (cents: number): string => units.money(cents, board.job.currency);
  const saving = Math.max(0, board.cost.totalCents - board.boundCents);
  return (
    <p className="cost-line">
      <b>{money(board.cost.totalCents)}</b>
      <span>labour {money(board.cost.labourCents)}</span>
      <span>hire {money(board.cost.hireCents)}</span>
      <span>
        {board.proven
          ? 'no plan costs less'
          : `still to be saved at most ${money(saving)}, ${percentText(board.gapPercent)} %`}
      </span>
      {board.cost.unmet > 0 ? (
        <span className="short-word">{board.cost.unmet} piece-days short that cannot be hired</span>
      ) : null}
    </p>
  );
}

/** Two places under one percent; what is less than they show is not called nothing. */
function percentText(percent: number): string {
  if (percent < 0.005) return 'under 0.01';
  return percent.toFixed(percent < 1 ? 2 : 1);
}
