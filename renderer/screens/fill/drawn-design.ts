// The panels, fillers and tie holes of a proposed design in its own measure: to the right and up from its lower left
// corner, as seen from its back.
import type { Panel } from '../../../core/catalogue/component.ts';
import type { PanelSystem } from '../../../core/catalogue/system.ts';
import { placeDesign, type Rectangle } from '../../../core/gang/placed.ts';
import { tieHoles } from '../../../core/gang/ties.ts';
import type { Proposal } from './fill-shapes.ts';

export interface Box {
  readonly xNm: number;
  /** Of the lower edge. */
  readonly yNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
}

export interface DrawnDesign {
  readonly panels: readonly (Box & { readonly code: Panel['code'] })[];
  readonly fillers: readonly Box[];
  readonly holes: readonly { readonly xNm: number; readonly yNm: number }[];
}

/** Empty where the catalogue has changed since and no longer has one of its panels. */
export function drawnDesign(design: Proposal['designs'][number], system: PanelSystem): DrawnDesign {
  const placed = placeDesign(system, design.geometry);
  if (!placed.ok) return { panels: [], fillers: [], holes: [] };
  const { panels, fillers, extent } = placed.value;
  const box = ({ leftNm, bottomNm, rightNm, topNm }: Rectangle): Box => ({
    xNm: leftNm - extent.leftNm,
    yNm: bottomNm - extent.bottomNm,
    widthNm: rightNm - leftNm,
    heightNm: topNm - bottomNm,
  });
  return {
    panels: panels.map((each) => ({ ...box(each), code: each.panel.code })),
    fillers: fillers.map(box),
    holes: tieHoles(placed.value).map(({ xNm, yNm }) => ({
      xNm: xNm - extent.leftNm,
      yNm: yNm - extent.bottomNm,
    })),
  };
}

/** Seen from the other side. */
export function mirrored(drawn: DrawnDesign, widthNm: number): DrawnDesign {
  const turned = <T extends Box>(box: T): T => ({ ...box, xNm: widthNm - box.xNm - box.widthNm });
  return {
    panels: drawn.panels.map(turned),
    fillers: drawn.fillers.map(turned),
    holes: drawn.holes.map(({ xNm, yNm }) => ({ xNm: widthNm - xNm, yNm })),
  };
}
