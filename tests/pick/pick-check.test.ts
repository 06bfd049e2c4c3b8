// A pick of a gang: each thing that speaks against it made to happen, at its limit, and seen at its place. Crane, hooks
// and weights are invented; the gang's tables are common practice, no source.
import { describe, expect, test } from 'vitest';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { checkPick, type PickCheck } from '../../core/pick/pick-check.ts';
import type { Crane, PickSetup } from '../../core/pick/setup.ts';
import { designOf, panel, systemWith } from '../gang/common-practice.ts';
import { aCrane, aSetup, foot } from './a-pick.ts';

const row = (...codes: readonly string[]): DesignGeometry =>
  designOf(codes.map((code, index) => [code, `${3 * index} ft`, 0] as const));
const four = row('P3x9', 'P3x9', 'P3x9', 'P3x9');
/** Nothing but panels and hooks, so that weights are seen at a glance. */
const only = {
  rails: null,
  locks: null,
  fillerLocks: null,
  brackets: null,
  braces: null,
  onSide: null,
  ties: null,
} as const;
const bare = systemWith({
  ...only,
  hooks: { component: 'HK', capacityKg: 600, ratedFor: 'sling-tension', minimum: 2, minimumAngleDeg: 45 },
});
const weightless = (kg: number): PanelSystem =>
  systemWith({ ...only, hooks: null }, [panel('P0', '3 ft', '9 ft', 0), panel('P3x9', '3 ft', '9 ft', kg)]);
interface Changes {
  readonly setup?: Partial<PickSetup>;
  readonly crane?: Partial<Crane> | null;
  readonly system?: PanelSystem;
}

function pick(geometry: DesignGeometry, { setup = {}, crane = {}, system = bare }: Changes = {}): PickCheck {
  const found = checkPick(system, geometry, aSetup(setup), crane === null ? null : aCrane(crane));
  if (!found.ok) throw new Error(found.error.message);
  return found.value;
}
const rules = ({ findings }: PickCheck, severity: 'stop' | 'caution' | 'note'): readonly string[] =>
  findings.filter((one) => one.severity === severity).map((one) => one.rule);
const flatChart = (capacityGrams: number): Crane['chart'] =>
  [foot, 200 * foot].map((radiusNm) => ({ radiusNm, capacityGrams }));

describe('what hangs there', () => {
  test('480 kg of panels, 5 % concrete, two hooks of 10 kg, 20 kg of slings and 30 kg on the crane are 574 kg', () => {
    const found = pick(four, { setup: { concreteLeftOn: 0.05 }, crane: { deductGrams: 30_000 } });
    expect([found.gangGrams, found.onHooksGrams, found.onCraneGrams]).toEqual([480_000, 504_000, 574_000]);
    expect(found.weights.map(({ group, basis, weightGrams }) => [group, basis, weightGrams])).toEqual([
      ['panels', 'catalogue', 480_000],
      ['concrete', 'allowance', 24_000],
      ['hooks', 'catalogue', 20_000],
      ['slings', 'entered', 20_000],
      ['crane', 'entered', 30_000],
    ]);
    expect(found.verdict).toBe('nothing-found');
  });

  test('figures that are missing are said and never taken for nothing', () => {
    const fillers = [{ x: '3 ft', y: 0, width: 100, height: '9 ft' }];
    const filled = designOf(
      [
        ['P3x9', 0, 0],
        ['P3x9', 1014.4, 0],
        ['P3x9', 1928.8, 0],
        ['P3x9', 2843.2, 0],
      ],
      { fillers },
    );
    const found = pick(filled, { setup: { slingsGrams: 0 } });
    expect(rules(found, 'caution')).toEqual(['weight.fillers', 'weight.slings']);
    expect(rules(found, 'note')).toContain('weight.concrete');
    expect(found.weights.find((line) => line.group === 'timber')).toMatchObject({ basis: 'not-entered' });
    const always = pick(four, { setup: { slingsGrams: 0 }, crane: { deductGrams: 1 } });
    expect(rules(always, 'caution')).toEqual([]);
    expect(rules(always, 'note')).toContain('weight.slings');
  });

  test('a gang that weighs nothing is a stop, a panel that weighs nothing a caution', () => {
    expect(rules(pick(row('P0', 'P0'), { system: weightless(0) }), 'stop')).toContain('weight.gang');
    expect(rules(pick(row('P0', 'P3x9'), { system: weightless(9) }), 'caution')).toContain(
      'weight.catalogue',
    );
  });
});

describe('the crane at both radii', () => {
  test('the worse governs, whichever it is', () => {
    const far = pick(four);
    expect([far.craneGoverns, far.cranePlaces.map((place) => place.percent)]).toEqual([
      'set radius',
      [26, 52],
    ]);
    const near = pick(four, { setup: { pickUpRadiusNm: 100 * foot, setRadiusNm: 20 * foot } });
    expect(near.craneGoverns).toBe('pick-up radius');
  });

  test.each([
    [693_334, 'nothing-found', [], []],
    [693_333, 'caution', [], ['crane.cautionPercent', 'crane.cautionPercent']],
    [577_778, 'caution', [], ['crane.cautionPercent', 'crane.cautionPercent']],
    [577_777, 'refused', ['crane.stopPercent', 'crane.stopPercent'], []],
    [520_000, 'refused', ['crane.stopPercent', 'crane.stopPercent'], []],
    [519_999, 'refused', ['crane.capacity', 'crane.capacity'], []],
  ] as const)('520 kg under a chart of %d g: %s', (capacityGrams, verdict, stops, cautions) => {
    const found = pick(four, { crane: { chart: flatChart(capacityGrams) } });
    expect([found.verdict, rules(found, 'stop'), rules(found, 'caution')]).toEqual([
      verdict,
      stops,
      cautions,
    ]);
  });

  test('no crane, and no radius, were not looked at and say so', () => {
    expect(rules(pick(four, { crane: null }), 'caution')).toEqual(['crane']);
    const halfway = pick(four, { setup: { setRadiusNm: null } });
    const finding = halfway.findings.find((one) => one.rule === 'crane.radius');
    expect([halfway.verdict, finding?.where]).toEqual(['caution', 'set radius']);
  });

  test('a radius past the chart is a stop at that place', () => {
    const found = pick(four, { setup: { setRadiusNm: 100 * foot + 1 } });
    expect(found.findings[0]).toMatchObject({ rule: 'crane.chart', severity: 'stop', where: 'set radius' });
    expect(found.cranePlaces[1]).toMatchObject({ capacityGrams: null, percent: null });
  });
});

const legs = (feet: number): PickCheck =>
  pick(four, { setup: { rigging: { by: 'legs', legLengthNm: feet * foot } } });
const onLegs = (legCapacityGrams: number): PickCheck =>
  pick(four, { setup: { rigging: { by: 'angle', angleDeg: 30 }, legCapacityGrams } });

describe('hooks and sling', () => {
  test('stand where the take-off puts them, from the corner of the gang wherever its drawing begins', () => {
    const moved = {
      ...four,
      panels: four.panels.map((one) => ({ ...one, xNm: one.xNm - 7, yNm: one.yNm + 5 })),
    };
    const [one, other] = [pick(four), pick(moved)];
    expect(one.hooks.map((hook) => [hook.xNm / foot, hook.yNm / foot, hook.loadGrams])).toEqual([
      [3, 9, 240_000],
      [9, 9, 240_000],
    ]);
    expect(other.hooks).toEqual(one.hooks);
    expect(other.centreOfGravity).toEqual({ xNm: 6 * foot, yNm: 4.5 * foot });
  });

  test('the pull and the percent are of the sling at its angle', () => {
    const [hook] = pick(four, { setup: { rigging: { by: 'angle', angleDeg: 90 } } }).hooks;
    expect([hook?.pullGrams, hook?.percent]).toEqual([240_000, 40]);
    const [at60] = pick(four).hooks;
    expect(at60?.percent).toBeCloseTo(40 / Math.sin(Math.PI / 3), 9);
  });

  test('legs of 5 ft over hooks 6 ft apart stand 4 ft high and may be too flat for the hooks', () => {
    expect(legs(5).sling).toMatchObject({ headroomNm: 4 * foot, apex: { xNm: 6 * foot, yNm: 13 * foot } });
    expect(legs(5).sling?.legsNm).toEqual([5 * foot, 5 * foot]);
    expect(rules(legs(4.2), 'stop')).toEqual(['hooks.minimumAngleDeg']);
    expect(rules(legs(3.2), 'stop')).toContain('sling.angle');
    const short = legs(3);
    expect(rules(short, 'stop')).toEqual(['sling.legs-too-short']);
    expect([short.sling, short.hooks[0]?.pullGrams]).toEqual([null, null]);
  });

  test('a leg over its own tag is a stop at its hook, at the tag it is not', () => {
    expect(rules(onLegs(480_000), 'stop')).toEqual(['hooks.minimumAngleDeg']);
    expect(onLegs(480_000).sling?.legPercent).toBe(100);
    const over = onLegs(479_999);
    const found = over.findings.filter((one) => one.rule === 'sling.capacity').map((one) => one.where);
    expect(found).toEqual(over.hooks.map(({ xNm, yNm }) => ({ xNm, yNm })));
  });

  test('an uneven gang loads its hooks by their lever arms', () => {
    const hooks = { component: 'HK', capacityKg: 2000, minimum: 2, minimumAngleDeg: 45 };
    const sizes = [panel('A', '3 ft', '9 ft', 300), panel('B', '3 ft', '9 ft', 100)];
    const found = pick(row('A', 'B', 'B'), { system: systemWith({ ...only, hooks }, sizes) });
    // centre at (300 x 1.5 + 100 x 4.5 + 100 x 7.5) / 500 = 3.3 ft, hooks at 3 and 6 ft
    expect(found.centreOfGravity.xNm).toBe(3.3 * foot);
    expect(found.hooks.map((hook) => hook.loadGrams)).toEqual([450_000, 50_000]);
  });

  test('more than two hooks count only with named gear, whose weight hangs on the crane', () => {
    const eight = row(...Array.from({ length: 8 }, () => 'P3x9'));
    const found = pick(eight, {
      setup: { rigging: { by: 'angle', angleDeg: 45 } },
      crane: { chart: flatChart(9_000_000) },
    });
    expect(rules(found, 'stop')).toContain('hooks.equalised');
    const gear = { name: 'Beam for four hooks', weightGrams: 95_000 };
    const equalised = pick(eight, {
      setup: { rigging: { by: 'angle', angleDeg: 45 }, equalisingGear: gear },
      crane: { chart: flatChart(9_000_000) },
    });
    expect(rules(equalised, 'stop')).toEqual([]);
    expect(equalised.hooks.map((hook) => hook.loadGrams)).toEqual([320_000, 320_000, 320_000]);
    expect(equalised.onCraneGrams).toBe(960_000 + 30_000 + 20_000 + 95_000);
    expect(equalised.findings.find((one) => one.rule === 'gear.proof')?.message).toContain('1,200 kg');
  });

  test('without a table of hooks, or without a place for two, it is refused', () => {
    const { hooks: _hooks, ...others } = bare.rules;
    expect(rules(pick(four, { system: { ...bare, rules: others } }), 'stop')).toEqual(['hooks']);
    const single = pick(row('P3x9'));
    expect([single.verdict, single.hooks, rules(single, 'stop')]).toEqual(['refused', [], ['hooks.places']]);
  });

  test('a design that breaks a rule of its own is refused at its place, from the corner of the gang', () => {
    const gap = designOf([
      ['P3x9', '10 ft', 0],
      ['P3x9', '13 ft', 0],
      ['P3x9', '16 ft', 0],
      ['P3x9', '18 ft', 0],
    ]);
    const found = pick(gap).findings.find((one) => one.rule === 'design');
    expect(found?.severity).toBe('stop');
    expect(found?.where).toMatchObject({ xNm: 8 * foot });
  });
});

describe('picked up from flat', () => {
  test('an even gang takes half its weight when its top leaves the ground, and the whole hanging governs', () => {
    const found = pick(four, { setup: { pickedUpFrom: 'flat' } });
    expect(found.flat).toEqual({ startShare: 0.5, startGrams: 240_000, governs: 'hanging' });
    expect(rules(found, 'note')).toEqual(expect.arrayContaining(['flat.direction', 'flat.rails']));
    expect(pick(four).flat).toBeNull();
  });

  test('a gang whose weight is high takes more: by lever arms about its foot', () => {
    const high = designOf([
      ['P3x6', 0, 0],
      ['P3x6', '3 ft', 0],
      ['P3x9', 0, '6 ft'],
      ['P3x9', '3 ft', '6 ft'],
    ]);
    const found = pick(high, { setup: { pickedUpFrom: 'flat', concreteLeftOn: 0.1 } });
    // two of 80 kg at 3 ft and two of 120 kg at 10.5 ft, hooks at 15 ft
    const share = (160 * 3 + 240 * 10.5) / 400 / 15;
    expect(found.flat?.startShare).toBeCloseTo(share, 12);
    expect(found.flat?.startGrams).toBe(Math.round(440_000 * share));
  });

  test('stiffening rails that picking needs are enough, those for placing alone are not', () => {
    const railed = designOf([
      ['P3x9', 0, 0],
      ['P3x9', '3 ft', 0],
      ['P3x4', 0, '9 ft'],
      ['P3x4', '3 ft', '9 ft'],
    ]);
    const notes = (neededFor: 'picking' | 'placing'): readonly string[] => {
      const system = systemWith();
      const { rails } = system.rules;
      const rulesOf = { ...system.rules, ...(rails && { rails: { ...rails, neededFor } }) };
      return rules(
        pick(railed, { setup: { pickedUpFrom: 'flat' }, system: { ...system, rules: rulesOf } }),
        'note',
      );
    };
    expect(notes('picking')).not.toContain('flat.rails');
    expect(notes('placing')).toContain('flat.rails');
  });
});

test('wind at the limit passes, over it is a stop that says whose, without a limit a note says who is missing', () => {
  expect(rules(pick(four, { setup: { windMps: 9 } }), 'stop')).toEqual([]);
  const over = pick(four, { setup: { windMps: 9.01 } });
  expect(over.findings[0]).toMatchObject({ rule: 'wind.limit', severity: 'stop', source: 'the site' });
  expect(rules(pick(four, { crane: { windLimitMps: null } }), 'note')).toContain('wind.limit');
});
