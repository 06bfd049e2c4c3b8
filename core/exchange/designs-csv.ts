// designs.csv: gang designs, one panel or filler a row. What speaks of the whole design stands on its first
// row; later rows repeat it or leave it blank. Pieces are never listed: they follow from the rule tables.
import type { BookComponent, Design } from '../book/book.ts';
import { type EdgeKind, edgeKinds } from '../catalogue/edges.ts';
import type { DesignGeometry } from '../gang/design.ts';
import {
  type Read,
  readCode,
  readHours,
  readKnown,
  readLength,
  readText,
  readWord,
  readYesNo,
} from './cells.ts';
import { type DesignColumn, designColumns, headColumns } from './design-columns.ts';
import { checkFace, checkOverlaps, type Item, readItem } from './design-items.ts';
import type { Parsed } from './gather.ts';
import { codeSign } from './nearest.ts';
import { addTo, readTable, type Row } from './table.ts';

export interface DesignContext {
  readonly systems: ReadonlySet<string>;
  readonly components: readonly BookComponent[];
  readonly designs: Iterable<string>;
  /** Why a design cannot be taken off at all, if so. */
  readonly refusal: (design: Design) => string | undefined;
}

export function readDesigns(
  text: string,
  names: Readonly<Record<string, string>>,
  context: DesignContext,
): Parsed<Design> {
  const table = readTable<DesignColumn>(text, designColumns, names);
  const values: Design[] = [];
  for (const [code, rows] of rowsByDesign(table.rows, context.designs)) {
    const design = readDesign(code, rows, context);
    if (design === undefined || rows.some((row) => row.isBad())) continue;
    const refusal = context.refusal(design);
    if (refusal === undefined) values.push(design);
    else rows[0]?.refuse('design', `a design that can be taken off: ${refusal}`);
  }
  const bad = [...table.bad].sort((one, other) => one.line - other.line);
  return { values, rows: table.rows.length, skipped: table.skipped, bad };
}

type DesignRow = Row<DesignColumn>;

function rowsByDesign(rows: readonly DesignRow[], known: Iterable<string>): Map<string, DesignRow[]> {
  const signs = new Map<string, string>();
  const knownCodes = new Set(known);
  for (const code of knownCodes) signs.set(codeSign(code), code);
  const groups = new Map<string, DesignRow[]>();
  for (const row of rows) {
    const code = row.need('design', readCode);
    if (code === undefined) continue;
    const alike = signs.get(codeSign(code));
    if (alike !== undefined && alike !== code && !knownCodes.has(code)) {
      row.refuse(
        'design',
        `a code that differs from ${alike} by more than spaces, marks or case. Maybe ${alike} is meant`,
      );
      continue;
    }
    signs.set(codeSign(code), code);
    addTo(groups, code, row);
  }
  return groups;
}

function readDesign(code: string, rows: readonly DesignRow[], context: DesignContext): Design | undefined {
  const [first] = rows;
  if (first === undefined) return undefined;
  for (const row of rows) checkHeads(row, first);
  const name = first.need('name', readText(120));
  const system = first.need('system', readKnown('panel system with rule tables', context.systems));
  const revision = first.need('revision', readText(20));
  const hand = first.need('hand', readWord(['left', 'right', 'symmetrical']));
  const assembleH = first.need('assemble hours', readHours);
  const breakDownH = first.need('break down hours', readHours);
  const geometry = readGeometry(first, rows, panelsOf(system, context));
  if (name === undefined || system === undefined || revision === undefined || hand === undefined)
    return undefined;
  if (assembleH === undefined || breakDownH === undefined || geometry === undefined) return undefined;
  return { code, name, system, revision, hand, geometry, assembleH, breakDownH };
}

/** Refuses a later row that says something else of the whole design than its first. */
function checkHeads(row: DesignRow, first: DesignRow): void {
  if (row === first) return;
  for (const column of headColumns) {
    const text = row.text(column);
    if (text !== '' && text !== first.text(column))
      row.refuse(column, `nothing, or what line ${first.line} says of the design: "${first.text(column)}"`);
  }
}

function panelsOf(system: string | undefined, context: DesignContext): Map<string, BookComponent> {
  const panels = context.components.filter(
    (one) => one.kind === 'panel' && (system === undefined || one.system === null || one.system === system),
  );
  return new Map(panels.map((panel) => [panel.code, panel]));
}

function readGeometry(
  first: DesignRow,
  rows: readonly DesignRow[],
  panels: ReadonlyMap<string, BookComponent>,
): DesignGeometry | undefined {
  const edges = { left: readEdgeOf(first, 'left edge'), right: readEdgeOf(first, 'right edge') };
  const equalised = first.maybe('equalised', readYesNo) ?? false;
  // said of few: a gang is braced where nothing is said
  const unbraced = first.maybe('braced', readYesNo) === false;
  const face = readFace(first);
  if (rows.length > 2000) {
    first.refuse('item', 'at most 2000 panels and fillers');
    return undefined;
  }
  const items = rows.map((row) => readItem(row, panels)).filter((item): item is Item => item !== undefined);
  if (items.length === rows.length && !items.some((item) => item.panel !== null))
    first.refuse('item', 'at least one panel');
  checkOverlaps(items);
  checkFace(items, face);
  if (edges.left === undefined || edges.right === undefined) return undefined;
  return {
    panels: items.flatMap(({ panel, xNm, yNm, onSide }) =>
      panel === null ? [] : [{ panel, xNm, yNm, onSide }],
    ),
    fillers: items.flatMap(({ panel, xNm, yNm, widthNm, heightNm }) =>
      panel === null ? [{ xNm, yNm, widthNm, heightNm }] : [],
    ),
    edges: { left: edges.left, right: edges.right },
    equalised,
    ...(unbraced ? { braced: false } : {}),
    ...(face === undefined ? {} : { face }),
  };
}

const edgeRead: Read<EdgeKind> = readWord(edgeKinds);

function readEdgeOf(row: DesignRow, column: 'left edge' | 'right edge'): EdgeKind | undefined {
  const edge = row.maybe(column, edgeRead);
  return edge === null ? 'open' : edge;
}

function readFace(row: DesignRow): DesignGeometry['face'] {
  const widthNm = row.maybe('face width', readLength('positive'));
  const heightNm = row.maybe('face height', readLength('positive'));
  if (widthNm === null && heightNm !== null)
    row.refuse('face width', 'a width beside the height of the face');
  if (heightNm === null && widthNm !== null)
    row.refuse('face height', 'a height beside the width of the face');
  if (typeof widthNm !== 'number' || typeof heightNm !== 'number') return undefined;
  return { widthNm, heightNm };
}
