// Loads keep every limit, leave nothing out, come off stop by stop, and for few things are the fewest there can be.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkLoad } from '../../core/yard/check-load.ts';
import { proposeLoading } from '../../core/yard/loading.ts';
import type { LoadLayer, LoadStack, Truck } from '../../core/yard/truck.ts';
import { loadingOrder, unloadingOrder } from '../../core/yard/unloading.ts';
import { fewestByHand, wrongWith } from './loads-by-hand.ts';

const layer = (
  component: string,
  weightGrams: number,
  lengthNm: number,
  widthNm: number,
  heightNm: number,
  more: Partial<LoadLayer> = {},
): LoadLayer => ({
  what: { component, quantity: 1 },
  weightGrams,
  lengthNm,
  widthNm,
  heightNm,
  carries: true,
  stop: 1,
  ...more,
});

const truck = (code: string, payload: number, length: number, width: number, height: number): Truck => ({
  code,
  name: code,
  payloadGrams: payload,
  deckLengthNm: length,
  deckWidthNm: width,
  stackHeightNm: height,
});

const anyLayer = fc
  .record({
    weightGrams: fc.integer({ min: 0, max: 9 }),
    lengthNm: fc.integer({ min: 1, max: 6 }),
    widthNm: fc.integer({ min: 1, max: 4 }),
    heightNm: fc.integer({ min: 1, max: 4 }),
    carries: fc.boolean(),
    stop: fc.integer({ min: 1, max: 3 }),
  })
  .map((parts): LoadLayer => ({ what: { component: 'X', quantity: 1 }, ...parts }));
const anyTruck = fc
  .tuple(
    fc.integer({ min: 5, max: 30 }),
    fc.integer({ min: 3, max: 10 }),
    fc.integer({ min: 2, max: 6 }),
    fc.integer({ min: 2, max: 6 }),
  )
  .map(([payload, length, width, height]) => truck('', payload, length, width, height));
const someTrucks = fc
  .array(anyTruck, { minLength: 1, maxLength: 3 })
  .map((trucks) => trucks.map((each, index) => ({ ...each, code: `T${index}` })));

describe('every proposal', () => {
  test('keeps every limit, comes off stop by stop, and loads each thing once or says that it fits nowhere', () => {
    fc.assert(
      fc.property(fc.array(anyLayer, { maxLength: 40 }), someTrucks, (layers, trucks) => {
        const { loads, notFitting, atLeast, fewest } = proposeLoading(layers, trucks);
        const loaded = loads.flatMap(({ stacks }) => stacks.flatMap((stack) => stack.layers));
        const told = notFitting.map((each) => each.layer);
        expect([...loaded, ...told].map((each) => layers.indexOf(each)).sort((a, b) => a - b)).toEqual(
          layers.map((_, index) => index),
        );
        for (const load of loads) {
          const on = trucks.find(({ code }) => code === load.truck)!;
          expect(wrongWith(load.stacks, on)).toEqual([]);
          expect(checkLoad(load.stacks, on)).toEqual([]);
          expect(load.usedLengthNm).toBeLessThanOrEqual(on.deckLengthNm);
        }
        for (const each of told)
          expect(trucks.filter((on) => wrongWith(alone(each), on).length === 0)).toEqual([]);
        const least = Math.max(atLeast.byWeight, atLeast.byDeck);
        expect(loads.length).toBeGreaterThanOrEqual(least);
        if (loads.length === least) expect(fewest).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });

  test('of up to five things is the fewest that putting them on in every order and place can find', () => {
    const few = fc.uniqueArray(anyLayer, { minLength: 1, maxLength: 5, comparator: Object.is });
    let better = 0;
    fc.assert(
      fc.property(few, fc.array(anyTruck, { minLength: 1, maxLength: 2 }), (layers, trucks) => {
        const coded = trucks.map((each, index) => ({ ...each, code: `T${index}` }));
        const { loads, notFitting, atLeast, fewest } = proposeLoading(layers, coded);
        const fitting = layers.filter((each) => !notFitting.some((not) => not.layer === each));
        const byHand = fitting.length === 0 ? 0 : fewestByHand(fitting, coded);
        expect(loads.length).toBe(byHand);
        expect(fewest).toBe(true);
        expect(Math.max(atLeast.byWeight, atLeast.byDeck)).toBeLessThanOrEqual(byHand);
        better += Number(byHand > 1);
      }),
      { numRuns: 300 },
    );
    expect(better).toBeGreaterThan(20);
  });

  test('the check finds what the second opinion finds, in loads thrown together', () => {
    const stack = fc.record({
      fromCabNm: fc.integer({ min: 0, max: 8 }),
      fromLeftNm: fc.integer({ min: 0, max: 4 }),
      layers: fc.array(anyLayer, { minLength: 1, maxLength: 3 }),
    });
    let good = 0;
    let bad = 0;
    fc.assert(
      fc.property(fc.array(stack, { minLength: 1, maxLength: 3 }), anyTruck, (stacks, on) => {
        const wrong = wrongWith(stacks, on);
        expect(checkLoad(stacks, on).length > 0).toBe(wrong.length > 0);
        if (wrong.length > 0) bad += 1;
        else good += 1;
      }),
      { numRuns: 4000 },
    );
    expect(Math.min(good, bad)).toBeGreaterThan(30);
  });
});

describe('a load', () => {
  const flatbed = truck('FB', 20_000, 12, 2, 3);

  test('puts what comes off last at the cab and underneath', () => {
    const layers = [
      layer('FIRST', 100, 4, 2, 1, { stop: 1 }),
      layer('SECOND', 300, 4, 2, 1, { stop: 2 }),
      layer('THIRD', 500, 4, 2, 1, { stop: 3 }),
    ];
    const { loads } = proposeLoading(layers, [flatbed]);
    expect(loads).toHaveLength(1);
    expect(named(unloadingOrder(loads[0]!.stacks))).toEqual(['FIRST', 'SECOND', 'THIRD']);
    expect(named(loadingOrder(loads[0]!.stacks))).toEqual(['THIRD', 'SECOND', 'FIRST']);
    expect(loads[0]!.stacks[0]!.layers.map((each) => each.stop)).toEqual([3, 2, 1]);
  });

  test('a heavy thing of the first stop does not go on a light one of the last: it stands behind it', () => {
    const { loads } = proposeLoading(
      [layer('LIGHT', 10, 4, 2, 1, { stop: 2 }), layer('HEAVY', 900, 4, 2, 1, { stop: 1 })],
      [flatbed],
    );
    expect(loads[0]!.stacks.map((each) => [each.fromCabNm, each.layers.length])).toEqual([
      [0, 1],
      [4, 1],
    ]);
  });

  test('narrow stacks stand side by side', () => {
    const { loads } = proposeLoading([layer('A', 1, 12, 1, 3), layer('B', 1, 12, 1, 3)], [flatbed]);
    expect(loads).toHaveLength(1);
    expect(loads[0]!.stacks.map((each) => each.fromLeftNm)).toEqual([0, 1]);
  });

  test('what fits on no truck is named with what it passes', () => {
    const { loads, notFitting } = proposeLoading(
      [layer('LONG', 1, 13, 1, 1), layer('HUGE', 30_000, 13, 3, 4), layer('OK', 1, 1, 1, 1)],
      [flatbed],
    );
    expect(notFitting.map((each) => [each.passes])).toEqual([
      [['length']],
      [['weight', 'length', 'width', 'height']],
    ]);
    expect(loads).toHaveLength(1);
  });

  test('goes on the smaller truck where that takes it', () => {
    const van = truck('VAN', 1000, 4, 2, 2);
    expect(proposeLoading([layer('A', 900, 4, 2, 2)], [flatbed, van]).loads[0]!.truck).toBe('VAN');
    expect(proposeLoading([layer('A', 1001, 4, 2, 2)], [flatbed, van]).loads[0]!.truck).toBe('FB');
  });

  test('at least so many trucks: 45 t on trucks of 20 t are three by weight, and 96 of room on 72 are two by deck', () => {
    const heavy = Array.from({ length: 9 }, () => layer('A', 5000, 1, 1, 1));
    expect(proposeLoading(heavy, [flatbed])).toMatchObject({
      atLeast: { byWeight: 3, byDeck: 1 },
      fewest: true,
    });
    const large = Array.from({ length: 4 }, () => layer('A', 1, 12, 1, 2));
    expect(proposeLoading(large, [flatbed]).atLeast).toEqual({ byWeight: 1, byDeck: 2 });
  });
});

function alone(each: LoadLayer): LoadStack[] {
  return [{ fromCabNm: 0, fromLeftNm: 0, layers: [each] }];
}

function named(order: readonly { readonly layer: LoadLayer }[]): string[] {
  return order.map(({ layer: { what } }) => ('component' in what ? what.component : ''));
}
