// Under the days: crew hours needed of those there, and what is short from when to when.
import { memo, type ReactNode } from 'react';
import { Link } from 'wouter';
import { dateWords } from '../../parts/time-words.ts';
import type { Board } from './board-types.ts';
import type { DayBox, DayScale } from './day-scale.ts';
import type { RowMetrics } from './metrics.ts';
import { LaneBars } from './lane-bars.tsx';
import { lanesOf } from './short-lanes.ts';

export const CrewRow = memo(function CrewRow(props: {
  readonly scale: DayScale;
  readonly crew: number;
  /** Height of its letters in pixels. */
  readonly text: number;
}): ReactNode {
  const { scale } = props;
  return (
    <div className="foot-row crew">
      <div className="foot-head">
        Crew hours <span className="soft">of {props.crew} people</span>
      </div>
      <div className="foot-chart crew-chart" style={{ width: scale.width }}>
        {scale.days.map((day) => (
          <CrewDay key={day.date} day={day} text={props.text} />
        ))}
      </div>
      <div className="foot-then soft">{overloadWords(scale)}</div>
    </div>
  );
});

function CrewDay(props: { readonly day: DayBox; readonly text: number }): ReactNode {
  const { day } = props;
  const needed = day.day?.crewHoursNeeded ?? 0;
  const there = day.day?.crewHoursThere ?? 0;
  if (needed === 0 && there === 0) return null;
  const over = needed > there + 0.05;
  const words = crewWords(needed, there, day.width / props.text);
  const share = there === 0 ? 1 : Math.min(needed / there, 1);
  return (
    <div
      className={over ? 'crew-day over' : 'crew-day'}
      style={{ left: day.x, width: day.width }}
      title={`${dateWords(day.date)}: ${hoursText(needed)} of ${hoursText(there)} crew hours`}
    >
      <span className="crew-bar">
        <span style={{ width: `${share * 100}%` }} />
      </span>
      <span className="crew-number">
        {words}
        {over && roomFor(`${words} over`, day.width / props.text) ? ' over' : ''}
      </span>
    </div>
  );
}

/** "60 of 42.5", "60 of 43", "60" or nothing, the longest there is room for; `width` in heights of a letter. */
function crewWords(needed: number, there: number, width: number): string {
  const exact = `${hoursText(needed)} of ${hoursText(there)}`;
  const rounded = `${wholeHours(needed)} of ${wholeHours(there)}`;
  if (roomFor(exact, width)) return exact;
  if (roomFor(rounded, width)) return rounded;
  // All days or none: a number here and there would say something that the others do not.
  return needed > 0 && roomFor('00', width) ? wholeHours(needed) : '';
}

function roomFor(words: string, width: number): boolean {
  return words.length * 0.58 + 0.7 < width;
}

function wholeHours(hours: number): string {
  return String(Math.round(hours));
}

function hoursText(hours: number): string {
  return hours >= 100 ? String(Math.round(hours)) : String(Math.round(hours * 10) / 10);
}

function overloadWords(scale: DayScale): string {
  const over = scale.days.filter(
    (day) => day.day !== undefined && day.day.crewHoursNeeded > day.day.crewHoursThere + 0.05,
  );
  if (over.length === 0) return 'within the crew every day';
  return `over the crew on ${over.length} ${over.length === 1 ? 'day' : 'days'}`;
}

const mostLanes = 4;

export function ShortRows(props: {
  readonly board: Board;
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly onOpen: (id: string) => void;
}): ReactNode {
  const { scale, metrics, board } = props;
  const lanes = lanesOf(board.shortfalls, scale);
  const shown = lanes.length > mostLanes ? lanes.slice(0, mostLanes - 1) : lanes;
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
