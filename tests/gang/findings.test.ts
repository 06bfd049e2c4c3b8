// Every rule has a design that breaks it, and its finding stands at the right place; beside it, the design at the
// limit that does not break it. Figures of the tables are common practice, no source.
import { describe, expect, test } from 'vitest';
import { designOf, of, panel, quantities, systemWith, taken } from './common-practice.ts';

const inch = 25_400_000;
const foot = 304_800_000;
const pair = [
  ['P3x9', 0, 0],
  ['P3x9', '3 ft', 0],
] as const;

function at(xNm: number, yNm: number): { xNm: number; yNm: number } {
  return { xNm, yNm };
}

const apart = (x: string | number): ReturnType<typeof taken> =>
  taken(systemWith(), designOf([pair[0], ['P3x9', x, 0]]));

const on = (length: string | number): ReturnType<typeof taken> =>
  taken(systemWith(), designOf(pair, { face: { length, height: '9 ft' } }));

describe('pieces that do not fit', () => {
  test('panels that share 1 in by 9 ft overlap, at the lower left of what they share', () => {
    const found = taken(systemWith(), designOf([pair[0], ['P3x9', '2 ft 11 in', 0]]));
    expect(of(found, 'overlap')).toEqual([{ severity: 'stop', where: at(35 * inch, 0) }]);
    expect(of(taken(systemWith(), designOf(pair)), 'overlap')).toEqual([]);
  });

  test('a filler over a panel overlaps it', () => {
    const found = taken(
      systemWith(),
      designOf(pair, { fillers: [{ x: '1 ft', y: 0, width: '1 in', height: '1 in' }] }),
    );
    expect(of(found, 'overlap')).toEqual([{ severity: 'stop', where: at(foot, 0) }]);
  });

  test('facing edges 1 nm apart are a gap, 6 1/2 in apart with that maximum are none', () => {
    expect(of(apart(914.400_001), 'gap')).toEqual([{ severity: 'stop', where: at(3 * foot, 0) }]);
    expect(of(apart('3 ft 6 31/64 in'), 'gap')).toHaveLength(1);
    expect(of(apart('3 ft 6 1/2 in'), 'gap')).toEqual([]);
    expect(of(apart('3 ft'), 'gap')).toEqual([]);
  });

  test('a filler between closes the gap as far as it reaches; another panel between does so too', () => {
    const design = (height: string): ReturnType<typeof designOf> =>
      designOf([pair[0], ['P3x9', '3 ft 6 in', 0]], {
        fillers: [{ x: '3 ft', y: 0, width: '6 in', height }],
      });
    expect(of(taken(systemWith(), design('9 ft')), 'gap')).toEqual([]);
    expect(of(taken(systemWith(), design('8 ft')), 'gap')).toEqual([
      { severity: 'stop', where: at(3 * foot, 8 * foot) },
    ]);
    const system = systemWith({}, [panel('P3x9', '3 ft', '9 ft', 100), panel('N', '4 in', '9 ft', 20)]);
    const narrow = designOf([pair[0], ['N', '3 ft', 0], ['P3x9', '3 ft 4 in', 0]]);
    expect(of(taken(system, narrow), 'gap')).toEqual([]);
  });

  test('a level gap of 2 in over a panel is found at its left end', () => {
    const found = taken(systemWith(), designOf([pair[0], ['P3x4', '1 ft', '9 ft 2 in']]));
    expect(of(found, 'gap')).toEqual([{ severity: 'stop', where: at(foot, 9 * foot) }]);
  });

  test('a panel 1 nm outside the stated face is a stop at its corner', () => {
    expect(of(on('6 ft'), 'outside-face')).toEqual([]);
    expect(of(on(1828.799_999), 'outside-face')).toEqual([{ severity: 'stop', where: at(3 * foot, 0) }]);
    const under = taken(
      systemWith(),
      designOf([['P3x9', 0, '-1 in']], { face: { length: '6 ft', height: '9 ft' } }),
    );
    expect(of(under, 'outside-face')).toEqual([{ severity: 'stop', where: at(0, -inch) }]);
  });
});

describe('locks', () => {
  const bands = [
    { upTo: '4 ft', count: 2 },
    { upTo: '8 ft', count: 3 },
  ];

  test('a joint of 9 ft by a table to 8 ft takes 3 and the 2 of the foot left over, with a caution', () => {
    const found = taken(systemWith({ locks: { component: 'LK', bands } }), designOf(pair));
    expect(quantities(found)['LK']).toBe(5);
    expect(of(found, 'locks.bands')).toEqual([{ severity: 'caution', where: at(3 * foot, 0) }]);
  });

  const touching = (minimumStretch: string): ReturnType<typeof taken> =>
    taken(
      systemWith({ locks: { component: 'LK', bands, minimumStretch } }),
      designOf([pair[0], ['P3x9', '3 ft', '8 ft 6 in']]),
    );

  test('a stretch shorter than the minimum takes none and has a caution, one as long takes its band', () => {
    expect(quantities(touching('6 in'))['LK']).toBe(2);
    expect(quantities(touching('6 1/64 in'))['LK']).toBeUndefined();
    expect(of(touching('6 1/64 in'), 'locks.minimumStretch')).toEqual([
      { severity: 'caution', where: at(3 * foot, 102 * inch) },
    ]);
  });

  test('extra goes to each level joint that ends at the edge, or once to an edge where none ends', () => {
    const extra = { locks: { component: 'LK', bands, extra: { 'stop-end': 2, 'next-gang': 1 } } };
    const edges = { left: 'stop-end', right: 'next-gang' } as const;
    // one level joint over the whole width of 3 ft: 2 + 2 + 1
    const stack = designOf([pair[0], ['P3x4', 0, '9 ft']], { edges });
    expect(taken(systemWith(extra), stack).joints.map(({ locks }) => locks)).toEqual([5]);
    // no level joint: the upright one of 9 ft by a table to 8 ft takes 5, the edges 2 and 1
    const flat = taken(systemWith(extra), designOf(pair, { edges }));
    expect(flat.joints.map(({ locks }) => locks)).toEqual([5]);
    expect(quantities(flat)['LK']).toBe(8);
    expect(flat.lines.find((line) => line.component === 'LK')?.because.slice(1)).toEqual([
      { rule: 'locks.extra.stop-end', count: 2, where: 'left edge (stop-end)' },
      { rule: 'locks.extra.next-gang', count: 1, where: 'right edge (next-gang)' },
    ]);
  });

  test('a joint that takes no lock takes no extra', () => {
    const none = [{ upTo: '4 ft', count: 0 }];
    const table = { component: 'LK', bands: none, extra: { 'stop-end': 2 } };
    const stack = designOf([pair[0], ['P3x4', 0, '9 ft']], { edges: { left: 'stop-end' } });
    expect(quantities(taken(systemWith({ locks: table }), stack))['LK']).toBeUndefined();
  });
});

describe('fillers', () => {
  test('a filler with a panel on one side only is a note and takes none', () => {
    const design = designOf(pair, { fillers: [{ x: '6 ft', y: 0, width: '6 in', height: '9 ft' }] });
    const found = taken(systemWith(), design);
    expect(of(found, 'filler')).toEqual([{ severity: 'note', where: at(6 * foot, 0) }]);
    expect(quantities(found)['AL']).toBeUndefined();
  });

  test('a level filler of 4 in between a panel below and one above takes the locks of 3 ft', () => {
    const design = designOf([pair[0], ['P3x4', 0, '9 ft 4 in']], {
      fillers: [{ x: 0, y: '9 ft', width: '3 ft', height: '4 in' }],
    });
    const found = taken(systemWith(), design);
    expect(quantities(found)['AL']).toBe(2);
    expect(found.joints).toEqual([{ kind: 'filler', xNm: 0, yNm: 9 * foot, lengthNm: 3 * foot, locks: 2 }]);
  });

  test('a filler held left and right is not too wide because panels also stand below and above it', () => {
    const design = designOf(
      [
        ['P3x6', 0, 0, 'side'],
        ['P3x9', 0, '3 ft'],
        ['P2x9', '3 ft 6 in', '3 ft'],
        ['P3x6', 0, '12 ft', 'side'],
      ],
      { fillers: [{ x: '3 ft', y: '3 ft', width: '6 in', height: '9 ft' }] },
    );
    const found = taken(systemWith(), design);
    expect(quantities(found)['AL']).toBe(4);
    expect(of(found, 'fillerLocks.maximumWidth')).toEqual([]);
  });
});

describe('rails', () => {
  const stack = [
    ['P3x9', 0, 0],
    ['P3x4', 0, '9 ft'],
  ] as const;
  const lengths = [{ gangUpTo: '13 ft', minimum: '3 ft' }];
  const rails = { across: 'horizontal-joints', maximumAverageSpacing: '6 ft', lengths } as const;

  test('a gang 1 nm over the last row of heights is a stop and takes no rails', () => {
    const system = systemWith({ rails });
    expect(taken(system, designOf(stack)).rails).toHaveLength(2);
    const higher = taken(system, designOf([stack[0], ['P3x4', 0, 2743.200_001]]));
    expect(of(higher, 'rails.lengths')).toEqual([{ severity: 'stop', where: 'rails' }]);
    expect(higher.rails).toEqual([]);
  });

  test('no rail as long as the minimum is a stop', () => {
    const found = taken(
      systemWith({ rails: { ...rails, lengths: [{ gangUpTo: '13 ft', minimum: '9 ft' }] } }),
      designOf(stack),
    );
    expect(of(found, 'rails.lengths')).toEqual([{ severity: 'stop', where: 'rails' }]);
    expect(found.rails).toEqual([]);
  });

  const clear = (boltClearance: string): ReturnType<typeof taken> =>
    taken(systemWith({ rails: { ...rails, boltClearance } }), designOf(stack));

  test('an each-joint rail of 3 ft is too short for a clearance of 18 1/64 in and not for 18 in', () => {
    expect(of(clear('18 in'), 'rails.boltClearance')).toEqual([]);
    expect(of(clear('18 1/64 in'), 'rails.boltClearance')).toEqual([
      { severity: 'stop', where: at(0, 9 * foot - 18 * inch) },
    ]);
  });

  test('a joint between two lines is crossed by none and is a note at its left end', () => {
    const system = systemWith({}, [panel('W', '6 ft', '3 ft', 100), panel('S', '1 ft', '3 ft', 20)]);
    const found = taken(
      system,
      designOf([
        ['W', 0, 0],
        ['S', '2 ft', '3 ft'],
      ]),
    );
    expect(found.rails).toEqual([]);
    expect(of(found, 'rails.uncrossed')).toEqual([{ severity: 'note', where: at(2 * foot, 3 * foot) }]);
  });

  test('a rail over a filler stands on both panels, its middle on the filler', () => {
    const design = designOf([stack[0], ['P3x4', 0, '9 ft 4 in']], {
      fillers: [{ x: 0, y: '9 ft', width: '3 ft', height: '4 in' }],
    });
    const wide = [{ gangUpTo: '20 ft', minimum: '3 ft' }];
    const table = { ...rails, lengths: wide, bolt: 'RB', boltsPerPanelCrossed: 2 };
    const found = taken(systemWith({ rails: table }), design);
    expect(quantities(found)).toMatchObject({ R3: 2, RB: 8 });
    expect(found.rails.map(({ yNm }) => yNm)).toEqual([92 * inch, 92 * inch]);
  });

  test('a level line over an upright filler takes one rail, though a panel also stands on the filler', () => {
    const design = designOf([pair[0], ['P3x9', '3 ft 6 in', 0], ['P3x9', 0, '9 ft', 'side']], {
      fillers: [{ x: '3 ft', y: 0, width: '6 in', height: '9 ft' }],
    });
    const table = { ...rails, across: 'vertical-joints', bolt: 'RB', boltsPerPanelCrossed: 2 } as const;
    const found = taken(systemWith({ rails: table }), design);
    // 12 ft at most 6 ft apart: lines at 0, 6 and 12 ft; only the first two pass from one panel to the next
    expect(quantities(found)).toMatchObject({ R3: 2, RB: 8 });
  });

  test('full-length rails over 13 ft are two, 8 ft below and 6 ft above, and bolt to the panels they overlap', () => {
    const table = { ...rails, cover: 'full-length', bolt: 'RB', boltsPerPanelCrossed: 1 } as const;
    const found = taken(systemWith({ rails: table }), designOf(stack));
    const common = { direction: 'upright', line: 0, neededFor: 'both' } as const;
    // 8 + 6 = 14 ft is the least that two rails of 3, 6 and 8 ft reach; the upper one overlaps both panels
    expect(found.rails.filter(({ line }) => line === 0)).toEqual([
      {
        ...common,
        ...at(0, 0),
        component: 'R8',
        lengthNm: 8 * foot,
        bolts: 1,
        boltPlaces: [at(0, 4 * foot)],
      },
      {
        ...common,
        ...at(0, 8 * foot),
        component: 'R6',
        lengthNm: 6 * foot,
        bolts: 2,
        boltPlaces: [at(0, 8.5 * foot), at(0, 11 * foot)],
      },
    ]);
    expect(quantities(found)).toMatchObject({ R8: 2, R6: 2, RB: 6 });
  });

  test('level rails lie on lines from bottom to top across upright joints', () => {
    const found = taken(systemWith({ rails: { ...rails, across: 'vertical-joints' } }), designOf(pair));
    // 9 ft at most 6 ft apart: lines at 0, 4 1/2 and 9 ft, each rail centred on the joint at 3 ft
    expect(found.rails.map(({ direction, xNm, yNm }) => [direction, xNm / inch, yNm / inch])).toEqual([
      ['level', 18, 0],
      ['level', 18, 54],
      ['level', 18, 108],
    ]);
  });

  test('a spacing so small that 2000 lines do not do is a stop, not a wait', () => {
    const found = taken(systemWith({ rails: { ...rails, maximumAverageSpacing: 0.001 } }), designOf(stack));
    expect(of(found, 'rails.maximumAverageSpacing')).toEqual([{ severity: 'stop', where: 'rails' }]);
  });
});

describe('what no table takes off', () => {
  test('each absent table is a note that says so', () => {
    const names = ['locks', 'fillerLocks', 'rails', 'hooks', 'onSide', 'brackets', 'braces', 'ties'] as const;
    const none = systemWith(Object.fromEntries(names.map((name) => [name, null])));
    const found = taken(none, designOf(pair));
    expect(found.findings.map(({ rule, severity }) => [rule, severity])).toEqual(
      names.map((name) => [name, 'note']),
    );
    expect(quantities(found)).toEqual({ P3x9: 2 });
    expect(found.holes).toBeUndefined();
  });

  test('a finding names the source of its number, and says default where there is none', () => {
    const design = designOf([pair[0], ['P3x9', '3 ft 1 in', 0]]);
    const source = (sources: Record<string, string>): string | undefined =>
      taken(systemWith({ sources }), design).findings.find(({ rule }) => rule === 'gap')?.source;
    expect(source({})).toBe('default');
    expect(source({ fillerLocks: 'yard sheet 3' })).toBe('yard sheet 3');
    expect(source({ 'fillerLocks.maximumWidth': 'yard sheet 4' })).toBe('yard sheet 4');
  });
});
