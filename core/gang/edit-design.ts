// Edits of a design on paper: each takes a design and answers another, so that taking one back is keeping the
// one before. Pieces are named by their place in their list; those that are not there are passed over.
import { type Answer, answer } from '../answer.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from './design.ts';
import type { PointNm } from './findings.ts';
import { mirrorDesign } from './mirror.ts';

/** Pieces of a design by their places in its lists. */
export interface Selection {
  readonly panels: readonly number[];
  readonly fillers: readonly number[];
}

/** A design and the pieces of it that were just put there. */
export interface Placed {
  readonly design: DesignGeometry;
  readonly placed: Selection;
}

type Edges = DesignGeometry['edges'];
type FillerSize = Omit<DesignGeometry['fillers'][number], 'xNm' | 'yNm'>;

export function placePanel(design: DesignGeometry, panel: string, at: PointNm, onSide = false): Placed {
  const { xNm, yNm } = at;
  return {
    design: { ...design, panels: [...design.panels, { panel, xNm, yNm, onSide }] },
    placed: { panels: [design.panels.length], fillers: [] },
  };
}

export function placeFiller(design: DesignGeometry, size: FillerSize, at: PointNm): Placed {
  const { xNm, yNm } = at;
  return {
    design: { ...design, fillers: [...design.fillers, { xNm, yNm, ...size }] },
    placed: { panels: [], fillers: [design.fillers.length] },
  };
}

export function movePieces(design: DesignGeometry, chosen: Selection, by: PointNm): DesignGeometry {
  const moved = <T extends PointNm>(piece: T): T => shifted(piece, by);
  return {
    ...design,
    panels: changed(design.panels, chosen.panels, moved),
    fillers: changed(design.fillers, chosen.fillers, moved),
  };
}

/** Each panel from upright onto its side, or back, where its lower left corner is; fillers change width and height. */
export function turnPieces(design: DesignGeometry, chosen: Selection): DesignGeometry {
  return {
    ...design,
    panels: changed(design.panels, chosen.panels, (panel) => ({ ...panel, onSide: !panel.onSide })),
    fillers: changed(design.fillers, chosen.fillers, ({ widthNm, heightNm, ...filler }) => ({
      ...filler,
      widthNm: heightNm,
      heightNm: widthNm,
    })),
  };
}

/** The pieces once more, `by` further on. */
export function copyPieces(design: DesignGeometry, chosen: Selection, by: PointNm): Placed {
  const { panels, fillers } = design;
  const morePanels = taken(panels, chosen.panels).map((panel) => shifted(panel, by));
  const moreFillers = taken(fillers, chosen.fillers).map((filler) => shifted(filler, by));
  return {
    design: { ...design, panels: [...panels, ...morePanels], fillers: [...fillers, ...moreFillers] },
    placed: {
      panels: morePanels.map((_, index) => panels.length + index),
      fillers: moreFillers.map((_, index) => fillers.length + index),
    },
  };
}

export function removePieces(design: DesignGeometry, chosen: Selection): DesignGeometry {
  const [panels, fillers] = [new Set(chosen.panels), new Set(chosen.fillers)];
  return {
    ...design,
    panels: design.panels.filter((_, index) => !panels.has(index)),
    fillers: design.fillers.filter((_, index) => !fillers.has(index)),
  };
}

/** The pieces mirrored between their own left and right end; the gang's edges stay. Nothing chosen: unchanged. */
export function mirrorPieces(
  system: PanelSystem,
  design: DesignGeometry,
  chosen: Selection,
): Answer<DesignGeometry> {
  const panels = taken(design.panels, chosen.panels);
  const fillers = taken(design.fillers, chosen.fillers);
  // Fillers alone are no gang: their sizes are known without the system.
  if (panels.length === 0)
    return answer({ ...design, fillers: mirroredFillers(design.fillers, chosen.fillers) });
  const mirrored = mirrorDesign(system, { ...design, panels, fillers });
  if (!mirrored.ok) return mirrored;
  return answer({
    ...design,
    panels: put(design.panels, chosen.panels, mirrored.value.panels),
    fillers: put(design.fillers, chosen.fillers, mirrored.value.fillers),
  });
}

export function setFiller(design: DesignGeometry, index: number, size: FillerSize): DesignGeometry {
  return { ...design, fillers: changed(design.fillers, [index], (filler) => ({ ...filler, ...size })) };
}

export function setEdges(design: DesignGeometry, edges: Partial<Edges>): DesignGeometry {
  return { ...design, edges: { ...design.edges, ...edges } };
}

function shifted<T extends PointNm>(piece: T, by: PointNm): T {
  return { ...piece, xNm: piece.xNm + by.xNm, yNm: piece.yNm + by.yNm };
}

function mirroredFillers(
  fillers: DesignGeometry['fillers'],
  chosen: readonly number[],
): DesignGeometry['fillers'] {
  const those = taken(fillers, chosen);
  const leftNm = Math.min(...those.map((filler) => filler.xNm));
  const rightNm = Math.max(...those.map((filler) => filler.xNm + filler.widthNm));
  return changed(fillers, chosen, (filler) => ({
    ...filler,
    xNm: leftNm + rightNm - filler.xNm - filler.widthNm,
  }));
}

function taken<T>(list: readonly T[], chosen: readonly number[]): T[] {
  const wanted = new Set(chosen);
  return list.filter((_, index) => wanted.has(index));
}

function changed<T>(list: readonly T[], chosen: readonly number[], change: (piece: T) => T): T[] {
  const wanted = new Set(chosen);
  return list.map((piece, index) => (wanted.has(index) ? change(piece) : piece));
}

/** The list with the chosen pieces replaced, in the list's order whatever the order of choosing. */
function put<T>(list: readonly T[], chosen: readonly number[], pieces: readonly T[]): T[] {
  const wanted = new Set(chosen);
  let next = 0;
  return list.map((piece, index) => (wanted.has(index) ? (pieces[next++] ?? piece) : piece));
}
