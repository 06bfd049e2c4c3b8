// A leg of the wall as its two faces: where each begins and ends in the one measure along the leg that both share,
// which corner pieces stand there, and what may reach beyond. The measure is that of side A: 0 is where its face begins.
import { never } from '../answer.ts';
import type { EdgeKind } from '../catalogue/edges.ts';
import type { CornerPieces } from './wall-corners.ts';
import type { Hole } from './wall-pieces.ts';
import type { SideName, Wall, WallEnd } from './wall.ts';

/** The end of a face: where the form ends, how much of it a corner piece covers, what the gang meets. */
export interface FaceEnd {
  readonly atNm: number;
  readonly cornerLegNm: number;
  /** Tie holes of the corner piece, from where the leg's panels end to the corner. */
  readonly cornerHoles: readonly { readonly fromPanelsNm: number; readonly heightNm: number }[];
  readonly edge: EdgeKind;
}

export interface Leg {
  readonly index: number;
  readonly from: Readonly<Record<SideName, FaceEnd>>;
  readonly to: Readonly<Record<SideName, FaceEnd>>;
  /** What the form may reach beyond the pour, at one end of the leg only; the far one where both are free. */
  readonly overhang: { readonly at: 'from' | 'to'; readonly mostNm: number };
  /** At which ends a stop-end closes the form. */
  readonly stopEnds: readonly ('from' | 'to')[];
}

export function wallLegs(wall: Wall, corners: readonly CornerPieces[]): readonly Leg[] {
  const last = wall.legs.length - 1;
  return wall.legs.map(({ lengthNm }, index): Leg => {
    const before = index > 0 ? index - 1 : wall.closed ? last : undefined;
    const after = index < last || wall.closed ? index : undefined;
    const start = before === undefined ? wall.start : undefined;
    const end = after === undefined ? wall.end : undefined;
    const faceFrom = (side: SideName): FaceEnd =>
      before === undefined
        ? endFace(0, wall.start, -1)
        : cornerFace(wall, corners, before, side, { atNm: 0, outward: -1, leg: 'after' });
    const faceTo = (side: SideName): FaceEnd =>
      after === undefined
        ? endFace(lengthNm, wall.end, 1)
        : cornerFace(wall, corners, after, side, { atNm: lengthNm, outward: 1, leg: 'before' });
    return {
      index,
      from: { A: faceFrom('A'), B: faceFrom('B') },
      to: { A: faceTo('A'), B: faceTo('B') },
      overhang: overhangOf(start, end),
      stopEnds: [
        ...(start !== undefined && start.kind !== 'old-concrete' ? (['from'] as const) : []),
        ...(end !== undefined && end.kind !== 'old-concrete' ? (['to'] as const) : []),
      ],
    };
  });
}

/** Panels of a face, from the end of its corner pieces to the beginning of those at its other end. */
export function panelLengthNm(leg: Leg, side: SideName): number {
  const [from, to] = [leg.from[side], leg.to[side]];
  return to.atNm - to.cornerLegNm - from.atNm - from.cornerLegNm;
}

function overhangOf(start: WallEnd | undefined, end: WallEnd | undefined): Leg['overhang'] {
  if (end?.kind === 'free') return { at: 'to', mostNm: end.overhangNm };
  if (start?.kind === 'free') return { at: 'from', mostNm: start.overhangNm };
  return { at: 'to', mostNm: 0 };
}

function endFace(atNm: number, end: WallEnd, outward: 1 | -1): FaceEnd {
  const bare = { cornerLegNm: 0, cornerHoles: [] };
  switch (end.kind) {
    case 'free':
      return { ...bare, atNm, edge: 'stop-end' };
    case 'old-concrete':
      return { ...bare, atNm: atNm + outward * end.lapNm, edge: 'against-concrete' };
    case 'next-pour':
      return { ...bare, atNm, edge: 'next-gang' };
    default:
      return never(end);
  }
}

/** At an inner corner side B's face is shorter than side A's by the thickness, at an outer one longer. */
function cornerFace(
  wall: Wall,
  corners: readonly CornerPieces[],
  turn: number,
  side: SideName,
  end: { readonly atNm: number; readonly outward: 1 | -1; readonly leg: 'before' | 'after' },
): FaceEnd {
  const isInner = innerSide(wall, turn) === side;
  const shiftNm = side === 'A' ? 0 : isInner ? -wall.thicknessNm : wall.thicknessNm;
  const pieces = corners[turn];
  const part = isInner ? pieces?.inside : pieces?.outside;
  const cornerLegNm = (end.leg === 'before' ? part?.legBeforeNm : part?.legAfterNm) ?? 0;
  return {
    atNm: end.atNm + end.outward * shiftNm,
    cornerLegNm,
    cornerHoles: (part?.holes ?? [])
      .filter(([fromCornerNm]) => fromCornerNm <= cornerLegNm)
      .map(([fromCornerNm, heightNm]) => ({ fromPanelsNm: cornerLegNm - fromCornerNm, heightNm })),
    edge: isInner ? 'inside-corner' : 'outside-corner',
  };
}

/** The side inside the bend: B where the wall turns left, A where it turns right. */
export function innerSide(wall: Wall, turn: number): SideName {
  return wall.turns[turn] === 'right' ? 'A' : 'B';
}

/** Tie holes of a corner piece along the leg, as the solver meets them from the panels (or from the corner). */
export function cornerHolesAlong(
  end: FaceEnd,
  first: 'corner' | 'panels',
  levelOf: (heightNm: number) => number,
): readonly Hole[] {
  return end.cornerHoles
    .map(({ fromPanelsNm, heightNm }) => ({
      alongNm: first === 'panels' ? fromPanelsNm : end.cornerLegNm - fromPanelsNm,
      level: levelOf(heightNm),
    }))
    .sort((one, other) => one.alongNm - other.alongNm || one.level - other.level);
}
