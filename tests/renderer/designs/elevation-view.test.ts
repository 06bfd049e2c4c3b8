import { describe, expect, test } from 'vitest';
import { footNm, millimetreNm } from '../../../core/units/length.ts';
import {
  fit,
  fitted,
  seen,
  toPx,
  viewByKey,
  zoomAt,
} from '../../../renderer/screens/designs/elevation-view.ts';
import { scaleBarNm } from '../../../renderer/screens/designs/scale-bar.ts';

const margins = { leftPx: 50, rightPx: 50, topPx: 50, bottomPx: 50 };
const frame = { widthPx: 500, heightPx: 300 };
const scale = fit({ widthNm: 4000, heightNm: 1000 }, frame, margins);

describe('fitting the drawing', () => {
  test('a wide gang fills the width: 400 px for 4000 nm, its middle in the middle', () => {
    expect(scale.pxPerNm).toBeCloseTo(0.1);
    expect(toPx(scale, { xNm: 0, yNm: 0 })).toEqual({ x: 50, y: 200 });
    expect(toPx(scale, { xNm: 4000, yNm: 1000 })).toEqual({ x: 450, y: 100 });
  });
  test('up in the gang is up on the screen', () => {
    expect(toPx(scale, { xNm: 0, yNm: 500 }).y).toBeLessThan(toPx(scale, { xNm: 0, yNm: 0 }).y);
  });
  test('a frame smaller than its margins still gives a scale above zero', () => {
    expect(
      fit({ widthNm: 10, heightNm: 10 }, { widthPx: 20, heightPx: 20 }, margins).pxPerNm,
    ).toBeGreaterThan(0);
  });
});

describe('zooming', () => {
  test('holds the point under the pointer', () => {
    const view = zoomAt(fitted, 2, 130, 170);
    const before = { xNm: (130 - scale.leftPx) / scale.pxPerNm, yNm: (scale.bottomPx - 170) / scale.pxPerNm };
    const after = toPx(seen(scale, view), before);
    expect(after.x).toBeCloseTo(130);
    expect(after.y).toBeCloseTo(170);
  });
  test('stops at 12 times and at half', () => {
    expect(zoomAt(fitted, 1000, 0, 0).zoom).toBe(12);
    expect(zoomAt(fitted, 0.001, 0, 0).zoom).toBe(0.5);
  });
  test('by keys: + zooms, 0 fits again, an arrow looks that way, other keys are not taken', () => {
    expect(viewByKey(fitted, '+', frame)?.zoom).toBeCloseTo(1.25);
    expect(viewByKey({ zoom: 3, panXPx: 9, panYPx: 9 }, '0', frame)).toEqual(fitted);
    expect(viewByKey(fitted, 'ArrowRight', frame)?.panXPx).toBe(-40);
    expect(viewByKey(fitted, 'a', frame)).toBeUndefined();
  });
});

describe('scale bar', () => {
  test('4 ft where 4 ft fits in 120 px and 10 ft does not', () => {
    expect(scaleBarNm(100 / (4 * footNm), 'us', 120)).toBe(4 * footNm);
  });
  test('1 m where 1 m fits and 2 m does not', () => {
    expect(scaleBarNm(100 / (1000 * millimetreNm), 'metric', 120)).toBe(1000 * millimetreNm);
  });
  test('the shortest where none fits', () => {
    expect(scaleBarNm(1, 'metric', 120)).toBe(10 * millimetreNm);
  });
});
