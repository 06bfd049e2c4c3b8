// A gang held against the designs of the book: is it its own mirror image, which one is the same, which one is
// its other hand.
import { z } from 'zod';
import { type Answer, answer } from '../answer.ts';
import type { Design } from '../book/book.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from '../gang/design.ts';
import { isSymmetrical, likeness, type Likeness } from '../gang/hand-of.ts';
import type { Finding } from '../gang/findings.ts';
import { mirrorFindings } from '../gang/mirror.ts';
import { type Gang, placeDesign } from '../gang/placed.ts';
import { code, finding } from './shapes.ts';

/** To be spread into an answer's shape. */
export const likenessShape = {
  /** Is it its own mirror image? */
  symmetrical: z.boolean(),
  sameAs: z.array(z.strictObject({ design: code, how: z.enum(['same', 'mirrored']) })),
  /** Panels whose tie holes would not come where the mirror image has them; from the gang's lower left corner. */
  mirrorFindings: z.array(finding),
};

export interface DesignLikeness {
  readonly symmetrical: boolean;
  readonly sameAs: { design: string; how: Likeness }[];
  readonly mirrorFindings: Finding[];
}

/** @param others designs of the same system, without the one itself */
export function likenessOf(
  system: PanelSystem,
  geometry: DesignGeometry,
  others: readonly Design[],
): Answer<DesignLikeness> {
  const placed = placeDesign(system, geometry);
  if (!placed.ok) return placed;
  const gang = placed.value;
  const sameAs = others.flatMap((other) => {
    if (other.geometry.panels.length !== geometry.panels.length) return [];
    const standing = placeDesign(system, other.geometry);
    // One that can no longer be placed is like no other; whoever reads it is told why.
    const how = standing.ok ? likeness(gang, standing.value) : null;
    return how === null ? [] : [{ design: other.code, how }];
  });
  return answer({
    symmetrical: isSymmetrical(gang),
    sameAs,
    mirrorFindings: mirrorFindings(gang).map((each) => fromCorner(each, gang)),
  });
}

function fromCorner(found: Finding, { extent }: Gang): Finding {
  const { where } = found;
  if (where === undefined || typeof where === 'string') return found;
  return { ...found, where: { xNm: where.xNm - extent.leftNm, yNm: where.yNm - extent.bottomNm } };
}
