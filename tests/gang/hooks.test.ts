// Lifting hooks: how many, where, and what each carries. Capacities are invented; the statics are the lever rule.
import { describe, expect, test } from 'vitest';
import { pairOfPlaces, placesByMean } from '../../core/gang/hook-places.ts';
import { Dice } from './random-designs.ts';
import { designOf, panel, quantities, stops, systemWith, taken } from './common-practice.ts';

const foot = 304_800_000;
const only = {
  rails: null,
  locks: null,
  fillerLocks: null,
  brackets: null,
  braces: null,
  onSide: null,
  ties: null,
};
const hook = { component: 'HK', capacityKg: 500, ratedFor: 'gang-weight', minimum: 2 } as const;

/** A row of panels 3 ft wide with these weights. */
function row(hooks: object, ...weights: readonly number[]): ReturnType<typeof taken> {
  const panels = weights.map((weight, index) => panel(`P${index}`, '3 ft', '9 ft', weight));
  const system = systemWith({ ...only, hooks: { ...hook, ...hooks } }, panels);
  return taken(system, designOf(weights.map((_, index) => [`P${index}`, `${index * 3} ft`, 0] as const)));
}

const at30 = (weight: number): unknown =>
  quantities(row({ ratedFor: 'sling-tension', minimumAngleDeg: 30 }, weight, 125, 125, 125))['HK'];

const at60 = (weight: number): unknown =>
  quantities(row({ ratedFor: 'sling-tension', minimumAngleDeg: 60 }, weight, 200, 200, 200))['HK'];

describe('how many hooks', () => {
  test('1000 kg on hooks of 500 kg of gang weight take two, 1000.001 kg three', () => {
    expect(quantities(row({}, 250, 250, 250, 250))['HK']).toBe(2);
    expect(quantities(row({}, 250, 250, 250, 250.001))['HK']).toBe(3);
    expect(stops(row({}, 250, 250, 250, 250.001))).toContain('hooks.equalised');
  });

  test('rated by the pull along the sling at 30 degrees, two hooks of 500 kg lift 500 kg exactly', () => {
    expect(at30(125)).toBe(2);
    expect(at30(125.001)).toBe(3);
  });

  test('at 60 degrees two hooks of 500 kg lift 866.025 kg and not 866.026 kg', () => {
    expect(at60(266.025)).toBe(2);
    expect(at60(266.026)).toBe(3);
  });

  test('each piece is rounded to the gram, halves up, before it is multiplied', () => {
    // 4 x 250.0005 kg are 4 x 250 001 g, over 1 000 000 g
    expect(quantities(row({}, 250.0005, 250.0005, 250.0005, 250.0005))['HK']).toBe(3);
    expect(quantities(row({}, 250.0004, 250.0004, 250.0004, 250.0004))['HK']).toBe(2);
  });

  test('hooks do not weigh on themselves', () => {
    const found = row({}, 250, 250, 250, 250);
    expect(found.weightGrams).toBe(1_000_000);
    expect(found.lines.find((line) => line.component === 'HK')?.weightGrams).toBe(20_000);
  });
});

describe('where hooks stand', () => {
  test('on the joints at 3 ft and 9 ft of four equal panels, half the length apart, half the weight each', () => {
    const found = row({}, 200, 200, 200, 200);
    expect(found.hooks).toEqual([
      { xNm: 3 * foot, yNm: 9 * foot, loadGrams: 400_000, loadKg: 400 },
      { xNm: 9 * foot, yNm: 9 * foot, loadGrams: 400_000, loadKg: 400 },
    ]);
    expect(stops(found)).toEqual([]);
  });

  test('loads follow the lever arms about the centre of gravity', () => {
    // 100, 100 and 400 kg: centre at (150 + 450 + 3000) / 600 = 6 ft; the joints at 3 and 6 ft share 0 and 600 kg
    const found = row({ capacityKg: 700 }, 100, 100, 400);
    expect(found.centreOfGravity.xNm).toBe(6 * foot);
    expect(found.hooks.map(({ loadKg }) => loadKg)).toEqual([0, 600]);
  });

  test('a hook that carries more than it may is a stop at its place, though two would do for the weight', () => {
    const found = row({ capacityKg: 400 }, 100, 100, 400);
    expect(quantities(found)['HK']).toBe(2);
    expect(found.findings).toContainEqual(
      expect.objectContaining({
        rule: 'hooks.load',
        severity: 'stop',
        where: { xNm: 6 * foot, yNm: 9 * foot },
      }),
    );
  });

  test('two places on one side of the centre of gravity are a stop: no load may be negative', () => {
    const found = row({ capacityKg: 9000 }, 100, 100, 4000);
    expect(stops(found)).toContain('hooks.places');
    expect(found.hooks).toEqual([]);
  });

  test('fewer places than hooks: the count stays and a stop says how many are missing', () => {
    const found = row({}, 200, 200);
    expect(quantities(found)['HK']).toBe(2);
    expect(found.hooks).toEqual([]);
    expect(found.findings.find(({ rule }) => rule === 'hooks.places')?.message).toContain('1 missing');
  });

  test('joints that end below the top are no places', () => {
    const system = systemWith({ ...only, hooks: hook });
    const found = taken(
      system,
      designOf([
        ['P3x9', 0, 0],
        ['P3x9', '3 ft', 0],
        ['P3x4', '6 ft', 0],
      ]),
    );
    expect(found.findings.find(({ rule }) => rule === 'hooks.places')?.message).toContain('1 place is there');
  });

  test('on its side, a cross member 1 ft up a 9 ft panel stands 8 ft from the left', () => {
    const crossMembers = ['1 ft', '8 ft'];
    const system = systemWith({ ...only, hooks: hook }, [panel('P', '3 ft', '9 ft', 100, { crossMembers })]);
    const found = taken(system, designOf([['P', '2 ft', 0, 'side']]));
    expect(found.hooks.map(({ xNm, loadKg }) => [xNm / foot, loadKg])).toEqual([
      [3, 50],
      [10, 50],
    ]);
    expect(taken(system, designOf([['P', '2 ft', 0]])).hooks).toEqual([]);
  });

  test('three hooks carry equal loads about a mean at the centre of gravity', () => {
    const found = row({}, 300, 300, 300, 300);
    expect(found.hooks.map(({ xNm, loadKg }) => [xNm / foot, loadKg])).toEqual([
      [3, 400],
      [6, 400],
      [9, 400],
    ]);
  });
});

describe('the choice of places, against trying every set', () => {
  const seed = 4417;
  test(`two places of 300 random rows (seed ${seed}): least difference, nearest half, leftmost`, () => {
    let chosen = 0;
    for (let number = 0; number < 300; number++) {
      const dice = new Dice(seed + number);
      const places = [...new Set(Array.from({ length: 2 + dice.roll(7) }, () => dice.roll(40)))].sort(
        (a, b) => a - b,
      );
      const centre = 5 + dice.roll(60) / 2;
      const best = places
        .flatMap((one) => places.filter((other) => other > one).map((other) => [one, other] as const))
        .filter(([one, other]) => one <= centre && centre <= other)
        .map(([one, other]) => ({
          pair: [one, other],
          // a common multiple of all distances up to 40 keeps the quotient whole
          key: [
            (Math.abs(one + other - 2 * centre) * 5_342_931_457_063_200) / (other - one),
            Math.abs(other - one - 20),
            one,
          ],
        }))
        .toSorted(
          (a, b) => a.key.map((part, at) => part - (b.key[at] ?? 0)).find((part) => part !== 0) ?? 0,
        )[0];
      const found = pairOfPlaces(places, { over: BigInt(centre * 2), under: 2n }, 40);
      expect(found, `seed ${seed + number}`).toEqual(best?.pair);
      if (found !== undefined) chosen += 1;
    }
    expect(chosen).toBeGreaterThan(100);
  });

  test(`more places of 200 random rows (seed ${seed}): the mean is as near as any set's`, () => {
    for (let number = 0; number < 200; number++) {
      const dice = new Dice(seed + number);
      const places = [...new Set(Array.from({ length: 6 + dice.roll(6) }, () => dice.roll(400)))].sort(
        (a, b) => a - b,
      );
      const count = 1 + dice.roll(Math.min(5, places.length));
      const [over, under] = [1000 + dice.roll(3000), 11];
      let sets: number[][] = [[]];
      for (const place of places) sets = [...sets, ...sets.map((set) => [...set, place])];
      const off = (set: readonly number[]): number =>
        Math.abs(set.reduce((sum, place) => sum + place, 0) * under - count * over);
      const least = Math.min(...sets.filter((set) => set.length === count).map(off));
      const found = placesByMean(places, count, { over: BigInt(over), under: BigInt(under) });
      expect(found, `seed ${seed + number}`).toHaveLength(count);
      expect(off(found), `seed ${seed + number}`).toBe(least);
    }
  });
});
