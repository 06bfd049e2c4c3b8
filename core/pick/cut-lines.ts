// Where a gang can be taken apart into gangs: lines from one edge to the other that pass through no panel and no
// filler, and that no filler bridges (it would hang on one side alone).
import type { DesignGeometry } from '../gang/design.ts';
import { commonStretch, type Gang, type Rectangle } from '../gang/placed.ts';

export type Direction = 'upright' | 'level';

/** A piece along the direction in which the lines are counted (`from`, `to`), and across it. */
interface Span {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly isFiller: boolean;
}

/** Places of the lines, rising: x of upright ones, y of level ones; the gang's own edges are not among them. */
export function cutLines(gang: Gang, direction: Direction): readonly number[] {
  const spans = [
    ...gang.panels.map((panel) => spanOf(panel, direction, false)),
    ...gang.fillers.map((filler) => spanOf(filler, direction, true)),
  ];
  const edges = new Set(spans.flatMap((span) => (span.isFiller ? [] : [span.from, span.to])));
  const [first, last] = [
    Math.min(...spans.map((span) => span.from)),
    Math.max(...spans.map((span) => span.to)),
  ];
  return [...edges]
    .filter((at) => at > first && at < last && isClear(spans, at))
    .sort((one, other) => one - other);
}

function isClear(spans: readonly Span[], at: number): boolean {
  if (spans.some((span) => span.from < at && at < span.to)) return false;
  const before = spans.filter((span) => span.to === at);
  const after = spans.filter((span) => span.from === at);
  return !before.some((one) =>
    after.some(
      (other) =>
        one.isFiller !== other.isFiller &&
        commonStretch(one.low, one.high, other.low, other.high) !== undefined,
    ),
  );
}

function spanOf(piece: Rectangle, direction: Direction, isFiller: boolean): Span {
  const { leftNm, rightNm, bottomNm, topNm } = piece;
  return direction === 'upright'
    ? { from: leftNm, to: rightNm, low: bottomNm, high: topNm, isFiller }
    : { from: bottomNm, to: topNm, low: leftNm, high: rightNm, isFiller };
}

/**
 * The part of a design whose panels stand between two lines. What was a joint there is the edge to the next
 * gang; the wall face it was drawn for is the whole gang's, and is left out.
 */
export function partBetween(
  geometry: DesignGeometry,
  gang: Gang,
  direction: Direction,
  from: number,
  to: number,
): DesignGeometry {
  const isIn = (piece: Rectangle): boolean => {
    const span = spanOf(piece, direction, false);
    return span.from >= from && span.to <= to;
  };
  const { face: _whole, ...rest } = geometry;
  const { extent } = gang;
  const isWholeLength = direction === 'level';
  return {
    ...rest,
    panels: geometry.panels.filter((_, index) => gang.panels[index] && isIn(gang.panels[index])),
    fillers: geometry.fillers.filter((_, index) => gang.fillers[index] && isIn(gang.fillers[index])),
    edges: {
      left: isWholeLength || from === extent.leftNm ? geometry.edges.left : 'next-gang',
      right: isWholeLength || to === extent.rightNm ? geometry.edges.right : 'next-gang',
    },
  };
}
