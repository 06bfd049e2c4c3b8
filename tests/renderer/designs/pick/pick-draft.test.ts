// What is typed for a pick: read in the reader's units, kept where it cannot be read, and never counted then.
import { describe, expect, test } from 'vitest';
import type { PickSetup } from '../../../../core/pick/setup.ts';
import { craneOf, textsOf } from '../../../../renderer/screens/designs/pick/crane-texts.ts';
import { type PickDraft, typed } from '../../../../renderer/screens/designs/pick/pick-draft.ts';

const setup: PickSetup = {
  rigging: { by: 'angle', angleDeg: 60 },
  slingsGrams: 113_398,
  equalisingGear: null,
  concreteLeftOn: 0,
  pickedUpFrom: 'flat',
  crane: null,
  pickUpRadiusNm: null,
  setRadiusNm: null,
  windMps: null,
  windSource: '',
};
const draft: PickDraft = { setup, wrong: {} };
const foot = 304_800_000;

describe('a field of a pick', () => {
  test('takes a bare radius as feet or as metres, and a text with its own unit as it is', () => {
    expect(typed(draft, 'setRadius', '148', 'us').setup.setRadiusNm).toBe(148 * foot);
    expect(typed(draft, 'setRadius', '45.1', 'metric').setup.setRadiusNm).toBe(45_100_000_000);
    expect(typed(draft, 'setRadius', `92'`, 'metric').setup.setRadiusNm).toBe(92 * foot);
  });

  test('takes a bare weight as pounds or kilograms, with thousands parted by commas', () => {
    // 1 lb is 453.592 37 g by definition (international yard and pound agreement, 1959).
    expect(typed(draft, 'slings', '1,250', 'us').setup.slingsGrams).toBe(566_990);
    expect(typed(draft, 'slings', '1250', 'metric').setup.slingsGrams).toBe(1_250_000);
  });

  test('takes a bare wind as miles an hour where lengths are in feet: 20 mph are 8.94 m/s', () => {
    expect(typed(draft, 'wind', '20', 'us').setup.windMps).toBeCloseTo(8.9408, 6);
    expect(typed(draft, 'wind', '9', 'metric').setup.windMps).toBe(9);
  });

  test('that cannot be read keeps its text and its reason, and what was entered stays', () => {
    const wrong = typed(draft, 'slings', '250 stone', 'us');
    expect(wrong.setup).toEqual(setup);
    expect(wrong.wrong.slings?.text).toBe('250 stone');
    expect(wrong.wrong.slings?.why).toContain('Maybe');
    expect(typed(wrong, 'slings', '250 lb', 'us').wrong).toEqual({});
  });

  test('left empty is not entered, never a zero that counts', () => {
    const entered = typed(draft, 'setRadius', '60', 'us');
    expect(typed(entered, 'setRadius', '', 'us').setup.setRadiusNm).toBeNull();
    const leg = typed(draft, 'legCapacity', '5000', 'us');
    expect(typed(leg, 'legCapacity', '', 'us').setup).not.toHaveProperty('legCapacityGrams');
  });

  test('refuses an angle of nothing and one over 90 degrees', () => {
    expect(typed(draft, 'angle', '0', 'us').wrong.angle).toBeDefined();
    expect(typed(draft, 'angle', '91', 'us').wrong.angle).toBeDefined();
    expect(typed(draft, 'angle', '45', 'us').setup.rigging).toEqual({ by: 'angle', angleDeg: 45 });
  });
});

describe('a chart as it is typed', () => {
  const texts = { ...textsOf(null, 'us'), code: 'MC', name: 'Mobile crane', wind: '20 mph', whose: 'maker' };

  test('has a radius and a capacity a line, parted by spaces', () => {
    const read = craneOf({ ...texts, chart: `60 8800\n\n92'  5,400 lb` }, 'us');
    expect(read).toMatchObject({
      ok: true,
      value: { chart: [{ radiusNm: 60 * foot }, { radiusNm: 92 * foot }] },
    });
    if (read.ok) expect(read.value.chart[1]?.capacityGrams).toBe(2_449_399);
  });

  test('says in which line something cannot be read', () => {
    const read = craneOf({ ...texts, chart: '60 8800\n92 heavy' }, 'us');
    expect(read).toMatchObject({
      ok: false,
      error: { message: expect.stringContaining('Line 2') as string },
    });
  });

  test('comes back as it was from its own texts', () => {
    const read = craneOf({ ...texts, chart: '60 8800\n92 5400' }, 'us');
    if (!read.ok) throw new Error(read.error.message);
    const again = craneOf(textsOf(read.value, 'us'), 'us');
    expect(again).toMatchObject({ ok: true, value: { chart: read.value.chart, code: 'MC' } });
  });
});
