// Platforms, places of hooks, pressures, weights of zero, panels off the grid: each rule has a design that breaks it
// and its finding at the right place, and the design at the limit. Common practice, no source.
import { describe, expect, test } from 'vitest';
import type { TakeOff } from '../../core/gang/take-off.ts';
import { commonPractice, designOf, of, panel, quantities, systemWith, taken } from './common-practice.ts';

const foot = 304_800_000;
const at = (xFeet: number, yFeet: number): { xNm: number; yNm: number } => ({
  xNm: xFeet * foot,
  yNm: yFeet * foot,
});

const stack = [
  ['P3x9', 0, 0],
  ['P3x4', 0, '9 ft'],
] as const;

type Part = NonNullable<typeof commonPractice.components>[number];

const pair = [
  ['P3x9', 0, 0],
  ['P3x9', '3 ft', 0],
] as const;

function along(found: TakeOff): readonly number[] {
  return found.hookPlaces.map(({ xNm }) => xNm / foot);
}

function two(places: 'panel-joint' | 'top-member'): TakeOff {
  return taken(
    systemWith({ hooks: { ...commonPractice.rules?.hooks, places: [places] } as never }),
    designOf(pair),
  );
}

function hooks(...places: ('panel-joint' | 'cross-member' | 'top-member')[]): TakeOff {
  return taken(
    systemWith({ hooks: { ...commonPractice.rules?.hooks, places } as never }, [
      panel('P3x9', '3 ft', '9 ft', 120),
      panel('P3x6', '3 ft', '6 ft', 80, { crossMembers: ['1 ft', '5 ft'] }),
    ]),
    designOf([...pair, ['P3x6', '6 ft', '6 ft', 'side'], ['P3x6', '6 ft', '3 ft', 'side']]),
  );
}

describe('places of hooks', () => {
  test('panel joints, cross members of panels on their side, the middle of the top member of upright ones', () => {
    expect(along(hooks('panel-joint'))).toEqual([3, 6]);
    expect(along(hooks('cross-member'))).toEqual([7, 11]);
    expect(along(hooks('top-member'))).toEqual([1.5, 4.5]);
    expect(along(hooks('top-member', 'cross-member'))).toEqual([1.5, 4.5, 7, 11]);
    expect(hooks('top-member').hookPlaces[0]?.yNm).toBe(9 * foot);
  });

  test('two panels have one joint and two top members: too few places is a stop that names what is allowed', () => {
    expect(of(two('panel-joint'), 'hooks.places')).toEqual([{ severity: 'stop', where: 'hooks' }]);
    expect(two('panel-joint').findings.find(({ rule }) => rule === 'hooks.places')?.message).toContain(
      '(upright joints that end at the top)',
    );
    expect(of(two('top-member'), 'hooks.places')).toEqual([]);
    expect(two('top-member').hooks.map(({ xNm }) => xNm / foot)).toEqual([1.5, 4.5]);
  });
});

describe('the platform on brackets', () => {
  const parts: Part[] = [
    ...(commonPractice.components ?? []),
    { code: 'PK4', kind: 'plank', weightKg: 9, length: '4 ft' },
    { code: 'PK10', kind: 'plank', weightKg: 20, length: '10 ft' },
    { code: 'GR10', kind: 'guardrail', weightKg: 7, length: '10 ft' },
    { code: 'PO', kind: 'post', weightKg: 5 },
  ];
  const platform = { planksWide: 2, post: 'PO', postsPerBracket: 1, guardrailRows: 2 };
  const brackets = { component: 'WB', maximumSpacing: '8 ft', atEachEnd: true, platform };
  const wall = designOf([0, 3, 6, 9, 12, 15].map((x) => ['P3x9', `${x} ft`, 0] as const));

  test('18 ft take 4 brackets, 4 planks of 10 ft two wide, 4 posts and 4 guardrails, each with its reason', () => {
    const found = taken(systemWith({ brackets }, commonPractice.panels, parts), wall);
    expect(quantities(found)).toMatchObject({ WB: 4, PK10: 4, PO: 4, GR10: 4 });
    expect(quantities(found)['PK4']).toBeUndefined();
    expect(found.lines.find(({ component }) => component === 'PK10')?.because).toMatchObject([
      { rule: 'brackets.platform.planksWide', count: 4 },
    ]);
    expect(found.brackets.map(({ xNm, yNm }) => [xNm / foot, yNm / foot])).toEqual([
      [0, 9],
      [6, 9],
      [12, 9],
      [18, 9],
    ]);
  });

  test('the platform is part of what is picked', () => {
    const grams = (more: object): number =>
      taken(systemWith({ brackets: { ...brackets, ...more } }, commonPractice.panels, parts), wall)
        .weightGrams;
    const { platform: _, ...bare } = brackets;
    const without = taken(systemWith({ brackets: bare }, commonPractice.panels, parts), wall).weightGrams;
    expect(grams({}) - without).toBe(4 * 20_000 + 4 * 5000 + 4 * 7000);
  });

  test('no plank and no guardrail in the catalogue are a stop each', () => {
    const found = taken(
      systemWith({ brackets }, commonPractice.panels, [
        ...(commonPractice.components ?? []),
        ...parts.slice(-1),
      ]),
      wall,
    );
    expect(of(found, 'brackets.platform.planksWide')).toEqual([{ severity: 'stop', where: 'platform' }]);
    expect(of(found, 'brackets.platform.guardrailRows')).toEqual([{ severity: 'stop', where: 'platform' }]);
  });

  test('without one at each end they stand in the middle of equal parts; a gang not braced has no braces', () => {
    const { atEachEnd: _, ...middle } = brackets;
    const found = taken(systemWith({ brackets: middle }, commonPractice.panels, parts), wall);
    expect(found.brackets.map(({ xNm }) => xNm / foot)).toEqual([3, 9, 15]);
    expect(found.braces.map(({ xNm, yNm }) => [xNm / foot, yNm])).toEqual([
      [3, 0],
      [9, 0],
      [15, 0],
    ]);
    const unbraced = taken(systemWith(), { ...wall, braced: false });
    expect(unbraced.braces).toEqual([]);
    expect(quantities(unbraced)['BR']).toBeUndefined();
    expect(quantities(unbraced)['BS']).toBeUndefined();
  });
});

function gang(upright?: number, onSide?: number): TakeOff {
  return taken(
    systemWith({}, [
      { ...panel('A', '3 ft', '6 ft', 80), pressureKpa: 60 },
      {
        ...panel('B', '3 ft', '6 ft', 80),
        ...(upright !== undefined && { pressureKpa: upright }),
        ...(onSide !== undefined && { pressureOnSideKpa: onSide }),
      },
    ]),
    designOf([
      ['A', 0, 0],
      ['A', '3 ft', 0],
      ['B', 0, '6 ft', 'side'],
    ]),
  );
}

describe('permitted pressure', () => {
  test('is the least of its panels, one on its side by its own figure', () => {
    expect(gang(70, 45).permittedPressure).toEqual({ pa: 45_000, panel: 'B', onSide: true });
    expect(gang(70, 65).permittedPressure).toEqual({ pa: 60_000, panel: 'A', onSide: false });
    expect(of(gang(70, 45), 'pressure')).toEqual([]);
  });

  test('a panel on its side without a figure of its own is a note at its place, and the gang has none', () => {
    const found = gang(70);
    expect(found.permittedPressure).toBeNull();
    expect(of(found, 'pressure')).toEqual([{ severity: 'note', where: at(0, 6) }]);
    expect(found.findings.find(({ rule }) => rule === 'pressure')?.message).toContain('ask the designer');
  });

  test('where the catalogue tells no pressures at all nothing is said', () => {
    const found = taken(systemWith(), designOf(stack));
    expect(found.permittedPressure).toBeNull();
    expect(of(found, 'pressure')).toEqual([]);
  });
});

describe('what would be a silent zero', () => {
  test('a piece without a weight is a caution at its first place, once a component', () => {
    const system = systemWith({}, [panel('A', '3 ft', '9 ft', 0), panel('B', '3 ft', '9 ft', 100)]);
    const found = taken(
      system,
      designOf([
        ['B', 0, 0],
        ['A', '3 ft', 0],
        ['A', '6 ft', 0],
      ]),
    );
    expect(of(found, 'weights.zero')).toEqual([{ severity: 'caution', where: at(3, 0) }]);
    const parts = (commonPractice.components ?? []).map((part) =>
      part.code === 'LK' ? { ...part, weightKg: 0 } : part,
    );
    const locks = taken(
      systemWith({}, commonPractice.panels, parts),
      designOf([stack[0], ['P3x9', '3 ft', 0]]),
    );
    expect(of(locks, 'weights.zero')).toEqual([{ severity: 'caution', where: 'component LK' }]);
  });
});

function beside(x: number, y = 0): ReturnType<typeof designOf> {
  return designOf([stack[0], ['P3x9', x, y]]);
}

describe('panels off the grid', () => {
  const none = systemWith({ fillerLocks: null });

  test('a gap under 3 mm is a caution at its place where no table of fillers makes it a stop', () => {
    expect(of(taken(none, beside(914.4 + 1)), 'off-grid')).toEqual([
      { severity: 'caution', where: at(3, 0) },
    ]);
    expect(of(taken(none, beside(914.4 + 3)), 'off-grid')).toEqual([]);
    const found = taken(systemWith(), beside(914.4 + 1));
    expect(of(found, 'gap')).toEqual([{ severity: 'stop', where: at(3, 0) }]);
    expect(of(found, 'off-grid')).toEqual([]);
  });

  test('an overlap of 1 mm is a stop at its place', () => {
    expect(of(taken(none, beside(914.4 - 1)), 'overlap')).toMatchObject([{ severity: 'stop' }]);
  });

  test('neighbours that meet 1 mm off flush are a note at their joint, flush and 3 mm off are none', () => {
    expect(of(taken(none, beside(914.4, 1)), 'off-grid')).toEqual([
      { severity: 'note', where: { xNm: 3 * foot, yNm: 1_000_000 } },
    ]);
    expect(of(taken(none, beside(914.4)), 'off-grid')).toEqual([]);
    expect(of(taken(none, beside(914.4, 3)), 'off-grid')).toEqual([]);
  });
});
