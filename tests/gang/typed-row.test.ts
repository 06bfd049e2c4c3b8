// A design typed as rows, and written as rows again. Sizes are invented; 1 ft is 304.8 mm and 1 in is 25.4 mm by
// definition (international yard and pound agreement, 1959).
import { describe, expect, test } from 'vitest';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import { panelSystem } from '../../core/catalogue/system.ts';
import { placeDesign } from '../../core/gang/placed.ts';
import { likeness } from '../../core/gang/hand-of.ts';
import { rowText } from '../../core/gang/row-text.ts';
import { typedRow } from '../../core/gang/typed-row.ts';
import { footNm, inchNm, millimetreNm, type UnitSystem } from '../../core/units/length.ts';
import { Dice, randomDesign, randomSystem } from './random-designs.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_302);

function systemOf(sizes: readonly (readonly [string, number, number])[]): PanelSystem {
  const panels = sizes.map(([code, widthNm, heightNm]) => ({
    code,
    name: code,
    kind: 'panel' as const,
    weightGrams: 1,
    widthNm,
    heightNm,
  }));
  const system = panelSystem(panels, {});
  if (!system.ok) throw new Error(system.error.message);
  return system.value;
}

const inches = systemOf(
  [36, 30, 24, 24, 36.5].flatMap((width, index) =>
    [96, 48].map((height): [string, number, number] => [
      `${index === 3 ? 'SECOND' : `P${width}`}x${height}`,
      width * inchNm,
      height * inchNm,
    ]),
  ),
);
const metric = systemOf([
  ['M90', 900 * millimetreNm, 2700 * millimetreNm],
  ['M60', 600 * millimetreNm, 2700 * millimetreNm],
  ['N90', 900 * millimetreNm, 1350 * millimetreNm],
]);

/** Panels as "CODE@x,y" and fillers as "f@x,y wxh", lengths in the unit. */
function laid(system: PanelSystem, text: string, units: UnitSystem): readonly string[] {
  const typed = typedRow(system, text, units);
  if (!typed.ok) throw new Error(typed.error.message);
  const unit = units === 'us' ? inchNm : millimetreNm;
  return [
    ...typed.value.panels.map(
      ({ panel, xNm, yNm, onSide }) => `${panel}${onSide ? 's' : ''}@${xNm / unit},${yNm / unit}`,
    ),
    ...typed.value.fillers.map(
      ({ xNm, yNm, widthNm, heightNm }) =>
        `f@${xNm / unit},${yNm / unit} ${widthNm / unit}x${heightNm / unit}`,
    ),
  ];
}

function refusal(system: PanelSystem, text: string, units: UnitSystem) {
  const typed = typedRow(system, text, units);
  if (typed.ok) throw new Error(`${text} was not refused`);
  return typed.error;
}

describe('A typed row', () => {
  test('36 36 24 36 | 8+4 is four panels of 8 ft and four of 4 ft above them, from the left', () => {
    expect(laid(inches, '36 36 24 36 | 8+4', 'us')).toEqual([
      'P36x96@0,0',
      'P36x96@36,0',
      'P24x96@72,0',
      'P36x96@96,0',
      'P36x48@0,96',
      'P36x48@36,96',
      'P24x48@72,96',
      'P36x48@96,96',
    ]);
  });

  test('of blocks that differ has the lowest first; fillers are as high as their row, once a row', () => {
    expect(laid(inches, '36 f4 24 | 8+4 / 24 36 | 4', 'us')).toEqual([
      'P36x96@0,0',
      'P24x96@40,0',
      'P36x48@0,96',
      'P24x48@40,96',
      'P24x48@0,144',
      'P36x48@24,144',
      'f@36,0 4x96',
      'f@36,96 4x48',
    ]);
  });

  test('repeats with x, lays panels on their side by their length, and takes units and fractions anywhere', () => {
    expect(laid(inches, '2x36 | 8 / 48s | 2', 'us')).toEqual(['P36x96@0,0', 'P36x96@36,0', 'P24x48s@0,96']);
    const spellings = [
      "3' 36 1/2 | 8",
      '36" 36½ | 96 in',
      '3\'-0" 3\'-0 1/2" | 8\'-0"',
      '914.4mm 36-1/2"|8ft',
    ];
    for (const text of spellings)
      expect([text, ...laid(inches, text, 'us')]).toEqual([text, 'P36x96@0,0', 'P36.5x96@36,0']);
  });

  test('in metric is millimetres, bare or with another unit', () => {
    const wanted = ['M90@0,0', 'M60@900,0', 'f@1500,0 50x2700'];
    for (const text of ['900 600 f50 | 2700', '0.9 m 60cm f 50mm | 2.7m', '900mm 600 f5 cm | 270 cm'])
      expect([text, ...laid(metric, text, 'metric')]).toEqual([text, ...wanted]);
  });

  test('takes of two panels of one size the first in the catalogue', () => {
    expect(laid(inches, '24 | 8', 'us')).toEqual(['P24x96@0,0']);
  });
});

describe('What is refused names the field, the token and its place', () => {
  test.each([
    ['36 37 | 8', 'row-no-such-panel', '"37" at character 4', `2'-6", 3'-0" or 3'-0 1/2"`],
    ['36 | 8+7', 'row-no-such-height', '"7" at character 8', `4'-0" or 8'-0"`],
    ['36 96s | 8', 'row-no-such-height', '"96s" at character 4', `3'-0"`],
    ['72s | 3', 'row-no-such-panel', '"72s" at character 1', `4'-0" or 8'-0"`],
    ['36 about | 8', 'row-unreadable', '"about" at character 4', '3x36'],
    ['36 | 2x8', 'row-unreadable', '"2x8" at character 6', '8+4'],
    ['36 | 8 4', 'row-unreadable', '"4" at character 8', '8+4'],
    ['36 | 8 | 4', 'row-unreadable', '"|" at character 8', '8+4'],
    ['36 + 36 | 8', 'row-unreadable', '"+" at character 4', '8+4'],
    ['36 | 8+', 'row-unreadable', '"+" at character 7', '8+4'],
    ['f4s | 8', 'row-unreadable', '"f4s" at character 1', ''],
    ['36 0 | 8', 'row-nothing', '"0" at character 4', ''],
    ['0x36 | 8', 'row-nothing', '"0x36" at character 1', ''],
    ['36', 'row-empty', 'no heights before character 3', '8+4'],
    ['| 8', 'row-empty', 'no widths before character 4', '8+4'],
    ['36 | 8 /', 'row-empty', 'no widths before character 9', '8+4'],
    ['', 'row-empty', 'no widths', '8+4'],
    ['11/2 | 8', 'length-unreadable', '"11/2" at character 1', ''],
    ['1999x36 36 36 | 8', 'row-too-many', '2001 pieces', ''],
    ['36', 'row-empty', '', ''],
  ])('%s', (text, code, place, hint) => {
    const error = refusal(inches, text, 'us');
    expect([error.code, error.field]).toEqual([code, 'text']);
    expect(error.message).toContain(place);
    expect(error.hint ?? '').toContain(hint);
  });

  test('0.9 in metric, where it may be metres: never taken for millimetres', () => {
    const error = refusal(metric, '0.9 | 2700', 'metric');
    expect([error.code, error.hint]).toEqual(['row-without-unit', 'Maybe 0.9 m was meant, or 0.9 mm.']);
    expect(refusal(metric, '900 | 2,7', 'metric').code).toBe('row-without-unit');
  });

  test('2000 pieces are taken', () => {
    expect(laid(inches, '1999x36 f4 | 8', 'us')).toHaveLength(2000);
  });
});

describe('A design written as a row', () => {
  test.each([
    ['36 36 24 36 | 8+4', 'us'],
    ['36 f4 24 | 8+4 / 24 36 | 4', 'us'],
    ['6x36 f4 1/2" 3\'-0 1/2" | 8 / 48s 48s | 2', 'us'],
    ['900 900 600 f50 | 2700 / 4x900 | 1350', 'metric'],
  ] as const)('%s comes out as it was typed', (text, units) => {
    const system = units === 'us' ? inches : metric;
    const typed = typedRow(system, text, units);
    if (!typed.ok) throw new Error(typed.error.message);
    expect(rowText(system, typed.value, units)).toBe(text);
  });

  test('is none where rows cannot say it: a gap, a piece off the rows, a filler over two rows, the second of a size', () => {
    const typed = typedRow(inches, '36 f4 24 | 8+4', 'us');
    if (!typed.ok) throw new Error(typed.error.message);
    const design = typed.value;
    const [first, ...rest] = design.panels;
    if (first === undefined) throw new Error('Nothing was typed.');
    expect(rowText(inches, { ...design, fillers: [] }, 'us')).toBeNull();
    expect(rowText(inches, { ...design, panels: [{ ...first, yNm: 1 }, ...rest] }, 'us')).toBeNull();
    const through = [{ xNm: 36 * inchNm, yNm: 0, widthNm: 4 * inchNm, heightNm: 12 * footNm }];
    expect(rowText(inches, { ...design, fillers: through }, 'us')).toBeNull();
    const second = design.panels.map((each) => ({ ...each, panel: each.panel.replace('P24', 'SECOND') }));
    expect(rowText(inches, { ...design, panels: second }, 'us')).toBeNull();
    expect(rowText(inches, { ...design, panels: [] }, 'us')).toBeNull();
  });

  test(`and typed again is the same gang, on 400 random designs from seed ${seed} in both units`, () => {
    const dice = new Dice(seed);
    let written = 0;
    for (let round = 0; round < 400; round++) {
      const system = randomSystem(dice);
      const design = dice.chance(50) ? randomDesign(dice, system) : aGrid(dice, system);
      for (const units of ['us', 'metric'] as const) {
        const text = rowText(system, design, units);
        if (text === null) continue;
        written += 1;
        const typed = typedRow(system, text, units);
        if (!typed.ok) throw new Error(`${text}: ${typed.error.message}`);
        const [one, other] = [
          placeDesign(system, design),
          placeDesign(system, { ...typed.value, edges: design.edges }),
        ];
        expect([text, one.ok && other.ok && likeness(one.value, other.value)]).toEqual([text, 'same']);
      }
    }
    expect(written).toBeGreaterThan(300);
  });
});

/** Rows of panels of one height each, with fillers. */
function aGrid(dice: Dice, system: PanelSystem) {
  const design = randomDesign(dice, system);
  const panels: typeof design.panels = [];
  const fillers: typeof design.fillers = [];
  let yNm = 0;
  for (let row = 1 + dice.roll(3); row > 0; row--) {
    const { heightNm } = dice.of(system.panels);
    const ofRow = system.panels.filter((panel) => panel.heightNm === heightNm);
    let xNm = 0;
    for (let count = 1 + dice.roll(7); count > 0; count--) {
      const panel = dice.of(ofRow);
      panels.push({ panel: panel.code, xNm, yNm, onSide: false });
      xNm += panel.widthNm;
      if (!dice.chance(30)) continue;
      fillers.push({ xNm, yNm, widthNm: 50_000_000 + dice.roll(3), heightNm });
      xNm += fillers.at(-1)?.widthNm ?? 0;
    }
    yNm += heightNm;
  }
  return { ...design, panels, fillers };
}
