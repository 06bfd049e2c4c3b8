// What may be entered on a strip ticket, after what was entered before.
import { describe, expect, test } from 'vitest';
import { checkTicketEntry } from '../../core/yard/check-ticket-entry.ts';
import { countedLines, extraCounts } from '../../core/yard/ticket-counts.ts';
import { entriesOf, linesOf, rowsOf, ticketOf } from './a-ticket.ts';

const view = {
  components: new Set(['P1', 'P2', 'LK', 'W']),
  owners: new Set(['OURS', 'HIRE']),
  lookAlikes: new Map([['P2', ['P1']]]),
};
const ticket = ticketOf('P1 2 G-1; LK 10 G-1', 'fly-on');

const cases = `
before              | entered                        | answer
                    | LK 10 ready                    | ok
                    | LK 11 ready                    | more-than-expected
LK 6 ready          | LK 4 to-clean                  | ok
LK 6 ready          | LK 5 to-clean                  | more-than-expected
LK 6 ready          | LK -6 ready; LK 10 to-clean    | ok
LK 6 ready          | LK -7 ready                    | below-zero
LK 6 ready          | LK -1 to-clean                 | below-zero
LK 6 ready OURS     | LK -1 ready                    | below-zero
LK 6 ready OURS     | LK -1 ready OURS               | ok
LK 10 ready         | LK 3 ready extra               | ok
LK 10 ready; LK 3 ready extra | LK -4 ready extra    | below-zero
LK 10 ready; LK 3 ready extra | LK -3 ready extra    | ok
                    | LK 0 ready                     | ok
                    | P2 1 ready                     | not-on-ticket
                    | W 1 ready                      | not-on-ticket
                    | W 1 ready extra                | ok
                    | X9 1 ready                     | unknown-component
                    | X9 1 ready extra               | unknown-component
                    | LK 1 ready NOBODY              | unknown-owner
                    | LK 1 ready @P01/B7             | unknown-part
LK 10 ready         | P1 2 ready; LK 1 ready         | more-than-expected
`;

describe('an entry after others', () => {
  for (const [before = '', entered = '', wanted = ''] of rowsOf(cases))
    test(`${wanted}: ${entered} after ${before === '' ? 'none' : before}`, () => {
      const checked = checkTicketEntry(ticket, entriesOf(before), linesOf(entered), view);
      expect(checked.ok ? 'ok' : checked.error.code).toBe(wanted);
    });

  test('one too many is told with all its figures and what may be meant', () => {
    const checked = checkTicketEntry(
      ticket,
      entriesOf('LK 6 ready'),
      linesOf('P1 1 ready; LK 5 ready'),
      view,
    );
    expect(checked.ok ? null : checked.error).toMatchObject({
      message: '11 of LK would be counted for P01/A1 on S-1; 10 are expected back: 1 too many.',
      field: 'lines.1.quantity',
    });
  });

  test('a component that is taken for one of the ticket names the one', () => {
    const checked = checkTicketEntry(ticket, [], linesOf('P2 1 ready'), view);
    expect(checked.ok ? '' : checked.error.hint).toContain('P1, which it is taken for');
  });

  test('pieces of the design that the book has nowhere are named where more is counted', () => {
    const [part] = ticket.parts;
    if (part === undefined) throw new Error('A ticket has a part.');
    const short = {
      ...ticket,
      parts: [{ ...part, expected: [{ component: 'LK', quantity: 7, from: 'YARD', unbooked: 3 }] }],
    };
    const checked = checkTicketEntry(short, [], linesOf('LK 10 ready'), view);
    expect(checked.ok ? '' : checked.error.hint).toContain('the 3 that the design has');
  });
});

describe('what was counted', () => {
  test('a zero is counted, nothing entered is not; what is extra never hides what is missing', () => {
    const entries = entriesOf('LK 8 ready; LK 2 ready extra; P1 0 ready');
    expect(
      countedLines(ticket, entries).map((line) => [line.expected.component, line.isCounted, line.missing]),
    ).toEqual([
      ['P1', true, 2],
      ['LK', true, 2],
    ]);
    expect(countedLines(ticket, []).map((line) => line.isCounted)).toEqual([false, false]);
    expect(extraCounts(ticket, entries)).toMatchObject([{ component: 'LK', counted: { ready: 2 } }]);
  });
});
