// Where pieces that are dragged come to stand: to the nanometre at an edge of a piece that stands still, which
// includes the gang's own corners, or on the ground, where one is near enough. Without it no joint would close,
// since edges touch only where they are equal.

/** A piece on the drawing; (x, y) is its lower left corner. */
export interface SnapPiece {
  readonly xNm: number;
  readonly yNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
}

/** A line that edges have come to, over all that lies on it. */
export interface Guide {
  readonly direction: 'upright' | 'level';
  /** x of an upright line, y of a level one. */
  readonly atNm: number;
  /** Its lower or left end, and the other. */
  readonly fromNm: number;
  readonly toNm: number;
}

export interface Snapped {
  readonly dxNm: number;
  readonly dyNm: number;
  readonly guides: readonly Guide[];
}

const groundNm = 0;

/**
 * The move nearest to `by`, by at most `reachNm` along each axis, that brings an edge of a moved piece to one of a
 * still piece, or its foot to the ground. What stood apart before stays apart: of two edges the nearer one is
 * gone to, so that no piece passes another's edge.
 */
export function snappedMove(
  moving: readonly SnapPiece[],
  still: readonly SnapPiece[],
  by: { readonly dxNm: number; readonly dyNm: number },
  reachNm: number,
): Snapped {
  const x = { low: (piece: SnapPiece) => piece.xNm, size: (piece: SnapPiece) => piece.widthNm };
  const y = { low: (piece: SnapPiece) => piece.yNm, size: (piece: SnapPiece) => piece.heightNm };
  const [dxNm, uprightAt] = alongAxis(moving, still, x, by.dxNm, reachNm);
  const [dyNm, levelAt] = alongAxis(moving, still, y, by.dyNm, reachNm, groundNm);
  const moved = moving.map((piece) => ({ ...piece, xNm: piece.xNm + dxNm, yNm: piece.yNm + dyNm }));
  return {
    dxNm,
    dyNm,
    guides: [
      ...uprightAt.map((atNm) => guide('upright', atNm, x, y, moved, still)),
      ...levelAt.map((atNm) => guide('level', atNm, y, x, moved, still)),
    ],
  };
}

interface Axis {
  readonly low: (piece: SnapPiece) => number;
  readonly size: (piece: SnapPiece) => number;
}

/** The move along one axis, and the places at which edges then meet. */
function alongAxis(
  moving: readonly SnapPiece[],
  still: readonly SnapPiece[],
  axis: Axis,
  by: number,
  reachNm: number,
  ground?: number,
): readonly [number, readonly number[]] {
  const targets = edgesOf(still, axis);
  const edges = edgesOf(moving, axis).map((edge) => edge + by);
  let best: number | undefined;
  const consider = (shift: number): void => {
    if (Math.abs(shift) <= reachNm && (best === undefined || Math.abs(shift) < Math.abs(best))) best = shift;
  };
  for (const edge of edges) {
    const after = firstNotUnder(targets, edge);
    for (const target of targets.slice(Math.max(after - 1, 0), after + 1)) consider(target - edge);
  }
  const foot = moving.length === 0 ? undefined : Math.min(...moving.map(axis.low)) + by;
  if (ground !== undefined && foot !== undefined) consider(ground - foot);
  if (best === undefined) return [by, []];
  const shift = best;
  const met = edges.map((edge) => edge + shift).filter((edge) => isAmong(targets, edge));
  const onGround = ground !== undefined && foot !== undefined && foot + shift === ground ? [ground] : [];
  return [by + shift, [...new Set([...met, ...onGround])].sort((one, other) => one - other)];
}

/** Each place once, rising. */
function edgesOf(pieces: readonly SnapPiece[], { low, size }: Axis): readonly number[] {
  const edges = new Set(pieces.flatMap((piece) => [low(piece), low(piece) + size(piece)]));
  return [...edges].sort((one, other) => one - other);
}

/** The index of the first of the rising numbers that is not under the value. */
function firstNotUnder(rising: readonly number[], value: number): number {
  let [from, to] = [0, rising.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((rising[middle] ?? 0) < value) from = middle + 1;
    else to = middle;
  }
  return from;
}

function isAmong(rising: readonly number[], value: number): boolean {
  return rising[firstNotUnder(rising, value)] === value;
}

/** Over every piece that has an edge on the line. */
function guide(
  direction: Guide['direction'],
  atNm: number,
  across: Axis,
  along: Axis,
  moved: readonly SnapPiece[],
  still: readonly SnapPiece[],
): Guide {
  const isOn = (piece: SnapPiece): boolean =>
    across.low(piece) === atNm || across.low(piece) + across.size(piece) === atNm;
  const on = [...moved, ...still].filter(isOn);
  const ends = edgesOf(on.length > 0 ? on : moved, along);
  return { direction, atNm, fromNm: ends[0] ?? 0, toNm: ends.at(-1) ?? 0 };
}
