// A design with its panels looked up and every piece as a rectangle: the geometry that all rules read.
import { type Answer, answer, refuse } from '../answer.ts';
import type { Panel } from '../catalogue/component.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from './design.ts';

export interface Rectangle {
  readonly leftNm: number;
  readonly bottomNm: number;
  readonly rightNm: number;
  readonly topNm: number;
}

export interface StandingPanel extends Rectangle {
  readonly panel: Panel;
  readonly onSide: boolean;
}

export interface Gang {
  readonly panels: readonly StandingPanel[];
  readonly fillers: readonly Rectangle[];
  /** From least left and bottom to greatest right and top, fillers included. */
  readonly extent: Rectangle;
  /** L, the gang's length. */
  readonly widthNm: number;
  /** H, its height. */
  readonly heightNm: number;
  readonly edges: DesignGeometry['edges'];
  readonly equalised: boolean;
  readonly braced: boolean;
}

/** One kilometre: within it, every product of the rail lines stays exact in a double. */
const farthestNm = 1_000_000_000_000;

/**
 * Refuses a design without panels, an unknown panel code, a filler without size, and anything farther than
 * 1 km from the origin; each with its place.
 */
export function placeDesign(system: PanelSystem, design: DesignGeometry): Answer<Gang> {
  const byCode = new Map(system.panels.map((panel) => [panel.code, panel]));
  const panels: StandingPanel[] = [];
  for (const [index, { panel: code, xNm, yNm, onSide }] of design.panels.entries()) {
    const panel = byCode.get(code);
    if (panel === undefined) return unknownPanel(system, code, `design.panels[${index}].panel`);
    const [widthNm, heightNm] = onSide ? [panel.heightNm, panel.widthNm] : [panel.widthNm, panel.heightNm];
    panels.push({ panel, onSide, ...rectangle(xNm, yNm, widthNm, heightNm) });
  }
  if (panels.length === 0)
    return refuse('design-empty', 'The design has no panels.', { field: 'design.panels' });
  const fillers: Rectangle[] = [];
  for (const [index, { xNm, yNm, widthNm, heightNm }] of design.fillers.entries()) {
    if (widthNm <= 0 || heightNm <= 0) {
      const field = `design.fillers[${index}]`;
      return refuse('filler-without-size', `Filler ${index + 1} needs a width and a height over zero.`, {
        field,
      });
    }
    fillers.push(rectangle(xNm, yNm, widthNm, heightNm));
  }
  const extent = extentOf([...panels, ...fillers]);
  if (Object.values(extent).some((at) => Math.abs(at) > farthestNm)) {
    return refuse('design-too-large', 'The design reaches farther than 1 km from its origin.', {
      field: 'design',
      hint: 'Maybe a unit is missing: plain numbers are millimetres.',
    });
  }
  const { edges, equalised, braced = true } = design;
  const [widthNm, heightNm] = [extent.rightNm - extent.leftNm, extent.topNm - extent.bottomNm];
  return answer({ panels, fillers, extent, widthNm, heightNm, edges, equalised, braced });
}

/** The refusal of a code that is no panel of the system, with codes that are. */
export function unknownPanel(system: PanelSystem, code: string, field: string): Answer<never> {
  const other = system.components.find((component) => component.code === code);
  const known = system.panels.slice(0, 5).map((panel) => panel.code);
  return refuse(
    'panel-unknown',
    other === undefined
      ? `${code} is no panel of the system.`
      : `${code} is no panel but a component of kind ${other.kind}.`,
    { field, ...(known.length > 0 && { hint: `Maybe one of ${known.join(', ')} was meant.` }) },
  );
}

function rectangle(leftNm: number, bottomNm: number, widthNm: number, heightNm: number): Rectangle {
  return { leftNm, bottomNm, rightNm: leftNm + widthNm, topNm: bottomNm + heightNm };
}

function extentOf(pieces: readonly Rectangle[]): Rectangle {
  return pieces.reduce((all, piece) => ({
    leftNm: Math.min(all.leftNm, piece.leftNm),
    bottomNm: Math.min(all.bottomNm, piece.bottomNm),
    rightNm: Math.max(all.rightNm, piece.rightNm),
    topNm: Math.max(all.topNm, piece.topNm),
  }));
}

/** The stretch common to two intervals, longer than zero, or undefined. */
export function commonStretch(
  from: number,
  to: number,
  otherFrom: number,
  otherTo: number,
): readonly [number, number] | undefined {
  const [start, end] = [Math.max(from, otherFrom), Math.min(to, otherTo)];
  return start < end ? [start, end] : undefined;
}
