// What weighs how much is common practice, no source: the tests hold that what accounts for exactly as many goes first.
import { describe, expect, test } from 'vitest';
import { type CauseFacts, likelyCauses, standingBefore } from '../../core/yard/likely-causes.ts';
import type { LocationKind } from '../../core/yard/movement.ts';
import { line, locations, move } from './a-count.ts';

function facts(difference: number, more: Partial<CauseFacts> = {}): CauseFacts {
  return {
    line: { ...line(), difference },
    others: [],
    partners: [],
    movements: [],
    locations: new Map<string, LocationKind>(locations.map(({ code, kind }) => [code, kind])),
    tickets: [],
    drafts: [],
    otherJobs: [],
    losses: null,
    ...more,
  };
}
const rules = (of: CauseFacts) => likelyCauses(of).map(({ rule }) => rule);

const draft = (name: string, quantity: number) => ({
  name,
  kind: 'return',
  from: 'YARD',
  to: 'H1',
  quantity,
});
const booked = (more: Parameters<typeof move>[0], reversedBy: string | null = null) => ({
  ...move(more),
  reversedBy,
});

describe('likely causes', () => {
  test('no difference needs no cause', () => {
    expect(likelyCauses(facts(0, { losses: { lost: 9, turns: 100 } }))).toEqual([]);
  });

  test('a look-alike over by as many at the same place goes first', () => {
    const others = [
      { ...line('P436'), difference: 1 },
      { ...line('P436', 'RACK'), difference: 1 },
      { ...line('R8'), difference: 1 },
    ];
    const of = facts(-1, { others, partners: ['P436'], tickets: [{ name: 'S-7', pour: 'P02', open: 1 }] });
    expect(likelyCauses(of)).toEqual([
      { rule: 'look-alike', other: 'P436', otherDifference: 1, quantity: 1 },
      { rule: 'open-ticket', ticket: 'S-7', pour: 'P02', quantity: 1 },
    ]);
  });

  test('a look-alike that is short as well explains nothing', () => {
    expect(rules(facts(-1, { others: [{ ...line('P436'), difference: -1 }], partners: ['P436'] }))).toEqual(
      [],
    );
  });

  test('short: a note out not booked; over: a note in', () => {
    const out = { name: 'R-207', kind: 'return', from: 'YARD', to: 'H1', quantity: 16 };
    const into = { name: 'D-101', kind: 'delivery', from: 'H1', to: 'YARD', quantity: 16 };
    expect(likelyCauses(facts(-16, { drafts: [out, into] }))).toMatchObject([{ note: 'R-207', way: 'out' }]);
    expect(likelyCauses(facts(16, { drafts: [out, into] }))).toMatchObject([{ note: 'D-101', way: 'in' }]);
  });

  test('of notes the one with exactly as many goes first', () => {
    expect(likelyCauses(facts(-16, { drafts: [draft('R-1', 40), draft('R-2', 16)] }))).toMatchObject([
      { note: 'R-2' },
      { note: 'R-1' },
    ]);
  });

  test('short: the last places it came from, a pour before a rack, each once; not the day the book began', () => {
    const movements = [
      move({ from: 'RACK', at: '2026-03-09T09:00:00-04:00' }),
      move({ from: 'POUR', quantity: 102, at: '2026-03-05T12:00:00-05:00' }),
      move({ from: 'POUR', quantity: 50, at: '2026-03-04T12:00:00-05:00' }),
      move({ reason: 'opening' }),
    ];
    const causes = likelyCauses(facts(-16, { movements }));
    expect(causes).toMatchObject([
      { rule: 'last-move', place: 'POUR', way: 'came-from', quantity: 102 },
      { rule: 'last-move', place: 'RACK', way: 'came-from' },
    ]);
  });

  test('over: the last places it went to', () => {
    const movements = [move({ from: 'YARD', to: 'POUR' }), move({ from: 'RACK', to: 'YARD' })];
    expect(likelyCauses(facts(2, { movements }))).toMatchObject([{ place: 'POUR', way: 'went-to' }]);
  });

  test('one owner short and another over at one place, and the last return of the other', () => {
    const of = facts(0, {
      line: { ...line('R8', 'YARD', 'OURS'), difference: -2 },
      others: [{ ...line('R8', 'YARD', 'H1'), difference: 2 }],
      movements: [
        move({ component: 'R8', owner: 'H1', from: 'YARD', to: 'H1', quantity: 6, reason: 'return' }),
      ],
    });
    expect(likelyCauses(of)).toMatchObject([
      { rule: 'other-owner', owner: 'H1', quantity: 2 },
      { rule: 'returned-as-other', owner: 'H1', quantity: 6 },
    ]);
  });

  test('another place over by as many, then another job, then what is usually lost', () => {
    const of = facts(-4, {
      others: [{ ...line('LK', 'RACK'), difference: 4 }],
      otherJobs: [{ place: 'JOB', quantity: 0 }],
      losses: { lost: 9, turns: 300 },
    });
    expect(rules(of)).toEqual(['other-place', 'other-job', 'losses']);
  });

  test('movements after the count, and those taken back, are no causes', () => {
    const list = [
      booked({ id: 'old-one-1', at: '2026-03-03T07:00:00-05:00' }),
      booked({ id: 'new-one-1', at: '2026-03-04T07:00:00-05:00' }),
      booked({ id: 'too-late-1', at: '2026-03-11T07:00:00-04:00' }),
      booked({ id: 'taken-back', at: '2026-03-04T07:00:00-05:00' }, 'reversal-1'),
    ];
    expect(standingBefore(list, '2026-03-10T16:00:00-04:00').map(({ id }) => id)).toEqual([
      'new-one-1',
      'old-one-1',
    ]);
  });
});
