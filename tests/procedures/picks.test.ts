// A pick of demo gangs asked and kept: what the crane refuses, the split that works, and what is not taken.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { PickSetup } from '../../core/pick/setup.ts';
import { demoHost, type DemoHost } from './demo-host.ts';

let host: DemoHost;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(() => host.close());

const pound = 453.592_37;
const foot = 304_800_000;
/** An invented tower crane; radius in feet, capacity in pounds. */
const chart = [
  [60, 8800],
  [92, 5400],
  [110, 4600],
  [130, 3900],
  [148, 3300],
].map(([radius = 0, capacity = 0]) => ({
  radiusNm: radius * foot,
  capacityGrams: Math.round(capacity * pound),
}));
const crane = {
  code: 'TC1',
  name: 'Tower crane',
  chart,
  deductGrams: 0,
  cautionPercent: 75,
  stopPercent: 90,
  windLimitMps: 9,
  windWhose: 'the site',
};
const setup: PickSetup = {
  rigging: { by: 'angle', angleDeg: 60 },
  slingsGrams: Math.round(250 * pound),
  equalisingGear: null,
  concreteLeftOn: 0,
  pickedUpFrom: 'standing',
  crane: 'TC1',
  pickUpRadiusNm: 92 * foot,
  setRadiusNm: 148 * foot,
  windMps: 5,
  windSource: 'forecast of the evening before',
};

describe('a pick', () => {
  test('begins with slings at 60 degrees and everything else open, and says that nothing was entered', async () => {
    const read = await host.ask('pick.read', { design: 'GA' });
    expect(read.isEntered).toBe(false);
    expect(read.setup).toMatchObject({ rigging: { by: 'angle', angleDeg: 60 }, setRadiusNm: null });
  });

  test('is checked at both radii, the worse governs', async () => {
    await host.ask('crane.save', { commandId: 'crane-save-1', crane });
    expect((await host.ask('crane.list', {})).cranes.map(({ code }) => code)).toContain('TC1');
    const checked = await host.ask('pick.check', { design: 'GA', setup });
    expect(checked.craneGoverns).toBe('set radius');
    const sum = checked.weights.reduce((grams, line) => grams + line.weightGrams, 0);
    expect(Math.abs(sum - checked.onCraneGrams)).toBeLessThanOrEqual(1);
    const far = checked.cranePlaces.find(({ place }) => place === 'set radius');
    expect(far?.percent).toBeCloseTo((100 * checked.onCraneGrams) / (chart[4]?.capacityGrams ?? 0), 6);
  });

  test('of 24 ft that the crane refuses at 148 ft is offered as two of 12 ft, one pick more', async () => {
    const { geometry } = await host.ask('design.row', { system: 'OMB', text: '8x36 | 8+4', units: 'us' });
    const design = {
      code: 'GAA',
      name: 'Wall gang 24 x 12 ft',
      system: 'OMB',
      revision: 'A',
      hand: 'symmetrical' as const,
      geometry,
      assembleH: 4,
      breakDownH: 2,
    };
    await host.ask('design.save', { commandId: 'design-save-1', design, isNew: true });
    const checked = await host.ask('pick.check', { design: 'GAA', setup });
    expect(checked.verdict).toBe('refused');
    expect(checked.split).toMatchObject({ kind: 'found', extraPicks: 1 });
    if (checked.split?.kind !== 'found') return;
    expect(checked.split.parts.map((part) => part.widthNm)).toEqual([12 * foot, 12 * foot]);
    for (const part of checked.split.parts) {
      expect(part.verdict).not.toBe('refused');
      expect(part.cranePercent).toBeLessThan(90);
    }
  });

  test('is kept, and a crane or design that is not there is refused', async () => {
    await host.ask('pick.save', { commandId: 'pick-save-1', design: 'GA', setup });
    expect(await host.ask('pick.read', { design: 'GA' })).toEqual({ setup, isEntered: true });
    expect(await host.refused('pick.check', { design: 'NO', setup })).toBe('unknown-design');
    const nobody = { ...setup, crane: 'NO' };
    expect(await host.refused('pick.check', { design: 'GA', setup: nobody })).toBe('unknown-crane');
  });
});

test('A chart whose radii fall is refused', async () => {
  const [first, second, ...rest] = chart;
  const falling = [second, first, ...rest].flatMap((row) => row ?? []);
  const wrong = { commandId: 'crane-save-3', crane: { ...crane, chart: falling } };
  expect(await host.refused('crane.save', wrong)).toBe('chart-radii');
});
