// Holes of two sides paired within a tolerance: held against every choice of pairs there is, tried one after another.
import { describe, expect, test } from 'vitest';
import type { PointNm } from '../../core/gang/findings.ts';
import { pairHoles } from '../../core/gang/tie-pairs.ts';
import { Dice } from './random-designs.ts';

const mm = 1_000_000;
const at = (x: number, y = 0): PointNm => ({ xNm: x * mm, yNm: y * mm });

/** The most pairs of all choices, by trying each hole with each and with none. */
function mostByTrial(first: readonly PointNm[], second: readonly PointNm[], toleranceMm: number): number {
  const [hole, ...rest] = first;
  if (hole === undefined) return 0;
  let most = mostByTrial(rest, second, toleranceMm);
  for (const [index, other] of second.entries()) {
    const [dx, dy] = [(hole.xNm - other.xNm) / mm, (hole.yNm - other.yNm) / mm];
    if (dx * dx + dy * dy > toleranceMm * toleranceMm) continue;
    most = Math.max(most, 1 + mostByTrial(rest, second.toSpliced(index, 1), toleranceMm));
  }
  return most;
}

describe('tie holes opposite each other', () => {
  test('without a tolerance only those equal to the nanometre are pairs', () => {
    const off = { xNm: 100 * mm + 1, yNm: 0 };
    expect(pairHoles([at(0), at(100)], [at(0), off], 0)).toEqual({
      pairs: [[at(0), at(0)]],
      alone: [[at(100)], [off]],
    });
  });

  test('the tolerance is a straight distance: 3 by 4 mm is 5 mm away, a nanometre more is not', () => {
    expect(pairHoles([at(0)], [at(3, 4)], 5 * mm).pairs).toHaveLength(1);
    expect(pairHoles([at(0)], [{ xNm: 3 * mm, yNm: 4 * mm + 1 }], 5 * mm).pairs).toHaveLength(0);
    expect(pairHoles([at(0)], [at(3, 4)], 5 * mm - 1).pairs).toHaveLength(0);
  });

  test('nearest first would pair 4 with 5 and leave 0 and 12 alone; both find a partner', () => {
    const found = pairHoles([at(4), at(12)], [at(0), at(5)], 7 * mm);
    expect(found.pairs).toEqual([
      [at(4), at(0)],
      [at(12), at(5)],
    ]);
    expect(found.alone).toEqual([[], []]);
  });

  test('no hole has two partners', () => {
    expect(pairHoles([at(0), at(1), at(2)], [at(1)], 5 * mm)).toMatchObject({
      pairs: [[at(1), at(1)]],
      alone: [[at(0), at(2)], []],
    });
  });

  test('in 400 random crowds of holes there are as many pairs as the best choice has', () => {
    let beyondNearest = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const dice = new Dice(seed);
      const crowd = (): PointNm[] =>
        [...new Map(Array.from({ length: dice.roll(7) }, () => at(dice.roll(12), dice.roll(4))).map((hole) => [`${hole.xNm} ${hole.yNm}`, hole])).values()]; // prettier-ignore
      const [first, second] = [crowd(), crowd()];
      const tolerance = dice.roll(5);
      const found = pairHoles(first, second, tolerance * mm);
      expect(found.pairs.length, `seed ${seed}`).toBe(mostByTrial(first, second, tolerance));
      expect(found.alone.map((each) => each.length)).toEqual([
        first.length - found.pairs.length,
        second.length - found.pairs.length,
      ]);
      const used = found.pairs.flatMap(([one, other]) => [
        `A ${one.xNm} ${one.yNm}`,
        `B ${other.xNm} ${other.yNm}`,
      ]);
      expect(new Set(used).size, `seed ${seed}`).toBe(used.length);
      if (found.pairs.some(([one, other]) => one.xNm !== other.xNm || one.yNm !== other.yNm))
        beyondNearest += 1;
    }
    expect(beyondNearest).toBeGreaterThan(100);
  });
});
