// Columns of two halves, followed by hand: corner pieces and closing joints of a box of four faces (common practice, no
// source), holes opposite each other by geometry.
import { expect, test } from 'vitest';
import type { Panel } from '../../core/catalogue/component.ts';
import { type PanelSystem, panelSystem } from '../../core/catalogue/system.ts';
import type { ColumnTask } from '../../core/face/column.ts';
import { fillColumn } from '../../core/face/fill-column.ts';
import type { WallAnswer } from '../../core/face/wall.ts';
import { takeOff } from '../../core/gang/take-off.ts';
import { type PourDesign, meetingLocks } from '../../core/plan/meeting-locks.ts';
import { inchNm, wallSystem } from './random-walls.ts';

function columnOf(
  system: PanelSystem,
  widths: readonly [number, number],
  more: Partial<ColumnTask> = {},
): WallAnswer {
  const [a, b] = widths;
  const filled = fillColumn({
    system,
    column: { widthANm: a * inchNm, widthBNm: b * inchNm, heightNm: 140 * inchNm, freeboardNm: 4 * inchNm },
    stock: null,
    designs: [],
    takenCodes: ['G1'],
    maximumFillerNm: 0,
    tieToleranceNm: 0,
    limits: {},
    best: 3,
    ...more,
  });
  if (!filled.ok) throw new Error(filled.error.message);
  return filled.value;
}

const system = wallSystem([24, 18, 12], [96, 48]);

function piecesOf(proposal: WallAnswer['proposals'][number], purpose: string): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { purpose: each, component, quantity } of proposal.loose)
    if (each === purpose) counts[component ?? '-'] = (counts[component ?? '-'] ?? 0) + quantity;
  return counts;
}

test('A column of 24 by 36 in is two gangs of one design, with four corners and two joints that close it', () => {
  const { proposals, proven, findings } = columnOf(system, [24, 36]);
  expect({ proven, findings, proposals: proposals.length }).toEqual({
    proven: true,
    findings: [],
    proposals: 1,
  });
  const [first] = proposals;
  // rows of 96 and 48 in; 24 is one panel and 36 two of 18, that is 3 a row, 6 a half
  expect(first?.score).toEqual([120 * inchNm, 0, 0, 0, 12, 0]);
  expect(first?.designs).toHaveLength(1);
  const { code, geometry, foldNm } = first!.designs[0]!;
  expect({ code, foldNm, edges: geometry.edges }).toEqual({
    code: 'G2',
    foldNm: 24 * inchNm,
    edges: { left: 'column', right: 'column' },
  });
  expect(geometry.panels.map(({ panel, xNm, yNm }) => `${panel} ${xNm / inchNm} ${yNm / inchNm}`)).toEqual([
    'P24x96 0 0',
    'P18x96 24 0',
    'P18x96 42 0',
    'P24x48 0 96',
    'P18x48 24 96',
    'P18x48 42 96',
  ]);
  expect(piecesOf(first!, 'outside-corner')).toEqual({ OC96: 4, OC48: 4 });
  // three locks up to 96 in: two joints of two rows
  expect(piecesOf(first!, 'opening-joint')).toEqual({ LK: 12 });
  // four holes a panel, two of them and their two opposite on the other half take two ties a hole height
  expect(piecesOf(first!, 'ties')).toEqual({ TR: 24 });
  expect(first?.findings.map(({ rule }) => rule)).toEqual(['ties-cross']);
});

test('The locks of the opening joints are those that a pour of the two halves counts', () => {
  const [first] = columnOf(system, [30, 36]).proposals;
  const { code, geometry, widthNm } = first!.designs[0]!;
  const taken = takeOff(system, geometry);
  if (!taken.ok) throw new Error(taken.error.message);
  const design: PourDesign = {
    widthNm,
    holes: [],
    takeOff: taken.value,
    rules: system.rules,
    edges: geometry.edges,
  };
  const gangs = [{ design: code, atNm: 0, bottomNm: 0 }];
  const pour = { sides: [{ side: 'A', gangs }, { side: 'B', gangs }] } as unknown as Parameters<typeof meetingLocks>[0]; // prettier-ignore
  expect(piecesOf(first!, 'opening-joint')).toEqual(meetingLocks(pour, new Map([[code, design]])).locks);
});

test('A face of 30 in has no mirror at its middle, so the half opposite has its faces as in a mirror', () => {
  const [first] = columnOf(system, [30, 30]).proposals;
  expect(first?.score.slice(0, 5)).toEqual([120 * inchNm, 0, 0, 0, 16]);
  expect(first?.designs.map(({ symmetrical }) => symmetrical)).toEqual([false, false]);
  const rows = first!.designs.map(({ geometry }) =>
    geometry.panels.filter(({ yNm }) => yNm === 0).map(({ panel }) => panel),
  );
  expect(rows).toEqual([
    ['P18x96', 'P12x96', 'P18x96', 'P12x96'],
    ['P12x96', 'P18x96', 'P12x96', 'P18x96'],
  ]);
});

test('The stock is counted over both halves', () => {
  const stock = { P24x96: 3, P12x96: 8, P18x96: 99, P24x48: 99, P12x48: 99, P18x48: 99 };
  const [first] = columnOf(system, [24, 24], { stock }).proposals;
  // four faces of 24 in: three panels of 24 are one too few, so each half has one of them and two of 12
  expect(first?.short).toEqual({});
  expect(first?.proven).toBe(false);
  const short = columnOf(system, [24, 24], { stock: { ...stock, P12x96: 1 } }).proposals[0];
  expect(short?.score[2]).toBe(1);
  expect(short?.short).toEqual({ P24x96: 1 });
});

test('A face that no panels make is a stop with the nearest lengths', () => {
  const { proposals, proven, findings } = columnOf(system, [24, 27]);
  expect({ proposals, proven }).toEqual({ proposals: [], proven: true });
  expect(findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
    'fill.no-way stop',
    'fill.no-way stop',
  ]);
  expect(findings[0]?.where).toBe('face B, row 1 from the bottom');
  expect(findings[0]?.message).toMatch(/nearest that they make is .*\(609\.6 mm\) and .*\(762 mm\)/);
});

test('Without outside corners in the catalogue a column is told to have none', () => {
  const bare = panelSystem(
    [
      ...system.panels,
      ...system.components.filter(({ kind }) => kind !== 'outside-corner' && kind !== 'panel'),
    ],
    system.rules,
  );
  if (!bare.ok) throw new Error(bare.error.message);
  const [first] = columnOf(bare.value, [24, 24]).proposals;
  expect(first?.findings.map(({ rule }) => rule)).toContain('corners.pieces');
  expect(piecesOf(first!, 'outside-corner')).toEqual({});
});

test('A half on paper comes before a new one, which is proposed beside it', () => {
  const [made] = columnOf(system, [24, 36]).proposals;
  const drawn = made!.designs[0]!.geometry;
  // drawn anywhere on paper
  const panels = drawn.panels.map((panel) => ({ ...panel, xNm: panel.xNm + 7 * inchNm }));
  const geometry = { ...drawn, panels };
  const { proposals } = columnOf(system, [36, 24], { designs: [{ code: 'CH', name: 'Half', geometry }] });
  expect(proposals.map(({ order, score }) => [order, score[0], score[1]])).toEqual([
    ['first', 0, 0],
    ['new-gangs', 120 * inchNm, 0],
  ]);
  expect(proposals[0]?.designs).toMatchObject([{ code: 'CH', isNew: false, foldNm: 24 * inchNm }]);
  expect(proposals[0]?.designs[0]?.geometry).toEqual(drawn);
  expect(proposals[0]?.proven).toBe(true);
});

test('A half over the greatest height or weight is a stop; its length is that of the longer face', () => {
  const limits = { lengthNm: 36 * inchNm, heightNm: 120 * inchNm, weightGrams: 1000 };
  const found = columnOf(system, [24, 36], { limits }).proposals[0]!.findings;
  expect(found.filter(({ rule }) => rule === 'gang-limits').map(({ message }) => message)).toEqual([
    expect.stringMatching(/high, over/),
    expect.stringMatching(/kg with the corner pieces of its fold, over 1 kg/),
  ]);
});

test('Holes that lie in from one edge only are alone where no half can have them opposite', () => {
  const panel: Panel = {
    code: 'Q24',
    name: 'Panel',
    kind: 'panel',
    weightGrams: 1000,
    widthNm: 24 * inchNm,
    heightNm: 144 * inchNm,
    tieHolesNm: [[2 * inchNm, 12 * inchNm]],
  };
  const odd = panelSystem([panel], {});
  if (!odd.ok) throw new Error(odd.error.message);
  const [first] = columnOf(odd.value, [24, 24]).proposals;
  expect(first?.score[1]).toBe(4);
  expect(first?.proven).toBe(false);
  expect(first?.alone.map(({ side, leg, alongNm }) => `${side}${leg} ${alongNm / inchNm}`)).toEqual([
    'A0 2',
    'B0 2',
    'A1 2',
    'B1 2',
  ]);
});
