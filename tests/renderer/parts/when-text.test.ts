import { describe, expect, test } from 'vitest';
import { readHours } from '../../../renderer/screens/pours/hours-text.ts';
import { readWhen } from '../../../renderer/parts/when-text.ts';

const current = '2026-03-06T14:00:00-06:00';
const read = (text: string) => {
  const found = readWhen(text, current, 'America/Chicago');
  return found.ok ? found.value : found.error.code;
};

describe('moments as people type them, where Fri 6 Mar 2026 14:00 stood', () => {
  test.each([
    ['9 Mar 07:00', '2026-03-09T07:00:00-05:00'],
    ['Mon 9 Mar 07:00', '2026-03-09T07:00:00-05:00'],
    ['mar 9, 7:00', '2026-03-09T07:00:00-05:00'],
    ['March 9 2026 7:30 am', '2026-03-09T07:30:00-05:00'],
    ['2026-03-04 06:15', '2026-03-04T06:15:00-06:00'],
    ['2026-03-04T06:15', '2026-03-04T06:15:00-06:00'],
    ['2026-03-04T06:15:00', '2026-03-04T06:15:00-06:00'],
    ['15:30', '2026-03-06T15:30:00-06:00'],
    ['2 pm', '2026-03-06T14:00:00-06:00'],
    ['12:05 am', '2026-03-06T00:05:00-06:00'],
    ['4 Mar', '2026-03-04T14:00:00-06:00'],
    ['Fri 6 Mar 14:00', '2026-03-06T14:00:00-06:00'],
  ])('"%s" is %s', (text, wanted) => expect(read(text)).toBe(wanted));

  test('the year that is not typed is the one that comes nearest: 28 Dec is last year’s', () => {
    expect(read('28 Dec 07:00')).toBe('2025-12-28T07:00:00-06:00');
  });
  test.each([
    ['3/6 14:00', 'when-ambiguous'],
    ['Mon 6 Mar', 'when-weekday'],
    ['30 Feb', 'when-unreadable'],
    ['25:00', 'when-unreadable'],
    ['13 pm', 'when-unreadable'],
    ['tomorrow', 'when-unreadable'],
    ['', 'when-unreadable'],
    ['8 Mar 02:30', 'when-not-on-clock'],
  ])('"%s" is refused as %s', (text, code) => expect(read(text)).toBe(code));
});

describe('hours as people type them', () => {
  test.each([
    ['24', 24],
    ['7.5', 7.5],
    ['7,5 h', 7.5],
    ['7 h 30 min', 7.5],
    ['7:30', 7.5],
    ['0', 0],
  ])('"%s" is %d h', (text, hours) => expect(readHours(text)).toEqual({ ok: true, value: hours }));
  test.each(['', '-3', 'day', '7:75', '99999'])('"%s" is refused', (text) => {
    expect(readHours(text).ok).toBe(false);
  });
});
