// The rails that stand end to end: held against every set there is, tried one after another.
import { describe, expect, test } from 'vitest';
import { fewestRails, type Rail } from '../../core/gang/rail-lengths.ts';
import { Dice } from './random-designs.ts';

function rail(lengthNm: number): Rail {
  return { code: `R${lengthNm}`, lengthNm };
}

function lengths(found: ReturnType<typeof fewestRails>): readonly number[] | string {
  return typeof found === 'string' ? found : found.map(({ lengthNm }) => lengthNm);
}

/** Every set of so many rails, each longest first. */
function setsOf(count: number, falling: readonly number[]): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return falling.flatMap((longest, at) =>
    setsOf(count - 1, falling.slice(at)).map((rest) => [longest, ...rest]),
  );
}

/** Of the smallest sets that cover: least total, then longest first wherever two differ. */
function bestByTrial(catalogue: readonly number[], span: number): readonly number[] {
  const falling = catalogue.toSorted((one, other) => other - one);
  for (let count = 1; ; count++) {
    let best: { total: number; set: readonly number[] } | undefined;
    for (const set of setsOf(count, falling)) {
      const total = set.reduce((sum, length) => sum + length, 0);
      // sets come longest first, so the first of a total is the one wanted
      if (total >= span && (best === undefined || total < best.total)) best = { total, set };
    }
    if (best !== undefined) return best.set;
  }
}

describe('rails end to end', () => {
  test('over 13 ft, of 3, 6 and 8 ft: 8 ft and 6 ft, the least total of the fewest', () => {
    expect(lengths(fewestRails([3, 6, 8].map(rail), 13))).toEqual([8, 6]);
  });

  test('of 5 + 2 and 4 + 3 the longest single rail decides', () => {
    expect(lengths(fewestRails([4, 3, 5, 2].map(rail), 7))).toEqual([5, 2]);
  });

  const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_261_125);
  test(`600 random catalogues from seed ${seed} take the set that trying all of them finds`, () => {
    let several = 0;
    for (let number = 0; number < 600; number++) {
      const dice = new Dice(seed + number);
      const catalogue = [...new Set(Array.from({ length: 1 + dice.roll(5) }, () => 10 + dice.roll(30)))];
      const span = 1 + dice.roll(Math.max(...catalogue) * 5);
      const found = lengths(fewestRails(catalogue.map(rail), span));
      expect(found, `seed ${seed + number}`).toEqual(bestByTrial(catalogue, span));
      if (found.length > 2) several += 1;
    }
    expect(several).toBeGreaterThan(100);
  });

  test('60 odd lengths that cover 20 rails in millions of ways are told, not tried one by one', () => {
    const dice = new Dice(1);
    const catalogue = [2_000_000_000, ...Array.from({ length: 60 }, () => 1_500_000_000 + dice.roll(5e8))];
    expect(fewestRails(catalogue.map(rail), 38_200_000_000)).toBe('too-many-sets');
    expect(fewestRails([rail(1)], 201)).toBe('too-many-rails');
  });
});
