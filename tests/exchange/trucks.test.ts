// Trucks from CSV: one a row, and what cannot be is named with line and column.
import { expect, test } from 'vitest';
import { readTrucks } from '../../core/exchange/trucks-csv.ts';

const heading = 'truck,name,payload (lb),deck length (ft),deck width,stack height (ft)';
const read = (...rows: readonly string[]) => readTrucks([heading, ...rows].join('\n'), {}, ['FB-1']);

test('a row is a truck, in the units of its headings', () => {
  const { values, bad } = read(`FB2,Flatbed,14000,24,"8'-0""",6`);
  expect(bad).toEqual([]);
  // 1 ft is 304 800 000 nm, 1 lb 453.592 37 g by definition (international yard and pound agreement, 1959).
  expect(values).toEqual([
    {
      code: 'FB2',
      name: 'Flatbed',
      payloadGrams: 6_350_293,
      deckLengthNm: 24 * 304_800_000,
      deckWidthNm: 8 * 304_800_000,
      stackHeightNm: 6 * 304_800_000,
    },
  ]);
});

test.each([
  ['a payload of nothing', ['FB2,F,0,24,8 ft,6'], [2, 'payload (lb)']],
  ['a deck of no length', ['FB2,F,14000,0,8 ft,6'], [2, 'deck length (ft)']],
  ['a width without a unit that could be anything', ['FB2,F,14000,24,wide,6'], [2, 'deck width']],
  ['no name', ['FB2,,14000,24,8 ft,6'], [2, 'name']],
  ['a code like one that is there', ['FB1,F,14000,24,8 ft,6'], [2, 'truck']],
  ['the same code twice', ['FB2,F,14000,24,8 ft,6', 'FB2,G,14000,24,8 ft,6'], [3, 'truck']],
])('%s is refused at its place', (_, rows, place) => {
  expect(read(...rows).bad.map(({ line, column }) => [line, column])).toContainEqual(place);
});
