// Under the days: what is short from when to when.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import type { Board } from './board-types.ts';
import type { DayScale } from './day-scale.ts';
import type { RowMetrics } from './metrics.ts';
import { LaneBars } from './lane-bars.tsx';
import { useIsLow } from './low-window.ts';
import { lanesOf } from './short-lanes.ts';

/** One line fewer where the window is low. */
const mostLanes = { usual: 4, low: 3 };

export function ShortRows(props: {
  readonly board: Board;
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly onOpen: (id: string) => void;
}): ReactNode {
  const { scale, metrics, board } = props;
  const most = useIsLow() ? mostLanes.low : mostLanes.usual;
  const lanes = lanesOf(board.shortfalls, scale);
  const shown = lanes.length > most ? lanes.slice(0, most - 1) : lanes;
  const rest = lanes.slice(shown.length);
  // No lower than what a finger or an unsteady pointer hits.
  const laneHeight = Math.max(24, metrics.text + 7);
  return (
    <div className="foot-row short-rows">
      <div className="foot-head">
        {lanes.length === 0 ? (
          <span className="soft">Nothing short</span>
        ) : (
          <span className="short-word">Short</span>
        )}
      </div>
      <div className="foot-chart" style={{ width: scale.width }}>
        {shown.map((lane) => (
          <LaneBars
            key={lane.component}
            lane={lane}
            scale={scale}
            height={laneHeight}
            text={metrics.text}
            onOpen={props.onOpen}
          />
        ))}
        {rest.length === 0 ? null : (
          <div className="lane-rest" style={{ height: laneHeight }}>
            and {rest.map((lane) => `${lane.component} ${lane.most}`).join(', ')}
          </div>
        )}
      </div>
      <div className="foot-then">
        {board.shortfalls.length === 0 ? null : (
          <Link href="/shortfalls">
            {board.shortfalls.length === 1
              ? 'The one shortfall'
              : `All ${board.shortfalls.length} shortfalls`}
          </Link>
        )}
      </div>
    </div>
  );
}
