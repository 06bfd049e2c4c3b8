import { describe, expect, test } from 'vitest';
import { changeWords } from '../../../../renderer/parts/changes/change-words.ts';
import { type Known, type PlanChange, readChanges } from '../../../../renderer/parts/changes/change-text.ts';
import { matching } from '../../../../renderer/parts/changes/pour-names.ts';
import { timeWords } from '../../../../renderer/parts/time-words.ts';

const timeZone = 'America/New_York';
const names = {
  words: timeWords(timeZone),
  note: (id: string): string => (id === 'note-101' ? 'D-101' : id),
};
const known: Known = {
  pours: [
    { code: 'P04', name: 'Tank wall W3' },
    { code: 'P07', name: 'Tank wall W5, 23 ft 9 in' },
    { code: 'P14', name: 'Columns C7 and C8' },
    { code: 'P15', name: 'Wall W9' },
    { code: 'RW-1', name: 'Retaining wall, east' },
    { code: 'RW-2', name: 'Retaining wall, west' },
  ],
  components: [{ code: 'LK' }, { code: 'R8' }, { code: 'P14' }],
  designs: [{ code: 'GA' }, { code: 'GB' }],
  notes: [
    { id: 'note-101', number: 'D-101', expectedAt: '2026-03-12T09:00:00-04:00' },
    { id: 'note-102', number: 'D-102', expectedAt: null },
  ],
  from: '2026-03-02T05:00:00.000Z',
  timeZone,
  later: (instant, days) => `${instant} ${days}`,
};

function said(text: string): unknown {
  const read = readChanges(text, known);
  return read.kind === 'changes' ? changeWords(read.changes, { ...names, words: shortDays }) : read;
}

/** `later` above leaves what it was asked for to be seen. */
const shortDays = {
  day: (instant: string): string => instant.slice(0, 10),
  full: (instant: string): string => instant,
};

describe('a change as it is typed', () => {
  test.each([
    ['14 +1d', 'move P14 by 1 working day'],
    ['P07 -2d', 'move P07 back by 2 working days'],
    ['p7 −2d', 'move P07 back by 2 working days'],
    ['7 –2d', 'move P07 back by 2 working days'],
    ['W5 +1d', 'move P07 by 1 working day'],
    ['w5 + 1 day', 'move P07 by 1 working day'],
    ['W9 +1w', 'move P15 by 5 working days'],
    ['tank wall w3 -2 weeks', 'move P04 back by 10 working days'],
    ['14+1d', 'move P14 by 1 working day'],
    ['14 +1', 'move P14 by 1 working day'],
    ['RW-1 +3d', 'move RW-1 by 3 working days'],
    ['14 +1d, 15 +1d', 'move P14 by 1 working day, move P15 by 1 working day'],
    ['14 drop', 'drop P14'],
    ['drop w9', 'drop P15'],
    ['LK +40', '40 LK more from 2026-03-02'],
    ['lk -3', '3 LK fewer from 2026-03-02'],
    ['R8 +4 from 9 Mar to 20 Mar', '4 R8 more from 2026-03-09 to 2026-03-20'],
    // A code that is a pour and a component is the pour.
    ['P14 +2', 'move P14 by 2 working days'],
    ['D-101 +2d', 'D-101 comes 2026-03-12T09:00:00-04:00 2'],
    ['d-101 -1d', 'D-101 comes 2026-03-12T09:00:00-04:00 -1'],
    ['D-101 drop', 'D-101 does not come'],
    ['set GA x2', 'add a set of 2 GA from 2026-03-02'],
    ['set ga', 'add a set of 1 GA from 2026-03-02'],
    ['set GA x2 + GB 1 from 9 Mar', 'add a set of 2 GA and 1 GB from 2026-03-09'],
    ['14 +1d; LK +40', 'move P14 by 1 working day, 40 LK more from 2026-03-02'],
  ])('"%s": %s', (text, expected) => {
    expect(said(text)).toBe(expected);
  });

  test.each([
    ['99 +1d', 'No pour, component or draft note is called "99". Write it like 14 +1d or LK +40.'],
    ['99 drop', 'No pour or draft note is called "99". Write it like 14 drop or D-101 drop.'],
    ['14 +0d', '14 +0d moves nothing. Write it like 14 +1d.'],
    ['14 +61d', '61 working days are more than the 60 a move may have, as in 14 +5d.'],
    ['14 +1d, P14 +2d', 'P14 is moved twice. Write it once, like P14 +1d.'],
    ['tomorrow', '"tomorrow" cannot be read. Write it like 14 +1d, 14 drop, LK +40, D-101 +2d or set GA x2.'],
    ['LK +2d', 'LK is a component: it takes pieces, not days. Write it like LK +40.'],
    ['LK +0', 'LK +0 changes nothing. Write it like LK +40.'],
    [
      'LK +4 from 3/4',
      '"3/4" can be read as day and month or month and day. Write it like LK +40 from 9 Mar to 20 Mar.',
    ],
    ['LK +4 from 20 Mar to 9 Mar', '9 Mar is not after 20 Mar. Write it like LK +40 from 9 Mar to 20 Mar.'],
    [
      '15 +2 from 9 Mar',
      'Only pieces are planned from a day on: no component is called "15". Write LK +40 from 9 Mar.',
    ],
    [
      'D-102 +2d',
      'Nobody said when D-102 comes, so it cannot slip. Enter its day in Papers, then write D-102 +2d.',
    ],
    ['set XX x2', 'No design is called "XX". Write it like set GA x2.'],
    ['set GA x0', 'A set has 1 to 100 gangs of a design, not 0. Write it like set GA x2.'],
  ])('"%s" is refused with an example: %s', (text, message) => {
    expect(readChanges(text, known)).toMatchObject({ kind: 'unclear', message });
  });

  test('"retaining +1d" fits two pours and is asked about, with both ready to choose', () => {
    expect(readChanges('retaining +1d', known)).toEqual({
      kind: 'unclear',
      message: '"retaining" fits 2 pours: which one?',
      choices: ['RW-1 +1d', 'RW-2 +1d'],
    });
    expect(readChanges('retaining drop', known)).toMatchObject({ choices: ['RW-1 drop', 'RW-2 drop'] });
  });

  test('a pour alone asks by how many days', () => {
    expect(readChanges('W5', known)).toMatchObject({ kind: 'unclear', choices: ['P07 +1d'] });
  });

  test('nothing typed is nothing asked', () => {
    expect(readChanges('  ', known)).toEqual({ kind: 'empty' });
  });

  test('a code goes before a name, and a name before a number in another code', () => {
    const both = [
      { code: 'W5', name: 'North wall' },
      { code: 'P05', name: 'W5' },
    ];
    expect(matching('w5', both).map((pour) => pour.code)).toEqual(['W5']);
    expect(matching('5', both).map((pour) => pour.code)).toEqual(['W5', 'P05']);
  });
});

describe('every kind of change', () => {
  const follow = { kind: 'follow', from: 'P04/A1', to: 'P07/A1' } as const;
  const entry = {
    kind: 'hire',
    component: 'LK',
    quantity: 40,
    from: '2026-03-09T07:00:00-04:00',
    to: '2026-03-20T07:00:00-04:00',
    costCents: 1,
    source: 'H1',
    remark: null,
  } as const;
  const reason = { reason: 'other', remark: null } as const;
  const at = '2026-03-19T12:00:00-04:00';
  test.each<[PlanChange, string]>([
    [{ kind: 'stock', entry }, 'hire 40 LK from Mon 9 Mar to Fri 20 Mar'],
    [
      { kind: 'stock', entry: { ...entry, kind: 'transfer' } },
      'bring 40 LK of H1 from Mon 9 Mar to Fri 20 Mar',
    ],
    [{ kind: 'fix', choice: follow }, 'fix P04/A1 goes on to P07/A1'],
    [{ kind: 'unfix', choice: { kind: 'no-regang', turn: 'P04/A1' } }, 'let go of P04/A1 is not re-ganged'],
    [{ kind: 'strip', pour: 'P04', stripMinimumH: 20, approvedBy: null }, 'strip P04 after 20 h'],
    [{ kind: 'design', pour: 'P04', side: 'A', position: 2, design: 'GB' }, 'GB at P04 side A, gang 2'],
    [
      { kind: 'calendar', exception: { kind: 'off', date: '2026-03-11', ...reason } },
      'nobody works on Wed 11 Mar',
    ],
    [
      {
        kind: 'calendar',
        exception: { kind: 'extra', date: '2026-03-14', start: '07:00', end: '15:30', ...reason },
      },
      'an extra shift on Sat 14 Mar, 07:00 to 15:30',
    ],
    [{ kind: 'date', pour: 'P07', finishAt: at }, 'P07 ends Thu 19 Mar 12:00'],
    [{ kind: 'pour-times', pour: 'P07', sides: [], finishAt: at }, 'P07 ends Thu 19 Mar 12:00'],
    [{ kind: 'hold', pour: 'P03', hold: null }, 'take the hold off P03'],
    [{ kind: 'hold', pour: 'P03', hold: { reason: 'query', who: 'A', until: null } }, 'hold P03'],
    [
      {
        kind: 'crane',
        booking: {
          crane: 'TC1',
          from: '2026-03-19T10:00:00-04:00',
          to: at,
          kind: 'wind',
          who: '',
          about: '',
        },
      },
      'crane TC1 stands for wind from Thu 19 Mar 10:00 to Thu 19 Mar 12:00',
    ],
    [{ kind: 'delivery', note: 'note-101', expectedAt: at }, 'D-101 comes Thu 19 Mar 12:00'],
  ])('%j is said as: %s', (change, words) => {
    expect(changeWords([change], names)).toBe(words);
  });
});
