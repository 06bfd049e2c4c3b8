// What lies on a deck: pieces in bundles and boxes by the yard's sizes or the defaults, racks, gangs laid down. The
// default sizes are common practice, no source.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { laidSize } from '../../core/yard/laid-sizes.ts';
import { bundlesOf, containerLayer, gangLayer } from '../../core/yard/load-layers.ts';
import type { Truck } from '../../core/yard/truck.ts';

const inchNm = 25_400_000;
const pound = 453.592_37;
const panel = {
  code: 'P836',
  kind: 'panel',
  weightGrams: Math.round(200 * pound),
  widthNm: 36 * inchNm,
  heightNm: 96 * inchNm,
};
const lock = { code: 'LK', kind: 'lock', weightGrams: Math.round(5 * pound) };
const flatbed: Truck = {
  code: 'FB',
  name: 'Flatbed',
  payloadGrams: Math.round(20_000 * pound),
  deckLengthNm: 24 * 12 * inchNm,
  deckWidthNm: 8 * 12 * inchNm,
  stackHeightNm: 96 * inchNm,
};

describe('bundles', () => {
  test('23 panels are two bundles of ten and one of three, 5 in a panel and 4 in of bearers high', () => {
    const bundles = bundlesOf({ piece: panel, quantity: 23, stop: 2 }, laidSize(panel, undefined), [flatbed]);
    expect(bundles.map(({ what, heightNm }) => [what, heightNm / inchNm])).toEqual([
      [{ component: 'P836', quantity: 10 }, 54],
      [{ component: 'P836', quantity: 10 }, 54],
      [{ component: 'P836', quantity: 3 }, 19],
    ]);
    expect(bundles[0]).toMatchObject({
      lengthNm: 96 * inchNm,
      widthNm: 36 * inchNm,
      weightGrams: 10 * panel.weightGrams,
      carries: true,
      stop: 2,
    });
  });

  test('the yard’s own bundle size goes before the default, and is no default', () => {
    expect(laidSize(panel, 8)).toMatchObject({ pieces: 8, defaults: ['thickness laid flat'] });
    expect(laidSize(panel, undefined).defaults).toEqual(['thickness laid flat', 'pieces in a bundle']);
    expect(laidSize(lock, undefined)).toMatchObject({ how: 'box', pieces: 200 });
    expect(laidSize(lock, undefined).defaults).toEqual(['size of its box', 'pieces in a box']);
  });

  test('a bundle higher or heavier than any truck takes is made smaller', () => {
    const low = { ...flatbed, stackHeightNm: 30 * inchNm };
    // 30 in less 4 in of bearers is 5 panels of 5 in.
    const by = bundlesOf({ piece: panel, quantity: 12, stop: 1 }, laidSize(panel, undefined), [low]);
    expect(by.map(({ what }) => 'quantity' in what && what.quantity)).toEqual([5, 5, 2]);
    const weak = { ...flatbed, payloadGrams: 3 * panel.weightGrams };
    const few = bundlesOf({ piece: panel, quantity: 7, stop: 1 }, laidSize(panel, undefined), [weak]);
    expect(few.map(({ what }) => 'quantity' in what && what.quantity)).toEqual([3, 3, 1]);
  });

  test('rails lie six abreast: seven are two layers', () => {
    const rail = { code: 'R8', kind: 'stiffening-rail', weightGrams: 18_000, lengthNm: 96 * inchNm };
    const [bundle] = bundlesOf({ piece: rail, quantity: 7, stop: 1 }, laidSize(rail, undefined), [flatbed]);
    expect(bundle).toMatchObject({
      lengthNm: 96 * inchNm,
      widthNm: 6 * 5 * inchNm,
      heightNm: (2 * 5 + 4) * inchNm,
    });
  });

  test('every piece is in one bundle, whatever its kind, size and number', () => {
    const kinds = ['panel', 'lock', 'brace', 'bracket', 'other', 'tie', 'inside-corner', 'plank'];
    const size = fc.option(fc.integer({ min: 1, max: 4_000_000_000 }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.integer({ min: 0, max: 100_000 }),
        size,
        size,
        fc.integer({ min: 1, max: 3000 }),
        fc.option(fc.integer({ min: 2, max: 300 }), { nil: undefined }),
        (kind, weightGrams, widthNm, lengthNm, quantity, bundle) => {
          const piece = {
            code: 'X',
            kind,
            weightGrams,
            ...(widthNm !== undefined && { widthNm }),
            ...(lengthNm !== undefined && { lengthNm }),
          };
          const bundles = bundlesOf({ piece, quantity, stop: 1 }, laidSize(piece, bundle), [flatbed]);
          const pieces = bundles.map(({ what }) => ('quantity' in what ? what.quantity : 0));
          expect(pieces.reduce((sum, each) => sum + each, 0)).toBe(quantity);
          expect(Math.min(...pieces)).toBeGreaterThan(0);
          expect(bundles.reduce((sum, each) => sum + each.weightGrams, 0)).toBe(quantity * weightGrams);
        },
      ),
    );
  });
});

test('a gang lies with its longer side along the deck, and nothing lies on it', () => {
  const gang = gangLayer({
    gang: 'GB-1',
    widthNm: 8 * 12 * inchNm,
    heightNm: 12 * 12 * inchNm,
    weightGrams: 508_000,
    stop: 1,
  });
  expect(gang).toMatchObject({ lengthNm: 144 * inchNm, widthNm: 96 * inchNm, carries: false });
});

test('a rack without a size in the catalogue has the default one, 8 ft × 4 ft', () => {
  const rack = containerLayer({
    container: 'RK-1',
    piece: { code: 'RK', kind: 'other', weightGrams: 81_647 },
    weightGrams: 500_000,
    stop: 1,
  });
  expect(rack).toMatchObject({ lengthNm: 96 * inchNm, widthNm: 48 * inchNm, what: { container: 'RK-1' } });
});
