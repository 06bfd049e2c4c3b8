// The check values of common practice (no source): each is a rule of thumb of the trade held against the take-off.
import { describe, expect, test } from 'vitest';
import { commonPractice, designOf, panel, quantities, stops, systemWith, taken } from './common-practice.ts';

const twoPanels = designOf([
  ['P3x9', 0, 0],
  ['P3x9', '3 ft', 0],
]);

/** Two 3 ft panels with a filler of a width between them. */
function wide(width: string): ReturnType<typeof taken> {
  const rows = [
    ['P3x9', 0, 0],
    ['P3x9', `3 ft ${width}`, 0],
  ] as const;
  return taken(systemWith(), designOf(rows, { fillers: [{ x: '3 ft', y: 0, width, height: '9 ft' }] }));
}

/** Four panels side by side that weigh so many pounds together, and nothing else but hooks. */
function weighing(pounds: number, equalised: boolean): ReturnType<typeof taken> {
  const only = { rails: null, locks: null, fillerLocks: null, brackets: null, braces: null };
  const system = systemWith(only, [panel('A', '3 ft', '9 ft', (pounds * 0.453_592_37) / 4)]);
  const rows = ['0 ft', '3 ft', '6 ft', '9 ft'].map((x) => ['A', x, 0] as const);
  return taken(system, designOf(rows, { equalised }));
}

/** Three panels on their side, one over the other. */
function onSideStack(code: 'P2x6' | 'P3x6'): ReturnType<typeof taken> {
  const feet = code === 'P2x6' ? 2 : 3;
  return taken(
    systemWith(),
    designOf([0, 1, 2].map((row) => [code, 0, `${row * feet} ft`, 'side'] as const)),
  );
}

/** Of the first line, in feet. */
function railStarts(found: ReturnType<typeof taken>): readonly number[] {
  return found.rails.filter(({ line }) => line === 0).map(({ yNm }) => yNm / 304_800_000);
}

describe('common practice, no source', () => {
  test('two upright 3 ft x 9 ft panels side by side take four locks', () => {
    const found = taken(systemWith(), twoPanels);
    expect(quantities(found)).toMatchObject({ P3x9: 2, LK: 4 });
    expect(found.joints).toEqual([
      { kind: 'vertical', xNm: 914_400_000, yNm: 0, lengthNm: 2_743_200_000, locks: 4 },
    ]);
  });

  test('with a 6 in filler between them they take four adjustable locks and no other', () => {
    const design = designOf(
      [
        ['P3x9', 0, 0],
        ['P3x9', '3 ft 6 in', 0],
      ],
      { fillers: [{ x: '3 ft', y: 0, width: '6 in', height: '9 ft' }] },
    );
    const found = taken(systemWith(), design);
    expect(quantities(found)['AL']).toBe(4);
    expect(quantities(found)['LK']).toBeUndefined();
    expect(stops(found).filter((rule) => rule.startsWith('fillerLocks'))).toEqual([]);
  });

  test('a 7 in filler is a stop at its place and takes none; 6 1/2 in is not', () => {
    const found = wide('7 in');
    expect(quantities(found)['AL']).toBeUndefined();
    expect(found.findings).toContainEqual(
      expect.objectContaining({
        rule: 'fillerLocks.maximumWidth',
        severity: 'stop',
        where: { xNm: 914_400_000, yNm: 0 },
      }),
    );
    expect(quantities(wide('6 1/2 in'))['AL']).toBe(4);
    expect(stops(wide('6 1/2 in'))).not.toContain('fillerLocks.maximumWidth');
  });

  test.each([
    ['1 ft', 1],
    ['1.5 ft', 1],
    ['1 ft 6 1/64 in', 2],
    ['4 ft', 2],
    ['4 ft 1/64 in', 3],
    ['6 ft', 3],
    ['9 ft', 4],
    ['13 ft', 6],
    ['18 ft', 8],
    ['18 ft 1/64 in', 9],
  ])('a panel joint of %s takes %d locks', (height, locks) => {
    const system = systemWith({ rails: null, hooks: null }, [panel('P', '3 ft', height, 100)]);
    const found = taken(
      system,
      designOf([
        ['P', 0, 0],
        ['P', '3 ft', 0],
      ]),
    );
    expect(quantities(found)['LK']).toBe(locks);
  });

  test('a gang 24 ft long takes five lines of rails, one 24 ft 1/64 in long six', () => {
    const rows = Array.from({ length: 8 }, (_, index) => index * 3);
    const stack = rows.flatMap((feet) => [
      ['P3x9', `${feet} ft`, 0] as const,
      ['P3x4', `${feet} ft`, '9 ft'] as const,
    ]);
    const found = taken(systemWith(), designOf(stack));
    expect(found.rails.map((rail) => [rail.line, rail.xNm / 304_800_000])).toEqual([
      [0, 0],
      [1, 6],
      [2, 12],
      [3, 18],
      [4, 24],
    ]);
    expect(quantities(found)).toMatchObject({ R3: 5, RB: 10 });
    const longer = taken(
      systemWith(),
      designOf(stack, { fillers: [{ x: '24 ft', y: 0, width: '1/64 in', height: '9 ft' }] }),
    );
    // the last line stands on the filler and passes no joint there
    expect(new Set(longer.rails.map((rail) => rail.line))).toEqual(new Set([0, 1, 2, 3, 4]));
  });

  test('gangs to 13 ft may use 3 ft rails, one of 15 ft takes the shortest of 6 ft or longer', () => {
    const high = designOf([
      ['P3x9', 0, 0],
      ['P3x6', 0, '9 ft'],
    ]);
    expect(quantities(taken(systemWith(), high))).toMatchObject({ R6: 2, RB: 4 });
    const low = designOf([
      ['P3x9', 0, 0],
      ['P3x4', 0, '9 ft'],
    ]);
    expect(quantities(taken(systemWith(), low))).toMatchObject({ R3: 2, RB: 4 });
  });

  test('a gang of 2,600 lb takes two hooks of 1300 lb, one of 2,601 lb three and a stop until equalised', () => {
    const most = weighing(2600, false);
    expect(quantities(most)['HK']).toBe(2);
    expect(stops(most)).toEqual([]);
    const over = weighing(2601, false);
    expect(quantities(over)['HK']).toBe(3);
    expect(stops(over)).toEqual(['hooks.equalised']);
    expect(stops(weighing(2601, true))).toEqual([]);
  });

  test('one pick is at most 18 ft high', () => {
    const twice = designOf([
      ['P3x9', 0, 0],
      ['P3x9', '3 ft', 0],
      ['P3x9', 0, '9 ft'],
      ['P3x9', '3 ft', '9 ft'],
    ]);
    expect(stops(taken(systemWith(), twice))).not.toContain('hooks.maximumHeight');
    const higher = designOf([
      ['P3x9', 0, 0],
      ['P3x9', '3 ft', 0],
      ['P3x9', 0, '9 ft 1/64 in'],
      ['P3x9', '3 ft', '9 ft 1/64 in'],
    ]);
    expect(stops(taken(systemWith(), higher))).toContain('hooks.maximumHeight');
  });

  test('a panel narrower than 3 ft lies on its side only at the top or bottom', () => {
    expect(onSideStack('P2x6').findings).toContainEqual(
      expect.objectContaining({ rule: 'onSide', severity: 'stop', where: { xNm: 0, yNm: 609_600_000 } }),
    );
    expect(stops(onSideStack('P2x6')).filter((rule) => rule === 'onSide')).toHaveLength(1);
    expect(stops(onSideStack('P3x6'))).not.toContain('onSide');
  });

  test('a 3 ft rail over a joint has a bolt on each panel, 10 1/2 to 18 in from it', () => {
    const found = taken(
      systemWith(),
      designOf([
        ['P3x9', 0, 0],
        ['P3x4', 0, '9 ft'],
      ]),
    );
    const jointNm = 9 * 304_800_000;
    const apart = found.rails[0]?.boltPlaces.map(({ yNm }) => (yNm - jointNm) / 25_400_000);
    expect(apart).toEqual([-14.25, 14.25]);
    for (const inches of apart ?? []) {
      expect(Math.abs(inches)).toBeGreaterThanOrEqual(10.5);
      expect(Math.abs(inches)).toBeLessThanOrEqual(18);
    }
  });

  test('6 ft rails over joints 4 ft apart overlap; merged they lie end to end with the seam between the joints', () => {
    const rows = [0, 4, 8].map((feet) => ['P3x4', 0, `${feet} ft`] as const);
    const table = (mergeMeeting: boolean): ReturnType<typeof taken> =>
      taken(
        systemWith({
          rails: {
            across: 'horizontal-joints',
            maximumAverageSpacing: '6 ft',
            lengths: [{ gangUpTo: '13 ft', minimum: '6 ft' }],
            bolt: 'RB',
            boltsPerPanelCrossed: 1,
            mergeMeeting,
          },
        }),
        designOf(rows),
      );
    expect(railStarts(table(false))).toEqual([1, 5]);
    expect(railStarts(table(true))).toEqual([0, 6]);
    expect(quantities(table(true))).toMatchObject({ R6: 4, RB: 8 });
    expect(table(true).findings.map(({ rule }) => rule)).not.toContain('rails.boltPlaces');
  });

  test('walkway planks run through: 24 ft are three of 8 ft, two side by side, on four brackets at most 8 ft apart', () => {
    const system = systemWith(
      { brackets: { component: 'WB', maximumSpacing: '8 ft', atEachEnd: true, platform: { planksWide: 2 } } },
      commonPractice.panels,
      [...(commonPractice.components ?? []), { code: 'PK8', kind: 'plank', weightKg: 18, length: '8 ft' }],
    );
    const wall = designOf(Array.from({ length: 8 }, (_, index) => ['P3x9', `${index * 3} ft`, 0] as const));
    expect(quantities(taken(system, wall))).toMatchObject({ WB: 4, PK8: 6 });
  });
});
