// Where a dragged or pushed piece comes to stand: at an edge near it, else at a whole step, so that nothing is left
// a hair beside its place.
import { snappedMove, type Snapped } from '../../../../core/gang/snap.ts';
import type { RectangleNm } from '../design-shapes.ts';
import { around } from './draft-pieces.ts';

/** @param reachNm how near an edge must be; @param stepNm where none is, the lower left corner goes to a multiple */
export function moveToPlace(
  moving: readonly RectangleNm[],
  still: readonly RectangleNm[],
  by: { readonly dxNm: number; readonly dyNm: number },
  reachNm: number,
  stepNm: number,
): Snapped {
  const snapped = snappedMove(moving, still, by, reachNm);
  const room = around(moving);
  if (room === undefined) return snapped;
  const whole = (fromNm: number, byNm: number): number =>
    Math.round((fromNm + byNm) / stepNm) * stepNm - fromNm;
  const met = (direction: 'upright' | 'level'): boolean =>
    snapped.guides.some((guide) => guide.direction === direction);
  return {
    dxNm: met('upright') ? snapped.dxNm : whole(room.xNm, snapped.dxNm),
    dyNm: met('level') ? snapped.dyNm : whole(room.yNm, snapped.dyNm),
    guides: snapped.guides,
  };
}

/** By how much pieces go to the next edge of a standing one, or the ground, in a direction; 0 where none is. */
export function toNextEdge(
  moving: readonly RectangleNm[],
  still: readonly RectangleNm[],
  direction: 'left' | 'right' | 'up' | 'down',
): number {
  const room = around(moving);
  if (room === undefined) return 0;
  const level = direction === 'left' || direction === 'right';
  const sign = direction === 'left' || direction === 'down' ? -1 : 1;
  const ends = ({ xNm, yNm, widthNm, heightNm }: RectangleNm): readonly [number, number] =>
    level ? [xNm, xNm + widthNm] : [yNm, yNm + heightNm];
  const [low, high] = ends(room);
  const ways = [0, ...still.flatMap(ends)]
    .flatMap((line) => [line - low, line - high])
    .map((way) => way * sign)
    .filter((way) => way > 0);
  return ways.length === 0 ? 0 : Math.min(...ways) * sign;
}
