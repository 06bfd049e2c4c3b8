import { describe, expect, test } from 'vitest';
import { inchNm } from '../../../core/units/length.ts';
import {
  elevationMarks,
  type JointMark,
  marksOfLine,
} from '../../../renderer/screens/designs/elevation-marks.ts';
import { fillerOfJoint, locksAlong } from '../../../renderer/screens/designs/joint-marks.ts';
import { sample } from './sample-design.ts';

const marks = elevationMarks(sample);
const joints = marks.filter((mark): mark is JointMark => mark.kind === 'joint');

const count = (kind: string) => marks.filter((mark) => mark.kind === kind).length;
const lit = (component: string) => [...marksOfLine(marks, component)];

describe('marks of an elevation', () => {
  test('every piece of the answer has a mark: 3 panels, 1 filler, 3 joints, 2 rails, 2 holes, 2 hooks', () => {
    expect(['panel', 'filler', 'joint', 'rail', 'hole', 'hook'].map(count)).toEqual([3, 1, 3, 2, 2, 2]);
  });
  test('as many locks are drawn as the core counted: 4 + 2 + 2', () => {
    expect(joints.map(({ locks }) => locks.length)).toEqual([4, 2, 2]);
  });
  test('two locks on a level joint of 36 in are drawn at its quarters: 9 in and 27 in', () => {
    expect(joints[1]?.locks.map(({ xNm }) => xNm / inchNm)).toEqual([9, 27]);
  });
  test('locks at a filler of 6 in stand in its middle, 39 in from the left, and span its width', () => {
    expect(joints[0]?.locks.every(({ xNm }) => xNm === 39 * inchNm)).toBe(true);
    expect([joints[0]?.direction, joints[0]?.spanNm]).toEqual(['upright', 6 * inchNm]);
  });
  test('a joint without locks has no lock marks', () => {
    expect(locksAlong({ xNm: 0, yNm: 0, direction: 'level', lengthNm: 1000, spanNm: 0 }, 0)).toEqual([]);
  });
});

describe('fillers of joints', () => {
  const filler = { xNm: 100, yNm: 0, widthNm: 10, heightNm: 500 };
  test('a joint on the right edge of an upright filler is moved to its left edge', () => {
    expect(fillerOfJoint({ xNm: 110, yNm: 50, lengthNm: 200 }, [filler])).toEqual({
      direction: 'upright',
      xNm: 100,
      yNm: 50,
      spanNm: 10,
    });
  });
  test('a joint along a level filler is level', () => {
    const level = { xNm: 0, yNm: 100, widthNm: 500, heightNm: 10 };
    expect(fillerOfJoint({ xNm: 0, yNm: 110, lengthNm: 300 }, [level])?.direction).toBe('level');
  });
  test('a joint at no filler has none', () => {
    expect(fillerOfJoint({ xNm: 300, yNm: 0, lengthNm: 10 }, [filler])).toBeUndefined();
  });
});

describe('pieces of a take-off line', () => {
  test('panels by code, and no others', () => expect(lit('P9')).toEqual(['panel-0', 'panel-1']));
  test('locks at the joints that are their reasons', () => expect(lit('LK')).toEqual(['joint-1', 'joint-2']));
  test('adjustable locks at the filler joint only', () => expect(lit('AL')).toEqual(['joint-0']));
  test('rails and their bolts at the rails', () => {
    expect(lit('R6')).toEqual(['rail-0', 'rail-1']);
    expect(lit('RB')).toEqual(['rail-0', 'rail-1']);
  });
  test('hooks at the hooks', () => expect(lit('HK')).toEqual(['hook-0', 'hook-1']));
  test('an unknown component at nothing', () => expect(lit('XX')).toEqual([]));
});
