import { describe, expect, test } from 'vitest';
import { pastedGrid, pasteOver } from '../../../renderer/screens/pours/pasted-cells.ts';
import { chicago, samplePour } from './sample-pour.ts';

describe('cells from a spreadsheet', () => {
  test('tabs part cells and line ends part rows, the last line end adds none', () => {
    expect(pastedGrid('a\tb\r\nc\td\r\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });
  test('a cell in quotes holds tabs, line ends and doubled quotes', () => {
    expect(pastedGrid('"a\tb\n""c"""\td')).toEqual([['a\tb\n"c"', 'd']]);
  });
  test('an inch mark inside a cell is not a quote', () => {
    expect(pastedGrid(`GA at 12'-0"\t6"`)).toEqual([[`GA at 12'-0"`, '6"']]);
  });
  test('empty cells stay empty cells', () => expect(pastedGrid('a\t\tb')).toEqual([['a', '', 'b']]));
});

describe('pasting over the table', () => {
  const other = { ...samplePour, code: 'P08' };
  const columns = ['finish', 'minimumH', 'ready', 'stripH'];
  test('each row goes to its pour; the forecast cannot be written and is counted as left', () => {
    const pasted = pasteOver(
      [samplePour, other],
      columns,
      [
        ['9 Mar 14:00', '36', 'x', '5'],
        ['', '48'],
      ],
      chicago,
    );
    expect(pasted.pours[0]?.pour).toMatchObject({
      finishAt: '2026-03-09T14:00:00-05:00',
      stripMinimumH: 36,
      stripH: 5,
    });
    expect(pasted.cellsLeft).toBe(1);
  });
  test('a cell that cannot be read is refused with its text, the others of its row are still read', () => {
    const pasted = pasteOver([samplePour], columns, [['3/9', '36']], chicago);
    expect(pasted.pours[0]?.refused).toMatchObject([{ cell: 'finish', text: '3/9' }]);
    expect(pasted.pours[0]?.changed).toEqual(['minimumH']);
  });
  test('rows beyond the last pour are counted and not written', () => {
    expect(pasteOver([samplePour], columns, [['9 Mar'], ['10 Mar'], ['11 Mar']], chicago).rowsLeft).toBe(2);
  });
  test('what is the same changes nothing', () => {
    expect(pasteOver([samplePour], columns, [['Fri 6 Mar 14:00', '24']], chicago).pours).toEqual([]);
  });
});
