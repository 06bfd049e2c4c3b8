// The levelling core against the open benchmark sets, of which a part is copied here (source and terms in the files).
import { describe, expect, test } from 'vitest';
import { measureSet } from './measure-set.ts';
import { copied, readSet } from './open-sets.ts';

describe('with 5,000 schedules on open instances every schedule is valid and no bound is over what is known', () => {
  // Optima: Demeulemeester and Herroelen (1995). One instance of each parameter group.
  test('48 with 30 activities: at most 0.3 % over the optimum on average, two thirds proved', () => {
    const measured = measureSet(readSet(copied, 'j30'), 5000);
    expect(measured.problems).toEqual([]);
    expect(measured.instances).toBe(48);
    expect(measured.overBest).toBeLessThanOrEqual(0.3);
    expect(measured.proved).toBeGreaterThanOrEqual(30);
  });

  // Best known makespans of the library's lists and of published runs of two solvers.
  test('10 with 60 activities, the hard groups among them: at most 2.5 % over the best known', () => {
    const measured = measureSet(readSet(copied, 'j60'), 5000);
    expect(measured.problems).toEqual([]);
    expect(measured.instances).toBe(10);
    expect(measured.overBest).toBeLessThanOrEqual(2.5);
  });

  test('6 with 120 activities: at most 3.5 % over the best known', () => {
    const measured = measureSet(readSet(copied, 'j120'), 5000);
    expect(measured.problems).toEqual([]);
    expect(measured.instances).toBe(6);
    expect(measured.overBest).toBeLessThanOrEqual(3.5);
  });
});
