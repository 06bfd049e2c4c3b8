// The take-off of 500 random designs held against counts made another way (cells instead of edges): every joint with
// its place, length and locks; rails by code and their bolts; weights, holes and reasons.
import { describe, expect, test } from 'vitest';
import { taken } from './common-practice.ts';
import { boxesOf, type CountedJoint, countGaps, countJoints } from './counted-by-cells.ts';
import { countRails } from './rails-by-cells.ts';
import { Dice, randomDesign, randomSystem } from './random-designs.ts';

const designs = 500;
const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_302);

function* cases(): Generator<{
  name: string;
  system: ReturnType<typeof randomSystem>;
  design: ReturnType<typeof randomDesign>;
}> {
  for (let number = 0; number < designs; number++) {
    const dice = new Dice(seed + number);
    const system = randomSystem(dice);
    yield { name: `seed ${seed + number}`, system, design: randomDesign(dice, system) };
  }
}

function sorted(joints: readonly CountedJoint[]): readonly string[] {
  return joints
    .map(({ kind, xNm, yNm, lengthNm, locks }) => `${kind} at ${xNm}, ${yNm}: ${lengthNm} takes ${locks}`)
    .toSorted();
}

describe(`500 random designs from seed ${seed}`, () => {
  test('every joint has the place, length and locks that a count by cells gives', () => {
    const seen = { vertical: 0, horizontal: 0, filler: 0, locked: 0, onSide: 0 };
    const having = { mixedRows: 0, onSide: 0, fillers: 0, ragged: 0, all: 0 };
    for (const { name, system, design } of cases()) {
      const found = taken(system, design);
      const counted = countJoints(system, design);
      const kinds = kindsOf(system, design);
      for (const kind of ['mixedRows', 'onSide', 'fillers', 'ragged'] as const)
        having[kind] += kinds[kind] ? 1 : 0;
      having.all += Object.values(kinds).every(Boolean) ? 1 : 0;
      expect(sorted(found.joints), name).toEqual(sorted(counted.joints));
      const quantity = (code: string): number =>
        found.lines.find((line) => line.component === code)?.quantity ?? 0;
      const locksOf = (filler: boolean): number =>
        counted.joints
          .filter(({ kind }) => (kind === 'filler') === filler)
          .reduce((sum, joint) => sum + joint.locks, 0);
      expect(quantity('lock'), name).toBe(locksOf(false) + counted.edgeLocks);
      expect(quantity('adjustable-lock'), name).toBe(locksOf(true));
      for (const joint of counted.joints) seen[joint.kind] += 1;
      seen.locked += locksOf(true);
      seen.onSide += design.panels.filter((placed) => placed.onSide).length;
    }
    // a test that met none of them would prove nothing
    for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(100);
    // of 500 designs, how many have each of the four, and how many all of them at once
    for (const [what, count] of Object.entries(having)) expect(count, what).toBeGreaterThan(100);
  });

  test('every gap has the place that a walk over empty cells gives, and there is no other', () => {
    let gaps = 0;
    for (const { name, system, design } of cases()) {
      const found = taken(system, design).findings.filter(({ rule }) => rule === 'gap');
      const places = found.map(({ where }) => (typeof where === 'object' ? `${where.xNm} ${where.yNm}` : ''));
      expect(places.toSorted(), name).toEqual(countGaps(system, design).toSorted());
      gaps += found.length;
    }
    expect(gaps).toBeGreaterThan(50);
  });

  test('rails by code, and their bolts, are those of a walk along every line', () => {
    const seen = { rails: 0, bolts: 0, full: 0, level: 0 };
    for (const { name, system, design } of cases()) {
      const found = taken(system, design);
      const counted = countRails(system, design);
      const rails: Record<string, number> = {};
      for (const rail of found.rails) rails[rail.component] = (rails[rail.component] ?? 0) + 1;
      expect(rails, name).toEqual(counted.byCode);
      const bolts = found.lines.find((line) => line.component === 'rail-bolt')?.quantity ?? 0;
      expect(bolts, name).toBe(counted.bolts);
      expect(
        found.rails.reduce((sum, rail) => sum + rail.bolts, 0),
        name,
      ).toBe(bolts);
      seen.rails += found.rails.length;
      seen.bolts += bolts;
      if (system.rules.rails?.cover === 'full-length') seen.full += found.rails.length;
      if (system.rules.rails?.across === 'vertical-joints') seen.level += found.rails.length;
    }
    for (const [what, count] of Object.entries(seen)) expect(count, what).toBeGreaterThan(100);
  });

  test('a joint of the kind named that no line passes has a note at its place, and no other has', () => {
    let notes = 0;
    for (const { name, system, design } of cases()) {
      const found = taken(system, design);
      const rows = found.findings.filter(({ rule }) => rule === 'rails.uncrossed');
      if (found.findings.some(({ rule }) => rule === 'rails.lengths')) continue;
      const { passed } = countRails(system, design);
      const { panels } = boxesOf(system, design);
      const level = system.rules.rails?.across === 'horizontal-joints';
      const missed: string[] = [];
      for (const [at, one] of panels.entries()) {
        for (const [beside, other] of panels.entries()) {
          const touches = level
            ? one.y + one.h === other.y && one.x < other.x + other.w && other.x < one.x + one.w
            : one.x + one.w === other.x && one.y < other.y + other.h && other.y < one.y + one.h;
          if (!touches || passed.has(`panel ${at} panel ${beside}`)) continue;
          missed.push(
            level ? `${Math.max(one.x, other.x)} ${other.y}` : `${other.x} ${Math.max(one.y, other.y)}`,
          );
        }
      }
      const noted = rows.map(({ where }) => (typeof where === 'object' ? `${where.xNm} ${where.yNm}` : ''));
      expect(noted.toSorted(), name).toEqual(missed.toSorted());
      notes += rows.length;
    }
    expect(notes).toBeGreaterThan(20);
  });

  test('every line is the sum of its reasons, and the weight that of all lines but the hooks', () => {
    let lines = 0;
    for (const { name, system, design } of cases()) {
      const found = taken(system, design);
      const piece = new Map(
        [...system.panels, ...system.components].map((item) => [item.code, item.weightGrams]),
      );
      let grams = 0;
      for (const line of found.lines) {
        expect(line.quantity, name).toBeGreaterThan(0);
        expect(
          line.because.reduce((sum, reason) => sum + reason.count, 0),
          name,
        ).toBe(line.quantity);
        if (line.component !== 'hook') grams += (piece.get(line.component) ?? 0) * line.quantity;
      }
      expect(found.weightGrams, name).toBe(grams);
      const hooks = found.lines.find((line) => line.component === 'hook')?.quantity ?? 0;
      const table = system.rules.hooks;
      expect(hooks, name).toBe(Math.max(table?.minimum ?? 0, Math.ceil(grams / (table?.capacityGrams ?? 1))));
      if (found.hooks.length > 0) {
        expect(
          found.hooks.reduce((sum, hook) => sum + hook.loadKg, 0),
          name,
        ).toBeCloseTo(grams / 1000, 6);
        for (const hook of found.hooks) expect(hook.loadKg, name).toBeGreaterThanOrEqual(0);
      }
      lines += found.lines.length;
    }
    expect(lines).toBeGreaterThan(designs);
  });

  test('panels that do not overlap are never found to, and one put on another always is', () => {
    let moved = 0;
    for (const { name, system, design } of cases()) {
      expect(
        taken(system, design).findings.map(({ rule }) => rule),
        name,
      ).not.toContain('overlap');
      const [first] = design.panels;
      if (first === undefined) continue;
      const doubled = { ...design, panels: [...design.panels, { ...first, xNm: first.xNm + 1 }] };
      expect(
        taken(system, doubled).findings.map(({ rule }) => rule),
        name,
      ).toContain('overlap');
      moved += 1;
    }
    expect(moved).toBe(designs);
  });
});

/** Panels of different heights beside or over each other, on their side, fillers, and joints shorter than both edges. */
function kindsOf(
  system: ReturnType<typeof randomSystem>,
  design: ReturnType<typeof randomDesign>,
): { mixedRows: boolean; onSide: boolean; fillers: boolean; ragged: boolean } {
  const { panels } = boxesOf(system, design);
  const ragged = panels.some((one) =>
    panels.some((other) => {
      const shared = Math.min(one.y + one.h, other.y + other.h) - Math.max(one.y, other.y);
      return one.x + one.w === other.x && shared > 0 && shared < one.h && shared < other.h;
    }),
  );
  const level = panels.some((one) =>
    panels.some((other) => {
      const shared = Math.min(one.x + one.w, other.x + other.w) - Math.max(one.x, other.x);
      return one.y + one.h === other.y && shared > 0 && shared < one.w && shared < other.w;
    }),
  );
  return {
    mixedRows: new Set(panels.map(({ y }) => y)).size > 1 && new Set(panels.map(({ h }) => h)).size > 1,
    onSide: design.panels.some((placed) => placed.onSide),
    fillers: design.fillers.length > 0,
    ragged: ragged || level,
  };
}
