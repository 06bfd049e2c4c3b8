// Chains of dimensions along the four edges of a gang: the widths of what stands at the bottom, of what
// stands at the top where that differs, and the heights at the left and at the right likewise.
import type { DrawnPiece } from '../gang/take-off.ts';

/** One dimension from one length to another along an edge. */
export interface Stretch {
  readonly fromNm: number;
  readonly toNm: number;
}

export interface DimensionChains {
  readonly bottom: readonly Stretch[];
  /** Empty where it would repeat the bottom. */
  readonly top: readonly Stretch[];
  readonly left: readonly Stretch[];
  /** Empty where it would repeat the left. */
  readonly right: readonly Stretch[];
  readonly width: Stretch;
  readonly height: Stretch;
}

/** Pieces are the panels and fillers; a gang without any has no chains. */
export function dimensionChains(pieces: readonly DrawnPiece[]): DimensionChains | undefined {
  if (pieces.length === 0) return undefined;
  const [left, right] = reach(pieces.map((piece) => [piece.xNm, piece.xNm + piece.widthNm]));
  const [bottom, top] = reach(pieces.map((piece) => [piece.yNm, piece.yNm + piece.heightNm]));
  const alongX = (those: (piece: DrawnPiece) => boolean): Stretch[] =>
    stretches(pieces.filter(those).map(({ xNm, widthNm }) => [xNm, xNm + widthNm]));
  const alongY = (those: (piece: DrawnPiece) => boolean): Stretch[] =>
    stretches(pieces.filter(those).map(({ yNm, heightNm }) => [yNm, yNm + heightNm]));
  const chains = {
    bottom: alongX((piece) => piece.yNm === bottom),
    top: alongX((piece) => piece.yNm + piece.heightNm === top),
    left: alongY((piece) => piece.xNm === left),
    right: alongY((piece) => piece.xNm + piece.widthNm === right),
  };
  return {
    bottom: chains.bottom,
    top: same(chains.top, chains.bottom) ? [] : chains.top,
    left: chains.left,
    right: same(chains.right, chains.left) ? [] : chains.right,
    width: { fromNm: left, toNm: right },
    height: { fromNm: bottom, toNm: top },
  };
}

function reach(ends: readonly (readonly [number, number])[]): [number, number] {
  return [Math.min(...ends.map(([from]) => from)), Math.max(...ends.map(([, to]) => to))];
}

/** Cut at every end, and only where something stands: a gap has no dimension of its own panel. */
function stretches(ends: readonly (readonly [number, number])[]): Stretch[] {
  const cuts = [...new Set(ends.flat())].sort((a, b) => a - b);
  return cuts.slice(1).map((toNm, index) => ({ fromNm: cuts[index] ?? toNm, toNm }));
}

function same(one: readonly Stretch[], other: readonly Stretch[]): boolean {
  return (
    one.length === other.length &&
    one.every(({ fromNm, toNm }, index) => fromNm === other[index]?.fromNm && toNm === other[index]?.toNm)
  );
}
