// Edits of a design on paper, and where dragged pieces come to stand.
import { array, assert, integer, property, tuple } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { panelSystem } from '../../core/catalogue/system.ts';
import type { DesignGeometry } from '../../core/gang/design.ts';
import {
  copyPieces,
  mirrorPieces,
  movePieces,
  placeFiller,
  placePanel,
  removePieces,
  setEdges,
  setFiller,
  turnPieces,
} from '../../core/gang/edit-design.ts';
import { nextRevision } from '../../core/gang/next-revision.ts';
import { type SnapPiece, snappedMove } from '../../core/gang/snap.ts';

const drawn: DesignGeometry = {
  panels: [
    { panel: 'A', xNm: 0, yNm: 0, onSide: false },
    { panel: 'B', xNm: 30, yNm: 0, onSide: false },
  ],
  fillers: [{ xNm: 50, yNm: 0, widthNm: 4, heightNm: 80 }],
  edges: { left: 'open', right: 'open' },
  equalised: false,
};
const frozen = JSON.stringify(drawn);
const second = { panels: [1], fillers: [] };

const made = panelSystem(
  [
    { code: 'A', name: 'A', kind: 'panel', weightGrams: 1, widthNm: 30, heightNm: 80 },
    { code: 'B', name: 'B', kind: 'panel', weightGrams: 1, widthNm: 20, heightNm: 80 },
  ],
  {},
);
if (!made.ok) throw new Error(made.error.message);
const system = made.value;

describe('An edit answers another design and leaves the one before as it was', () => {
  test('placing, and what was placed', () => {
    const { design, placed } = placePanel(drawn, 'A', { xNm: 7, yNm: 8 }, true);
    expect(design.panels[2]).toEqual({ panel: 'A', xNm: 7, yNm: 8, onSide: true });
    expect(placed).toEqual({ panels: [2], fillers: [] });
    const filler = placeFiller(drawn, { widthNm: 3, heightNm: 4 }, { xNm: 1, yNm: 2 });
    expect(filler.design.fillers[1]).toEqual({ xNm: 1, yNm: 2, widthNm: 3, heightNm: 4 });
    expect(filler.placed).toEqual({ panels: [], fillers: [1] });
  });

  test('moving and copying several', () => {
    const all = { panels: [0, 1], fillers: [0] };
    const moved = movePieces(drawn, all, { xNm: -5, yNm: 6 });
    expect(moved.panels.map(({ xNm, yNm }) => [xNm, yNm])).toEqual([
      [-5, 6],
      [25, 6],
    ]);
    expect(moved.fillers[0]).toEqual({ xNm: 45, yNm: 6, widthNm: 4, heightNm: 80 });
    const { design, placed } = copyPieces(drawn, { panels: [1], fillers: [0] }, { xNm: 100, yNm: 0 });
    expect(design.panels[2]).toEqual({ panel: 'B', xNm: 130, yNm: 0, onSide: false });
    expect(design.fillers).toHaveLength(2);
    expect(placed).toEqual({ panels: [2], fillers: [1] });
  });

  test('turning about the lower left corner, twice as it was; a filler changes its width and height', () => {
    const turned = turnPieces(drawn, { panels: [1], fillers: [0] });
    expect(turned.panels[1]).toEqual({ panel: 'B', xNm: 30, yNm: 0, onSide: true });
    expect(turned.fillers[0]).toEqual({ xNm: 50, yNm: 0, widthNm: 80, heightNm: 4 });
    expect(turnPieces(turned, { panels: [1], fillers: [0] })).toEqual(drawn);
  });

  test('taking out, setting a filler and the edges', () => {
    expect(removePieces(drawn, second).panels.map((panel) => panel.panel)).toEqual(['A']);
    expect(removePieces(drawn, { panels: [9], fillers: [0] }).panels).toEqual(drawn.panels);
    expect(setFiller(drawn, 0, { widthNm: 5, heightNm: 80 }).fillers[0]?.widthNm).toBe(5);
    expect(setEdges(drawn, { left: 'stop-end' }).edges).toEqual({ left: 'stop-end', right: 'open' });
  });

  test('mirroring chosen pieces between their own ends, whatever the order of choosing; the edges stay', () => {
    const cornered = setEdges(drawn, { left: 'inside-corner' });
    for (const panels of [
      [0, 1],
      [1, 0],
    ]) {
      const mirrored = mirrorPieces(system, cornered, { panels, fillers: [0] });
      // From 0 to 54: A at 24, B at 4, the filler at 0.
      expect(mirrored).toMatchObject({
        ok: true,
        value: {
          panels: [
            { panel: 'A', xNm: 24 },
            { panel: 'B', xNm: 4 },
          ],
          fillers: [{ xNm: 0 }],
          edges: { left: 'inside-corner', right: 'open' },
        },
      });
    }
    const two = placeFiller(drawn, { widthNm: 6, heightNm: 80 }, { xNm: 54, yNm: 0 }).design;
    const fillers = mirrorPieces(system, two, { panels: [], fillers: [0, 1] });
    expect(fillers).toMatchObject({ ok: true, value: { fillers: [{ xNm: 56 }, { xNm: 50 }] } });
    expect(mirrorPieces(system, drawn, { panels: [], fillers: [] })).toEqual({ ok: true, value: drawn });
  });

  test('and the design that was given is untouched', () => {
    expect(JSON.stringify(drawn)).toBe(frozen);
  });
});

const piece = (xNm: number, yNm: number, widthNm: number, heightNm: number): SnapPiece => ({
  xNm,
  yNm,
  widthNm,
  heightNm,
});

const over = (one: SnapPiece, other: SnapPiece): boolean =>
  one.xNm < other.xNm + other.widthNm &&
  other.xNm < one.xNm + one.widthNm &&
  one.yNm < other.yNm + other.heightNm &&
  other.yNm < one.yNm + one.heightNm;
const shift = (one: SnapPiece, dxNm: number, dyNm: number): SnapPiece => ({
  ...one,
  xNm: one.xNm + dxNm,
  yNm: one.yNm + dyNm,
});

describe('A dragged piece', () => {
  const still = [piece(0, 0, 100, 200)];

  test('goes to the edge beside it and to the ground, exactly, and the lines it came to are told', () => {
    const { dxNm, dyNm, guides } = snappedMove(
      [piece(300, 300, 50, 200)],
      still,
      { dxNm: -197, dyNm: -304 },
      5,
    );
    expect([dxNm, dyNm]).toEqual([-200, -300]);
    expect(guides).toEqual([
      { direction: 'upright', atNm: 100, fromNm: 0, toNm: 200 },
      { direction: 'level', atNm: 0, fromNm: 0, toNm: 150 },
      { direction: 'level', atNm: 200, fromNm: 0, toNm: 150 },
    ]);
  });

  test('stays where the pointer is when nothing is near, and takes the nearer of two edges', () => {
    expect(snappedMove([piece(0, 0, 50, 50)], still, { dxNm: 300, dyNm: 300 }, 5)).toEqual({
      dxNm: 300,
      dyNm: 300,
      guides: [],
    });
    const between = [piece(0, 0, 100, 200), piece(107, 0, 100, 200)];
    expect(snappedMove([piece(0, 0, 50, 50)], between, { dxNm: 104, dyNm: 0 }, 5).dxNm).toBe(107);
    expect(snappedMove([piece(0, 0, 50, 50)], between, { dxNm: 103, dyNm: 0 }, 5).dxNm).toBe(100);
  });

  test('alone goes to the ground; nothing dragged goes nowhere', () => {
    expect(snappedMove([piece(0, 90, 50, 50)], [], { dxNm: 3, dyNm: -88 }, 5)).toMatchObject({
      dxNm: 3,
      dyNm: -90,
    });
    expect(snappedMove([], still, { dxNm: 3, dyNm: 3 }, 5)).toEqual({ dxNm: 3, dyNm: 3, guides: [] });
  });

  test('never goes farther than its reach, and never comes over a piece that it stood clear of', () => {
    const size = integer({ min: 1, max: 40 });
    const at = integer({ min: -60, max: 60 });
    const pieces = array(
      tuple(at, at, size, size).map((four) => piece(...four)),
      { maxLength: 6 },
    );
    let clear = 0;
    assert(
      property(pieces, pieces, at, at, integer({ min: 0, max: 15 }), (moving, others, dxNm, dyNm, reach) => {
        const snapped = snappedMove(moving, others, { dxNm, dyNm }, reach);
        expect(Math.abs(snapped.dxNm - dxNm)).toBeLessThanOrEqual(reach);
        expect(Math.abs(snapped.dyNm - dyNm)).toBeLessThanOrEqual(reach);
        for (const one of moving) {
          for (const other of others) {
            if (over(shift(one, dxNm, dyNm), other)) continue;
            clear += 1;
            expect(over(shift(one, snapped.dxNm, snapped.dyNm), other)).toBe(false);
          }
        }
      }),
      { numRuns: 2000 },
    );
    expect(clear).toBeGreaterThan(1000);
  });
});

test.each([
  ['A', 'B'],
  ['Z', 'AA'],
  ['AZ', 'BA'],
  ['3', '4'],
  ['R9', 'R10'],
  ['rev C', 'rev D'],
  ['1.09', '1.10'],
  ['A01', 'A02'],
  ['', 'A'],
  ['first', 'first 2'],
])('The revision after %s is %s', (revision, next) => {
  expect(nextRevision(revision)).toBe(next);
});
