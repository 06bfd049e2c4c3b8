// The other hand of a gang: everything as in a mirror that stands at its side, so that what was at the left is
// at the right. Panels are moved, never turned over: one whose tie holes lie unevenly keeps them where they are,
// and that is found.
import { type Answer, answer } from '../answer.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from './design.ts';
import { type Finding, shown } from './findings.ts';
import { type Gang, placeDesign, type StandingPanel } from './placed.ts';
import { holesOf } from './ties.ts';

/**
 * The mirrored design; the gang's left and right end stay where they were, its edges change places. Mirrored
 * twice it is the same again. Refuses what placeDesign refuses.
 */
export function mirrorDesign(system: PanelSystem, design: DesignGeometry): Answer<DesignGeometry> {
  const placed = placeDesign(system, design);
  if (!placed.ok) return placed;
  const { panels, fillers, extent } = placed.value;
  const mirrored = (rightNm: number): number => extent.leftNm + extent.rightNm - rightNm;
  return answer({
    ...design,
    panels: design.panels.map((panel, index) => ({ ...panel, xNm: mirrored(rightOf(panels[index])) })),
    fillers: design.fillers.map((filler, index) => ({ ...filler, xNm: mirrored(rightOf(fillers[index])) })),
    edges: { left: design.edges.right, right: design.edges.left },
  });
}

/** Panels whose tie holes do not lie where the mirror image of the design has them. */
export function mirrorFindings(gang: Gang): readonly Finding[] {
  return gang.panels
    .map((standing) => ({ standing, hole: unevenHole(standing) }))
    .flatMap(({ standing: { panel, leftNm, bottomNm }, hole }) =>
      hole === undefined
        ? []
        : [
            {
              rule: 'mirror',
              severity: 'caution' as const,
              message: `Panel ${panel.code} has a tie hole ${shown(hole)} from its left edge and none as far from its right: in the mirrored gang its holes do not come where the other's are mirrored.`,
              where: { xNm: leftNm, yNm: bottomNm },
            },
          ],
    );
}

/** Of a panel as it stands, how far from its left edge the first hole without a mirrored one is. */
function unevenHole(standing: StandingPanel): number | undefined {
  const { leftNm, rightNm } = standing;
  const holes = holesOf(standing);
  const places = new Set(holes.map(({ xNm, yNm }) => `${xNm} ${yNm}`));
  const alone = holes.find(({ xNm, yNm }) => !places.has(`${leftNm + rightNm - xNm} ${yNm}`));
  return alone === undefined ? undefined : alone.xNm - leftNm;
}

function rightOf(piece: { readonly rightNm: number } | undefined): number {
  if (piece === undefined) throw new Error('A piece of the design was not placed.');
  return piece.rightNm;
}
