// The pick list and the loading list: what is short before all else, the heaviest first, boxes for what was given
// instead, the load drawn to scale inside its paper, stops told apart without colour.
import { describe, expect, test } from 'vitest';
import { loadPlaces, rulingPath } from '../../core/sheets/load-places.ts';
import { type LoadingFacts, loadingSheet } from '../../core/sheets/loading-sheet.ts';
import { nodeHtml } from '../../core/sheets/html.ts';
import { type PickListFacts, pickListSheet } from '../../core/sheets/pick-list-sheet.ts';
import { numberOf, rowsOf, withClass, withTag, wordsOf } from './read-tree.ts';

const footNm = 304_800_000;
const pounds = (weight: number): number => Math.round(weight * 453.592_37);

const list: PickListFacts = {
  code: 'P01 side A',
  name: 'Tank wall W1',
  job: { code: 'TB26', name: 'Tarrowmere Basin' },
  at: '2026-03-01T07:00:00-05:00',
  neededAt: '2026-03-02T07:00:00-05:00',
  from: 'ENN',
  to: null,
  places: [
    {
      location: 'R2',
      name: 'Rack 2',
      lines: [
        {
          component: 'P836',
          name: 'Panel',
          owner: 'OURS',
          condition: 'ready',
          quantity: 8,
          weightGrams: 8 * pounds(200),
        },
        {
          component: 'LK',
          name: 'Lock',
          owner: 'TFH',
          condition: 'ready-hidden',
          quantity: 20,
          weightGrams: 20 * pounds(5),
        },
      ],
      weightGrams: pounds(1700),
    },
  ],
  short: [
    {
      component: 'R8',
      name: 'Rail 8 ft',
      kind: 'stiffening-rail',
      owner: null,
      wanted: 4,
      missing: 3,
      elsewhere: [{ location: 'TB', owner: 'OURS', condition: 'to-clean', quantity: 2 }],
    },
  ],
  hooks: [{ component: 'LH', name: 'Lifting hook', quantity: 2 }],
  coming: [
    { turn: 'P01/A1', design: 'GA', how: 'new', from: null },
    { turn: 'P01/A2', design: 'GA', how: 'fly-on', from: 'P00/A1' },
  ],
  pieces: 28,
  weightGrams: pounds(1700),
  units: 'us',
};

describe('a pick list', () => {
  const { tree, foot } = pickListSheet(list);

  test('says before all else what is short, where it lies otherwise, and that no rail of another length goes in', () => {
    const [short] = withClass(tree, 'pick-short');
    expect(wordsOf(short!)).toContain(
      '3 R8 Rail 8 ft: 4 wanted. Not taken: 2 to clean at TB (OURS). No rail of another length without the designer.',
    );
    const words = wordsOf(tree);
    expect(words.indexOf('3 R8')).toBeLessThan(words.indexOf('P836'));
    expect(foot).toBe('Pick list P01 side A · TB26 Tarrowmere Basin');
  });

  test('has a row a line with its owner and condition, its weight, and two empty boxes', () => {
    const rows = rowsOf(tree, 'pick-place');
    expect(rows.map((cells) => cells.slice(1, 6))).toEqual([
      ['pieces', 'component', '', 'each', 'together'],
      ['8', 'P836', 'Panel · of OURS', '200 lb', '1,600 lb'],
      ['20', 'LK', 'Lock · of TFH, ready for hidden faces', '5 lb', '100 lb'],
      ['28', '', 'from R2', '', '1,700 lb'],
    ]);
    expect(rows[0]!.slice(6)).toEqual(['given', 'given instead']);
    expect(withClass(tree, 'fill-box')).toHaveLength(4);
  });

  test('says what flies on and is not picked, the hooks apart, and its cautions', () => {
    const words = wordsOf(tree);
    expect(words).toContain('P01/A2 GA flies on from P00/A1: nothing to pick');
    expect(words).toContain('2 LH Lifting hook, for one gang in the air at a time. Not in the pieces above.');
    expect(words).toContain('No piece is given in place of another without a word beside it');
    expect(words).toContain('Planning aid only');
  });

  test('where nothing is short it says so, and where nothing is wanted too', () => {
    expect(wordsOf(pickListSheet({ ...list, short: [] }).tree)).toContain(
      'All of it is there and ready, by the book.',
    );
    const nothing = { ...list, short: [], places: [], pieces: 0, weightGrams: 0 };
    expect(wordsOf(pickListSheet(nothing).tree)).toContain('Nothing is to be picked.');
  });
});

const bundle = (component: string, stop: number, weight: number) => ({
  what: { component, quantity: 10 },
  weightGrams: pounds(weight),
  lengthNm: 8 * footNm,
  widthNm: 3 * footNm,
  heightNm: 2 * footNm,
  stop,
});
const load: LoadingFacts = {
  truck: {
    code: 'T1',
    name: 'Flatbed',
    payloadGrams: pounds(14_000),
    deckLengthNm: 24 * footNm,
    deckWidthNm: 8 * footNm,
    stackHeightNm: 6 * footNm,
  },
  number: 'I-7',
  stacks: [
    { fromCabNm: 0, fromLeftNm: 0, layers: [bundle('P836', 3, 2000), bundle('P436', 2, 1000)] },
    { fromCabNm: 0, fromLeftNm: 3 * footNm, layers: [bundle('P836', 3, 2000)] },
    { fromCabNm: 8 * footNm, fromLeftNm: 0, layers: [bundle('LK', 1, 500)] },
  ],
  weightGrams: pounds(5500),
  usedLengthNm: 16 * footNm,
  usedWidthNm: 6 * footNm,
  highestNm: 4 * footNm,
  unloading: [
    { stop: 1, stack: 3, level: 1 },
    { stop: 2, stack: 1, level: 2 },
    { stop: 3, stack: 2, level: 1 },
    { stop: 3, stack: 1, level: 1 },
  ],
  names: { P836: 'Panel', P436: 'Half panel', LK: 'Lock' },
  leavesAt: '2026-03-02T06:30:00-05:00',
  tiedDownBy: 'A. Driver',
  remark: null,
  passes: [],
  units: 'us',
};

describe('a loading list', () => {
  const { tree } = loadingSheet(load);

  test('names truck, note, weight against payload, deck, height, and who tied it down', () => {
    const words = wordsOf(withClass(tree, 'sheet-head')[0]!);
    for (const fact of [
      'T1 Flatbed',
      'Note I-7',
      '5,500 lb of 14,000 lb, 39.2 %',
      `16'-0" of 24'-0"`,
      `4'-0" of 6'-0"`,
      'Tied down by A. Driver',
      'The weight on each axle is not computed.',
    ])
      expect(words).toContain(fact);
  });

  test('lists in the order of loading, numbered as it comes off', () => {
    const rows = rowsOf(tree, 'load-order').slice(1);
    expect(rows.map((cells) => [cells[1], cells[2], cells[3], cells[6], cells[7]])).toEqual([
      ['1', 'on the deck', '10 P836', '3', '4'],
      ['2', 'on the deck', '10 P836', '3', '3'],
      ['1', '2nd from the deck', '10 P436', '2', '2'],
      ['3', 'on the deck', '10 LK', '1', '1'],
    ]);
  });

  test('is drawn inside its paper, from the side in two rows and from above, stops ruled differently', () => {
    const [drawing] = withTag(tree, 'svg');
    const [, , width = 0, height = 0] = (drawing!.attributes.viewBox ?? '').split(' ').map(Number);
    const boxes = withClass(drawing!, 'load-box');
    expect(boxes).toHaveLength(4 + 3);
    for (const box of boxes) {
      expect(numberOf(box, 'x')).toBeGreaterThanOrEqual(0);
      expect(numberOf(box, 'x') + numberOf(box, 'width')).toBeLessThanOrEqual(width);
      expect(numberOf(box, 'y') + numberOf(box, 'height')).toBeLessThanOrEqual(height);
    }
    // Three of its four boxes are of stop 2 or 3: ruled. 8 ft at 1:64 is 38.1 mm.
    expect(withClass(drawing!, 'load-ruled')).toHaveLength(3);
    expect(numberOf(boxes[0]!, 'width')).toBeCloseTo((8 * 304.8) / 64, 1);
    expect(wordsOf(tree)).toContain('Scale 1:64');
    expect(nodeHtml(tree)).not.toContain('undefined');
  });

  test('that passes a limit of its truck says so before all else; cautions are never left out', () => {
    const words = wordsOf(loadingSheet({ ...load, passes: ['stack-height'], tiedDownBy: null }).tree);
    expect(words).toContain(
      'Not to leave so Since this load was kept, its truck was changed. It now passes: stack height.',
    );
    expect(words).toContain('nobody yet: sign below');
    expect(words).toContain('Nobody stands between the load and a crane');
    expect(words).toContain('a way to stack it, not a way to secure it');
  });
});

test('stacks side by side are seen in rows of their own, levels upon one another', () => {
  const { sides, above } = loadPlaces(load.stacks);
  expect(sides.map((boxes) => boxes.map(({ stack, yNm }) => [stack, yNm / footNm]))).toEqual([
    [
      [1, 0],
      [1, 2],
      [3, 0],
    ],
    [[2, 0]],
  ]);
  expect(above.map(({ stack, yNm }) => [stack, yNm / footNm])).toEqual([
    [1, 0],
    [2, 3],
    [3, 0],
  ]);
  const box = { x: 0, y: 0, width: 10, height: 6 };
  const paths = [1, 2, 3, 4].map((stop) => rulingPath(box, stop, 4));
  expect(new Set(paths).size).toBe(4);
  expect(paths[0]).toBe('');
});
