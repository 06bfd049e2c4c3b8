import { describe, expect, test } from 'vitest';
import { markedWords, rowMarkWords, sideMarks } from '../../../renderer/screens/board/choice-words.ts';
import { linksOf } from '../../../renderer/screens/board/links.ts';
import { thenOf } from '../../../renderer/screens/board/then-words.ts';
import { madeTurn } from './made-board.ts';

const down = { how: 'break-down', hours: 1, until: '2026-03-09T12:00:00-04:00' } as const;
const none = { before: false, after: false, noRegang: false };

describe('what is told and fixed of gangs', () => {
  test('a sign has its word, and both are said where both are', () => {
    expect(markedWords({ told: null, fixed: false })).toBe('');
    expect(markedWords({ told: 'followed', fixed: false })).toBe(' · told');
    expect(markedWords({ told: 'changed', fixed: true })).toBe(' · told otherwise, fixed');
  });

  test('of several gangs of a side, one that was told otherwise is what is seen', () => {
    const turns = [
      madeTurn('a', 'P04', 'GA', down, { told: { before: 'followed', after: null } }),
      madeTurn('b', 'P04', 'GA', down, { told: { before: 'changed', after: null } }),
      madeTurn('c', 'P04', 'GA', down, { side: 'B', fixed: { ...none, noRegang: true } }),
    ];
    expect(sideMarks(turns, 'A')).toEqual({
      before: { told: 'changed', fixed: false },
      after: { told: null, fixed: false },
    });
    expect(sideMarks(turns, 'B').after).toEqual({ told: null, fixed: true });
    expect(rowMarkWords(turns)).toBe('1 told, 1 told otherwise, 1 fixed');
  });

  test('gangs of which something else is told are another phrase and another line', () => {
    const after = { how: 'fly-on', turn: 'next', standsByH: 0 } as const;
    const turns = [
      madeTurn('a', 'P04', 'GA', after, { told: { before: null, after: 'followed' } }),
      madeTurn('b', 'P04', 'GA', after),
      madeTurn('next', 'P09', 'GA', down),
    ];
    const byId = new Map(turns.map((turn) => [turn.id, turn]));
    expect(
      thenOf(turns.slice(0, 2), byId)
        .map(({ words }) => words)
        .toSorted(),
    ).toEqual(['GA flies on to P09', 'GA flies on to P09 · told']);
    expect(linksOf(turns).map(({ words }) => words)).toEqual(['GA flies on · told', 'GA flies on']);
  });
});
