// Designs are drawn anywhere on paper and kept from the gang's lower left corner.
import type { DesignGeometry } from './design.ts';
import type { PointNm } from './findings.ts';

/** The design moved so that `corner` is (0, 0). One with a wall face stays, since the face gives its origin. */
export function atCorner(design: DesignGeometry, corner: PointNm): DesignGeometry {
  if (design.face !== undefined) return design;
  const moved = <T extends PointNm>(piece: T): T => ({
    ...piece,
    xNm: piece.xNm - corner.xNm,
    yNm: piece.yNm - corner.yNm,
  });
  return { ...design, panels: design.panels.map(moved), fillers: design.fillers.map(moved) };
}
