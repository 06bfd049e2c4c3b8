import { describe, expect, test } from 'vitest';
import { elevationMarks } from '../../../renderer/screens/designs/elevation-marks.ts';
import { hardwarePaths } from '../../../renderer/screens/designs/hardware-paths.ts';
import { layerOf } from '../../../renderer/screens/designs/layers.ts';
import { sample } from './sample-design.ts';

const scale = { pxPerNm: 1e-7, leftPx: 0, bottomPx: 400 };
const drawn = { ...sample, brackets: [{ xNm: 5, yNm: 9 }], braces: [{ xNm: 5, yNm: 0 }] };
const count = (path: string, sign: RegExp) => path.match(sign)?.length ?? 0;

describe('hardware as paths', () => {
  const paths = hardwarePaths(elevationMarks(sample), scale);
  test('2 + 2 locks are 4 closed bars; 4 adjustable ones over the filler have 3 strokes each', () => {
    expect(count(paths.locks, /Z/gu)).toBe(4);
    expect(count(paths.adjustable, /M/gu)).toBe(12);
  });
  test('2 plain joints are 2 lines, 2 tie holes a ring and a cross of 2 strokes each', () => {
    expect(count(paths.joints, /M/gu)).toBe(2);
    expect(count(paths.holes, /M/gu)).toBe(6);
  });
  test('a rail is in the path of what it is needed for, and its bolts are where they are said to be', () => {
    const [first, second] = sample.rails;
    if (first === undefined || second === undefined) throw new Error('The sample has two rails.');
    const rails = [
      { ...first, neededFor: 'placing' as const, boltPlaces: [{ xNm: 0, yNm: 0 }] },
      { ...second, neededFor: 'picking' as const, boltPlaces: [] },
    ];
    const told = hardwarePaths(elevationMarks({ ...sample, rails }), scale);
    expect(
      [told.rails.placing, told.rails.picking, told.rails.both].map((path) => count(path, /Z/gu)),
    ).toEqual([1, 1, 0]);
    expect(told.bolts).toMatch(/^M-2.2 400a/u);
  });
});

describe('layers', () => {
  test('brackets, braces and places of hooks without one are marks of their own layers', () => {
    const hookPlaces = [...sample.hooks, { xNm: 1, yNm: 1 }].map(({ xNm, yNm }) => ({ xNm, yNm }));
    const marks = elevationMarks({ ...drawn, hookPlaces });
    const layersOf = (kind: string) =>
      marks.filter((mark) => mark.kind === kind).map((mark) => layerOf(mark.kind));
    expect([layersOf('bracket'), layersOf('brace'), layersOf('hook-place')]).toEqual([
      ['platform'],
      ['braces'],
      ['hooks'],
    ]);
  });
  test('panels and fillers are always drawn', () => {
    expect([layerOf('panel'), layerOf('filler')]).toEqual([null, null]);
  });
});
