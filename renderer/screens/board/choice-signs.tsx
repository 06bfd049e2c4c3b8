// Signs over and under the ends of a pour's tracks: what was told of its gangs is an arrowhead, open and struck through
// where the plan does otherwise; what is fixed is a square.
import { memo, type ReactNode } from 'react';
import type { PourRow } from './board-rows.ts';
import type { EndMark } from './choice-words.ts';
import type { DayScale } from './day-scale.ts';
import type { RowMetrics } from './metrics.ts';
import './choice-signs.css';

export const ChoiceSigns = memo(function ChoiceSigns(props: {
  readonly row: PourRow;
  readonly scale: DayScale;
  readonly metrics: RowMetrics;
}): ReactNode {
  const { row, scale, metrics } = props;
  const size = Math.max(5, Math.min(10, metrics.a - 1));
  const ends = [
    { marks: row.marks.a, bars: row.bars.a, y: metrics.a - size - 1 },
    { marks: row.marks.b, bars: row.bars.b, y: metrics.b + metrics.track + 1 },
  ];
  return ends.map(({ marks, bars, y }) => {
    if (isBare(marks.before) && isBare(marks.after)) return null;
    const fromMs = bars[0]?.fromMs ?? row.bars.fromMs;
    const toMs = bars.at(-1)?.toMs ?? row.bars.toMs;
    return (
      <g key={y} className="choice-signs">
        {scale.shows(fromMs, fromMs + 1) ? (
          <Signs mark={marks.before} x={scale.x(fromMs)} y={y} size={size} />
        ) : null}
        {scale.shows(toMs - 1, toMs) ? (
          <Signs mark={marks.after} x={scale.x(toMs) - widthOf(marks.after, size)} y={y} size={size} />
        ) : null}
      </g>
    );
  });
});

function isBare({ told, fixed }: EndMark): boolean {
  return told === null && !fixed;
}

function widthOf({ told, fixed }: EndMark, size: number): number {
  return (told === null ? 0 : size + 2) + (fixed ? size + 2 : 0);
}

export function Signs(props: {
  readonly mark: EndMark;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}): ReactNode {
  const { mark, x, y, size } = props;
  const squareX = x + (mark.told === null ? 0 : size + 2);
  return (
    <>
      {mark.told === null ? null : (
        <path
          className={mark.told === 'changed' ? 'sign-told changed' : 'sign-told'}
          d={
            arrowhead(x, y, size) +
            (mark.told === 'changed' ? `M${x - 1} ${y + size}L${x + size + 1} ${y}` : '')
          }
        />
      )}
      {mark.fixed ? <rect className="sign-fixed" x={squareX} y={y} width={size} height={size} /> : null}
    </>
  );
}

function arrowhead(x: number, y: number, size: number): string {
  return `M${x} ${y}L${x + size} ${y + size / 2}L${x} ${y + size}Z`;
}
