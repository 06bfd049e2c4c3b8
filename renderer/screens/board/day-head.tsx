// The days along the top: weeks from Monday with their number, working days with their date, days off
// narrow and hatched down the whole chart.
import { memo, type ReactNode, useContext } from 'react';
import { shortDate, weekdayOf } from '../../parts/time-words.ts';
import { weekNumber } from '../../parts/zoned.ts';
import { BandRange } from './band-range.ts';
import type { DayScale } from './day-scale.ts';

/** Pixels of the letters at a desk, for which the least widths below are. */
const deskText = 12;

export const DayHead = memo(function DayHead(props: {
  readonly scale: DayScale;
  /** Height of the letters in pixels. */
  readonly text: number;
}): ReactNode {
  const { scale } = props;
  const width = ((scale.days.find((day) => day.working)?.width ?? 0) * deskText) / props.text;
  return (
    <div className="day-head" aria-hidden="true">
      {scale.days
        .filter((day) => weekdayOf(day.date) === 'Mon')
        .map((day) => (
          <span key={day.date} className="week-label" style={{ left: day.x }}>
            {weekLabel(day.date, width)}
          </span>
        ))}
      {scale.days.map((day) => (
        <span
          key={day.date}
          className={day.working ? 'day-label' : 'day-label off'}
          style={{ left: day.x, width: day.width }}
        >
          {day.working ? dayLabel(day.date, width) : offLabel(day.date, day.width)}
        </span>
      ))}
    </div>
  );
});

/** "Week 10", with Monday's date where the days have no room for theirs. */
function weekLabel(monday: string, width: number): string {
  if (width >= 36) return `Week ${weekNumber(monday)}`;
  return width >= 20 ? `${weekNumber(monday)}: ${shortDate(monday)}` : shortDate(monday);
}

/** "Sa", in small letters of one size, where it fits. */
function offLabel(date: string, width: number): string {
  return width >= 16 ? weekdayOf(date).slice(0, 2) : '';
}

/** "Mon 2", "Mo 2" or "2", by the room there is. */
function dayLabel(date: string, width: number): ReactNode {
  const number = Number(date.slice(8));
  if (width < 19) return '';
  if (width < 36) return number;
  return (
    <>
      {width < 54 ? weekdayOf(date).slice(0, 2) : weekdayOf(date)} <b>{number}</b>
    </>
  );
}

/** Days off hatched, and a hairline where each day begins; under everything else. */
export const DayGrid = memo(function DayGrid(props: {
  readonly scale: DayScale;
  readonly height: number;
  readonly nowMs: number;
}): ReactNode {
  const { scale, nowMs } = props;
  // A band of paper has no more of it than it shows: what is clipped would be in the file all the same.
  const { top, height } = useContext(BandRange) ?? { top: 0, height: props.height };
  return (
    <g>
      {scale.days.map((day) =>
        day.working ? (
          <path
            key={day.date}
            className={weekdayOf(day.date) === 'Mon' ? 'day-line week' : 'day-line'}
            d={`M${Math.round(day.x) + 0.5} ${top}v${height}`}
          />
        ) : (
          <rect key={day.date} className="day-off" x={day.x} y={top} width={day.width} height={height} />
        ),
      )}
      {nowMs > scale.fromMs && nowMs < scale.toMs ? (
        <path className="today" d={`M${scale.x(nowMs)} ${top}v${height}`} />
      ) : null}
    </g>
  );
});
