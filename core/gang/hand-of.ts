// Which gangs are the same, and which are each other's mirror image: by the codes and places of their panels,
// their fillers, edges and tie holes, all from the gang's lower left corner. A mirror image is no twin: the one
// cannot be set where the other stood.
import type { EdgeKind } from '../catalogue/edges.ts';
import type { Gang, Rectangle } from './placed.ts';
import { tieHoles } from './ties.ts';

export type Likeness = 'same' | 'mirrored';

/** Is the gang its own mirror image? Then it has no hand. */
export function isSymmetrical(gang: Gang): boolean {
  return imageOf(gang, false) === imageOf(gang, true);
}

/** How the one gang is like the other; null where they differ. One that is its own mirror image is 'same'. */
export function likeness(one: Gang, other: Gang): Likeness | null {
  if (one.panels.length !== other.panels.length || one.fillers.length !== other.fillers.length) return null;
  if (one.widthNm !== other.widthNm || one.heightNm !== other.heightNm) return null;
  const image = imageOf(one, false);
  if (image === imageOf(other, false)) return 'same';
  return image === imageOf(other, true) ? 'mirrored' : null;
}

/** Everything that makes up the gang, as a text that is equal for equal gangs whatever their order. */
function imageOf(gang: Gang, mirrored: boolean): string {
  const { extent } = gang;
  const across = (leftNm: number, rightNm: number): number =>
    mirrored ? extent.rightNm - rightNm : leftNm - extent.leftNm;
  const piece = (name: string, { leftNm, bottomNm, rightNm, topNm }: Rectangle): string =>
    `${name} ${across(leftNm, rightNm)} ${bottomNm - extent.bottomNm} ${rightNm - leftNm} ${topNm - bottomNm}`;
  const edges: readonly EdgeKind[] = mirrored
    ? [gang.edges.right, gang.edges.left]
    : [gang.edges.left, gang.edges.right];
  return JSON.stringify([
    gang.panels.map((panel) => piece(`${panel.panel.code} ${panel.onSide}`, panel)).sort(),
    gang.fillers.map((filler) => piece('', filler)).sort(),
    edges,
    tieHoles(gang)
      .map(({ xNm, yNm }) => `${across(xNm, xNm)} ${yNm - extent.bottomNm}`)
      .sort(),
  ]);
}
