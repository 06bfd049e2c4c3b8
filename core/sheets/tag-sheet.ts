// Tags of gangs and containers to cut out and tie on: the tag in the largest type, a code that a scanner reads, and
// what does not change from step to step. Where it goes next stands on the strip ticket and never on the tag.
import type { UnitSystem } from '../units/length.ts';
import { cautionsPart, tagCautions } from './cautions.ts';
import { el, of, printedHere, type Sheet, type SheetElement } from './node.ts';
import { paperHead } from './paper-head.ts';
import { qrMark } from './qr-mark.ts';

export interface SheetTag {
  readonly code: string;
  readonly kind: 'gang' | 'container';
  /** The design or the piece that it is: "GA Wall gang 12 x 12 ft". */
  readonly name: string;
  /** Weight and what else stands on it, label and words. */
  readonly facts: readonly (readonly [label: string, value: string])[];
  /** What the code says to a scanner. */
  readonly scan: string;
  /** Said on the tag itself, before it is lifted or opened. */
  readonly warnings: readonly string[];
}

const kindWords: Readonly<Record<SheetTag['kind'], string>> = { gang: 'Gang', container: 'Container' };

/** Millimetres: read by a phone from two or three steps away; common practice, no source. */
const qrMm = 44;

/**
 * Tags first, so that two stand whole on a page; what else a sheet says comes after them.
 * @param title of one tag, or of all of a kind
 */
export function tagSheet(
  title: string,
  tags: readonly SheetTag[],
  where: { readonly job: string; readonly units: UnitSystem },
): Sheet {
  const tree = of(
    'article',
    `sheet sheet-${where.units}`,
    ...tags.map(tagPart),
    ...(tags.length === 0 ? [of('p', 'no-tags', 'There is nothing to tag yet.')] : []),
    paperHead({
      kind: 'Tags',
      code: String(tags.length),
      name: title,
      cells: [['Job', where.job]],
      under: 'A tag is superseded once its gang is built anew or re-ganged: print it again.',
    }),
    cautionsPart(tagCautions),
  );
  return { title, foot: `${title} · ${where.job}`, tree };
}

function tagPart(tag: SheetTag): SheetElement {
  return of(
    'section',
    'tag',
    of(
      'div',
      'tag-head',
      of(
        'div',
        'tag-names',
        of('p', 'tag-kind', kindWords[tag.kind]),
        of('h2', `tag-code tag-${sizeOf(tag.code)}`, tag.code),
        of('p', 'tag-name', tag.name),
      ),
      qrMark(tag.scan, qrMm),
    ),
    of(
      'dl',
      'sheet-cells tag-cells',
      ...tag.facts.map(([label, value]) => cell(label, value)),
      of('div', 'sheet-cell', of('dt', 'cell-label', 'Printed'), of('dd', 'cell-value', printedHere())),
    ),
    el('ul', { class: 'tag-warnings' }, ...tag.warnings.map((words) => of('li', 'tag-warning', words))),
  );
}

function cell(label: string, value: string): SheetElement {
  return of('div', 'sheet-cell', of('dt', 'cell-label', label), of('dd', 'cell-value', value));
}

/** As large as its letters leave it. */
function sizeOf(code: string): 'short' | 'middle' | 'long' | 'longest' {
  if (code.length <= 5) return 'short';
  if (code.length <= 9) return 'middle';
  return code.length <= 16 ? 'long' : 'longest';
}
