// Walls as a whole: closed boxes and how they come off, corners by their length, gangs on paper before new ones, the
// greatest gang, laps and freeboard, and what is left to the designer (common practice, no source).
import { describe, expect, test } from 'vitest';
import { type PanelSystem, panelSystem } from '../../core/catalogue/system.ts';
import { fillWall } from '../../core/face/fill-wall.ts';
import { squareTurns } from '../../core/face/wall-check.ts';
import type { Turn, Wall, WallAnswer, WallTask } from '../../core/face/wall.ts';
import { inchNm, taskOf, wallSystem } from './random-walls.ts';

const feet = (count: number): number => count * 12 * inchNm;
const system = wallSystem([36, 30, 24, 18, 12], [96, 48]);

const straight: Wall = {
  legs: [{ lengthNm: feet(24) }],
  turns: [],
  closed: false,
  start: { kind: 'next-pour' },
  end: { kind: 'next-pour' },
  thicknessNm: 12 * inchNm,
  heightNm: 96 * inchNm,
  freeboardNm: 0,
};

function filledWith(wall: Wall, more: Partial<WallTask> = {}, of: PanelSystem = system): WallAnswer {
  const filled = fillWall(taskOf(of, wall, more), null);
  if (!filled.ok) throw new Error(filled.error.message);
  return filled.value;
}

function box(turn: Turn): Wall {
  const legs = [feet(20), feet(14), feet(20), feet(14)].map((lengthNm) => ({ lengthNm }));
  return { ...straight, legs, turns: [turn, turn, turn, turn], closed: true };
}

/** The system with its inside corners in another state, or without a kind. */
function changed(canShrink: boolean, without?: string): PanelSystem {
  const components = system.components
    .filter(({ kind }) => kind !== without)
    .map((item) => (item.kind === 'inside-corner' ? { ...item, canShrink } : item));
  const made = panelSystem(
    [...system.panels, ...components.filter(({ kind }) => kind !== 'panel')],
    system.rules,
  );
  if (!made.ok) throw new Error(made.error.message);
  return made.value;
}

function codeOf(wall: Wall): string {
  const filled = fillWall(taskOf(system, wall), null);
  return filled.ok ? 'filled' : filled.error.code;
}

describe('a closed box', () => {
  for (const [turn, inside] of [
    ['left', 'B'],
    ['right', 'A'],
  ] as const)
    // prettier-ignore
    test(`turning ${turn} has side ${inside} inside, two thicknesses shorter on every leg, with four corners a side`, () => {
      const [first] = filledWith(box(turn)).proposals;
      const legs = (side: 'A' | 'B'): readonly number[] =>
        [0, 1, 2, 3].map((leg) =>
          first!.gangs
            .filter((gang) => gang.side === side && gang.leg === leg)
            .reduce((sum, { widthNm }) => sum + widthNm, 0),
        );
      const outside = inside === 'A' ? 'B' : 'A';
      // measured on side A; the legs of the inside corners take 12 in at both ends
      const outer = turn === 'left' ? [240, 168, 240, 168] : [264, 192, 264, 192];
      expect(legs(outside)).toEqual(outer.map((inches) => inches * inchNm));
      expect(legs(inside)).toEqual(outer.map((inches) => (inches - 24 - 24) * inchNm));
      const corners = first!.loose.filter(({ purpose }) => purpose.endsWith('-corner'));
      const count = (side: string, component: string): number =>
        corners.filter((item) => item.side === side && item.component === component).length;
      expect([corners.length, count(inside, 'IC96'), count(outside, 'OC96')]).toEqual([8, 4, 4]);
      expect(first!.findings.map(({ rule }) => rule)).not.toContain('corners.no-way-to-shrink');
    });

  test('whose inside corners cannot be drawn in is a stop: it would not come off', () => {
    const { findings } = filledWith(box('left'), {}, changed(false)).proposals[0]!;
    expect(findings.filter(({ rule }) => rule === 'corners.no-way-to-shrink')).toMatchObject([
      { severity: 'stop', where: 'side B' },
    ]);
  });

  test('an open wall needs nothing that is drawn in', () => {
    const wall: Wall = {
      ...box('left'),
      legs: box('left').legs.slice(0, 3),
      turns: ['left', 'left'],
      closed: false,
    };
    const { findings } = filledWith(wall, {}, changed(false)).proposals[0]!;
    expect(findings.map(({ rule }) => rule)).not.toContain('corners.no-way-to-shrink');
  });

  test('without corner pieces in the catalogue says so at every corner', () => {
    const { findings } = filledWith(box('left'), {}, changed(true, 'outside-corner')).proposals[0]!;
    expect(findings.filter(({ rule }) => rule === 'corners.pieces').map(({ where }) => where)).toEqual([
      'corner 1',
      'corner 2',
      'corner 3',
      'corner 4',
    ]);
  });

  test('that does not come back to its start is refused, and a number of turns that does not fit', () => {
    const legs = box('left').legs;
    const open = [...legs.slice(0, 3), { lengthNm: feet(13) }];
    expect(codeOf({ ...box('left'), legs: open })).toBe('wall-not-closed');
    expect(codeOf({ ...box('left'), turns: ['left', 'left', 'left', 'right'] })).toBe('wall-not-closed');
    expect(codeOf({ ...box('left'), turns: ['left', 'left', 'left'] })).toBe('turns-do-not-fit');
    expect(codeOf({ ...box('left'), closed: false })).toBe('turns-do-not-fit');
    expect(codeOf({ ...box('left'), legs: [feet(20), feet(2), feet(20), feet(2)].map((lengthNm) => ({ lengthNm })) })).toBe('leg-too-short'); // prettier-ignore
  });
});

describe('gangs on paper', () => {
  const known = filledWith({ ...straight, legs: [{ lengthNm: feet(8) }] }).proposals[0]!.designs[0]!;
  const designs = [{ code: 'K8', name: 'Eight feet', geometry: known.geometry }];

  test('come first, as often as they go, and a proposal of new ones stands beside', () => {
    const { proposals } = filledWith(straight, { designs });
    expect(proposals.map(({ order, score }) => [order, score[0]])).toEqual([
      ['first', 0],
      ['new-gangs', 2 * feet(24)],
    ]);
    const [first, fresh] = proposals;
    expect(first?.gangs.map(({ design, fromNm }) => `${design} ${fromNm / feet(1)}`)).toEqual([
      'K8 0', 'K8 8', 'K8 16', 'K8 0', 'K8 8', 'K8 16',
    ]); // prettier-ignore
    expect(first?.designs.map(({ isNew }) => isNew)).toEqual([false]);
    expect(fresh?.designs.every(({ isNew, code }) => isNew && code !== 'K8')).toBe(true);
  });

  test('that are not as high as the form do not stand in it', () => {
    const { proposals } = filledWith({ ...straight, heightNm: 140 * inchNm }, { designs });
    expect(proposals[0]?.score[0]).toBe(2 * feet(24));
  });
});

describe('the greatest gang', () => {
  test('in length and weight: every gang keeps within, and they are even', () => {
    const { gangs, findings } = filledWith(straight, { limits: { lengthNm: feet(9) } }).proposals[0]!;
    expect(gangs.map(({ side, widthNm }) => `${side} ${widthNm / feet(1)}`)).toEqual([
      'A 9', 'A 9', 'A 6', 'B 9', 'B 9', 'B 6',
    ]); // prettier-ignore
    expect(findings).toEqual([]);
    const whole = filledWith(straight).proposals[0]!.designs[0]!.weightGrams;
    const light = filledWith(straight, { limits: { weightGrams: whole / 2 } }).proposals[0]!;
    expect(light.gangs).toHaveLength(4);
    expect(light.designs.every(({ weightGrams }) => weightGrams <= whole / 2)).toBe(true);
  });

  test('in height: gangs stand over each other and the upper one begins where the lower one ends', () => {
    const wall = { ...straight, heightNm: 140 * inchNm };
    const { gangs, designs } = filledWith(wall, { limits: { heightNm: 100 * inchNm } }).proposals[0]!;
    expect([...new Set(gangs.map(({ bottomNm }) => bottomNm / inchNm))]).toEqual([0, 96]);
    expect(designs.map(({ heightNm }) => heightNm / inchNm).toSorted((p, q) => p - q)).toEqual([48, 96]);
  });

  test('that even one panel passes is a stop at its place', () => {
    const { findings } = filledWith(straight, { limits: { weightGrams: 1000 } }).proposals[0]!;
    const passed = findings.filter(({ rule }) => rule === 'gang-limits');
    expect(passed.length).toBeGreaterThan(0);
    expect(passed.every(({ severity }) => severity === 'stop')).toBe(true);
    expect(passed[0]?.where).toMatch(/^side A, leg 1, .* along$/);
  });
});

describe('more form than pour', () => {
  test('laps on old concrete lengthen the form beyond the pour at either end', () => {
    const wall: Wall = {
      ...straight,
      start: { kind: 'old-concrete', lapNm: 6 * inchNm },
      end: { kind: 'old-concrete', lapNm: 12 * inchNm },
    };
    const [first] = filledWith(wall, { maximumFillerNm: 6 * inchNm }).proposals;
    for (const side of ['A', 'B']) {
      const gangs = first!.gangs.filter((gang) => gang.side === side);
      expect(Math.min(...gangs.map(({ fromNm }) => fromNm))).toBe(-6 * inchNm);
      expect(Math.max(...gangs.map(({ fromNm, widthNm }) => fromNm + widthNm))).toBe(feet(24) + 12 * inchNm);
    }
    expect(first?.loose.filter(({ purpose }) => purpose === 'stop-end')).toEqual([]);
  });

  test('freeboard decides the rows: 96 in of concrete take one row, with 6 in of freeboard two', () => {
    expect(filledWith(straight).proposals[0]?.rowsNm).toEqual([96 * inchNm]);
    expect(filledWith({ ...straight, freeboardNm: 6 * inchNm }).proposals[0]?.rowsNm).toEqual([
      96 * inchNm,
      48 * inchNm,
    ]);
  });

  test('an overhang at a free end is better than a filler, and a stop-end closes the form there', () => {
    const wall: Wall = {
      ...straight,
      legs: [{ lengthNm: feet(24) + 3 * inchNm }],
      end: { kind: 'free', overhangNm: 9 * inchNm },
    };
    const [first] = filledWith(wall).proposals;
    expect(first?.score.slice(1, 4)).toEqual([0, 0, 0]);
    expect(first?.loose.filter(({ purpose }) => purpose === 'stop-end')).toHaveLength(2);
    const { proposals } = filledWith({ ...wall, end: { kind: 'free', overhangNm: 2 * inchNm } });
    expect(proposals[0]?.score[3]).toBe(6 * inchNm);
  });
});

test('What is out of scope is named and left to the designer', () => {
  for (const [scope, words] of [
    ['single-sided', 'one side only'],
    ['battered', 'battered'],
    ['curved', 'curved'],
  ] as const)
    expect(squareTurns([], [scope])).toMatchObject({
      ok: false,
      error: { code: 'ask-the-designer', message: expect.stringContaining(words) },
    });
  const sharp = squareTurns(['left', { turn: 'left', angleDeg: 60 }], []);
  expect(sharp).toMatchObject({
    ok: false,
    error: { code: 'ask-the-designer', message: expect.stringContaining('60 degrees') },
  });
  expect(squareTurns(['left', { turn: 'right', angleDeg: 90 }], [])).toEqual({
    ok: true,
    value: ['left', 'right'],
  });
});
