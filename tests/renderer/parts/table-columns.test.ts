import { useTable } from '@tanstack/react-table';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { features, toColumnDefs, toTabbed, type Column } from '../../../renderer/parts/table-columns.ts';
import { finds } from '../../../renderer/parts/palette-items.ts';

interface Row {
  readonly code: string;
  readonly quantity: number;
}

const columns: readonly Column<Row>[] = [
  { id: 'code', header: 'Code', value: (row) => row.code },
  { id: 'quantity', header: 'How many', value: (row) => row.quantity, numeric: true },
];
const columnDefs = toColumnDefs(columns);
const rows: readonly Row[] = [
  { code: 'B10', quantity: 2 },
  { code: 'B9', quantity: 11 },
  { code: 'A100', quantity: 1 },
  { code: 'A2', quantity: 100 },
];

/** Codes in the order in which a page would show them, sorted by a column as the table is at first. */
function sorted(id: string): readonly string[] {
  const shown: string[] = [];
  function Probe(): null {
    const table = useTable({
      features,
      columns: columnDefs,
      data: rows,
      initialState: { sorting: [{ id, desc: false }] },
    });
    shown.push(...table.getRowModel().rows.map((row) => row.original.code));
    return null;
  }
  renderToStaticMarkup(createElement(Probe));
  return shown;
}

describe('tables', () => {
  test('codes sort by their numbers: A2 before A100, B9 before B10', () => {
    expect(sorted('code')).toEqual(['A2', 'A100', 'B9', 'B10']);
  });

  test('numbers sort as numbers: 2 before 11', () => {
    expect(sorted('quantity')).toEqual(['A100', 'B10', 'B9', 'A2']);
  });

  test('copied rows are headings and cells parted by tabs, a line break in a cell becoming a space', () => {
    expect(toTabbed(columns, [{ code: 'A\n2', quantity: 100 }])).toBe('Code\tHow many\nA 2\t100');
  });
});

describe('the palette', () => {
  const pour = { name: 'P07 Tank wall W5', what: 'pour on the board' };

  test('every typed word begins a word of the name or of what it is', () => {
    expect(finds('w5 tank', pour)).toBe(true);
    expect(finds('pour w5', pour)).toBe(true);
    expect(finds('ank', pour)).toBe(false);
  });

  test('a number is found inside a code', () => {
    expect(finds('07', pour)).toBe(true);
    expect(finds('08', pour)).toBe(false);
  });
});
