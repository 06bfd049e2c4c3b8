// The rows of a design as rectangles that know their line, so that two panels in each other's place, or one
// outside the wall face, are named where they stand in the file.
import type { Component } from '../catalogue/component.ts';
import type { DesignGeometry } from '../gang/design.ts';
import { formatLengthUs } from '../units/length.ts';
import { readLength, readYesNo } from './cells.ts';
import type { DesignColumn } from './design-columns.ts';
import { maybe } from './nearest.ts';
import type { Row } from './table.ts';

type DesignRow = Row<DesignColumn>;

export interface Item {
  readonly row: DesignRow;
  readonly panel: string | null;
  readonly onSide: boolean;
  readonly xNm: number;
  readonly yNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
}

/** @param panels the panels of the design's system */
export function readItem(row: DesignRow, panels: ReadonlyMap<string, Component>): Item | undefined {
  const text = row.text('item');
  const xNm = row.need('x', readLength('any'));
  const yNm = row.need('y', readLength('any'));
  if (text.toLowerCase() === 'filler') return readFiller(row, xNm, yNm);
  const onSide = row.maybe('on side', readYesNo) ?? false;
  for (const column of ['width', 'height'] as const)
    if (row.text(column) !== '') row.refuse(column, 'nothing: the size of a panel stands in the catalogue');
  const panel = panels.get(text);
  if (panel === undefined) {
    row.refuse('item', `a panel of its system, or filler${maybe(text, panels.keys())}`);
    return undefined;
  }
  if (xNm === undefined || yNm === undefined || row.isBad()) return undefined;
  const { widthNm = 0, heightNm = 0 } = panel;
  const size = onSide ? { widthNm: heightNm, heightNm: widthNm } : { widthNm, heightNm };
  return { row, panel: panel.code, onSide, xNm, yNm, ...size };
}

function readFiller(row: DesignRow, xNm: number | undefined, yNm: number | undefined): Item | undefined {
  const widthNm = row.need('width', readLength('positive'));
  const heightNm = row.need('height', readLength('positive'));
  if (row.text('on side') !== '')
    row.refuse('on side', 'nothing: a filler is neither upright nor on its side');
  if (xNm === undefined || yNm === undefined || widthNm === undefined || heightNm === undefined)
    return undefined;
  return { row, panel: null, onSide: false, xNm, yNm, widthNm, heightNm };
}

/** Refuses every item that stands in an earlier one's place, with both lines. */
export function checkOverlaps(items: readonly Item[]): void {
  for (const [index, item] of items.entries()) {
    const other = items.slice(0, index).find((earlier) => overlap(item, earlier));
    if (other === undefined) continue;
    item.row.refuse('x', `a place of its own: it overlaps ${described(other)} of line ${other.row.line}`);
  }
}

function overlap(one: Item, other: Item): boolean {
  return (
    one.xNm < other.xNm + other.widthNm &&
    other.xNm < one.xNm + one.widthNm &&
    one.yNm < other.yNm + other.heightNm &&
    other.yNm < one.yNm + one.heightNm
  );
}

function described(item: Item): string {
  return `${item.panel ?? 'the filler'} at ${formatLengthUs(item.xNm)}, ${formatLengthUs(item.yNm)}`;
}

/** Refuses every item that reaches out of the face, whose lower left corner is the origin. */
export function checkFace(items: readonly Item[], face: DesignGeometry['face']): void {
  if (face === undefined) return;
  const within = `within the face of ${formatLengthUs(face.widthNm)} by ${formatLengthUs(face.heightNm)}`;
  for (const item of items) {
    if (item.xNm < 0 || item.xNm + item.widthNm > face.widthNm) item.row.refuse('x', `a place ${within}`);
    if (item.yNm < 0 || item.yNm + item.heightNm > face.heightNm) item.row.refuse('y', `a place ${within}`);
  }
}
