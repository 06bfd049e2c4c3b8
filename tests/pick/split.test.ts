// The split that is offered, against every split there is: on small random gangs all sets of lines are tried, and
// each part is looked at by itself. What one part comes to is held elsewhere; here it is the search.
import { describe, expect, test } from 'vitest';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { checkPick } from '../../core/pick/pick-check.ts';
import type { Crane, PickSetup } from '../../core/pick/setup.ts';
import { findSplit } from '../../core/pick/split.ts';
import { designOf, systemWith } from '../gang/common-practice.ts';
import { Dice } from '../gang/random-designs.ts';
import { aCrane, aSetup, foot } from './a-pick.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 4417);
const system = systemWith();
const sizes = new Map(system.panels.map((panel) => [panel.code, panel] as const));

interface Box {
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  readonly filler: boolean;
}

function boxes({ panels, fillers }: DesignGeometry): readonly Box[] {
  return [
    ...panels.map(({ panel, xNm, yNm, onSide }): Box => {
      const { widthNm = 0, heightNm = 0 } = sizes.get(panel) ?? {};
      const [across, up] = onSide ? [heightNm, widthNm] : [widthNm, heightNm];
      return { low: [xNm, yNm], high: [xNm + across, yNm + up], filler: false };
    }),
    ...fillers.map(({ xNm, yNm, widthNm, heightNm }): Box => ({
      low: [xNm, yNm],
      high: [xNm + widthNm, yNm + heightNm],
      filler: true,
    })),
  ];
}

/** Lines across the whole gang along axis 0 (upright) or 1 (level). */
function linesOf(geometry: DesignGeometry, axis: 0 | 1): readonly number[] {
  const all = boxes(geometry);
  const other = axis === 0 ? 1 : 0;
  const edges = [
    ...new Set(all.filter((box) => !box.filler).flatMap((box) => [box.low[axis], box.high[axis]])),
  ];
  const [first, last] = [
    Math.min(...all.map((box) => box.low[axis])),
    Math.max(...all.map((box) => box.high[axis])),
  ];
  return edges
    .filter((at) => at > first && at < last)
    .filter((at) => !all.some((box) => box.low[axis] < at && at < box.high[axis]))
    .filter(
      (at) =>
        !all.some((one) =>
          all.some(
            (two) =>
              one.high[axis] === at &&
              two.low[axis] === at &&
              one.filler !== two.filler &&
              one.low[other] < two.high[other] &&
              two.low[other] < one.high[other],
          ),
        ),
    )
    .sort((one, two) => one - two);
}

function cut(geometry: DesignGeometry, axis: 0 | 1, lines: readonly number[]): readonly DesignGeometry[] {
  const bounds = [-Infinity, ...lines, Infinity];
  return bounds.slice(1).map((to, index) => {
    const from = bounds[index] ?? -Infinity;
    const isHere = (at: { xNm: number; yNm: number }): boolean => {
      const place = axis === 0 ? at.xNm : at.yNm;
      return place >= from && place < to;
    };
    const { left, right } = geometry.edges;
    return {
      ...geometry,
      panels: geometry.panels.filter(isHere),
      fillers: geometry.fillers.filter(isHere),
      edges:
        axis === 1
          ? geometry.edges
          : { left: index === 0 ? left : 'next-gang', right: to === Infinity ? right : 'next-gang' },
    };
  });
}

function subsets(lines: readonly number[]): readonly (readonly number[])[] {
  return lines.reduce<readonly (readonly number[])[]>(
    (all, line) => [...all, ...all.map((chosen) => [...chosen, line])],
    [[]],
  );
}

/** Every way to part a list of bands, each by all sets of its own upright lines. */
function waysOf(bands: readonly DesignGeometry[]): readonly (readonly DesignGeometry[])[] {
  return bands.reduce<readonly (readonly DesignGeometry[])[]>(
    (all, band) =>
      all.flatMap((before) => subsets(linesOf(band, 0)).map((lines) => [...before, ...cut(band, 0, lines)])),
    [[]],
  );
}

function bestOfAll(
  of: PanelSystem,
  geometry: DesignGeometry,
  setup: PickSetup,
  crane: Crane,
  isTooHigh: boolean,
): readonly [parts: number, heaviest: number] | undefined {
  const known = new Map<string, number>();
  const heaviness = (part: DesignGeometry): number => {
    const key = JSON.stringify([part.panels, part.fillers, part.edges]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const check = checkPick(of, part, setup, crane);
    const value = check.ok && check.value.verdict !== 'refused' ? check.value.onCraneGrams : Infinity;
    known.set(key, value);
    return value;
  };
  let best: readonly [number, number] | undefined;
  const levels = isTooHigh ? subsets(linesOf(geometry, 1)) : [[]];
  for (const level of levels)
    for (const parts of waysOf(cut(geometry, 1, level))) {
      const heaviest = Math.max(...parts.map(heaviness));
      if (heaviest === Infinity) continue;
      if (best === undefined || parts.length < best[0] || (parts.length === best[0] && heaviest < best[1]))
        best = [parts.length, heaviest];
    }
  return best;
}

/** One to three rows, of panels whose widths differ from row to row, so that not every joint runs through. */
function randomGang(dice: Dice): DesignGeometry {
  const rows = [
    ['P3x9', 'P2x9'],
    ['P3x6', 'P2x6'],
    ['P3x6', 'P2x6'],
  ].slice(0, 1 + dice.roll(3));
  const same = dice.chance(50);
  const widths = Array.from({ length: 2 + dice.roll(5) }, () => dice.roll(2));
  const panels: (readonly [string, number, number])[] = [];
  const fillers: { x: number; y: number; width: number; height: number }[] = [];
  const isFilled = dice.chance(30);
  let y = 0;
  for (const [index, names] of rows.entries()) {
    let x = 0;
    const height = index === 0 ? 9 : 6;
    for (const [place, chosen] of (same
      ? widths
      : dice.chance(50)
        ? widths.toReversed()
        : widths
    ).entries()) {
      panels.push([names[chosen] ?? '', x, y]);
      x += (chosen === 0 ? 3 : 2) * 304.8;
      if (!isFilled || place !== 1) continue;
      fillers.push({ x, y, width: 100, height: height * 304.8 });
      x += 100;
    }
    y += height * 304.8;
  }
  return designOf(panels, { fillers });
}

describe('the split offered', () => {
  test('is the best of all sets of joint lines on 120 random gangs', { timeout: 60_000 }, () => {
    const dice = new Dice(seed);
    const counts = { none: 0, found: 0, level: 0, three: 0 };
    for (let round = 0; round < 120; round++) {
      const geometry = randomGang(dice);
      const crane = aCrane({
        chart: [{ radiusNm: foot, capacityGrams: (250 + dice.roll(1500)) * 1000 }].flatMap((row) => [
          row,
          { ...row, radiusNm: 200 * foot },
        ]),
      });
      const setup = aSetup({ concreteLeftOn: dice.of([0, 0.05]) });
      const whole = checkPick(system, geometry, setup, crane);
      if (!whole.ok) throw new Error(whole.error.message);
      const isTooHigh = whole.value.takeOff.heightNm > 18 * foot;
      const split = findSplit(system, geometry, setup, crane);
      const best = bestOfAll(system, geometry, setup, crane, isTooHigh);
      const said = `seed ${seed}, round ${round}`;
      expect(split.kind, said).toBe(best === undefined ? 'none' : 'found');
      counts[split.kind === 'found' ? 'found' : 'none'] += 1;
      if (split.kind !== 'found' || best === undefined) continue;
      const heaviest = Math.max(...split.parts.map((part) => part.check.onCraneGrams));
      expect([split.parts.length, heaviest], said).toEqual(best);
      expect(split.extraPicks).toBe(split.parts.length - 1);
      const pieces = split.parts.flatMap((part) => part.geometry.panels);
      expect(pieces.length).toBe(geometry.panels.length);
      if (isTooHigh) counts.level += 1;
      if (split.parts.length > 2) counts.three += 1;
    }
    // a comparison of nothing would prove nothing
    for (const [what, count] of Object.entries(counts)) expect(count, what).toBeGreaterThan(2);
  });

  test('does not part a filler from one of its two panels', () => {
    // Six panels are too heavy; two have one joint and so one place for a hook: it is three and three or nothing.
    const chart = [foot, 200 * foot].map((radiusNm) => ({ radiusNm, capacityGrams: 700_000 }));
    const partsOf = (fillerMm: number): readonly number[] | string => {
      const places = [0, 1, 2, 3, 4, 5].map((index) => index * 914.4 + (index > 2 ? fillerMm : 0));
      const filler = { x: '9 ft', y: 0, width: fillerMm, height: '9 ft' };
      const geometry = designOf(
        places.map((x) => ['P3x9', x, 0] as const),
        { fillers: fillerMm === 0 ? [] : [filler] },
      );
      const split = findSplit(system, geometry, aSetup(), aCrane({ chart }));
      return split.kind === 'found' ? split.parts.map((part) => part.geometry.panels.length) : split.kind;
    };
    expect(partsOf(0)).toEqual([3, 3]);
    expect(partsOf(100)).toBe('none');
  });

  test('is none where the wind refuses every part', () => {
    const geometry = designOf([
      ['P3x9', 0, 0],
      ['P3x9', '3 ft', 0],
      ['P3x9', '6 ft', 0],
    ]);
    expect(findSplit(system, geometry, aSetup({ windMps: 9.1 }), aCrane()).kind).toBe('none');
  });
});
