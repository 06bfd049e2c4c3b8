// The pick sheet of an invented gang, refused, cautioned, unchecked: what it must say in plain sight, and its
// figures held against the lever arms and sines of the sling.
import { describe, expect, test } from 'vitest';
import { panelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { takeOff } from '../../core/gang/take-off.ts';
import { checkPick } from '../../core/pick/pick-check.ts';
import { pickWeights } from '../../core/pick/pick-weights.ts';
import type { Crane, PickSetup } from '../../core/pick/setup.ts';
import { findSplit } from '../../core/pick/split.ts';
import { shownTakeOff } from '../../core/procedures/shown-takeoff.ts';
import { percentWords } from '../../core/sheets/pick-words.ts';
import { pickSheet } from '../../core/sheets/pick-sheet.ts';
import { numberOf, rowsOf, withClass, withTag, wordsOf } from './read-tree.ts';

const footNm = 304_800_000;

const system = valueOf(
  panelSystem(
    [
      {
        code: 'P',
        name: 'Panel',
        kind: 'panel',
        weightGrams: 100_000,
        widthNm: 3 * footNm,
        heightNm: 8 * footNm,
      },
      { code: 'H', name: 'Hook', kind: 'hook', weightGrams: 5000 },
    ],
    {
      hooks: {
        component: 'H',
        capacityGrams: 1_000_000,
        ratedFor: 'sling-tension',
        minimum: 2,
        minimumAngleDeg: 45,
      },
    },
  ),
);
/** Of four panels of 100 kg: joints at 3, 6 and 9 ft, hooks at the outer two, 6 ft apart. */
function gangOf(panels: number): DesignGeometry {
  return {
    panels: Array.from({ length: panels }, (_, index) => ({
      panel: 'P',
      xNm: index * 3 * footNm,
      yNm: 0,
      onSide: false,
    })),
    fillers: [],
    edges: { left: 'open', right: 'open' },
    equalised: false,
  };
}
const crane: Crane = {
  code: 'C',
  name: 'Crane <1>',
  chart: [
    { radiusNm: 10_000_000_000, capacityGrams: 2_000_000 },
    { radiusNm: 20_000_000_000, capacityGrams: 500_000 },
    { radiusNm: 30_000_000_000, capacityGrams: 300_000 },
  ],
  deductGrams: 20_000,
  cautionPercent: 75,
  stopPercent: 95,
  windLimitMps: 9,
  windWhose: 'the crane maker',
};
const setup: PickSetup = {
  rigging: { by: 'angle', angleDeg: 60 },
  slingsGrams: 10_000,
  equalisingGear: null,
  concreteLeftOn: 0.05,
  pickedUpFrom: 'flat',
  crane: 'C',
  pickUpRadiusNm: 10_000_000_000,
  setRadiusNm: 19_000_000_000,
  windMps: 5,
  windSource: 'forecast',
};

function valueOf<T>(answered: { ok: true; value: T } | { ok: false; error: { message: string } }): T {
  if (!answered.ok) throw new Error(answered.error.message);
  return answered.value;
}

function sheetFor(asked: PickSetup | null, units: 'us' | 'metric' = 'metric', geometry = gangOf(4)) {
  const taken = valueOf(takeOff(system, geometry));
  const drawn = shownTakeOff(taken, geometry.edges);
  const check = asked === null ? null : valueOf(checkPick(system, geometry, asked, crane));
  return pickSheet({
    gang: {
      code: 'G',
      name: 'Gang',
      revision: 'A',
      hand: 'symmetrical',
      systemName: 'S',
      ruleVersion: 1,
      state: { number: 3, savedAt: '2026-03-02T07:00:00-05:00', who: 'N' },
    },
    drawn,
    job: null,
    units,
    entered:
      asked === null || check === null
        ? null
        : {
            setup: asked,
            crane,
            check,
            split: check.verdict === 'refused' ? findSplit(system, geometry, asked, crane) : null,
          },
    weights: pickWeights(taken, setup, null).lines,
  }).tree;
}

describe('nothing against it', () => {
  test('each line has its weight and basis, and the sums add up', () => {
    const rows = rowsOf(sheetFor(setup), 'weights').slice(1);
    const of = (name: string): readonly string[] | undefined => rows.find((row) => row[1] === name);
    expect(of('P Panel')).toEqual(['panels', 'P Panel', '4', '400 kg', 'catalogue']);
    expect(of('Concrete left on')?.slice(3)).toEqual(['20 kg', 'allowance']);
    expect(of('Slings and shackles')?.slice(3)).toEqual(['10 kg', 'entered']);
    expect(of('Always on Crane <1>')?.slice(3)).toEqual(['20 kg', 'entered']);
    expect(of('the gang without its hooks')?.[3]).toBe('400 kg');
    expect(of('on the hooks')?.[3]).toBe('420 kg');
    // 400 + 20 concrete + 10 hooks + 10 slings + 20 always on the crane
    expect(of('on the crane')?.[3]).toBe('460 kg');
  });

  test('hooks pull their share over the sine of the angle; the crane uses load over chart', () => {
    const tree = sheetFor(setup);
    const [, first] = rowsOf(tree, 'hooks');
    // 210 kg / sin 60° = 242.5 kg of 1000 kg
    expect(first).toEqual(['H1', '914.4 mm along, 2438.4 mm up', '210 kg', '242.5 kg', '24.2 %']);
    const [, pickUp, set] = rowsOf(tree, 'crane');
    // The smaller neighbouring capacity between chart radii: 2000 kg up to 10 m, 500 kg up to 20 m.
    expect(pickUp?.slice(1, 4)).toEqual(['10000 mm', '2,000 kg', '23 %']);
    expect(set).toEqual(['set radius', '19000 mm', '500 kg', '92 %', 'governs']);
    expect(wordsOf(tree)).toContain('Wind limit 9 m/s, set by: the crane maker.');
  });

  test('over the caution percent somebody answers for it, and nothing says that it may be lifted', () => {
    expect(wordsOf(withClass(sheetFor(setup), 'verdict')[0]!)).toMatch(
      /^Caution No limit that is entered is passed/u,
    );
    const calm = sheetFor({ ...setup, setRadiusNm: 10_000_000_000 });
    expect(wordsOf(withClass(calm, 'verdict')[0]!)).toContain('That is no permission to lift.');
  });

  test('the sling is drawn to scale: it rises by tan 60° times its half spread', () => {
    const [svg] = withTag(sheetFor(setup, 'us'), 'svg');
    const legs = withClass(svg!, 'sling').map(({ attributes: { x1, x2, y1, y2 } }) => ({
      across: Math.abs(Number(x2) - Number(x1)),
      up: Number(y1) - Number(y2),
    }));
    expect(legs).toHaveLength(2);
    const [panel] = withClass(svg!, 'panel');
    for (const { across, up } of legs) {
      // Half of 6 ft, and a panel is 3 ft wide.
      expect(across).toBeCloseTo(numberOf(panel!, 'width'), 1);
      // Headroom is shown rounded up to a quarter inch.
      expect(up / across).toBeGreaterThanOrEqual(Math.tan(Math.PI / 3) - 0.002);
      expect(up / across).toBeLessThan(Math.tan(Math.PI / 3) + 0.02);
    }
  });
});

test('a refusal stands first, with the split that works and its extra picks', () => {
  // 880 kg where the chart carries 500 kg; each half: 400 + 20 + 10 + 10 + 20 = 460 kg, 92 %.
  const tree = sheetFor(setup, 'metric', gangOf(8));
  const [verdict] = withClass(tree, 'verdict-stop');
  const words = wordsOf(verdict!);
  expect(words).toMatch(/^Refused Not to be picked so/u);
  expect(words).toContain('part 1: 3657.6 mm × 2438.4 mm, 460 kg on the crane');
  expect(words).toContain('It takes 1 pick more to set and 1 pick more to strip.');
  expect(wordsOf(tree).indexOf('Refused')).toBeLessThan(wordsOf(tree).indexOf('Weight, line by line'));
  expect(withClass(tree, 'finding-stop').length).toBeGreaterThan(0);
});

test('a refusal that no split mends says so', () => {
  const tree = sheetFor({ ...setup, setRadiusNm: 31_000_000_000 });
  expect(wordsOf(withClass(tree, 'verdict-stop')[0]!)).toContain(
    'No split along its joints gives parts that pass',
  );
});

test('the head says which state of the design is printed, and whose', () => {
  expect(wordsOf(withClass(sheetFor(setup), 'superseded')[0]!)).toBe(
    'Superseded once a newer revision exists. This is state 3 of the design, saved 2026-03-02 07:00 by N.',
  );
});

test('where nothing is entered the sheet says that nothing was checked', () => {
  const tree = sheetFor(null);
  expect(wordsOf(withClass(tree, 'verdict-stop')[0]!)).toMatch(/^Not checked/u);
  expect(withTag(tree, 'svg')).toHaveLength(0);
  const hand = withClass(tree, 'hand-name').map(wordsOf);
  for (const field of ['signal person', 'rigger', 'exclusion zone, and who keeps it'])
    expect(hand).toContain(field);
});

test('a hair over the limit is never rounded down to it', () => {
  expect([99.96, 100, 100.04, 100.06, 12.34].map(percentWords)).toEqual([
    '100 %',
    '100 %',
    'over 100 %',
    '100.1 %',
    '12.3 %',
  ]);
  expect(percentWords(null)).toBe('not known');
});
