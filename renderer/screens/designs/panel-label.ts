// How a panel is written on: its code and size level, the same turned along an upright panel, or the code
// alone. The first of these that fits and hides nothing is taken, else the one that hides least.
import { type BoxPx, labelPlace } from './label-place.ts';

export interface PanelLabel {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  /** The code, and under it the size where there is room. */
  readonly lines: readonly string[];
}

/** Width of a line of 11 to 12 px, by the width of a usual letter. */
function linePx(line: string): number {
  return line.length * 6.8;
}

/** Undefined where not even the code fits: the tooltip has it all. */
export function panelLabel(
  panel: BoxPx,
  code: string,
  size: string,
  inTheWay: readonly BoxPx[],
): PanelLabel | undefined {
  let best: (PanelLabel & { readonly hidden: number }) | undefined;
  for (const { lines, turned } of [
    { lines: [code, size], turned: false },
    { lines: [code, size], turned: true },
    { lines: [code], turned: false },
    { lines: [code], turned: true },
  ]) {
    const along = Math.max(...lines.map(linePx));
    const across = lines.length * 13;
    const label = turned ? { width: across, height: along } : { width: along, height: across };
    // A level size stands clear of the locks, which reach in from both sides.
    const clear = lines.length > 1 && !turned ? 26 : 8;
    if (label.width + clear > panel.width || label.height + 6 > panel.height) continue;
    const place = labelPlace(panel, label, inTheWay);
    if (best === undefined || place.hidden < best.hidden) best = { ...place, turned, lines };
    if (place.hidden === 0) break;
  }
  return best;
}
