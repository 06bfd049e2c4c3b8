// The board: two weeks of pours, one row each, with what is short under them. A move is typed, dragged or
// keyed, and shows what it would change before anything is stored.
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { useCore, useHostState } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { calendarDays } from '../../parts/calendar-days.ts';
import { ChangeField } from '../../parts/changes/change-field.tsx';
import { useKnown } from '../../parts/changes/use-known.ts';
import { useJob } from '../../parts/job.tsx';
import { useLiveNow } from '../../parts/live-now.ts';
import { CautionLine, Empty, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { Patterns } from '../../parts/patterns.tsx';
import { YardStrip } from '../../parts/yard-strip.tsx';
import { addDays, mondayOf } from '../../parts/zoned.ts';
import { BoardChart } from './board-chart.tsx';
import { BoardHead } from './board-head.tsx';
import { type BoardModel, boardModel } from './board-rows.ts';
import { BoardSide } from './board-side.tsx';
import { BoardTools, type BoardView } from './board-tools.tsx';
import type { Move, Turn } from './board-types.ts';
import { useMoves } from './use-moves.ts';
import { WhatifPane } from './whatif-pane.tsx';
import '../../style/board-head.css';
import '../../style/board.css';
import '../../style/board-marks.css';
import '../../style/board-foot.css';
import '../../style/panes.css';
import '../../style/board-wall.css';

export function BoardScreen(): ReactNode {
  const job = useJob();
  const answer = useCore('board.read', { job: job.code, ...useLiveNow(job.code) });
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

const boardExamples = ['W5 +1d', '14 drop'] as const;

function BoardSheet(props: { readonly model: BoardModel }): ReactNode {
  const { model } = props;
  const { board, words } = model;
  const [query, change] = useAddressQuery();
  const [, navigate] = useLocation();
  const host = useHostState();
  const [now] = useState(() => new Date().toISOString());
  const today = todayOf(model, words.date(now));
  const home = mondayOf(today ?? startOf(model));
  const view = useMemo(
    (): BoardView => ({
      from: mondayOf(query.get('from') ?? home),
      whole: query.get('weeks') === 'all',
      runs: query.get('rows') === 'run',
      wall: query.get('wall') === '1',
    }),
    [query, home],
  );
  const selected = query.get('pour');
  const known = useKnown(board, useLiveNow(board.job.code).now);
  const moves = useMoves(board.job.code, (proposed) => today ?? firstTouched(model, proposed), known.names);
  const { propose } = moves;
  const onSelect = useCallback(
    (code: string | null) => change({ pour: code, gang: null, pane: null }),
    [change],
  );
  const onGang = useCallback(
    (turn: Turn) => change({ pour: turn.pour, gang: turn.id, pane: null }),
    [change],
  );
  const onPane = useCallback((pane: string) => change({ pane }), [change]);
  const onMove = useCallback((move: Move) => propose([{ kind: 'move', ...move }]), [propose]);
  const onOver = useCallback((day: string) => change({ pane: 'over', day }), [change]);
  const onCurve = useCallback((code: string) => change({ curve: code }), [change]);
  const onShortfall = useCallback(
    (id: string) => navigate(`/shortfalls?short=${encodeURIComponent(id)}`),
    [navigate],
  );
  const readOnly = host.data?.book?.readOnly === true;
  const side =
    moves.changes.length > 0 ? (
      <WhatifPane
        model={model}
        changes={moves.changes}
        names={known.names}
        answer={moves.answer}
        isToday={today !== null}
        working={moves.working}
        keeping={moves.keeping}
        readOnly={readOnly}
        refusal={moves.error === null ? null : <RefusalNote error={moves.error} />}
        onKeep={moves.keep}
        onLeave={moves.leave}
      />
    ) : (
      <BoardSide model={model} query={query} readOnly={readOnly} onMove={onMove} onChange={change} />
    );
  return (
    <div className={view.wall ? 'screen board wall' : 'screen board'}>
      <Patterns />
      <BoardHead model={model} onPane={onPane} />
      <BoardTools view={view} home={home} today={today !== null} onChange={change}>
        <ChangeField
          label="Change"
          known={known}
          onChanges={propose}
          onAgain={moves.keep}
          proposed={moves.changes.length > 0}
          examples={boardExamples}
        />
      </BoardTools>
      <YardStrip notes={board.yardNotes} words={words} />
      <div className="screen-body">
        <BoardChart
          model={model}
          view={view}
          nowMs={today === null ? 0 : Date.parse(now)}
          selected={selected}
          proposed={moves.moves}
          whatif={moves.answer}
          component={query.get('curve')}
          onSelect={onSelect}
          onGang={onGang}
          onMove={onMove}
          onCurve={onCurve}
          onShortfall={onShortfall}
          onOver={onOver}
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
