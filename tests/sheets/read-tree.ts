// Reads a sheet's tree as a person would: its words in order, and its parts by the name of their class.
import type { SheetElement, SheetNode } from '../../core/sheets/node.ts';

export function wordsOf(node: SheetNode): string {
  if (typeof node === 'string') return node;
  return node.children.map(wordsOf).join(' ').replaceAll(/\s+/gu, ' ').trim();
}

/** Every element that has the class, in the order of the tree. */
export function withClass(node: SheetNode, name: string): readonly SheetElement[] {
  if (typeof node === 'string') return [];
  const own = (node.attributes.class ?? '').split(' ').includes(`sh-${name}`) ? [node] : [];
  return [...own, ...node.children.flatMap((child) => withClass(child, name))];
}

export function withTag(node: SheetNode, tag: string): readonly SheetElement[] {
  if (typeof node === 'string') return [];
  const own = node.tag === tag ? [node] : [];
  return [...own, ...node.children.flatMap((child) => withTag(child, tag))];
}

/** The rows of the first table under a class: the words of every cell. */
export function rowsOf(node: SheetNode, name: string): readonly (readonly string[])[] {
  const [part] = withClass(node, name);
  if (part === undefined) throw new Error(`The sheet has no part ${name}.`);
  return withTag(part, 'tr').map((row) => row.children.map(wordsOf));
}

export function numberOf(element: SheetElement, name: 'x' | 'y' | 'width' | 'height'): number {
  return Number(element.attributes[name]);
}
