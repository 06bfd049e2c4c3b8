// The chart of the board: days along the top, a row a pour or a gang, and under them the crew, what is short
// and the curve of a component. What does not follow a proposed move is not drawn again for it.
import { type CSSProperties, memo, type ReactNode, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { ComponentChoice } from '../../parts/component-choice.tsx';
import { Empty } from '../../parts/notes.tsx';
import { useIsPrinting } from '../../parts/printing.ts';
import { addDays } from '../../parts/zoned.ts';
import { Bands, rowsPx } from './bands.tsx';
import type { BoardModel } from './board-rows.ts';
import { BoardTable } from './board-table.tsx';
import type { BoardView } from './board-tools.tsx';
import type { Move, Turn, Whatif } from './board-types.ts';
import { CurveRow } from './curve-row.tsx';
import { DayHead } from './day-head.tsx';
import { FigureRow } from './figure-row.tsx';
import { type DayScale, makeDayScale, spanOf } from './day-scale.ts';
import { desk, fitted, type Metrics, narrow, onPaper, type RowMetrics, wall, wallNear } from './metrics.ts';
import { useIsLow } from './low-window.ts';
import { craneLoad, crewLoad, LoadRow, padLoad } from './load-row.tsx';
import { PourRows } from './pour-rows.tsx';
import { RunRows, runRows } from './run-rows.tsx';
import { ShortRows } from './short-foot.tsx';
import { useSize, useWidth } from './use-size.ts';

interface BoardChartProps {
  readonly model: BoardModel;
  readonly view: BoardView;
  readonly nowMs: number;
  readonly selected: string | null;
  readonly proposed: readonly Move[];
  readonly whatif: Whatif | undefined;
  /** Whose curve is asked for. */
  readonly component: string | null;
  readonly onSelect: (code: string | null) => void;
  /** A gang at one of its pours, in the rows by gang. */
  readonly onGang: (turn: Turn) => void;
  readonly onMove: (move: Move) => void;
  readonly onCurve: (code: string) => void;
  readonly onShortfall: (id: string) => void;
  /** A day of which a load is over what is there. */
  readonly onOver: (date: string) => void;
}

export const BoardChart = memo(function BoardChart(props: BoardChartProps): ReactNode {
  const { model, view } = props;
  const { board } = model;
  const sheet = useRef<HTMLDivElement>(null);
  const scroller = useRef<HTMLDivElement>(null);
  const width = useWidth(sheet);
  const isPrinting = useIsPrinting();
  const [, inWindow] = useSize(scroller);
  const height = isPrinting ? rowsPx : inWindow;
  const base = baseMetrics(view.wall, width);
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
  const metrics = useMemo(
    () => fitted(isPrinting ? onPaper(base) : base, height, rows.length),
    [base, isPrinting, height, rows.length],
  );
  const runs = useMemo(() => (view.runs ? runRows(model, scale) : []), [model, scale, view.runs]);
  const sizes = { '--head': `${base.head}px`, '--chart': `${chartWidth}px` } as CSSProperties;
  const both = {
    model,
    scale,
    metrics,
    nowMs: props.nowMs,
    // On paper the sheet ends with its last row.
    least: isPrinting ? 0 : height,
    scroller,
    selected: props.selected,
    onSelect: props.onSelect,
  };
  const head = (
    <div className="chart-top">
      <div className="foot-head">{view.runs ? 'Gang run' : 'Pour'}</div>
      <DayHead scale={scale} text={metrics.text} />
      <div className="foot-then">{view.runs ? 'Ends' : 'After the strip'}</div>
    </div>
  );
  return (
    <div className={base === wallNear ? 'board-chart near' : 'board-chart'} ref={sheet} style={sizes}>
      {head}
      <div className="chart-rows" ref={scroller}>
        {width === 0 ? null : rows.length === 0 ? (
          <Empty title="No pour stands in these two weeks" />
        ) : view.runs ? (
          <Bands rowHeight={metrics.runRow} count={runs.length} head={head}>
            <RunRows {...both} rows={runs} onGang={props.onGang} />
          </Bands>
        ) : (
          <Bands rowHeight={metrics.row} count={rows.length} head={head}>
            <PourRows
              {...both}
              rows={rows}
              nearUntil={addDays(from, 14)}
              moves={props.proposed}
              whatif={props.whatif}
              onMove={props.onMove}
            />
          </Bands>
        )}
        <BoardTable rows={rows} words={model.words} />
      </div>
      <ChartFoot
        model={model}
        scale={scale}
        metrics={metrics}
        nowMs={props.nowMs}
        withCurve={!view.wall}
        component={props.component}
        onCurve={props.onCurve}
        onShortfall={props.onShortfall}
        onOver={props.onOver}
      />
    </div>
  );
});

function baseMetrics(isWall: boolean, width: number): Metrics {
  if (isWall) return width < 1500 ? wallNear : wall;
  return width < 960 ? narrow : desk;
}

const ChartFoot = memo(function ChartFoot(
  props: Pick<BoardChartProps, 'model' | 'nowMs' | 'component' | 'onCurve' | 'onShortfall' | 'onOver'> & {
    readonly scale: DayScale;
    readonly metrics: RowMetrics;
    readonly withCurve: boolean;
  },
): ReactNode {
  const { scale, metrics } = props;
  const { board } = props.model;
  const inView = board.shortfalls.find((one) => scale.shows(Date.parse(one.from), Date.parse(one.to)));
  const component = props.component ?? (inView ?? board.shortfalls[0])?.component ?? null;
  // Where the window is low the curve is there when somebody asks for it.
  const isLow = useIsLow();
  const isFolded = isLow && props.component === null;
  const load = { scale, text: metrics.text, onOpen: props.onOver };
  return (
    <>
      <LoadRow
        {...load}
        kind={crewLoad}
        onlyOver={false}
        head={
          <>
            Crew hours <span className="soft">of {board.job.crew} people</span>
          </>
        }
      />
      <LoadRow {...load} kind={craneLoad} onlyOver={isLow} head="Crane minutes" />
      <LoadRow {...load} kind={padLoad} onlyOver={isLow} head="Places on pads" />
      <ShortRows board={board} scale={scale} metrics={metrics} onOpen={props.onShortfall} />
      <FigureRow scale={scale} notes={board.yardNotes} />
      {component === null || !props.withCurve ? null : isFolded ? (
        <div className="foot-row">
          <div className="foot-head">
            <Button className="quiet curve-button" onPress={() => props.onCurve(component)}>
              Curve of {component} …
            </Button>
          </div>
          <div className="foot-chart" style={{ width: scale.width }} />
          <div className="foot-then" />
        </div>
      ) : (
        <CurveRow
          job={board.job.code}
          component={component}
          scale={scale}
          nowMs={props.nowMs}
          chooser={<ComponentChoice label="Curve of" value={component} onChange={props.onCurve} />}
        />
      )}
    </>
  );
});
