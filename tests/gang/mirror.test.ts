// The other hand of a gang. That a mirror image is no twin is common practice, no source.
import { describe, expect, test } from 'vitest';
import type { Component } from '../../core/catalogue/component.ts';
import { type PanelSystem, panelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import { isSymmetrical, likeness } from '../../core/gang/hand-of.ts';
import { mirrorDesign, mirrorFindings } from '../../core/gang/mirror.ts';
import { placeDesign } from '../../core/gang/placed.ts';
import { takeOff } from '../../core/gang/take-off.ts';
import { tieHoles } from '../../core/gang/ties.ts';
import type { Answer } from '../../core/answer.ts';
import { Dice, randomDesign, randomSystem } from './random-designs.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_302);

function value<T>(answered: Answer<T>): T {
  if (!answered.ok) throw new Error(answered.error.message);
  return answered.value;
}

const panel = (
  code: string,
  widthNm: number,
  heightNm: number,
  tieHolesNm: [number, number][],
): Component => ({
  code,
  name: code,
  kind: 'panel',
  weightGrams: 10,
  widthNm,
  heightNm,
  tieHolesNm,
});

// Small whole numbers stand for nanometres here: 30 and 20 wide, 80 high.
const system = value(
  panelSystem(
    [
      panel('A', 30, 80, [
        [15, 20],
        [15, 60],
      ]),
      panel('B', 20, 80, [[10, 30]]),
      panel('U', 30, 80, [[5, 40]]),
    ],
    {},
  ),
);

const design = (
  panels: readonly (readonly [string, number, number, boolean?])[],
  more: Partial<DesignGeometry> = {},
): DesignGeometry => ({
  panels: panels.map(([code, xNm, yNm, onSide = false]) => ({ panel: code, xNm, yNm, onSide })),
  fillers: [],
  edges: { left: 'open', right: 'open' },
  equalised: false,
  ...more,
});

const gang = (drawn: DesignGeometry, of: PanelSystem = system) => value(placeDesign(of, drawn));

describe('The mirror image', () => {
  test('has panels and fillers counted from the other end, edges changed, and stays where the gang was', () => {
    const drawn = design(
      [
        ['A', 100, 0],
        ['B', 134, 0],
        ['B', 100, 80, true],
      ],
      {
        fillers: [{ xNm: 130, yNm: 0, widthNm: 4, heightNm: 80 }],
        edges: { left: 'inside-corner', right: 'next-gang' },
      },
    );
    // The gang reaches from 100 to 180: the panel on its side is 80 long.
    expect(value(mirrorDesign(system, drawn))).toEqual({
      ...drawn,
      panels: [
        { panel: 'A', xNm: 150, yNm: 0, onSide: false },
        { panel: 'B', xNm: 126, yNm: 0, onSide: false },
        { panel: 'B', xNm: 100, yNm: 80, onSide: true },
      ],
      fillers: [{ xNm: 146, yNm: 0, widthNm: 4, heightNm: 80 }],
      edges: { left: 'next-gang', right: 'inside-corner' },
    });
  });

  test('of a panel with uneven tie holes has them in another place: found, where the panel stands', () => {
    const found = mirrorFindings(
      gang(
        design([
          ['A', 0, 0],
          ['U', 30, 0],
        ]),
      ),
    );
    expect(found.map(({ rule, severity, where }) => [rule, severity, where])).toEqual([
      ['mirror', 'caution', { xNm: 30, yNm: 0 }],
    ]);
    expect(found[0]?.message).toContain('Panel U');
    // On its side a hole at height h lies at 80 - h: U's lies in the middle and B's does not.
    expect(mirrorFindings(gang(design([['U', 0, 0, true]])))).toEqual([]);
    expect(mirrorFindings(gang(design([['B', 0, 0, true]])))).toHaveLength(1);
  });

  test('of an unknown panel is refused by its name', () => {
    expect(mirrorDesign(system, design([['X', 0, 0]]))).toMatchObject({
      ok: false,
      error: { code: 'panel-unknown' },
    });
  });
});

describe('Hands', () => {
  test('A B A is its own mirror image, A B is not; nor A B A with a corner at one end or a filler at one side', () => {
    const even = design([
      ['A', 0, 0],
      ['B', 30, 0],
      ['A', 50, 0],
    ]);
    expect(isSymmetrical(gang(even))).toBe(true);
    expect(
      isSymmetrical(
        gang(
          design([
            ['A', 0, 0],
            ['B', 30, 0],
          ]),
        ),
      ),
    ).toBe(false);
    expect(isSymmetrical(gang({ ...even, edges: { left: 'inside-corner', right: 'open' } }))).toBe(false);
    const fillers = [{ xNm: 80, yNm: 0, widthNm: 2, heightNm: 80 }];
    expect(isSymmetrical(gang({ ...even, fillers }))).toBe(false);
  });

  test('panels that look alike and whose tie holes are uneven make no symmetrical gang', () => {
    const two = design([
      ['U', 0, 0],
      ['U', 30, 0],
    ]);
    expect(isSymmetrical(gang(two))).toBe(false);
    // Nor is the mirrored design its true mirror image: the holes stay at the left of each panel.
    expect(likeness(gang(two), gang(value(mirrorDesign(system, two))))).toBe('same');
  });

  test('A B and B A are each other mirrored; in another order, drawn elsewhere, still the same', () => {
    const one = design([
      ['A', 0, 0],
      ['B', 30, 0],
    ]);
    expect(
      likeness(
        gang(one),
        gang(
          design([
            ['B', 500, 7],
            ['A', 520, 7],
          ]),
        ),
      ),
    ).toBe('mirrored');
    expect(
      likeness(
        gang(one),
        gang(
          design([
            ['B', 130, 9],
            ['A', 100, 9],
          ]),
        ),
      ),
    ).toBe('same');
    expect(
      likeness(
        gang(one),
        gang(
          design([
            ['A', 0, 0],
            ['B', 31, 0],
          ]),
        ),
      ),
    ).toBeNull();
    expect(
      likeness(
        gang(one),
        gang(
          design([
            ['U', 0, 0],
            ['B', 30, 0],
          ]),
        ),
      ),
    ).toBeNull();
    const edges = { left: 'stop-end', right: 'open' } as const;
    expect(likeness(gang(one), gang({ ...one, edges }))).toBeNull();
  });
});

test(`On 300 random designs from seed ${seed}: mirrored twice is the same, the mirror image is like it, and takes what needs no side`, () => {
  const dice = new Dice(seed);
  let uneven = 0;
  let handed = 0;
  for (let round = 0; round < 300; round++) {
    const random = randomSystem(dice);
    // Rails are laid from the left, and belong to the panels at their right: which panels they cross, and so
    // their bolts, may differ in the mirror image. Hooks hang on cross members of panels on their side, and those
    // are moved, not mirrored.
    const { rails: _rails, hooks: _hooks, ...rules } = random.rules;
    const of = { ...random, rules };
    const drawn = randomDesign(dice, of);
    const mirrored = value(mirrorDesign(of, drawn));
    expect(value(mirrorDesign(of, mirrored))).toEqual(drawn);
    const [one, other] = [gang(drawn, of), gang(mirrored, of)];
    const [taken, again] = [value(takeOff(of, drawn)), value(takeOff(of, mirrored))];
    const quantities = (lines: typeof taken.lines) => lines.map((line) => [line.component, line.quantity]);
    expect(quantities(again.lines)).toEqual(quantities(taken.lines));
    expect([again.weightGrams, again.areaNm2, again.widthNm]).toEqual([
      taken.weightGrams,
      taken.areaNm2,
      taken.widthNm,
    ]);
    const rulesOf = (findings: typeof taken.findings) => findings.map((each) => each.rule).sort();
    expect(rulesOf(again.findings)).toEqual(rulesOf(taken.findings));
    if (mirrorFindings(one).length > 0) {
      uneven += 1;
      continue;
    }
    // Without uneven holes the moved panels are the true image, holes and all.
    const { leftNm, rightNm } = one.extent;
    const image = tieHoles(one).map(({ xNm, yNm }) => `${leftNm + rightNm - xNm} ${yNm}`);
    expect(
      tieHoles(other)
        .map(({ xNm, yNm }) => `${xNm} ${yNm}`)
        .sort(),
    ).toEqual(image.sort());
    const symmetrical = isSymmetrical(one);
    if (!symmetrical) handed += 1;
    expect(likeness(one, other)).toBe(symmetrical ? 'same' : 'mirrored');
  }
  expect(uneven).toBeGreaterThan(20);
  expect(handed).toBeGreaterThan(20);
});
