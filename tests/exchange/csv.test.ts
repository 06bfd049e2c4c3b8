// Reading the text of CSV files, as spreadsheets of several makes and people write it.
// RFC 4180 (2005), section 2: quoted cells, doubled quotation marks, line breaks within them.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../../core/exchange/csv.ts';
import { readTable } from '../../core/exchange/table.ts';

const columns = [
  { name: 'code', needed: true, wanted: 'a code' },
  { name: 'width', needed: false, unit: 'length', wanted: 'a width' },
  { name: 'remark', needed: false, wanted: 'a note' },
] as const;
type Name = (typeof columns)[number]['name'];
const table = (text: string, names: Record<string, string> = {}) => readTable<Name>(text, columns, names);

describe('The text of a CSV file', () => {
  test('is read with commas, semicolons or tabs, with any line end and a byte order mark', () => {
    const expected = [
      { line: 1, cells: ['code', 'width'] },
      { line: 2, cells: ['a', 'b'] },
    ];
    for (const text of ['code,width\na,b\n', 'code;width\r\na;b', '\uFEFFcode\twidth\ra\tb\r'])
      expect(readCsv(text)).toEqual({ rows: expected });
  });

  test('keeps feet and inches, quoted or not', () => {
    expect(readCsv(`x\n12'-6 1/2"\n"8'-0"""\n`)).toEqual({
      rows: [
        { line: 1, cells: ['x'] },
        { line: 2, cells: [`12'-6 1/2"`] },
        { line: 3, cells: [`8'-0"`] },
      ],
    });
  });

  test('knows the line of a row after a cell of several lines: 5, not 4', () => {
    expect(readCsv('a,b\n1,"x\ny"\n\n2,z\n')).toEqual({
      rows: [
        { line: 1, cells: ['a', 'b'] },
        { line: 2, cells: ['1', 'x\ny'] },
        { line: 4, cells: [''] },
        { line: 5, cells: ['2', 'z'] },
      ],
    });
  });

  test('is refused at the line of a quotation that never ends, and where its letters are lost', () => {
    expect(readCsv('a,b\n1,"open\n2,3\n')).toMatchObject({ bad: [{ line: 2 }] });
    expect(readCsv('a,b\n1,2\n3,\uFFFD\n')).toMatchObject({ bad: [{ line: 3 }] });
  });

  test('of more than 50000 rows is refused', () => {
    expect(readCsv(`a\n${'1\n'.repeat(50_001)}`)).toMatchObject({ bad: [{ line: 50_002 }] });
    expect(readCsv(`a\n${'1\n'.repeat(50_000)}`)).toHaveProperty('rows');
  });
});

describe('The rows under a heading', () => {
  test('leave out blank rows, repeated headings and totals, and say which', () => {
    const read = table('Code,REMARK\nP1,x\n,\nCODE,Remark\nTotal,2\nP2,y\nGrand total:,4\n');
    expect(read.rows.map((row) => row.text('code'))).toEqual(['P1', 'P2']);
    expect(read.skipped).toEqual({ blank: 1, headings: [4], totals: [5, 7] });
    expect(read.bad).toEqual([]);
  });

  test('are not read where a column is unknown, doubled or missing: each is named', () => {
    expect(table('code,widht\n1,2\n').bad).toEqual([
      {
        line: 1,
        column: 'widht',
        read: 'widht',
        wanted: 'one of the columns code, width, remark. Maybe width is meant',
      },
    ]);
    expect(table('code,Code\n1,2\n').bad).toMatchObject([
      { line: 1, column: 'Code', wanted: 'the column "code" once' },
    ]);
    expect(table('\nremark\nx\n').bad).toMatchObject([
      { line: 2, column: 'code', wanted: 'a column "code": a code' },
    ]);
    expect(table('code,width (ell)\n1,2\n').bad).toMatchObject([{ column: 'width (ell)' }]);
    expect(table('code,remark (in)\n1,2\n').bad).toMatchObject([
      { wanted: 'the heading "remark" without a unit' },
    ]);
    expect(table(' \n\n').bad).toMatchObject([{ line: 1, wanted: 'a heading with code' }]);
  });

  test('take other headings by a mapping, and leave out what is mapped to nothing', () => {
    const read = table('Item no.,Colour\nP1,red\n', { 'item no.': 'code', Colour: '' });
    expect(read.rows.map((row) => row.text('code'))).toEqual(['P1']);
    expect(table('code\nP1\n', { Colour: '' }).bad).toMatchObject([{ column: 'Colour' }]);
    expect(table('x\nP1\n', { x: 'kode' }).bad[0]?.wanted).toContain('Maybe code is meant');
  });

  test('with more cells than the heading are refused at the first cell too many', () => {
    expect(table('code,remark\nP1,a,b\n').bad).toMatchObject([{ line: 2, column: 'cell 3', read: 'b' }]);
  });

  test('come out of any text at all without an error being thrown', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const read = table(text);
        expect(read.rows.length + read.bad.length).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 300 },
    );
    const cell = fc.constantFrom(
      'code',
      'width',
      '"',
      '""',
      '\n',
      '\r',
      ',',
      ';',
      '\t',
      '12',
      "'",
      '\uFEFF',
      'Total',
      '\0',
    );
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 40 }), (parts) => {
        const read = table(`code,width\n${parts.join('')}`);
        for (const one of read.bad) expect(one.line).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 500 },
    );
  });
});
