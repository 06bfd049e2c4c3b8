import { describe, expect, test } from 'vitest';
import { matching, moveWords, readMoves } from '../../../renderer/screens/board/move-text.ts';

const pours = [
  { code: 'P04', name: 'Tank wall W3' },
  { code: 'P07', name: 'Tank wall W5, 23 ft 9 in' },
  { code: 'P14', name: 'Columns C7 and C8' },
  { code: 'P15', name: 'Wall W9' },
  { code: 'RW-1', name: 'Retaining wall, east' },
  { code: 'RW-2', name: 'Retaining wall, west' },
];

function moves(text: string): unknown {
  const read = readMoves(text, pours);
  return read.kind === 'moves' ? read.moves.map((move) => `${move.pour} ${move.workingDays}`) : read;
}

describe('a move as it is typed', () => {
  test.each([
    ['14 +1d', ['P14 1']],
    ['P07 -2d', ['P07 -2']],
    ['p7 −2d', ['P07 -2']],
    ['7 −2d', ['P07 -2']],
    ['W5 +1d', ['P07 1']],
    ['w5 + 1 day', ['P07 1']],
    ['W9 +1w', ['P15 5']],
    ['tank wall w3 -2 weeks', ['P04 -10']],
    ['14+1d', ['P14 1']],
    ['14 +1', ['P14 1']],
    ['RW-1 +3d', ['RW-1 3']],
    ['14 +1d, 15 +1d', ['P14 1', 'P15 1']],
  ])('"%s" is read as %j', (text, expected) => {
    expect(moves(text)).toEqual(expected);
  });

  test('"retaining +1d" fits two pours and is asked about, with both ready to choose', () => {
    expect(readMoves('retaining +1d', pours)).toEqual({
      kind: 'unclear',
      message: '"retaining" fits 2 pours: which one?',
      choices: ['RW-1 +1d', 'RW-2 +1d'],
    });
  });

  test('a pour alone asks by how many days', () => {
    expect(readMoves('W5', pours)).toMatchObject({ kind: 'unclear', choices: ['P07 +1d'] });
  });

  test.each([
    ['99 +1d', 'No pour is called "99".'],
    ['14 +0d', '14 +0d moves nothing.'],
    ['14 +61d', '61 working days are more than the 60 a move may have.'],
    ['14 +1d, P14 +2d', 'P14 is moved twice.'],
    ['tomorrow', '"tomorrow" is not a move. Maybe write it like 14 +1d or W5 -2d.'],
  ])('"%s" is refused: %s', (text, message) => {
    expect(readMoves(text, pours)).toMatchObject({ kind: 'unclear', message });
  });

  test('nothing typed is nothing asked', () => {
    expect(readMoves('  ', pours)).toEqual({ kind: 'empty' });
  });

  test('a code goes before a name, and a name before a number in another code', () => {
    const both = [
      { code: 'W5', name: 'North wall' },
      { code: 'P05', name: 'W5' },
    ];
    expect(matching('w5', both).map((pour) => pour.code)).toEqual(['W5']);
    expect(matching('5', both).map((pour) => pour.code)).toEqual(['W5', 'P05']);
  });

  test('a move is said in words for undo', () => {
    expect(moveWords([{ pour: 'P07', workingDays: -2 }])).toBe('move P07 back by 2 working days');
    expect(moveWords([{ pour: 'P14', workingDays: 1 }])).toBe('move P14 by 1 working day');
  });
});
