// Pieces that cannot stand where the design puts them: over each other, or outside the wall face.
import type { DesignGeometry } from './design.ts';
import { type Finding, shown } from './findings.ts';
import { commonStretch, type Gang, type Rectangle, type StandingPanel } from './placed.ts';

/** Overlapping panels, and fillers that overlap panels or each other, at the lower left of what they share. */
export function findOverlaps({ panels, fillers }: Gang): readonly Finding[] {
  const findings: Finding[] = [];
  const pieces = [...panels, ...fillers].sort((one, other) => one.leftNm - other.leftNm);
  for (const [index, one] of pieces.entries()) {
    for (let at = index + 1; at < pieces.length; at++) {
      const other = pieces[at];
      // From left to right: nothing further on begins before this piece ends.
      if (other === undefined || other.leftNm >= one.rightNm) break;
      const upright = commonStretch(one.bottomNm, one.topNm, other.bottomNm, other.topNm);
      if (upright === undefined) continue;
      const widthNm = Math.min(one.rightNm, other.rightNm) - other.leftNm;
      const message = `${named(one)} and ${named(other)} overlap over ${shown(widthNm)} by ${shown(upright[1] - upright[0])}.`;
      const where = { xNm: other.leftNm, yNm: upright[0] };
      findings.push({ rule: 'overlap', severity: 'stop', message, where });
    }
  }
  return findings;
}

/** Pieces that reach outside the wall face, where the design states one; its lower left corner is the origin. */
export function findOutsideFace({ panels, fillers }: Gang, face: DesignGeometry['face']): readonly Finding[] {
  if (face === undefined) return [];
  const inside = (piece: Rectangle): boolean =>
    piece.leftNm >= 0 && piece.bottomNm >= 0 && piece.rightNm <= face.widthNm && piece.topNm <= face.heightNm;
  const size = `${shown(face.widthNm)} by ${shown(face.heightNm)}`;
  return [...panels, ...fillers]
    .filter((piece) => !inside(piece))
    .map((piece) => ({
      rule: 'outside-face',
      severity: 'stop' as const,
      message: `${named(piece)} reaches outside the face of ${size}.`,
      where: { xNm: piece.leftNm, yNm: piece.bottomNm },
    }));
}

function named(piece: Rectangle | StandingPanel): string {
  return 'panel' in piece ? `Panel ${piece.panel.code}` : 'A filler';
}
