// Words in a drawing: what they take up, and the place in a panel where they hide least.
import { mm } from './paper.ts';
import { type BoxMm, overlapMm2 } from './drawing-place.ts';
import { el, type SheetNode } from './node.ts';

/** Width of a line of the drawing's text: digits and capitals are some 0.6 of its height wide. */
export function wordsMm(words: string, heightMm: number): number {
  return words.length * heightMm * 0.6;
}

export function text(x: number, y: number, className: string, words: string, turned = false): SheetNode {
  const at = { class: className, x: mm(x), y: mm(y) };
  return turned
    ? el('text', { ...at, transform: `rotate(-90 ${mm(x)} ${mm(y)})` }, words)
    : el('text', at, words);
}

export interface PlacedLabel {
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  readonly box: BoxMm;
}

/** A line of words in the middle of a panel, or beside it along its height where it then hides less. */
export function labelIn(
  panel: BoxMm,
  words: string,
  heightMm: number,
  inTheWay: readonly BoxMm[],
): PlacedLabel {
  const along = wordsMm(words, heightMm) + 1;
  const turned = along > panel.width && panel.height > panel.width;
  const [width, height] = turned ? [heightMm + 1, along] : [along, heightMm + 1];
  let best: (PlacedLabel & { readonly hidden: number }) | undefined;
  for (const down of [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88])
    for (const across of [0.5, 0.32, 0.68, 0.22, 0.78]) {
      const [x, y] = [panel.x + panel.width * across, panel.y + panel.height * down];
      const box = { x: x - width / 2, y: y - height / 2, width, height };
      const outside = width * height - overlapMm2(box, panel);
      const hidden = outside * 4 + inTheWay.reduce((sum, other) => sum + overlapMm2(box, other), 0);
      if (best === undefined || hidden < best.hidden - 0.01) best = { x, y, turned, box, hidden };
    }
  return best ?? { x: panel.x, y: panel.y, turned, box: panel };
}
