// What booking a strip ticket moves, case by case. Which pieces stay in a gang that flies on, and that ours are taken to
// be lost before hired ones, is common practice, no source.
import { describe, expect, test } from 'vitest';
import { at, booked, entriesOf, owners, rowsOf, standing, ticketOf, wordsOfMoves } from './a-ticket.ts';

const gang = 'LK 6 OURS G-1; LK 4 HIRE G-1; P1 2 OURS G-1';
const expected = 'P1 2 G-1; LK 10 G-1';

const moved = `
next       | counted                                                  | moves
break-down | P1 2 to-clean; LK 10 to-clean                            | P1 2 OURS G-1>YARD ready>to-clean strip; LK 6 OURS G-1>YARD ready>to-clean strip; LK 4 HIRE G-1>YARD ready>to-clean strip
break-down | P1 2 ready; LK 10 ready                                  | P1 2 OURS G-1>YARD ready strip; LK 6 OURS G-1>YARD ready strip; LK 4 HIRE G-1>YARD ready strip
break-down | P1 1 to-clean; P1 1 scrapped; LK 7 to-clean              | P1 1 OURS G-1>YARD ready>to-clean strip; P1 1 OURS G-1>YARD ready>scrapped strip; LK 3 OURS G-1>LOST ready lost; LK 3 OURS G-1>YARD ready>to-clean strip; LK 4 HIRE G-1>YARD ready>to-clean strip
break-down | P1 2 ready; LK 5 ready OURS; LK 3 ready                  | P1 2 OURS G-1>YARD ready strip; LK 5 OURS G-1>YARD ready strip; LK 1 OURS G-1>LOST ready lost; LK 1 HIRE G-1>LOST ready lost; LK 3 HIRE G-1>YARD ready strip
break-down | P1 2 ready; LK 6 ready OURS                              | P1 2 OURS G-1>YARD ready strip; LK 6 OURS G-1>YARD ready strip; LK 4 HIRE G-1>LOST ready lost
break-down | P1 2 ready; LK 0 ready                                   | P1 2 OURS G-1>YARD ready strip; LK 6 OURS G-1>LOST ready lost; LK 4 HIRE G-1>LOST ready lost
fly-on     | P1 2 ready; LK 10 ready                                  |
fly-on     | P1 2 to-clean; LK 10 ready                               | P1 2 OURS G-1>G-1 ready>to-clean strip
fly-on     | P1 1 ready; P1 1 to-repair; LK 8 ready; LK 1 quarantine  | P1 1 OURS G-1>YARD ready>to-repair strip; LK 1 OURS G-1>LOST ready lost; LK 1 HIRE G-1>YARD ready>quarantine strip
regang     | P1 2 ready; LK 9 ready; LK 1 scrapped HIRE               | LK 1 HIRE G-1>YARD ready>scrapped strip
stand-by   | P1 2 ready-hidden; LK 10 ready                           | P1 2 OURS G-1>G-1 ready>ready-hidden strip
break-down | P1 2 ready; LK 10 ready; LK 2 ready extra; W 1 to-clean HIRE extra | P1 2 OURS G-1>YARD ready strip; LK 6 OURS G-1>YARD ready strip; LK 4 HIRE G-1>YARD ready strip; LK 2 OURS LOST>YARD ready found; W 1 HIRE LOST>YARD to-clean found
`;

describe('what booking moves', () => {
  for (const [next = '', counted = '', moves = ''] of rowsOf(moved))
    test(`${next}: ${counted}`, () => {
      const done = booked(ticketOf(expected, next), gang, entriesOf(counted));
      expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe(moves);
    });

  test('parts counted by two people add up, and what the second takes back is gone', () => {
    const entries = entriesOf('P1 2 ready; LK 6 ready', 'LK 5 ready', 'LK -1 ready');
    const done = booked(ticketOf(expected, 'break-down'), gang, entries);
    expect(
      done.ok && done.value.result.lines.map((line) => [line.component, line.ready, line.missing]),
    ).toEqual([
      ['P1', 2, 0],
      ['LK', 10, 0],
    ]);
  });

  test('of a yard they were never issued from 3 of 5 go to the place, 1 is lost, 1 stays for repair', () => {
    const done = booked(
      ticketOf('LK 5 BACK', 'break-down'),
      'LK 9 OURS BACK',
      entriesOf('LK 3 to-clean; LK 1 to-repair'),
    );
    expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe(
      'LK 1 OURS BACK>LOST ready lost; LK 3 OURS BACK>YARD ready>to-clean transfer; LK 1 OURS BACK>YARD ready>to-repair transfer',
    );
    const there = booked(ticketOf('LK 5 YARD', 'break-down'), 'LK 9 OURS YARD', entriesOf('LK 5 ready'));
    expect(there.ok && there.value.movements).toEqual([]);
  });

  test('dirty ones that lay in the yard before are not those that come back dirty now', () => {
    const done = booked(
      ticketOf('LK 5 YARD', 'break-down'),
      'LK 9 OURS YARD ready; LK 3 OURS YARD to-clean',
      entriesOf('LK 5 to-clean'),
    );
    expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe(
      'LK 5 OURS YARD>YARD ready>to-clean strip',
    );
  });

  test('a piece that is not ours stands in the gang and comes back with it; ours are taken to be missing first', () => {
    const done = booked(
      ticketOf('LK 10 G-1', 'break-down'),
      'LK 8 OURS G-1; LK 2 FOUND G-1',
      entriesOf('LK 9 ready'),
      { owners: [...owners, { code: 'FOUND', name: 'Not ours', kind: 'others', agreement: null }] },
    );
    expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe(
      'LK 1 OURS G-1>LOST ready lost; LK 7 OURS G-1>YARD ready strip; LK 2 FOUND G-1>YARD ready strip',
    );
  });

  test('loose pieces of the pour go to the place, and their remark names pour and ticket', () => {
    const done = booked(ticketOf('TR 20 J1/P01', 'loose'), 'TR 20 OURS J1/P01', entriesOf('TR 18 to-clean'));
    expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe(
      'TR 2 OURS J1/P01>LOST ready lost; TR 18 OURS J1/P01>YARD ready>to-clean strip',
    );
    expect(done.ok && done.value.movements[0]).toMatchObject({
      id: 'ticket-1-1',
      noteNumber: 'S-1',
      paper: 'ticket-1',
      at,
      who: 'booker',
      remark: 'Strip ticket S-1, pour P01, loose pieces: not come back.',
    });
  });

  test('the remark of what is lost names the gang and its turn', () => {
    const done = booked(ticketOf(expected, 'fly-on'), gang, entriesOf('P1 2 ready; LK 9 ready'));
    expect(done.ok && done.value.movements.map(({ remark }) => remark)).toEqual([
      'Strip ticket S-1, pour P01, gang G-1 (P01/A1): not come back.',
    ]);
    expect(done.ok && done.value.result.missing).toEqual([
      { part: 'P01/A1', component: 'LK', owner: 'OURS', quantity: 1 },
    ]);
  });

  test('nobody counted it and it is taken as expected: broken down it is to be cleaned, flown on it stays, and both say so', () => {
    const down = booked(ticketOf(expected, 'break-down'), gang, [], { uncountedAsExpected: true });
    expect(down.ok && down.value.result.lines.map(({ toClean, uncounted }) => [toClean, uncounted])).toEqual([
      [2, true],
      [10, true],
    ]);
    const on = booked(ticketOf(expected, 'fly-on'), gang, [], { uncountedAsExpected: true });
    expect(on.ok && on.value.movements).toEqual([]);
  });
});

describe('what becomes of the gang', () => {
  const steps = `
next       | steps
break-down | stripped null, broken-down null at YARD
fly-on     | stripped P02/A1
regang     | stripped P02/B1 at YARD
stand-by   | stripped null, standing-by null at BACK
`;
  for (const [next = '', words = ''] of rowsOf(steps))
    test(`${next}: ${words}`, () => {
      const done = booked(ticketOf(expected, next), gang, entriesOf('P1 2 ready; LK 10 ready'));
      const told = done.ok
        ? done.value.steps.map(({ state, nextTurn, place }) =>
            place === standing.last.place ? `${state} ${nextTurn}` : `${state} ${nextTurn} at ${place}`,
          )
        : [done.error.code];
      expect(told.join(', ')).toBe(words);
    });
});

describe('late finds', () => {
  const [part] = ticketOf('LK 0 LOST', 'loose').parts;
  if (part === undefined) throw new Error('A ticket has a part.');
  const late = ticketOf('', 'loose', {
    id: 'ticket-2',
    number: 2,
    follows: 'ticket-1',
    parts: [{ ...part, expected: [{ component: 'LK', quantity: 0, sought: 4, from: 'LOST' }] }],
  });
  const lost = [
    { component: 'LK', owner: 'OURS', condition: 'ready', quantity: 3 },
    { component: 'LK', owner: 'HIRE', condition: 'ready', quantity: 1 },
  ] as const;

  test('2 of 4 come back from the lost, ours first, and what was not found stays there', () => {
    const done = booked(late, '', entriesOf('LK 2 to-clean'), { lost });
    expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe(
      'LK 2 OURS LOST>YARD ready>to-clean found',
    );
    expect(done.ok && done.value.result.lines).toMatchObject([
      { expected: 0, missing: 0, found: 2, toClean: 2 },
    ]);
  });

  test('a mark decides whose was found', () => {
    const done = booked(late, '', entriesOf('LK 1 ready HIRE'), { lost });
    expect(done.ok ? wordsOfMoves(done.value.movements) : done.error).toBe('LK 1 HIRE LOST>YARD ready found');
  });

  test('nothing counted is nothing to book, and a fifth is one too many', () => {
    expect(booked(late, '', [], { lost })).toMatchObject({ error: { code: 'nothing-counted' } });
    expect(booked(late, '', entriesOf('LK 5 ready'), { lost })).toMatchObject({
      error: { code: 'more-than-expected' },
    });
  });
});

describe('what is refused', () => {
  const refused = `
counted                          | stock                                          | code
                                 | LK 6 OURS G-1; LK 4 HIRE G-1; P1 2 OURS G-1    | not-counted
P1 2 ready                       | LK 6 OURS G-1; LK 4 HIRE G-1; P1 2 OURS G-1    | not-counted
P1 2 ready; LK 11 ready          | LK 6 OURS G-1; LK 4 HIRE G-1; P1 2 OURS G-1    | more-than-expected
P1 2 ready; LK 10 ready          | LK 6 OURS G-1; LK 3 HIRE G-1; P1 2 OURS G-1    | make-up-changed
P1 2 ready; LK 10 ready          | LK 6 OURS G-1; LK 4 HIRE G-1; P1 2 OURS G-1; W 1 OURS G-1 | make-up-changed
P1 2 ready; LK 5 ready HIRE      | LK 6 OURS G-1; LK 4 HIRE G-1; P1 2 OURS G-1    | not-of-owner
`;
  for (const [counted = '', stock = '', code = ''] of rowsOf(refused))
    test(`${code}: ${counted} of ${stock}`, () => {
      expect(booked(ticketOf(expected, 'break-down'), stock, entriesOf(counted))).toMatchObject({
        ok: false,
        error: { code },
      });
    });

  test('what is not counted is named part by part', () => {
    const none = booked(ticketOf(expected, 'fly-on'), gang, []);
    expect(none.ok ? '' : none.error.message).toBe('Nobody counted all of S-1; P01/A1: nothing of it.');
    const some = booked(ticketOf(expected, 'fly-on'), gang, entriesOf('P1 2 ready'));
    expect(some.ok ? '' : some.error.message).toBe('Nobody counted all of S-1; P01/A1: not LK.');
  });

  test('a yard that has fewer than were expected of it', () => {
    const short = booked(ticketOf('LK 5 BACK', 'break-down'), 'LK 4 OURS BACK', entriesOf('LK 5 ready'));
    expect(short).toMatchObject({ error: { code: 'not-enough' } });
    const elsewhere = booked(
      ticketOf('LK 5 BACK', 'break-down'),
      'LK 4 OURS BACK; LK 1 OURS YARD',
      entriesOf('LK 5 to-clean'),
    );
    expect(elsewhere.ok ? wordsOfMoves(elsewhere.value.movements) : elsewhere.error).toBe(
      'LK 4 OURS BACK>YARD ready>to-clean transfer; LK 1 OURS YARD>YARD ready>to-clean strip',
    );
  });

  test('booked before, by whom and when; dropped; before the gang was set', () => {
    const full = entriesOf('P1 2 ready; LK 10 ready');
    const result = { at, who: 'Lindqvist', lines: [], missing: [] };
    const again = booked(ticketOf(expected, 'fly-on', { state: 'booked', result }), gang, full);
    expect(again.ok ? '' : again.error).toMatchObject({
      code: 'ticket-booked',
      message: `S-1 was booked by Lindqvist at ${at}.`,
    });
    expect(booked(ticketOf(expected, 'fly-on', { state: 'dropped' }), gang, full)).toMatchObject({
      error: { code: 'ticket-dropped' },
    });
    const before = booked(ticketOf(expected, 'fly-on'), gang, full, { at: '2026-03-01T15:00:00-05:00' });
    expect(before).toMatchObject({ error: { code: 'too-early' } });
  });
});
