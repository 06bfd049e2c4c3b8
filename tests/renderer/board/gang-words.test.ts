import { describe, expect, test } from 'vitest';
import {
  arrivalWords,
  barrierWords,
  costWords,
  departureWords,
  shortWords,
  timeOfWay,
  wayWords,
} from '../../../renderer/screens/board/gang-words.ts';
import { madeTurn } from './made-board.ts';

const down = { how: 'break-down', hours: 1.25, until: '2026-03-09T12:00:00-04:00' } as const;
const turns = [
  madeTurn('P04/A1', 'P04', 'GA', { how: 'fly-on', turn: 'P09/A1', standsByH: 49 }),
  madeTurn('P09/A1', 'P09', 'GA', down, { before: { how: 'fly-on', turn: 'P04/A1' } }),
  madeTurn('P09/A2', 'P09', 'GB', down, { before: { how: 'regang', turn: 'P04/A1', hours: 1.88 } }),
] as const;
const byId = new Map(turns.map((turn) => [turn.id, turn]));

function money(cents: number): string {
  return `$${cents / 100}`;
}

describe('a gang in words', () => {
  test('where it comes from and where it goes', () => {
    expect(departureWords(turns[0], byId)).toBe('flies on to P09, stands by 2 d');
    expect(departureWords(turns[1], byId)).toBe('broken down, 1.3 h');
    expect(arrivalWords(turns[1], byId)).toBe('flies on from P04');
    expect(arrivalWords(turns[2], byId)).toBe('re-ganged from GA of P04, 1.9 h');
  });

  test('other ways, and what stands in the way of those that cannot be', () => {
    const way = { how: 'regang', pour: 'P05', design: 'GB', otherHand: true } as const;
    expect(wayWords(way, 'arrival')).toBe('re-gang GB from P05, of the other hand');
    expect(wayWords({ ...way, how: 'fly-on', otherHand: false }, 'departure')).toBe('fly on to P05');
    expect(timeOfWay({ regangH: 0.5, gapH: 50 })).toBe(', 0.5 h of work, 2 d between');
    const barred = {
      ...way,
      choice: { kind: 'follow', from: 'a', to: 'b' },
      side: 'A',
      barrier: { kind: 'too-little-time', neededH: 1.86, thereH: 0 },
    } as const;
    expect(barrierWords(barred, 'GA')).toBe('too little time between: 1.9 h needed, 0 h there');
    expect(barrierWords({ ...barred, barrier: { kind: 'no-common-piece' } }, 'GA')).toBe(
      'has no piece in common with GA',
    );
  });

  test('what a way costs the whole plan, and of what more and fewer are short', () => {
    expect([0, 2080, -100].map((cents) => costWords(cents, money))).toEqual([
      'the same',
      '+$20.8',
      '$1 less',
    ]);
    const from = '2026-03-09T12:00:00-04:00';
    expect(
      shortWords([
        { component: 'LK', more: 18, from },
        { component: 'P436', more: -2, from },
      ]),
    ).toBe('short LK 18 more; P436 2 fewer');
    expect(shortWords([])).toBe('');
  });
});
