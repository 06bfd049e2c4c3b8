// Cranes from CSV: a chart of several rows is one crane, and what cannot be is named with line and column.
import { expect, test } from 'vitest';
import { readCranes } from '../../core/exchange/cranes-csv.ts';

const heading =
  'crane,name,radius (ft),capacity (lb),deduct (lb),caution percent,stop percent,wind limit,wind whose';
const read = (...rows: readonly string[]) => readCranes([heading, ...rows].join('\n'), {}, ['TC-1']);

test('Rows of one code are one chart; the first says what holds of the whole crane', () => {
  const { values, bad } = read('TC2,Tower crane,60,8800,500,80,95,9.5,the maker', 'TC2,,148,3300,,,,,');
  expect(bad).toEqual([]);
  // 1 ft is 304 800 000 nm, 1 lb 453.592 37 g by definition (international yard and pound agreement, 1959).
  expect(values).toEqual([
    {
      code: 'TC2',
      name: 'Tower crane',
      chart: [
        { radiusNm: 60 * 304_800_000, capacityGrams: 3_991_613 },
        { radiusNm: 148 * 304_800_000, capacityGrams: 1_496_855 },
      ],
      deductGrams: 226_796,
      cautionPercent: 80,
      stopPercent: 95,
      windLimitMps: 9.5,
      windWhose: 'the maker',
    },
  ]);
});

test('What is blank is three quarters of the chart for the proof, all of it for the stop, and no wind limit', () => {
  const [crane] = read('TC2,Tower crane,60,8800,,,,,').values;
  expect(crane).toMatchObject({ deductGrams: 0, cautionPercent: 75, stopPercent: 100, windLimitMps: null });
});

test.each([
  ['a radius that falls', ['TC2,T,60,8800,,,,,', 'TC2,,50,9000,,,,,'], [3, 'radius (ft)']],
  ['a radius that stands twice', ['TC2,T,60,8800,,,,,', 'TC2,,60,8000,,,,,'], [3, 'radius (ft)']],
  ['a capacity of nothing', ['TC2,T,60,0,,,,,'], [2, 'capacity (lb)']],
  ['another name on a later row', ['TC2,T,60,8800,,,,,', 'TC2,U,70,8000,,,,,'], [3, 'name']],
  ['caution after stop', ['TC2,T,60,8800,,95,90,,'], [2, 'caution percent']],
  ['a code like one that is there', ['TC1,T,60,8800,,,,,'], [2, 'crane']],
  ['a chart without a name', ['TC2,,60,8800,,,,,'], [2, 'name']],
  ['a wind limit of zero', ['TC2,T,60,8800,,,,0,'], [2, 'wind limit']],
])('%s is refused at its place', (_, rows, place) => {
  expect(read(...rows).bad.map(({ line, column }) => [line, column])).toContainEqual(place);
});
