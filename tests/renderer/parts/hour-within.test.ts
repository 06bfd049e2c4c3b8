import { expect, test } from 'vitest';
import { hourWithin } from '../../../renderer/parts/hour-within.ts';

const days = [{ date: '2026-03-02' }, { date: '2026-03-03' }, { date: '2026-03-04' }];
const zone = 'America/New_York';

test('within the days the hour that has begun, before and after them nothing', () => {
  expect(hourWithin('2026-03-03T14:42:10.500Z', days, zone)).toBe('2026-03-03T14:00:00.000Z');
  expect(hourWithin('2026-11-25T10:00:00Z', days, zone)).toBeNull();
  expect(hourWithin('2026-03-03T14:42:10Z', [], zone)).toBeNull();
});

test('which day it is the clock of the job says: an hour before midnight in New York is the day after in UTC', () => {
  expect(hourWithin('2026-03-05T04:30:00Z', days, zone)).toBe('2026-03-05T04:00:00.000Z');
  expect(hourWithin('2026-03-05T05:30:00Z', days, zone)).toBeNull();
});
