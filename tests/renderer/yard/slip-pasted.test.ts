// Rows out of a spreadsheet onto a slip, as people have them: any order under headings, sums, empty rows, notes in
// quantity cells. Every row is a line, or stays with why.
import { describe, expect, test } from 'vitest';
import { answer } from '../../../core/answer.ts';
import { type BookingDraft, movementsOf } from '../../../renderer/screens/yard/booking-draft.ts';
import { pastedSlip, type SlipCodes } from '../../../renderer/screens/yard/slip-pasted.ts';

const known: SlipCodes = {
  components: ['P8-36', 'LK', 'RB'],
  owners: ['OURS', 'TFH'],
  locations: ['ENN', 'TB'],
  like: { condition: 'ready', conditionAfter: 'ready' },
};
let ids = 0;
const read = (text: string, codes = known) => pastedSlip(text, codes, () => `line-${(ids += 1)}`);

describe('Pasted rows', () => {
  test('without headings are component, how many, condition, owner, location', () => {
    const { lines, bad, left } = read('LK\t24\tto clean\ttfh\tenn\nrb\t6\n');
    expect(lines).toMatchObject([
      { component: 'LK', quantity: '24', condition: 'to-clean', owner: 'TFH', place: 'ENN' },
      { component: 'RB', quantity: '6', condition: 'ready', owner: '', place: '' },
    ]);
    expect(bad).toEqual([]);
    expect(left.every(({ why }) => why === 'empty')).toBe(true);
  });

  test('under headings are in the order of those, and columns without a meaning are passed over', () => {
    const { lines } = read('Where\tQty\tRemark\tItem\nTB\t12\tin the rain\tLK');
    expect(lines).toMatchObject([{ component: 'LK', quantity: '12', place: 'TB' }]);
  });

  test.each([
    ['P836\t4', 'There is no component P836. Maybe P8-36 is meant.'],
    [
      'LK\t40 (2 bent)',
      '"40 (2 bent)" is not a whole number of pieces over zero. Maybe write it like 24, without commas.',
    ],
    [
      'LK\t1,250',
      '"1,250" is not a whole number of pieces over zero. Maybe write it like 24, without commas.',
    ],
    ['LK\t', 'How many is missing.'],
    ['\t5', 'The component is missing.'],
    ['LK\t5\tshiny', expect.stringContaining('"shiny" is no condition')],
    ['LK\t5\tready\tNOBODY', 'There is no owner NOBODY.'],
    ['LK\t5\tready\tOURS\tMOON', 'There is no location MOON.'],
  ])('%j stays with why', (row, why) => {
    const { lines, bad } = read(`RB\t1\n${row}`);
    expect(lines).toHaveLength(1);
    expect(bad).toEqual([{ row: 2, text: row, why }]);
  });

  test('of 5 rows one is headings, one is empty, one a sum: 2 lines', () => {
    const { lines, left } = read('component\tquantity\nLK\t5\n\t\nRB\t2\nTotal\t7');
    expect(lines).toHaveLength(2);
    expect(left.map(({ row, why }) => [row, why])).toEqual([
      [1, 'headings'],
      [3, 'empty'],
      [5, 'a sum'],
    ]);
  });

  test('of a strip arrive dirty, in whatever condition they leave', () => {
    const { lines } = read('LK\t5', { ...known, like: { condition: 'ready', conditionAfter: 'to-clean' } });
    expect(lines).toMatchObject([{ condition: 'ready', conditionAfter: 'to-clean' }]);
  });
});

test('A line with an owner and a place of its own is booked with them: at the end where the pieces are with us', () => {
  const slip: BookingDraft = {
    reason: 'transfer',
    owner: 'OURS',
    from: 'ENN',
    to: 'TB',
    at: '',
    noteNumber: '',
    remark: '',
    basis: 'counted',
    lines: read('LK\t5\tready\tTFH\tENN\nRB\t2').lines,
  };
  const components = new Set(known.components);
  const at = answer('2026-03-10T16:00:00-05:00');
  const ends = (draft: BookingDraft) =>
    movementsOf(draft, at, components).movements.map(({ owner, from, to }) => [owner, from, to]);
  expect(ends({ ...slip, from: 'OTHER' })).toEqual([
    ['TFH', 'ENN', 'TB'],
    ['OURS', 'OTHER', 'TB'],
  ]);
  expect(ends({ ...slip, reason: 'delivery', from: 'DEPOT' })).toEqual([
    ['TFH', 'DEPOT', 'ENN'],
    ['OURS', 'DEPOT', 'TB'],
  ]);
  // The slip need not say what every line says.
  const own = { ...slip, owner: '', from: '', lines: slip.lines.slice(0, 1) };
  expect(movementsOf(own, at, components).errors).toEqual([]);
  expect(movementsOf({ ...own, lines: slip.lines }, at, components).errors).toHaveLength(2);
});
