// Random walls of one to three legs with square corners, and panels whose tie holes lie in from both edges.
import type { Component, Panel } from '../../core/catalogue/component.ts';
import { type PanelSystem, panelSystem } from '../../core/catalogue/system.ts';
import type { Turn, Wall, WallEnd, WallTask } from '../../core/face/wall.ts';
import type { Dice } from '../gang/random-designs.ts';

export const inchNm = 25_400_000;

export function wallSystem(
  widths: readonly number[],
  heights: readonly number[],
  holeIn = 2,
  cornersWithHoles = false,
): PanelSystem {
  const panels = heights.flatMap((height) =>
    widths.map((width): Panel => ({
      code: `P${width}x${height}`,
      name: `Panel ${width} in by ${height} in`,
      kind: 'panel',
      weightGrams: width * height * 20,
      widthNm: width * inchNm,
      heightNm: height * inchNm,
      tieHolesNm: [holeIn, width - holeIn].flatMap((x) =>
        [12, height - 12].map((y): [number, number] => [x * inchNm, y * inchNm]),
      ),
    })),
  );
  const others: Component[] = [
    { code: 'LK', name: 'Lock', kind: 'lock', weightGrams: 2300 },
    { code: 'AL', name: 'Adjustable lock', kind: 'adjustable-lock', weightGrams: 3000 },
    { code: 'TR', name: 'Tie', kind: 'tie', weightGrams: 2700 },
    ...heights.flatMap((height): Component[] => [
      {
        code: `IC${height}`,
        name: 'Inside corner',
        kind: 'inside-corner',
        weightGrams: 40_000,
        widthNm: 12 * inchNm,
        heightNm: height * inchNm,
        canShrink: true,
        ...(cornersWithHoles && {
          tieHolesNm: [12, height - 12].map((y): [number, number] => [(12 - holeIn) * inchNm, y * inchNm]),
        }),
      },
      {
        code: `OC${height}`,
        name: 'Outside corner',
        kind: 'outside-corner',
        weightGrams: 18_000,
        heightNm: height * inchNm,
      },
    ]),
  ];
  const system = panelSystem([...panels, ...others], {
    locks: { component: 'LK', bands: [{ upToNm: 96 * inchNm, count: 3 }] },
    fillerLocks: { component: 'AL', maximumWidthNm: 7 * inchNm },
    ties: { holes: true },
  });
  if (!system.ok) throw new Error(system.error.message);
  return system.value;
}

export function randomWall(dice: Dice, legs: number): Wall {
  const end = (): WallEnd =>
    dice.of<WallEnd>([
      { kind: 'free', overhangNm: dice.of([0, 3, 6]) * inchNm },
      { kind: 'old-concrete', lapNm: dice.of([0, 4, 6]) * inchNm },
      { kind: 'next-pour' },
    ]);
  return {
    legs: Array.from({ length: legs }, () => ({ lengthNm: (72 + 3 * dice.roll(24)) * inchNm })),
    turns: Array.from({ length: legs - 1 }, () => dice.of<Turn>(['left', 'right'])),
    closed: false,
    start: end(),
    end: end(),
    thicknessNm: dice.of([8, 10, 12, 18]) * inchNm,
    heightNm: dice.of([90, 96, 140, 144]) * inchNm,
    freeboardNm: 0,
  };
}

export function taskOf(system: PanelSystem, wall: Wall, more: Partial<WallTask> = {}): WallTask {
  return {
    system,
    wall,
    stock: null,
    designs: [],
    takenCodes: [],
    maximumFillerNm: 7 * inchNm,
    tieToleranceNm: 0,
    limits: {},
    best: 3,
    ...more,
  };
}
