// Where along a joint its locks are drawn, and which filler a filler joint passes.
import type { PointNm } from '../gang/findings.ts';
import type { DrawnPiece } from '../gang/take-off.ts';

export interface JointLine extends PointNm {
  readonly direction: 'upright' | 'level';
  readonly lengthNm: number;
  readonly spanNm: number;
}

/**
 * Middles of `count` locks, each in the middle of its equal share of the joint, half way over the filler
 * where there is one. The catalogue says how many; it does not say where, so the drawing only spreads them.
 */
export function locksAlong(joint: JointLine, count: number): PointNm[] {
  return Array.from({ length: count }, (_, index) => {
    const alongNm = Math.round((joint.lengthNm * (2 * index + 1)) / (2 * count));
    const acrossNm = Math.round(joint.spanNm / 2);
    return joint.direction === 'upright'
      ? { xNm: joint.xNm + acrossNm, yNm: joint.yNm + alongNm }
      : { xNm: joint.xNm + alongNm, yNm: joint.yNm + acrossNm };
  });
}

/**
 * The filler on whose edge a filler joint stands, the joint's corner moved to the filler's left or lower
 * edge, and how far its locks span. Undefined where no filler is there (an error of the data, drawn as a
 * plain joint rather than hidden).
 */
export function fillerOfJoint(
  joint: PointNm & { readonly lengthNm: number },
  fillers: readonly DrawnPiece[],
): { direction: 'upright' | 'level'; xNm: number; yNm: number; spanNm: number } | undefined {
  for (const filler of fillers) {
    const right = filler.xNm + filler.widthNm;
    const top = filler.yNm + filler.heightNm;
    const onUpright =
      joint.xNm >= filler.xNm &&
      joint.xNm <= right &&
      joint.yNm >= filler.yNm &&
      joint.yNm + joint.lengthNm <= top;
    const onLevel =
      joint.yNm >= filler.yNm &&
      joint.yNm <= top &&
      joint.xNm >= filler.xNm &&
      joint.xNm + joint.lengthNm <= right;
    // A square filler could be read either way: the taller reading wins, as fillers mostly stand upright.
    if (onUpright && (!onLevel || filler.heightNm >= filler.widthNm))
      return { direction: 'upright', xNm: filler.xNm, yNm: joint.yNm, spanNm: filler.widthNm };
    if (onLevel) return { direction: 'level', xNm: joint.xNm, yNm: filler.yNm, spanNm: filler.heightNm };
  }
  return undefined;
}
