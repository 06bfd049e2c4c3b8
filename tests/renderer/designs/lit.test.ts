import { describe, expect, test } from 'vitest';
import { elevationMarks } from '../../../renderer/screens/designs/elevation-marks.ts';
import { litBy } from '../../../renderer/screens/designs/lit.ts';
import { sample } from './sample-design.ts';

const marks = elevationMarks(sample);

describe('what is pointed at lights its counterpart', () => {
  test('a take-off line lights its pieces on the drawing', () => {
    expect([...(litBy({ kind: 'line', component: 'LK' }, marks).marks ?? [])]).toEqual([
      'joint-1',
      'joint-2',
    ]);
  });
  test('a rail on the drawing lights the lines of rails and of its bolts', () => {
    expect([...litBy({ kind: 'mark', id: 'rail-0' }, marks).lines]).toEqual(['R6', 'RB']);
  });
  test('a line without a place on the drawing dims nothing', () => {
    expect(litBy({ kind: 'line', component: 'WB' }, marks).marks).toBeNull();
  });
  test('a finding lights its pin alone', () => {
    expect(litBy({ kind: 'finding', number: 2 }, marks)).toMatchObject({ marks: null, finding: 2 });
  });
  test('nothing pointed at, nothing lit', () => {
    expect(litBy(null, marks)).toMatchObject({ marks: null, finding: null });
  });
});
