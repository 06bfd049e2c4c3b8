// Both faces of a proposal in their places: side B turned round, corners where the core puts them, ties from hole to hole.
import { describe, expect, test } from 'vitest';
import type { Component } from '../../../core/catalogue/component.ts';
import { panelSystem } from '../../../core/catalogue/system.ts';
import { facesLayout } from '../../../renderer/screens/fill/faces-layout.ts';
import { drawnFaces } from '../../../renderer/screens/fill/face-places.ts';
import type { Asked, Proposal } from '../../../renderer/screens/fill/fill-shapes.ts';
import { planFaces } from '../../../renderer/screens/fill/plan-places.ts';

const inch = 25_400_000;
const panel = (width: number, hole: number): Component => ({
  code: `P${width}`,
  name: `Panel ${width} in`,
  kind: 'panel',
  weightGrams: 1000,
  widthNm: width * inch,
  heightNm: 96 * inch,
  tieHolesNm: [[hole * inch, 48 * inch]],
});
const corner: Component = {
  code: 'IC',
  name: 'Inside corner',
  kind: 'inside-corner',
  weightGrams: 1000,
  widthNm: 6 * inch,
  heightNm: 96 * inch,
};
const made = panelSystem([panel(24, 4), panel(30, 10), corner], {});
if (!made.ok) throw new Error(made.error.message);
const system = made.value;

const geometry = (...codes: readonly ('P24' | 'P30')[]): Proposal['designs'][number]['geometry'] => {
  let at = 0;
  const panels = codes.map((code) => {
    const xNm = at;
    at += (code === 'P24' ? 24 : 30) * inch;
    return { panel: code, xNm, yNm: 0, onSide: false };
  });
  const open = 'open' as const;
  return {
    panels,
    fillers: [],
    edges: { left: open, right: open },
    equalised: false,
  };
};

const design = (code: string, ...codes: readonly ('P24' | 'P30')[]): Proposal['designs'][number] => ({
  code,
  name: code,
  isNew: code !== 'OLD',
  geometry: geometry(...codes),
  symmetrical: false,
  widthNm: codes.reduce((sum, each) => sum + (each === 'P24' ? 24 : 30) * inch, 0),
  heightNm: 96 * inch,
  weightGrams: 2000,
});

// Legs of 54 and 30 in on side A; side B, inside, is 12 in shorter at the corner and has a corner piece of 6 in.
const wall: NonNullable<Asked['wall']> = {
  legs: [{ lengthNm: 54 * inch }, { lengthNm: 30 * inch }],
  turns: ['left'],
  closed: false,
  start: { kind: 'free', overhangNm: 0 },
  end: { kind: 'free', overhangNm: 0 },
  thicknessNm: 12 * inch,
  heightNm: 90 * inch,
  freeboardNm: 0,
};
const gang = (side: 'A' | 'B', leg: number, code: string, from: number, width: number) => ({
  side,
  leg,
  design: code,
  fromNm: from * inch,
  widthNm: width * inch,
  bottomNm: 0,
});
const proposal: Proposal = {
  order: 'first',
  score: { newFaceNm: 0, holesAlone: 2, shortage: 0, fillerNm: 0, panelCount: 5, asymmetry: 0 },
  proven: true,
  rowsNm: [96 * inch],
  designs: [design('OLD', 'P24', 'P30'), design('G1', 'P30'), design('G2', 'P24')],
  gangs: [gang('A', 0, 'OLD', 0, 54), gang('B', 0, 'G1', 0, 30), gang('A', 1, 'G1', 0, 30)],
  loose: [],
  alone: [{ side: 'A', leg: 0, alongNm: 34 * inch, heightNm: 48 * inch, facesForm: false }],
  short: {},
  findings: [],
};

describe('the faces of an L', () => {
  const { legs, heightNm } = drawnFaces(proposal, wall, system);
  const [a, b] = legs[0]?.faces ?? [];

  test('are as long as the core has them, with the corner piece at the end of the inner one', () => {
    expect(heightNm).toBe(96 * inch);
    expect([a?.pour, b?.pour]).toMatchObject([
      { xNm: 0, widthNm: 54 * inch, heightNm: 90 * inch },
      { xNm: 0, widthNm: 42 * inch },
    ]);
    expect(a?.insideCorners).toEqual([]);
    expect(b?.insideCorners).toMatchObject([{ xNm: 36 * inch, widthNm: 6 * inch }]);
    expect(b?.panels).toMatchObject({ xNm: 0, widthNm: 36 * inch });
    expect(legs[1]?.faces[1]?.insideCorners).toMatchObject([{ xNm: 12 * inch, widthNm: 6 * inch }]);
  });

  test('have side B turned round and tell what is new', () => {
    expect(a?.gangs[0]).toMatchObject({ design: 'OLD', isNew: false });
    expect(a?.gangs[0]?.drawn.holes).toEqual([
      { xNm: 4 * inch, yNm: 48 * inch },
      { xNm: 34 * inch, yNm: 48 * inch },
    ]);
    expect(b?.gangs[0]).toMatchObject({ design: 'G1', isNew: true });
    // 10 in from the left as seen from its back: 20 in along the wall.
    expect(b?.gangs[0]?.drawn.holes).toEqual([{ xNm: 20 * inch, yNm: 48 * inch }]);
  });

  test('have a tie at every hole that is not alone', () => {
    expect(legs[0]?.tiesNm).toEqual([4 * inch]);
    expect(a?.alone).toEqual([{ xNm: 34 * inch, yNm: 48 * inch, facesForm: false }]);
  });
});

describe('the drawing', () => {
  const faces = drawnFaces(proposal, wall, system);

  test('has its legs beside each other where there is room, in one measure', () => {
    const { legs, perNm, widthPx, lineHighPx, heightPx } = facesLayout(faces, 1000);
    expect(legs.map(({ topPx }) => topPx)).toEqual([0, 0]);
    expect((legs[1]?.originPx ?? 0) - (legs[0]?.originPx ?? 0)).toBeGreaterThan(54 * inch * perNm);
    expect(widthPx).toBeLessThanOrEqual(1000);
    expect(heightPx).toBe(lineHighPx);
  });

  test('puts further legs into lines of their own where there is none', () => {
    const long = faces.legs.map((leg) => ({ ...leg, toNm: leg.toNm + 1000 * inch }));
    const { legs, lineHighPx, heightPx, widthPx } = facesLayout({ ...faces, legs: long }, 1000);
    expect(legs.map(({ topPx, isFirst }) => [topPx, isFirst])).toEqual([
      [0, true],
      [lineHighPx, true],
    ]);
    expect(heightPx).toBe(2 * lineHighPx);
    expect(widthPx).toBeLessThanOrEqual(1000);
  });
});

test('In plan a closed wall has side B a thickness off side A at every corner, its first as well', () => {
  const box = ['left', 'left', 'left', 'left'] as const;
  expect(planFaces([10, 20, 10, 20], box, 2, true).b).toEqual([
    { xNm: 2, yNm: 2 },
    { xNm: 8, yNm: 2 },
    { xNm: 8, yNm: 18 },
    { xNm: 2, yNm: 18 },
    { xNm: 2, yNm: 2 },
  ]);
});
