// The plain tree of a sheet as elements of the page: the same tags and attributes that the command line writes,
// by the names that React knows them under. Its style is the sheet's own.
import { createElement, type ReactNode } from 'react';
import type { SheetNode } from '../../../core/sheets/node.ts';

const reactNames: Readonly<Record<string, string>> = { class: 'className', colspan: 'colSpan' };

export function sheetElement(node: SheetNode, key: number = 0): ReactNode {
  if (typeof node === 'string') return node;
  const props = Object.fromEntries(
    Object.entries(node.attributes).map(([name, value]) => [reactNames[name] ?? name, value]),
  );
  return createElement(node.tag, { ...props, key }, ...node.children.map(sheetElement));
}
