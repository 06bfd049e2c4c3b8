import { describe, expect, test } from 'vitest';
import { timeWords } from '../../../renderer/parts/time-words.ts';
import { breaksWords, heldBackWords, meritWords } from '../../../renderer/screens/board/date-words.ts';
import { causeWords, overloadWords, wayEffects } from '../../../renderer/screens/board/over-words.ts';
import { instructionWords } from '../../../renderer/screens/board/told-words.ts';
import { madeShortfall, timeZone } from './made-board.ts';

const crew = {
  id: 'crew@2026-03-05',
  kind: 'crew',
  date: '2026-03-05',
  crane: null,
  use: null,
  needed: 62.5,
  there: 42.5,
  missing: 20,
  causes: [],
} as const;

describe('what stands in the panes of the board', () => {
  test('a day that is asked for too much', () => {
    expect(overloadWords({ ...crew, causes: [] })).toBe('crew: 62.5 of 42.5 hours');
    const crane = { ...crew, kind: 'crane', crane: 'TC1', needed: 96, there: 120, causes: [] } as const;
    expect(overloadWords({ ...crane, causes: [] })).toBe(
      'crane TC1: 96 of 120 minutes, but not when they are wanted',
    );
    expect(causeWords({ step: 'regang', pour: 'P04', toPour: 'P07', amount: 7.5 }, crew)).toBe(
      're-gang from P04 for P07: 7.5 h',
    );
    expect(
      wayEffects({
        change: { kind: 'move', pour: 'P04', workingDays: 1 },
        costChangeCents: 0,
        newShortfalls: 2,
        goneShortfalls: 1,
        changedShortfalls: 0,
        toldChanged: 1,
        overloadsGone: ['crew@2026-03-05', 'crew@2026-03-06'],
      }),
    ).toBe('2 new shortfalls, 1 gone; changes 1 told instruction; clears 1 more day besides');
  });

  test('a possible date: what speaks for it, what it breaks, what keeps it from being sooner', () => {
    expect(meritWords(['earliest', 'breaks-least'])).toBe('the soonest, breaks least');
    const nothing = {
      newShortfalls: [],
      changedShortfalls: [],
      overfullDays: [],
      fullCranesAndPads: [],
      findings: [],
      toldChange: 0,
      unmetChange: 0,
    };
    expect(breaksWords(nothing)).toBe('breaks nothing');
    const [less, more] = [madeShortfall({ quantity: 2 }), madeShortfall({ component: 'R8', quantity: 4 })];
    expect(
      breaksWords({
        ...nothing,
        newShortfalls: [madeShortfall()],
        // One that shrinks is no harm.
        changedShortfalls: [
          { before: { ...more, quantity: 1 }, after: more },
          { before: madeShortfall(), after: less },
        ],
        overfullDays: [{ date: '2026-03-11', hoursNeeded: 50, hoursThere: 42.5 }],
        toldChange: 2,
      }),
    ).toBe('94 LK, 4 R8 short; crew over its hours Wed 11 Mar; changes 2 told instructions');
    const until = '2026-03-11T07:00:00-04:00';
    expect(heldBackWords({ kind: 'after', pour: 'P05', until }, timeWords(timeZone))).toBe(
      'Not sooner: it comes after P05, Wed 11 Mar 07:00.',
    );
  });

  test('an instruction as the crew hears it', () => {
    const turn = {
      side: 'A',
      from: '2026-03-04T07:00:00-05:00',
      to: '2026-03-09T10:00:00-04:00',
    } as const;
    const from = { ...turn, turn: 'P04/A1', pour: 'P04', design: 'GC' };
    const to = { ...turn, turn: 'P07/A2', pour: 'P07', design: 'GD' };
    const instruction = { kind: 'follow', from: 'P04/A1', to: 'P07/A2' } as const;
    expect(instructionWords({ instruction, from, to })).toBe('re-gang GC of P04/A1 into GD for P07/A2');
    expect(instructionWords({ instruction, from, to: { ...to, design: 'GC' } })).toBe(
      'GC of P04/A1 flies on to P07/A2',
    );
    expect(
      instructionWords({ instruction: { kind: 'break-down', turn: 'P04/A1' }, from: null, to: null }),
    ).toBe('break down the gang of P04/A1');
  });
});
