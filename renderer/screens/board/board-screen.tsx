// The board: two weeks of pours, one row each, with what is short under them. A move is typed, dragged or
// keyed, and shows what it would change before anything is stored.
import { type CSSProperties, type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useCore, useHostState } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { ComponentChoice } from '../../parts/component-choice.tsx';
import { useJob } from '../../parts/job.tsx';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { Patterns } from '../../parts/patterns.tsx';
import { addDays, mondayOf } from '../../parts/zoned.ts';
import { BoardHead } from './board-head.tsx';
import { type BoardModel, boardModel } from './board-rows.ts';
import { BoardTable } from './board-table.tsx';
import { BoardTools, type BoardView } from './board-tools.tsx';
import type { Move } from './board-types.ts';
import { CurveRow } from './curve-row.tsx';
import { CrewRow, ShortRows } from './day-foot.tsx';
import { DayHead } from './day-head.tsx';
import { makeDayScale, spanOf } from './day-scale.ts';
import { calendarDays } from './ghost.ts';
import { desk, fitted, narrow, wall } from './metrics.ts';
import { MoveField } from './move-field.tsx';
import { PourPane } from './pour-pane.tsx';
import { PourRows } from './pour-rows.tsx';
import { RunRows, runRows } from './run-rows.tsx';
import { type Moves, useMoves } from './use-moves.ts';
import { useSize, useWidth } from './use-size.ts';
import { WhatifPane } from './whatif-pane.tsx';
import '../../style/board-head.css';
import '../../style/board.css';
import '../../style/board-marks.css';
import '../../style/board-foot.css';
import '../../style/panes.css';
import '../../style/board-wall.css';

export function BoardScreen(): ReactNode {
  const job = useJob();
  const answer = useCore('board.read', { job: job.code });
  const model = useMemo(() => (answer.data === undefined ? null : boardModel(answer.data)), [answer.data]);
  if (answer.error !== null) return <RefusalNote error={answer.error} />;
  if (model === null) return <Waiting what="Planning the job …" />;
  if (model.rows.length === 0) {
    return (
      <Empty title="No pour is in this job yet">
        <p>The board has a row a pour. Add them in Pours, or bring a file in Book.</p>
      </Empty>
    );
  }
  return <BoardSheet model={model} />;
}

function BoardSheet(props: { readonly model: BoardModel }): ReactNode {
  const { model } = props;
  const { board, words } = model;
  const [query, change] = useAddressQuery();
  const [, navigate] = useLocation();
  const host = useHostState();
  const [now] = useState(() => new Date().toISOString());
  const today = todayOf(model, words.date(now));
  const home = mondayOf(today ?? startOf(model));
  const view: BoardView = {
    from: mondayOf(query.get('from') ?? home),
    whole: query.get('weeks') === 'all',
    runs: query.get('rows') === 'run',
    wall: query.get('wall') === '1',
  };
  const selected = query.get('pour');
  const moves = useMoves(board.job.code, (proposed) => today ?? firstTouched(model, proposed));
  const { propose } = moves;
  const onSelect = useCallback((code: string | null) => change({ pour: code }), [change]);
  const onMove = useCallback((move: Move) => propose([move]), [propose]);
  const pours = useMemo(
    () => model.rows.map((row) => ({ code: row.code, name: row.row.pour.name })),
    [model.rows],
  );
  const chosen = selected === null ? undefined : model.byCode.get(selected);
  const side =
    moves.moves.length > 0 ? (
      <WhatifPane
        model={model}
        moves={moves.moves}
        answer={moves.answer}
        isToday={today !== null}
        working={moves.working}
        keeping={moves.keeping}
        readOnly={host.data?.book?.readOnly === true}
        refusal={moves.error === null ? null : <RefusalNote error={moves.error} />}
        onKeep={moves.keep}
        onLeave={moves.leave}
      />
    ) : chosen === undefined ? null : (
      <PourPane model={model} row={chosen} onMove={onMove} onClose={() => onSelect(null)} />
    );
  return (
    <div className={view.wall ? 'screen board wall' : 'screen board'}>
      <Patterns />
      <BoardHead model={model} />
      <BoardTools view={view} home={home} today={today !== null} onChange={change}>
        <MoveField pours={pours} onMoves={propose} onKeep={moves.keep} proposed={moves.moves.length > 0} />
      </BoardTools>
      <div className="screen-body">
        <BoardChart
          model={model}
          view={view}
          nowMs={today === null ? 0 : Date.parse(now)}
          selected={selected}
          moves={moves}
          component={query.get('curve')}
          onSelect={onSelect}
          onMove={onMove}
          onCurve={(code) => change({ curve: code })}
          onShortfall={(id) => navigate(`/shortfalls?short=${encodeURIComponent(id)}`)}
        />
        {side}
      </div>
      <CautionLine />
    </div>
  );
}

/** Where today lies outside the plan: the first day that the moved pours touch, before or after the move. */
function firstTouched(model: BoardModel, moves: readonly Move[]): string {
  const dates = moves.flatMap((move) => {
    const sides = model.byCode.get(move.pour)?.row.times.sides ?? [];
    return sides.map((side) => {
      const date = model.words.date(side.setFrom);
      return move.workingDays < 0
        ? addDays(date, calendarDays(date, move.workingDays, model.board.days))
        : date;
    });
  });
  return dates.toSorted()[0] ?? model.board.job.planFrom;
}

/** Where the board begins: when the plan does, or with its first pour where that is later. */
function startOf(model: BoardModel): string {
  const first = model.rows[0]?.row.times.sides[0]?.setFrom;
  const { planFrom } = model.board.job;
  const date = first === undefined ? planFrom : model.words.date(first);
  return date > planFrom ? date : planFrom;
}

/** Today's date on the job, if the plan covers it; the demo's weeks are not today's. */
function todayOf(model: BoardModel, date: string): string | null {
  const { days } = model.board;
  const [first, last] = [days[0]?.date, days.at(-1)?.date];
  return first !== undefined && last !== undefined && date >= first && date <= last ? date : null;
}

function BoardChart(props: {
  readonly model: BoardModel;
  readonly view: BoardView;
  readonly nowMs: number;
  readonly selected: string | null;
  readonly moves: Moves;
  readonly component: string | null;
  readonly onSelect: (code: string | null) => void;
  readonly onMove: (move: Move) => void;
  readonly onCurve: (code: string) => void;
  readonly onShortfall: (id: string) => void;
}): ReactNode {
  const { model, view } = props;
  const { board } = model;
  const sheet = useRef<HTMLDivElement>(null);
  const scroller = useRef<HTMLDivElement>(null);
  const width = useWidth(sheet);
  const [, height] = useSize(scroller);
  const base = view.wall ? wall : width < 960 ? narrow : desk;
  const gutter = 10;
  const chartWidth = Math.max(200, width - base.head - base.ends - gutter);
  const { from, whole } = view;
  const scale = useMemo(
    () => makeDayScale(board.days, spanOf(board.days, from, whole), board.job.timeZone, chartWidth),
    [board, from, whole, chartWidth],
  );
  const rows = useMemo(
    () => model.rows.filter((row) => scale.shows(row.bars.fromMs, row.bars.toMs)),
    [model.rows, scale],
  );
  const metrics = useMemo(() => fitted(base, height, rows.length), [base, height, rows.length]);
  const runs = useMemo(() => (view.runs ? runRows(model, scale) : []), [model, scale, view.runs]);
  const inView = board.shortfalls.find((one) => scale.shows(Date.parse(one.from), Date.parse(one.to)));
  const component = props.component ?? (inView ?? board.shortfalls[0])?.component ?? null;
  const sizes = { '--head': `${base.head}px`, '--chart': `${chartWidth}px` } as CSSProperties;
  return (
    <div className="board-chart" ref={sheet} style={sizes}>
      <div className="chart-top">
        <div className="foot-head">{view.runs ? 'Gang run' : 'Pour'}</div>
        <DayHead scale={scale} />
        <div className="foot-then">{view.runs ? 'Ends' : 'After the strip'}</div>
      </div>
      <div className="chart-rows" ref={scroller}>
        {rows.length === 0 ? (
          <Empty title="No pour stands in these two weeks" />
        ) : view.runs ? (
          <RunRows
            model={model}
            rows={runs}
            scale={scale}
            metrics={metrics}
            nowMs={props.nowMs}
            least={height}
            scroller={scroller}
            selected={props.selected}
            onSelect={props.onSelect}
          />
        ) : (
          <PourRows
            model={model}
            rows={rows}
            scale={scale}
            metrics={metrics}
            nowMs={props.nowMs}
            least={height}
            scroller={scroller}
            selected={props.selected}
            moves={props.moves.moves}
            whatif={props.moves.answer}
            onSelect={props.onSelect}
            onMove={props.onMove}
          />
        )}
        <BoardTable rows={rows} words={model.words} />
      </div>
      <CrewRow scale={scale} crew={board.job.crew} text={metrics.text} />
      <ShortRows board={board} scale={scale} metrics={metrics} onOpen={props.onShortfall} />
      {view.wall || component === null ? null : (
        <CurveRow
          job={board.job.code}
          component={component}
          scale={scale}
          nowMs={props.nowMs}
          chooser={<ComponentChoice label="Curve of" value={component} onChange={props.onCurve} />}
        />
      )}
    </div>
  );
}
