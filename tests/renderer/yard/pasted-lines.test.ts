import { describe, expect, test } from 'vitest';
import { pastedLines } from '../../../renderer/screens/yard/papers/pasted-lines.ts';

const known = { components: ['P836', 'P824', 'LK'], owners: ['OURS', 'H1'], owner: 'H1' };
let keys = 0;
const read = (...rows: string[]) => pastedLines(rows.join('\n'), known, () => `key-${(keys += 1)}`);

describe('Rows of a spreadsheet', () => {
  test('without headings are component, how many, counted, condition, owner, remark', () => {
    const { lines, bad } = read('P836\t20\t18\tto clean\tours\tmuddy', 'lk\t40');
    expect(bad).toEqual([]);
    expect(lines).toMatchObject([
      { component: 'P836', sent: '20', counted: '18', condition: 'to-clean', owner: 'OURS', remark: 'muddy' },
      { component: 'LK', sent: '40', counted: '', condition: 'ready', owner: 'H1', remark: '' },
    ]);
  });

  test('under headings stand in any order, columns that nobody knows are left out', () => {
    const { lines, left } = read('Received\tColour\tItem\tQty', '3\tred\tP824\t4', '\t\t\t', 'Total\t\t\t4');
    expect(lines).toMatchObject([{ component: 'P824', sent: '4', counted: '3' }]);
    expect(left.map(({ row, why }) => [row, why])).toEqual([
      [1, 'headings'],
      [3, 'empty'],
      [4, 'a sum'],
    ]);
  });

  test('headings that come again, as on a second page, are left out again', () => {
    const { lines, left } = read('item\tqty', 'LK\t1', 'item\tqty', 'LK\t2');
    expect(lines.map(({ sent }) => sent)).toEqual(['1', '2']);
    expect(left.map(({ row }) => row)).toEqual([1, 3]);
  });

  test('that cannot be read stay as they were, each with its number and why', () => {
    const { lines, bad } = read(
      'P-836\t2',
      'LK',
      'LK\t~20',
      'LK\t1,250',
      'LK\t5\t5\tbroken',
      'LK\t5\t5\tready\tnobody',
      '\t5',
      'LK\t7',
    );
    expect(lines.map(({ sent }) => sent)).toEqual(['7']);
    expect(bad.map(({ row, why }) => `${row} ${why}`)).toEqual([
      '1 There is no component P-836. Maybe P836 is meant.',
      '2 How many is missing.',
      '3 "~20" is a guess: a note books what was counted. Maybe open the bag and count.',
      '4 "1,250" cannot be read as a number of pieces. Maybe write it like 61, 40 + 6 or 12 x 20.',
      '5 "broken" is no condition: it is one of ready; ready, hidden faces only; to clean; to repair; quarantine; scrapped.',
      '6 There is no owner nobody.',
      '7 The component is missing.',
    ]);
    expect(bad.map(({ text }) => text)[0]).toBe('P-836\t2');
  });
});
