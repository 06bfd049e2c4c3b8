// One pour drawn: two tracks from set to strip, the pour across both, and its hours in words where there
// is room. Drawn again only when its own row or the scale changes.
import { memo, type ReactNode } from 'react';
import type { TimeWords } from '../../parts/time-words.ts';
import type { PourRow } from './board-rows.ts';
import type { DayScale } from './day-scale.ts';
import type { RowMetrics } from './metrics.ts';
import type { Bar, PourBars } from './pour-bars.ts';

interface MarksProps {
  readonly row: PourRow;
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
  readonly words: TimeWords;
  readonly ghost?: boolean;
}

export const PourMarks = memo(function PourMarks(props: MarksProps): ReactNode {
  const { row, scale, metrics, words } = props;
  const { bars } = row;
  if (!scale.shows(bars.fromMs, bars.toMs)) return null;
  const finish = scale.x(bars.finishMs);
  const top = metrics.a - 3;
  const bottom = metrics.b + metrics.track + 3;
  const pourWidth = pourWidthOf(metrics);
  return (
    <g className={props.ghost === true ? 'marks ghost' : 'marks'}>
      <Track bars={bars.a} y={metrics.a} scale={scale} height={metrics.track} />
      <Track bars={bars.b} y={metrics.b} scale={scale} height={metrics.track} />
      {scale.shows(bars.finishMs, bars.finishMs + 1) ? (
        <rect className="pour-mark" x={finish - pourWidth} y={top} width={pourWidth} height={bottom - top} />
      ) : null}
      {props.ghost === true ? null : <Hours row={row} scale={scale} metrics={metrics} words={words} />}
    </g>
  );
});

function Track(props: {
  readonly bars: readonly Bar[];
  readonly y: number;
  readonly scale: DayScale;
  readonly height: number;
}): ReactNode {
  const { scale, y, height } = props;
  const middle = y + height / 2;
  return props.bars
    .filter((bar) => scale.shows(bar.fromMs, bar.toMs))
    .map((bar) => {
      const x = scale.x(bar.fromMs);
      const width = Math.max(scale.x(bar.toMs) - x, 1);
      const key = `${bar.kind}${bar.fromMs}`;
      if (bar.kind === 'wait') {
        return <path key={key} className="bar-wait" d={`M${x} ${middle}h${width}`} />;
      }
      if (bar.kind === 'stand') {
        return (
          <path
            key={key}
            className="bar-stand"
            d={`M${x} ${y + 0.5}h${width}M${x} ${y + height - 0.5}h${width}`}
          />
        );
      }
      return <rect key={key} className={`bar-${bar.kind}`} x={x} y={y} width={width} height={height} />;
    });
}

function pourWidthOf(metrics: RowMetrics): number {
  return metrics.text > 12 ? 8 : 5;
}

/** Below this many pixels a day there is no room for hours. */
const widthForHours = 46;

function Hours(props: Omit<MarksProps, 'ghost'>): ReactNode {
  const { row, scale, metrics, words } = props;
  const day = scale.days.find((one) => one.working)?.width ?? 0;
  const { bars } = row;
  const middle = (metrics.a + metrics.b + metrics.track) / 2 + metrics.text * 0.36;
  const strip = `strip ${words.dayTime(row.row.times.stripFrom)}`;
  const room = strip.length * metrics.text * 0.56;
  const gates = row.state.gate?.text;
  const start = scale.x(bars.fromMs);
  const place = stripPlace(bars, scale, room);
  if (day < widthForHours && metrics.text <= 12) return null;
  return (
    <>
      {bars.finishMs > scale.fromMs && bars.finishMs < scale.toMs && day >= widthForHours ? (
        <text
          className="hour"
          x={scale.x(bars.finishMs) - pourWidthOf(metrics) - 4}
          y={middle}
          textAnchor="end"
        >
          {words.time(row.row.times.finishAt)}
        </text>
      ) : null}
      {metrics.text > 12 &&
      gates !== undefined &&
      (place === null || place.x > start) &&
      start - 12 - gates.length * metrics.text * 0.56 > 0 ? (
        <text className="gate-words" x={start - 7} y={middle} textAnchor="end">
          {gates}
        </text>
      ) : null}
      {place === null ? null : (
        <text className="strip-words" x={place.x} y={middle} textAnchor={place.anchor}>
          {strip}
        </text>
      )}
    </>
  );
}

/** After the strip; else between the tracks back from its end, as far as the pour; else before the setting. */
function stripPlace(
  bars: PourBars,
  scale: DayScale,
  room: number,
): { readonly x: number; readonly anchor: 'start' | 'end' } | null {
  if (!scale.shows(bars.stripFromMs, bars.toMs)) return null;
  const end = scale.x(bars.toMs);
  if (end + 8 + room < scale.width) return { x: end + 7, anchor: 'start' };
  if (end - scale.x(bars.finishMs) > room) return { x: end, anchor: 'end' };
  const start = scale.x(bars.fromMs);
  return start - 8 - room > 0 ? { x: start - 7, anchor: 'end' } : null;
}
