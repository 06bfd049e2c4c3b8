// Small straight walls against every arrangement of both sides, one after the other: where a proposal says that there is
// none better, there is none.
import process from 'node:process';
import { expect, test } from 'vitest';
import type { Panel } from '../../core/catalogue/component.ts';
import { panelSystem } from '../../core/catalogue/system.ts';
import { fillWall } from '../../core/face/fill-wall.ts';
import type { Wall, WallEnd } from '../../core/face/wall.ts';
import { wholeSolver } from '../../core/procedures/solve-whole.ts';
import { Dice } from '../gang/random-designs.ts';
import { leastOfAll, type SmallWall } from './every-arrangement.ts';
import { inchNm, taskOf } from './random-walls.ts';

const seed = Number(process.env['REGANG_TEST_SEED'] ?? 20_260_329);
const solve = await wholeSolver();

/** Holes in from both edges, or anywhere in quarters of an inch, or none. */
function panelOf(dice: Dice, width: number): Panel {
  const edge = dice.of([2, 2, 2.25, 3]);
  const along = dice.chance(70)
    ? [edge, width - edge]
    : Array.from({ length: dice.roll(3) }, () => dice.roll(width * 4 + 1) / 4);
  return {
    code: `P${width}`,
    name: `Panel ${width} in`,
    kind: 'panel',
    weightGrams: 1000 * width,
    widthNm: width * inchNm,
    heightNm: 96 * inchNm,
    tieHolesNm: [12, 84].flatMap((y) => along.map((x): [number, number] => [x * inchNm, y * inchNm])),
  };
}

function randomCase(dice: Dice): SmallWall {
  const all = [36, 30, 24, 20, 18, 15];
  const widths = new Set<number>();
  const wanted = 2 + dice.roll(2);
  while (widths.size < wanted) widths.add(dice.of(all));
  const panels = [...widths].toSorted((p, q) => q - p).map((width) => panelOf(dice, width));
  const stock = Object.fromEntries(panels.map(({ code }) => [code, dice.roll(5)]));
  return {
    panels,
    lengthNm: (40 + dice.roll(45)) * inchNm,
    overhangNm: dice.of([0, 0, 2, 6, 12]) * inchNm,
    isTurned: dice.chance(30),
    maximumFillerNm: dice.of([0, 3, 6, 8]) * inchNm,
    toleranceNm: dice.of([0, 0.25]) * inchNm,
    stock: dice.chance(50) ? stock : null,
  };
}

function wallOf({ lengthNm, overhangNm, isTurned }: SmallWall): Wall {
  const free: WallEnd = { kind: 'free', overhangNm };
  const next: WallEnd = { kind: 'next-pour' };
  return {
    legs: [{ lengthNm }],
    turns: [],
    closed: false,
    start: isTurned ? free : next,
    end: isTurned ? next : free,
    thicknessNm: 12 * inchNm,
    heightNm: 96 * inchNm,
    freeboardNm: 0,
  };
}

test('What is proven of 250 small walls is the least of all their arrangements', () => {
  const dice = new Dice(seed);
  const seen = { proven: 0, short: 0, alone: 0, filler: 0, overhang: 0 };
  for (let number = 0; number < 250; number += 1) {
    const small = randomCase(dice);
    const system = panelSystem(small.panels, {});
    if (!system.ok) throw new Error(system.error.message);
    const { stock, maximumFillerNm, toleranceNm: tieToleranceNm } = small;
    const task = taskOf(system.value, wallOf(small), { stock, maximumFillerNm, tieToleranceNm });
    const filled = fillWall(task, solve);
    if (!filled.ok) throw new Error(filled.error.message);
    const least = leastOfAll(small);
    const [first] = filled.value.proposals;
    const what = `seed ${seed}, wall ${number}: ${JSON.stringify(small)}`;
    expect(first === undefined, what).toBe(least.score === undefined);
    if (first === undefined || least.score === undefined) continue;
    const [newFaceNm, ...score] = first.score;
    expect(newFaceNm, what).toBe(2 * small.lengthNm);
    // both sides of a straight wall may be alike, so its fillers can always face each other
    expect(least.facing, what).toBe(true);
    expect(
      first.findings.filter(({ rule }) => rule === 'fillers-facing'),
      what,
    ).toEqual([]);
    if (!first.proven) continue;
    expect(score.slice(0, 4), what).toEqual(least.score);
    seen.proven += 1;
    if (score[0] > 0) seen.alone += 1;
    if (score[1] > 0) seen.short += 1;
    if (score[2] > 0) seen.filler += 1;
    if (small.overhangNm > 0 && score[2] === 0) seen.overhang += 1;
  }
  expect(seen.proven).toBeGreaterThan(230);
  for (const count of [seen.alone, seen.short, seen.filler, seen.overhang]) expect(count).toBeGreaterThan(20);
});
