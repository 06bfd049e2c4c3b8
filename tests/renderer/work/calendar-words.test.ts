import { expect, test } from 'vitest';
import { exceptionWords, offered } from '../../../renderer/screens/work/calendar-words.ts';

const shifts = { start: '07:00', end: '15:30' };

test('a worked day can be lost, longer by two hours, or have a night; the others can be worked', () => {
  const worked = offered({ date: '2026-03-04', working: true }, shifts);
  expect(worked.map(({ name }) => name)).toEqual([
    'Lost to weather',
    'Holiday',
    'Two hours longer',
    'Night 20:00-02:00',
  ]);
  expect(worked.map(({ exception }) => exceptionWords(exception))).toEqual([
    'lost to weather',
    'holiday',
    'longer day 15:30-17:30',
    'night 20:00-02:00',
  ]);
  expect(
    offered({ date: '2026-03-07', working: false }, shifts).map(({ exception }) => exceptionWords(exception)),
  ).toEqual(['worked 07:00-12:00', 'worked 07:00-15:30', 'night 20:00-02:00']);
});
