// Bolts, rails that reach cross members, rails merged, rails for picking and for placing: each rule has a design that
// breaks it and its finding at the right place, and the design at the limit. Common practice, no source.
import { describe, expect, test } from 'vitest';
import type { Component } from '../../core/catalogue/component.ts';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { TakeOff } from '../../core/gang/take-off.ts';
import {
  commonPractice,
  designOf,
  of,
  panel,
  quantities,
  stops,
  systemWith,
  taken,
} from './common-practice.ts';

const inch = 25_400_000;
const foot = 304_800_000;
const at = (xFeet: number, yFeet: number): { xNm: number; yNm: number } => ({
  xNm: xFeet * foot,
  yNm: yFeet * foot,
});

const stack = [
  ['P3x9', 0, 0],
  ['P3x4', 0, '9 ft'],
] as const;
const lengths = [{ gangUpTo: '40 ft', minimum: '3 ft' }];
const rails = { across: 'horizontal-joints', maximumAverageSpacing: '6 ft', lengths } as const;
const bolted = { ...rails, bolt: 'RB', boltsPerPanelCrossed: 1 } as const;

function on(low: string, boltClearance: string): TakeOff {
  return taken(
    systemWith({ rails: { ...bolted, boltClearance } }, [
      panel('A', '3 ft', '9 ft', 100),
      panel('L', '3 ft', low, 20),
    ]),
    designOf([
      ['A', 0, 0],
      ['L', 0, '9 ft'],
      ['A', 0, `9 ft ${low}`],
    ]),
  );
}

describe('bolts', () => {
  test('a bolt stands in the middle of its room: 3 ft over a joint at 9 ft, 6 in clear of it', () => {
    const found = taken(systemWith({ rails: { ...bolted, boltClearance: '6 in' } }), designOf(stack));
    expect(found.rails[0]?.boltPlaces).toEqual([at(0, 8), at(0, 10)]);
    expect(found.rails.map(({ bolts }) => bolts)).toEqual([2, 2]);
  });

  test('a panel 12 in high between two joints has room 6 in clear of both, and none a 64th more', () => {
    expect(of(on('12 in', '6 in'), 'rails.boltPlaces')).toEqual([]);
    const found = on('12 in', '6 1/64 in');
    // both rails on both lines cross the low panel, 9 to 10 ft up: the room ends before it begins
    const low = { xNm: 0, yNm: 9.5 * foot - inch / 64 };
    expect(of(found, 'rails.boltPlaces')).toContainEqual({ severity: 'caution', where: low });
    expect(of(found, 'rails.boltPlaces')).toHaveLength(4);
    expect(quantities(found)['RB']).toBe(8);
    expect(found.rails.flatMap(({ boltPlaces }) => boltPlaces)).toHaveLength(4);
  });
});

function members(below: string, above: string, reachCrossMember = true): TakeOff {
  return taken(
    systemWith({ rails: { ...bolted, reachCrossMember } }, [
      panel('A', '3 ft', '9 ft', 100, { crossMembers: ['1 ft', below] }),
      panel('B', '3 ft', '4 ft', 50, { crossMembers: [above] }),
    ]),
    designOf([
      ['A', 0, 0],
      ['B', 0, '9 ft'],
    ]),
  );
}

describe('rails that reach cross members', () => {
  test('18 in from the joint a 3 ft rail reaches, a 64th more takes the 6 ft rail', () => {
    expect(quantities(members('7 ft 6 in', '18 in'))).toMatchObject({ R3: 2 });
    expect(quantities(members('7 ft 6 in', '18 1/64 in'))).toMatchObject({ R6: 2 });
    expect(quantities(members('7 ft 6 in', '18 1/64 in', false))).toMatchObject({ R3: 2 });
  });

  test('its bolts stand on those cross members', () => {
    expect(members('7 ft 6 in', '12 in').rails[0]?.boltPlaces).toEqual([at(0, 7.5), at(0, 10)]);
  });

  test('where the longest of 8 ft does not reach, the shortest stands and the joint is a stop', () => {
    expect(of(members('5 ft', '1 ft'), 'rails.reachCrossMember')).toEqual([]);
    const found = members('4 ft 11 63/64 in', '1 ft');
    expect(quantities(found)).toMatchObject({ R3: 2 });
    expect(of(found, 'rails.reachCrossMember')).toEqual([
      { severity: 'stop', where: at(0, 9) },
      { severity: 'stop', where: at(3, 9) },
    ]);
  });

  test('a panel whose cross members nobody entered is a note, once; along the rail they are not asked for', () => {
    const found = taken(systemWith({ rails: { ...bolted, reachCrossMember: true } }), designOf(stack));
    expect(of(found, 'rails.reachCrossMember')).toEqual([
      { severity: 'note', where: at(0, 9) },
      { severity: 'note', where: at(0, 9) },
    ]);
    const level = { ...bolted, across: 'vertical-joints', reachCrossMember: true } as const;
    const beside = designOf([stack[0], ['P3x9', '3 ft', 0]]);
    expect(of(taken(systemWith({ rails: level }), beside), 'rails.reachCrossMember')).toEqual([]);
  });
});

type Part = NonNullable<typeof commonPractice.components>[number];

function row(heights: readonly string[], more: object = {}, components?: readonly Part[]): TakeOff {
  const panels = heights.map((height, index) => panel(`H${index}`, '3 ft', height, 50));
  const feet = heights.map((height) => Number.parseFloat(height));
  const rows = panels.map(
    ({ code }, index) => [code, 0, `${feet.slice(0, index).reduce((a, b) => a + b, 0)} ft`] as const,
  );
  return taken(
    systemWith({ rails: { ...bolted, mergeMeeting: true, ...more } }, panels, components && [...components]),
    designOf(rows),
  );
}

function first(found: TakeOff): readonly (readonly [string, number])[] {
  return found.rails
    .filter(({ line }) => line === 0)
    .map(({ component, yNm }) => [component, yNm / foot] as const);
}

describe('rails that meet on a line', () => {
  test('rails over joints 3 ft apart meet: one of 6 ft in their place, bolted to all three panels', () => {
    const found = row(['4 ft', '3 ft', '4 ft']);
    expect(first(found)).toEqual([['R6', 2.5]]);
    expect(found.rails[0]?.bolts).toBe(3);
    expect(first(row(['4 ft', '3.01 ft', '4 ft']))).toHaveLength(2);
    expect(first(row(['4 ft', '3 ft', '4 ft'], { mergeMeeting: false }))).toHaveLength(2);
  });

  test('a rail longer than what it covers lies within the gang where it has room', () => {
    // over joints at 4 and 6 ft: 2.5 to 7.5 ft, by a rail of 6 ft within 7.4 ft
    expect(first(row(['4 ft', '2 ft', '1.4 ft']))).toEqual([['R6', 2]]);
    expect(first(row(['4 ft', '2 ft', '1.8 ft']))[0]?.[1]).toBeCloseTo(1.8, 9);
  });

  test('where none is long enough, the fewest, with no seam at a joint', () => {
    // joints at 2, 4, 6, 8, 10 ft: 0.5 to 11.5 ft, 11 ft by 8 and 3 ft; a seam at 8.5 or 3.5 ft
    const found = row(Array.from({ length: 6 }, () => '2 ft'));
    expect(first(found)).toEqual([
      ['R8', 0.5],
      ['R3', 8.5],
    ]);
    expect(stops(found)).not.toContain('rails.mergeMeeting');
  });

  test('where every seam would come at a joint, they stay one a joint and a stop says so', () => {
    // joints every foot: rails of 3 ft alone cover 6 ft by two, with a seam 3 ft on, and no slack to move it
    const only: Part[] = (commonPractice.components ?? []).filter(({ code }) => !['R6', 'R8'].includes(code));
    const found = row(['3.5 ft', '1 ft', '1 ft', '1 ft', '3.5 ft'], {}, only);
    expect(first(found)).toHaveLength(2);
    const stuck = row(['3.5 ft', '1.5 ft', '1.5 ft', '3.5 ft'], {}, only);
    // joints at 3.5, 5, 6.5 ft: 2 to 8 ft, the seam at 5 ft
    expect(first(stuck)).toHaveLength(3);
    expect(of(stuck, 'rails.mergeMeeting')).toEqual([
      { severity: 'stop', where: at(0, 2) },
      { severity: 'stop', where: at(3, 2) },
    ]);
  });
});

function sense(more: object): readonly string[] {
  return taken(systemWith({ rails: { ...bolted, ...more } }), designOf(stack)).rails.map(
    (rail) => rail.neededFor,
  );
}

describe('rails for picking and for placing', () => {
  const four = [...stack, ['P3x9', '3 ft', 0], ['P3x4', '3 ft', '9 ft']] as const;
  const level = { ...bolted, across: 'vertical-joints', maximumAverageSpacing: '9 ft' } as const;
  const tables = (placingRails: object, more: object = {}): TakeOff =>
    taken(
      systemWith({ rails: { ...bolted, ...more }, placingRails: placingRails as typeof level }),
      designOf(four),
    );

  test('the same table twice is one set of rails that serves both', () => {
    const found = tables(bolted);
    expect(quantities(found)).toMatchObject({ R3: 2, RB: 4 });
    expect(found.rails.map(({ neededFor }) => neededFor)).toEqual(['both', 'both']);
    expect(found.railMoves).toEqual([]);
    expect(of(found, 'rails.clash')).toEqual([]);
  });

  test('one table without a word of what for serves both, with a word only that', () => {
    expect(sense({})).toEqual(['both', 'both']);
    expect(sense({ neededFor: 'picking' })).toEqual(['picking', 'picking']);
    expect(sense({ neededFor: 'placing' })).toEqual(['placing', 'placing']);
  });

  test('level rails across upright ones that do not touch them stay on beside them', () => {
    // upright rails at 0, and 6 ft, 7.5 to 10.5 ft up; level rails at 0, 6.5 and 13 ft, 1.5 to 4.5 ft along
    const found = tables(level);
    expect(of(found, 'rails.clash')).toEqual([]);
    expect(quantities(found)).toMatchObject({ R3: 5, RB: 10 });
  });

  test('where they cross, a caution names the step at the crossing, and the greater number is counted', () => {
    // upright rails at 0, 3 and 6 ft, 7.5 to 10.5 ft up; level ones at 0, 4 1/3, 8 2/3 and 13 ft: one crosses at 3 ft
    const found = tables({ ...level, maximumAverageSpacing: '4 ft 4 in' }, { maximumAverageSpacing: '3 ft' });
    expect(of(found, 'rails.clash')).toEqual([
      { severity: 'caution', where: { xNm: 3 * foot, yNm: (8 * 12 + 8) * inch } },
    ]);
    expect(found.findings.find(({ rule }) => rule === 'rails.clash')?.message).toContain(
      'move rails before the pour',
    );
    // 3 and 4 rails, one of each clashing: 2 + 3 + 1
    expect(quantities(found)).toMatchObject({ R3: 6, RB: 12 });
    expect(found.railMoves).toEqual([
      {
        step: 'before-the-pour',
        component: 'R3',
        from: { ...at(3, 7.5), direction: 'upright' },
        to: { xNm: 1.5 * foot, yNm: (8 * 12 + 8) * inch, direction: 'level' },
      },
      {
        step: 'before-the-pick',
        component: 'R3',
        from: { xNm: 1.5 * foot, yNm: (8 * 12 + 8) * inch, direction: 'level' },
        to: { ...at(3, 7.5), direction: 'upright' },
      },
    ]);
  });

  test('rails of other lengths on one line clash; of each length as many as either takes', () => {
    const found = tables({ ...bolted, lengths: [{ gangUpTo: '40 ft', minimum: '6 ft' }] });
    expect(of(found, 'rails.clash')).toEqual([
      { severity: 'caution', where: at(0, 7.5) },
      { severity: 'caution', where: at(6, 7.5) },
    ]);
    expect(quantities(found)).toMatchObject({ R3: 2, R6: 2, RB: 4 });
    expect(found.railMoves.filter(({ step }) => step === 'before-the-pour')).toEqual([
      { step: 'before-the-pour', component: 'R3', from: { ...at(0, 7.5), direction: 'upright' }, to: null },
      { step: 'before-the-pour', component: 'R3', from: { ...at(6, 7.5), direction: 'upright' }, to: null },
      { step: 'before-the-pour', component: 'R6', from: null, to: { ...at(0, 6), direction: 'upright' } },
      { step: 'before-the-pour', component: 'R6', from: null, to: { ...at(6, 6), direction: 'upright' } },
    ]);
  });

  test('rails as wide as they lie apart do not clash, a nanometre nearer they do', () => {
    // lines 6 ft apart for picking and 3 ft apart for placing: 3 ft from the next
    const system = systemWith({
      rails: bolted,
      placingRails: {
        ...bolted,
        maximumAverageSpacing: '3 ft',
        lengths: [{ gangUpTo: '40 ft', minimum: '6 ft' }],
      },
    });
    const wide = (widthNm: number): PanelSystem => ({
      ...system,
      components: system.components.map((item): Component =>
        item.kind === 'stiffening-rail' ? { ...item, widthNm } : item,
      ),
    });
    const placingThat = (widthNm: number): number =>
      taken(wide(widthNm), designOf(four)).railMoves.filter(
        ({ component, step }) => component === 'R6' && step === 'before-the-pour',
      ).length;
    expect(placingThat(3 * foot)).toBe(2);
    expect(placingThat(3 * foot + 1)).toBe(3);
  });

  test('a stop of the table for placing is said of that table', () => {
    const found = tables({ ...bolted, lengths: [{ gangUpTo: '12 ft', minimum: '3 ft' }] });
    expect(of(found, 'placingRails.lengths')).toEqual([{ severity: 'stop', where: 'placingRails' }]);
    expect(quantities(found)).toMatchObject({ R3: 2 });
  });
});
