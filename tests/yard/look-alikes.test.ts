import { describe, expect, test } from 'vitest';
import { differingMeasure, type Measured, ofTwoOwners, proposedPairs } from '../../core/yard/look-alikes.ts';

const inch = 25_400_000;
const panel = (component: string, width: number, height: number): Measured => ({
  component,
  kind: 'panel',
  widthNm: width * inch,
  heightNm: height * inch,
  lengthNm: null,
});
const rail = (component: string, feet: number, kind = 'stiffening-rail'): Measured => ({
  component,
  kind,
  widthNm: null,
  heightNm: null,
  lengthNm: feet * 12 * inch,
});
const names = (list: readonly Measured[], entered: { component: string; other: string }[] = []) =>
  proposedPairs(list, entered).map(({ component, other }) => `${component} ${other}`);

describe('pairs that are taken for each other', () => {
  const panels = [panel('P836', 36, 96), panel('P830', 30, 96), panel('P812', 12, 96), panel('P436', 36, 48)];

  test('36 in against 30 in of one height; not 36 against 12, not 8 ft against 4 ft', () => {
    expect(names(panels)).toEqual(['P830 P836']);
    expect(proposedPairs(panels, [])[0]?.tellApart).toEqual({
      measure: 'width',
      componentNm: 30 * inch,
      otherNm: 36 * inch,
    });
  });

  test('rails of 8 ft against 10 ft, and no rail against a guardrail of its length', () => {
    expect(names([rail('R8', 8), rail('R10', 10), rail('R6', 6), rail('GR10', 10, 'guardrail')])).toEqual([
      'R10 R8',
    ]);
  });

  test('what differs in two measures, or in none, is no pair', () => {
    expect(names([panel('A', 36, 96), panel('B', 30, 90)])).toEqual([]);
    expect(names([panel('A', 36, 96), panel('B', 36, 96)])).toEqual([]);
  });

  test('one entered already is not proposed, in either order', () => {
    expect(names(panels, [{ component: 'P836', other: 'P830' }])).toEqual([]);
  });

  test('of an entered pair the measure that differs the most is told', () => {
    expect(differingMeasure(panel('P836', 36, 96), panel('P436', 36, 48))).toMatchObject({
      measure: 'height',
    });
    expect(differingMeasure(rail('A', 8), rail('B', 8))).toBeNull();
  });

  test('rails of two owners are told apart by their mark', () => {
    const stock = [
      { component: 'R8', owner: 'TFH', quantity: 6 },
      { component: 'R8', owner: 'OURS', quantity: 12 },
      { component: 'R10', owner: 'OURS', quantity: 8 },
      { component: 'R10', owner: 'TFH', quantity: 0 },
    ];
    expect(ofTwoOwners(stock)).toEqual([{ component: 'R8', owners: ['OURS', 'TFH'] }]);
  });
});
