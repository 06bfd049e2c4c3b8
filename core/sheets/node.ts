// A sheet as a plain tree: what the command line writes as HTML and the screen turns into elements, so that
// every sheet is laid out once. Only these tags and attributes exist; none of them runs or loads anything.

export const sheetTags = [
  'article', 'section', 'header', 'h1', 'h2', 'p', 'ol', 'ul', 'li', 'dl', 'dt', 'dd', 'div', 'span', 'strong',
  'table', 'thead', 'tbody', 'tfoot', 'tr', 'th', 'td',
  'svg', 'g', 'rect', 'line', 'path', 'circle', 'text',
] as const; // prettier-ignore

export const sheetAttributes = [
  'class', 'colspan', 'scope', 'role', 'aria-label', 'aria-hidden',
  'viewBox', 'width', 'height', 'x', 'y', 'x1', 'y1', 'x2', 'y2', 'cx', 'cy', 'r', 'd', 'transform',
] as const; // prettier-ignore

export type SheetTag = (typeof sheetTags)[number];
export type SheetAttribute = (typeof sheetAttributes)[number];
export type SheetAttributes = Readonly<Partial<Record<SheetAttribute, string>>>;

export interface SheetElement {
  readonly tag: SheetTag;
  readonly attributes: SheetAttributes;
  readonly children: readonly SheetNode[];
}

export type SheetNode = string | SheetElement;

/** What a sheet is made of, beside its tree: how it is called, and what stands at the foot of every page. */
export interface Sheet {
  readonly title: string;
  readonly foot: string;
  readonly tree: SheetElement;
}

/** Classes of sheets get names of their own, so that a sheet and the app around it never style each other. */
export function el(
  tag: SheetTag,
  attributes: SheetAttributes = {},
  ...children: readonly SheetNode[]
): SheetElement {
  const { class: names } = attributes;
  if (names === undefined) return { tag, attributes, children };
  const own = names
    .split(' ')
    .map((name) => `sh-${name}`)
    .join(' ');
  return { tag, attributes: { ...attributes, class: own }, children };
}

/** An element with a class: most of a sheet. */
export function of(tag: SheetTag, className: string, ...children: readonly SheetNode[]): SheetElement {
  return el(tag, { class: className }, ...children);
}

const printedClass = 'printed-here';

/** Where the time of printing and the name of who prints come to stand: only the door knows them, and only then. */
export function printedHere(): SheetElement {
  return of('span', printedClass);
}

/** The tree with `words` wherever printedHere() stands. */
export function withPrinted({ tag, attributes, children }: SheetElement, words: string): SheetElement {
  if (attributes.class === `sh-${printedClass}`) return { tag, attributes, children: [words] };
  return {
    tag,
    attributes,
    children: children.map((child) => (typeof child === 'string' ? child : withPrinted(child, words))),
  };
}
