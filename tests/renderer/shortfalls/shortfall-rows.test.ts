import { describe, expect, test } from 'vitest';
import { timeWords } from '../../../renderer/parts/time-words.ts';
import { headlineOf } from '../../../renderer/screens/board/headline.ts';
import type { Board } from '../../../renderer/screens/board/board-types.ts';
import {
  daysOf,
  hireWords,
  holders,
  holderWords,
  spanWords,
} from '../../../renderer/screens/shortfalls/shortfall-rows.ts';
import { madeShortfall, timeZone } from '../board/made-board.ts';

const words = timeWords(timeZone);
const money = (cents: number): string => `$${(cents / 100).toFixed(2)}`;

describe('a shortfall in words', () => {
  test('gangs of one design at one pour are one holder; the most pieces first', () => {
    expect(holders(madeShortfall()).map((one) => `${one.pour} ${one.pieces} ${one.what}`)).toEqual([
      'P08 80 loose, locks between gangs',
      'P07 46 2 GA',
      'P08 16 1 GB',
    ]);
    expect(holderWords(madeShortfall())).toBe(
      'P08: 80 loose, locks between gangs, 16 in 1 GB; P07: 46 in 2 GA',
    );
  });

  test('one day is written once, two days twice; days are those of the calendar', () => {
    const long = madeShortfall({ to: '2026-03-16T15:30:00-04:00' });
    expect(spanWords(madeShortfall().from, madeShortfall().to, words)).toBe('Wed 11 Mar 07:00 – 15:30');
    expect(spanWords(long.from, long.to, words)).toBe('Wed 11 Mar 07:00 – Mon 16 Mar 15:30');
    expect([daysOf(madeShortfall(), words), daysOf(long, words)]).toEqual([1, 6]);
  });

  test('94 locks for 6 days say their price; what cannot be hired says so', () => {
    expect(hireWords(madeShortfall(), 6, money)).toBe('hire 94 for 6 days: $23.03');
    expect(hireWords(madeShortfall({ canBeHired: false, hireCents: null }), 6, money)).toBe(
      'cannot be hired',
    );
  });

  test('the headline names the earliest shortfall and who holds most', () => {
    const later = madeShortfall({ id: 's2', component: 'R8', from: '2026-03-12T07:00:00-04:00' });
    const board = { shortfalls: [later, madeShortfall()], pours: [{}] } as unknown as Board;
    expect(headlineOf(board, words).text).toBe(
      '2 shortfalls; first: 94 LK (Lock) short Wed 11 Mar 07:00, held by P08, P07',
    );
  });

  test('with nothing short the headline says so and how many pours it looked at', () => {
    const board = { shortfalls: [], pours: [{}, {}] } as unknown as Board;
    expect(headlineOf(board, words)).toMatchObject({
      state: 'ok',
      text: 'Nothing is short: every piece of 2 pours is there on its day.',
    });
  });
});
