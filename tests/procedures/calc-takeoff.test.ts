// The two sums by the contract of the command line: what goes in as JSON, what comes out, what is refused and where.
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { calcLength } from '../../core/procedures/calc-length.ts';
import { calcTakeoff } from '../../core/procedures/calc-takeoff.ts';
import { commonPractice } from '../gang/common-practice.ts';

async function takeoff(input: unknown): Promise<unknown> {
  const answered = await calcTakeoff.run(calcTakeoff.input.parse(input));
  if (!answered.ok) return answered.error;
  return calcTakeoff.output.parse(answered.value);
}

const pair = [
  { panel: 'P3x9', x: 0, y: 0, onSide: false },
  { panel: 'P3x9', x: '3 ft', y: 0, onSide: false },
];

describe('calc length', () => {
  test(`12'-6 1/2" is 3822.7 mm`, async () => {
    expect(await calcLength.run({ text: `12'-6 1/2"` })).toEqual({
      ok: true,
      value: { nanometres: 3_822_700_000, mm: 3822.7, us: `12'-6 1/2"`, metric: '3822.7 mm' },
    });
  });

  test('a length without a unit is refused at its field with a hint', async () => {
    expect(await calcLength.run({ text: '2400' })).toMatchObject({
      ok: false,
      error: { code: 'length-without-unit', field: 'text', hint: expect.stringMatching(/^Maybe/) },
    });
  });
});

describe('calc takeoff', () => {
  test('answers lines with reasons, joints, size, area, weight, centre, hooks and holes in the units of the contract', async () => {
    const system = {
      panels: [{ code: 'P', width: '3 ft', height: 2743.2, weightKg: 100, tieHoles: [['6 in', '1 ft']] }],
      components: [
        { code: 'LK', kind: 'lock', weightKg: 2 },
        { code: 'HK', kind: 'hook', weightKg: 9 },
      ],
      rules: {
        locks: { component: 'LK', bands: [{ upTo: '9 ft', count: 4 }] },
        hooks: { component: 'HK', capacityKg: 500, minimum: 2, minimumAngleDeg: 60, maximumHeight: '18 ft' },
        ties: { holes: true },
      },
    };
    const panels = [0, 3, 6].map((feet) => ({ panel: 'P', x: `${feet} ft`, y: 0, onSide: false }));
    const answered = await takeoff({ system, design: { panels } });
    expect(answered).toMatchObject({
      lines: [
        { component: 'P', quantity: 3 },
        {
          component: 'LK',
          quantity: 8,
          because: [{ rule: 'locks', count: 4, where: { xMm: 914.4, yMm: 0 } }, { count: 4 }],
        },
        { component: 'HK', quantity: 2 },
      ],
      joints: [
        { kind: 'vertical', lengthMm: 2743.2, xMm: 914.4, yMm: 0, locks: 4 },
        { kind: 'vertical', lengthMm: 2743.2, xMm: 1828.8, yMm: 0, locks: 4 },
      ],
      widthMm: 2743.2,
      heightMm: 2743.2,
      areaM2: 7.525_146_24,
      weightKg: 316,
      centreOfGravityMm: [1371.6, 1371.6],
      hooks: [
        { xMm: 914.4, yMm: 2743.2, loadKg: 158 },
        { xMm: 1828.8, yMm: 2743.2, loadKg: 158 },
      ],
      holes: [
        [152.4, 304.8],
        [1066.8, 304.8],
        [1981.2, 304.8],
      ],
    });
    expect(JSON.stringify(answered)).not.toMatch(/stop|estimate/);
  });

  test('on its side, the hole at (6 in, 1 ft) of a 9 ft panel comes to (8 ft, 6 in); a place met twice is told once', async () => {
    const system = {
      panels: [
        {
          code: 'P',
          width: '3 ft',
          height: '9 ft',
          weightKg: 100,
          tieHoles: [
            ['6 in', '1 ft'],
            ['6 in', '1 ft'],
          ],
        },
      ],
      components: [],
      rules: { ties: { holes: true } },
    };
    const design = {
      panels: [
        { panel: 'P', x: 0, y: 0, onSide: true },
        { panel: 'P', x: 0, y: '3 ft', onSide: false },
      ],
    };
    expect(await takeoff({ system, design })).toMatchObject({
      holes: [
        [152.4, 1219.2],
        [2438.4, 152.4],
      ],
    });
    const without = await takeoff({ system: { ...system, rules: {} }, design });
    expect(without).not.toHaveProperty('holes');
  });

  test('brackets at both ends of 18 ft at most 8 ft apart are four, braces without ends three with three shoes', async () => {
    const panels = [0, 3, 6, 9, 12, 15].map((feet) => ({
      panel: 'P3x9',
      x: `${feet} ft`,
      y: 0,
      onSide: false,
    }));
    expect(await takeoff({ system: commonPractice, design: { panels } })).toMatchObject({
      lines: expect.arrayContaining([
        expect.objectContaining({ component: 'WB', quantity: 4 }),
        expect.objectContaining({ component: 'BR', quantity: 3 }),
        expect.objectContaining({ component: 'BS', quantity: 3 }),
      ]),
    });
  });

  test('the estimate gives each panel the locks of its height, and each lower one also those of its width', async () => {
    // 4 x 4 for the 9 ft panels; 2 x (2 for 4 ft and 2 for 3 ft)
    const answered = await takeoff({ system: commonPractice, panels: { P3x9: 4, P3x4: 2, P2x9: 0 } });
    expect(answered).toMatchObject({
      estimate: true,
      lines: [
        { component: 'P3x9', quantity: 4 },
        { component: 'P3x4', quantity: 2 },
        { component: 'LK', quantity: 24 },
      ],
      findings: [{ rule: 'estimate', severity: 'note' }],
      weightKg: 4 * 120 + 2 * 55 + 24 * 2.2,
    });
  });

  test('an estimate with a panel that weighs nothing says so', async () => {
    const panels = [{ code: 'P', width: '3 ft', height: '9 ft', weightKg: 0 }];
    expect(await takeoff({ system: { panels }, panels: { P: 2 } })).toMatchObject({
      weightKg: 0,
      findings: [{ rule: 'weights.zero', severity: 'caution', where: 'component P' }, { rule: 'estimate' }],
    });
  });

  test('rows of limits count in rising order, in whatever order they are written', async () => {
    const { locks, rails } = commonPractice.rules ?? {};
    const panels = [...pair, { panel: 'P3x4', x: 0, y: '9 ft', onSide: false }];
    const turned = {
      ...commonPractice.rules,
      locks: { ...locks, bands: locks?.bands.toReversed() },
      rails: { ...rails, lengths: rails?.lengths.toReversed() },
    };
    const asWritten = await takeoff({ system: commonPractice, design: { panels } });
    expect(asWritten).toMatchObject({
      lines: expect.arrayContaining([
        expect.objectContaining({ component: 'LK', quantity: 4 + 2 }),
        expect.objectContaining({ component: 'R3', quantity: 1 }),
      ]),
    });
    const other = await takeoff({ system: { ...commonPractice, rules: turned }, design: { panels } });
    expect(other).toEqual(asWritten);
  });

  test('the further tables are read from JSON; moves of rails and the permitted pressure are answered where there are any', async () => {
    const rails = { ...commonPractice.rules?.rails, lengths: [{ gangUpTo: '40 ft', minimum: '3 ft' }] };
    const system = {
      panels: commonPractice.panels.map((each) => ({ ...each, pressureKpa: 60, pressureOnSideKpa: 45.5 })),
      components: [
        ...(commonPractice.components ?? []),
        { code: 'PK', kind: 'plank', weightKg: 9, length: '6 ft' },
        { code: 'PO', kind: 'post', weightKg: 5 },
      ],
      rules: {
        ...commonPractice.rules,
        rails: { ...rails, neededFor: 'picking', reachCrossMember: false, mergeMeeting: true },
        placingRails: { ...rails, lengths: [{ gangUpTo: '40 ft', minimum: '6 ft' }] },
        hooks: { ...commonPractice.rules?.hooks, places: ['top-member'] },
        brackets: {
          component: 'WB',
          maximumSpacing: '8 ft',
          platform: { planksWide: 2, post: 'PO', postsPerBracket: 1, guardrailRows: 0 },
        },
        braces: { component: 'BR', maximumSpacing: '8 ft', sides: 'one' },
        stopEnds: { backing: 'R3', backingSpacing: '2 ft', hoursPerM2: 1.5 },
        closures: { hoursPerM2: 2 },
      },
    };
    const panels = [...pair, { panel: 'P3x6', x: 0, y: '9 ft', onSide: true }];
    const answered = await takeoff({ system, design: { panels, braced: false } });
    expect(answered).toMatchObject({
      lines: expect.arrayContaining([
        expect.objectContaining({ component: 'PK', quantity: 2 }),
        expect.objectContaining({ component: 'PO', quantity: 1 }),
        expect.objectContaining({ component: 'R6', quantity: 2 }),
      ]),
      permittedPressureKpa: 45.5,
      railMoves: expect.arrayContaining([
        {
          step: 'before-the-pour',
          component: 'R3',
          from: { xMm: 0, yMm: 2286, direction: 'upright' },
          to: null,
        },
      ]),
    });
    expect(JSON.stringify(answered)).not.toContain('"BR"');
    const plain = await takeoff({ system: commonPractice, design: { panels } });
    expect(plain).not.toHaveProperty('railMoves');
    expect(plain).not.toHaveProperty('permittedPressureKpa');
  });

  test('both schemas become JSON Schema', () => {
    for (const schema of [calcTakeoff.input, calcTakeoff.output, calcLength.input, calcLength.output]) {
      expect(z.toJSONSchema(schema, { io: 'input' })).toHaveProperty('type', 'object');
    }
  });
});

describe('bad input names its place', () => {
  const base = { system: commonPractice, design: { panels: pair } };
  const [first] = pair;
  const rules = commonPractice.rules;
  const bad: readonly (readonly [string, unknown, string, string])[] = [
    ['a length without a unit', { ...base, design: { panels: [{ ...first, x: '3' }] } }, 'length-without-unit', 'design.panels[0].x'],
    ['a wrong unit', { ...base, design: { panels: [{ ...first, y: '3 kg' }] } }, 'length-unreadable', 'design.panels[0].y'],
    ['an ambiguous comma', { ...base, design: { panels: [{ ...first, x: '1,250 mm' }] } }, 'length-ambiguous', 'design.panels[0].x'],
    ['a negative width', { ...base, system: { ...commonPractice, panels: [{ code: 'P', width: -1, height: 1, weightKg: 1 }] } }, 'length-not-positive', 'system.panels[0].width'],
    ['a negative weight', { ...base, system: { ...commonPractice, panels: [{ code: 'P', width: 1, height: 1, weightKg: -1 }] } }, 'weight-negative', 'system.panels[0].weightKg'],
    ['an unknown panel', { ...base, design: { panels: [{ ...first, panel: 'Q9' }] } }, 'panel-unknown', 'design.panels[0].panel'],
    ['a lock put up as a panel', { ...base, design: { panels: [{ ...first, panel: 'LK' }] } }, 'panel-unknown', 'design.panels[0].panel'],
    ['an unknown panel counted', { system: commonPractice, panels: { Q9: 1 } }, 'panel-unknown', 'panels.Q9'],
    ['a filler of no width', { ...base, design: { panels: pair, fillers: [{ x: 0, y: 0, width: 0, height: 1 }] } }, 'length-not-positive', 'design.fillers[0].width'],
    ['a rule that names no component', { ...base, system: { ...commonPractice, rules: { ...rules, braces: { component: 'ZZ', maximumSpacing: 1 } } } }, 'rule-component-unknown', 'system.rules.braces.component'],
    ['bands that repeat', { ...base, system: { ...commonPractice, rules: { locks: { component: 'LK', bands: [{ upTo: 2, count: 1 }, { upTo: 2, count: 2 }] } } } }, 'rule-bands-not-rising', 'system.rules.locks.bands[1].upTo'],
    ['a spacing of zero', { ...base, system: { ...commonPractice, rules: { brackets: { component: 'WB', maximumSpacing: 0 } } } }, 'length-not-positive', 'system.rules.brackets.maximumSpacing'],
    ['a code twice', { ...base, system: { ...commonPractice, components: [...(commonPractice.components ?? []), { code: 'LK', kind: 'lock', weightKg: 1 }] } }, 'code-repeated', 'system.components[10]'],
    ['a hole outside the sheet', { ...base, system: { ...commonPractice, panels: [...commonPractice.panels, { code: 'P', width: 1, height: 1, weightKg: 1, tieHoles: [[2, 0]] }] } }, 'tie-hole-outside', 'system.panels[6].tieHoles'],
    ['a rail of no length', { ...base, system: { ...commonPractice, components: [...(commonPractice.components ?? []), { code: 'R9', kind: 'rail', weightKg: 1 }] } }, 'rail-without-length', 'system.components[10].length'],
    ['a permitted pressure of zero', { ...base, system: { ...commonPractice, panels: [{ code: 'P', width: 1, height: 1, weightKg: 1, pressureOnSideKpa: 0 }] } }, 'pressure-not-positive', 'system.panels[0].pressureOnSideKpa'],
    ['a clearance of placing rails below zero', { ...base, system: { ...commonPractice, rules: { ...rules, placingRails: { ...rules?.rails, boltClearance: -1 } } } }, 'length-negative', 'system.rules.placingRails.boltClearance'],
    ['a backing of stop-ends zero apart', { ...base, system: { ...commonPractice, rules: { stopEnds: { hoursPerM2: 1, backingSpacing: 0 } } } }, 'length-not-positive', 'system.rules.stopEnds.backingSpacing'],
    ['no panels', { ...base, design: { panels: [] } }, 'design-empty', 'design.panels'],
    ['a design far away', { ...base, design: { panels: [{ ...first, x: '1001 m' }] } }, 'design-too-large', 'design'],
    ['neither design nor counts', { system: commonPractice }, 'design-or-panels', 'design'],
    ['both design and counts', { ...base, panels: { P3x9: 1 } }, 'design-or-panels', 'design'],
  ]; // prettier-ignore
  test.each(bad)('%s', async (_, input, code, field) => {
    expect(await takeoff(input)).toMatchObject({ code, field, message: expect.stringMatching(/\w+ .*\.$/) });
  });

  test.each([
    ['an unknown key', { ...base, colour: 'red' }],
    ['a negative quantity', { system: commonPractice, panels: { P3x9: -1 } }],
    ['half a panel', { system: commonPractice, panels: { P3x9: 0.5 } }],
    ['an edge of no kind', { ...base, design: { panels: pair, edges: { left: 'wall' } } }],
    [
      'a count of one and a half',
      {
        ...base,
        system: {
          ...commonPractice,
          rules: { locks: { component: 'LK', bands: [{ upTo: 1, count: 1.5 }] } },
        },
      },
    ],
  ])('%s is refused at the door', (_, input) => {
    expect(calcTakeoff.input.safeParse(input).success).toBe(false);
  });
});
