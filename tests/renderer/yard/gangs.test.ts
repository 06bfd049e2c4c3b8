// Words and drafts of the gangs' screen: which buttons a gang has, what is typed when it is broken down, and counts by
// weight in words.
import { describe, expect, test } from 'vitest';
import { mayFollow } from '../../../core/yard/gang-steps.ts';
import { bookedOf, foundKey, readFound } from '../../../renderer/screens/yard/gangs/break-draft.ts';
import {
  actsOf,
  piecesText,
  standingWords,
  turnWords,
} from '../../../renderer/screens/yard/gangs/gang-words.ts';
import { countedWords } from '../../../renderer/screens/yard/gangs/weigh-words.ts';

describe('buttons by what may follow', () => {
  test.each([
    ['assembled', ['stand', 'stand-by', 'move', 'regang', 'break']],
    ['standing', ['strip']],
    ['stripped', ['stand', 'stand-by', 'move', 'regang', 'break']],
    ['standing-by', ['stand', 'move', 'regang', 'break']],
    ['broken-down', ['build']],
  ] as const)('%s', (state, acts) => {
    expect(actsOf({ state, mayFollow: [...mayFollow(state)] })).toEqual(acts);
  });
});

test('turns in words', () => {
  expect(turnWords({ turn: 'P01/A1', nextTurn: 'P04/A1' })).toBe('P01/A1, then P04/A1');
  expect(turnWords({ turn: null, nextTurn: 'P04/A1' })).toBe('next P04/A1');
  expect(turnWords({ turn: null, nextTurn: null })).toBe('');
});

test.each([
  [{ is: 'ready', until: '2026-06-30' } as const, 'ready until 30 Jun'],
  [{ is: 'out-of-date', since: '2026-03-03' } as const, 'out of date since 3 Mar'],
  [{ is: 'failed', on: '2026-02-20' } as const, 'failed on 20 Feb'],
  [{ is: 'never-inspected' } as const, 'never inspected'],
])('lifting gear in words', (standing, words) => {
  expect(standingWords({ standing })).toBe(words);
});

test('what is in a container, by component', () => {
  expect(
    piecesText([
      { component: 'LK', quantity: 30 },
      { component: 'RB', quantity: 2 },
      { component: 'LK', quantity: 10 },
    ]),
  ).toBe('40 LK, 2 RB');
});

test('a count by weight in words', () => {
  expect(countedWords({ quantity: 40, least: 40, most: 40 })).toBe('40 pieces');
  expect(countedWords({ quantity: 1, least: 1, most: 2 })).toBe('1 piece, at least 1 and at most 2');
});

describe('quantities of a gang that is broken down', () => {
  const booked = bookedOf([
    { component: 'LK', quantity: 4 },
    { component: 'LK', quantity: 2 },
    { component: 'P8', quantity: 1 },
  ]);
  const others = ['ready', 'to-repair'] as const;
  const read = (typed: Readonly<Record<string, string>>) =>
    readFound<'to-clean' | 'ready' | 'to-repair'>(booked, 'to-clean', others, typed);

  test('nothing typed: all in the first condition', () => {
    expect(read({})).toEqual({
      ok: true,
      value: [
        { component: 'LK', condition: 'to-clean', quantity: 6 },
        { component: 'P8', condition: 'to-clean', quantity: 1 },
      ],
    });
  });

  test('2 of 6 locks to repair and the panel ready: 4 locks are left for the first condition', () => {
    expect(read({ [foundKey('LK', 'to-repair')]: ' 2 ', [foundKey('P8', 'ready')]: '1' })).toEqual({
      ok: true,
      value: [
        { component: 'LK', condition: 'to-repair', quantity: 2 },
        { component: 'LK', condition: 'to-clean', quantity: 4 },
        { component: 'P8', condition: 'ready', quantity: 1 },
      ],
    });
  });

  test.each([
    [{ [foundKey('LK', 'ready')]: '7' }, 'more-than-booked', '7 of LK are more than the 6 in it.'],
    [{ [foundKey('LK', 'ready')]: '2,5' }, 'not-a-number', '"2,5" of LK is not a whole number of pieces.'],
  ])('%j is refused at the component', (typed, code, message) => {
    expect(read(typed)).toEqual({ ok: false, error: { code, message, field: 'LK' } });
  });
});
