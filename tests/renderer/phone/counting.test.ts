// What the phone shows of a line, and what each tap leaves to be sent.
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conditions, type Condition } from '../../../core/yard/movement.ts';
import { total } from '../../../core/yard/ticket-counts.ts';
import type { CountLine } from '../../../renderer/phone/counting/figures.ts';
import { otherTickets } from '../../../renderer/phone/counting/other-tickets.ts';
import { unsentLines, unsentWords } from '../../../renderer/phone/counting/pending.ts';
import { findLine, lineKey, shownGroups } from '../../../renderer/phone/counting/shown.ts';
import * as taps from '../../../renderer/phone/counting/taps.ts';
import type { Batch, EntryLine, KeptPaper, TicketRow } from '../../../renderer/phone/kept/kept.ts';
import type { Kept } from '../../../renderer/phone/kept/state.ts';
import { standsWords } from '../../../renderer/phone/screens/line-words.ts';
import { count, tapped, ticket } from './papers.ts';

const at = '2026-03-05T12:00:00.000Z';

function kept(paper: KeptPaper, draft: readonly EntryLine[], batches: readonly Batch[] = []): Kept {
  const drafts = draft.length === 0 ? [] : [{ paper, lines: draft, at }];
  return { papers: [paper], drafts, batches, work: null, name: null };
}

function batch(
  paper: KeptPaper,
  id: string,
  lines: readonly EntryLine[],
  state: Batch['state'] = 'waiting',
): Batch {
  return { id, paper, lines, at, state, refusal: null };
}

function shown(paper: KeptPaper, of: Kept, component: string): CountLine {
  const group = paper.kind === 'ticket' ? 'P01/A1' : 'Y1';
  const found = findLine(shownGroups(of, paper), lineKey({ group, component, owner: null }));
  if (found === null) throw new Error(`${component} is not shown.`);
  return found;
}

describe('a line of a ticket', () => {
  test('stands at what was read, and what is not sent yet on top: 4 and 2 and 3 are 9 of 26, 17 missing', () => {
    const of = kept(
      ticket,
      [tapped('LK', { quantity: 3 })],
      [batch(ticket, 'one', [tapped('LK', { quantity: 2 })])],
    );
    expect(standsWords(shown(ticket, of, 'LK'))).toBe('9 of 26 expected, 17 missing');
  });

  test('does not count an entry twice that is in the ticket already, its answer lost on the way', () => {
    const of = kept(ticket, [], [batch(ticket, 'there', [tapped('LK', { quantity: 4 })])]);
    expect(total(shown(ticket, of, 'LK').counted)).toBe(4);
  });

  test('leaves out what was refused and what is kept for late finds', () => {
    const some = [tapped('LK', { quantity: 5 })];
    const of = kept(ticket, [], [batch(ticket, 'one', some, 'refused'), batch(ticket, 'two', some, 'late')]);
    expect(total(shown(ticket, of, 'LK').counted)).toBe(4);
  });

  test('as expected adds the 22 that are missing, in the condition chosen', () => {
    const line = shown(ticket, kept(ticket, []), 'LK');
    expect(taps.asExpected(line, 'to-clean')([])).toEqual([
      tapped('LK', { condition: 'to-clean', quantity: 22 }),
    ]);
  });

  test('a number sets the figure: 20 where 4 are counted adds 16, and 1 takes 3 back', () => {
    const line = shown(ticket, kept(ticket, []), 'LK');
    expect(taps.setTo(ticket, line, 'ready', 20)([])).toEqual([tapped('LK', { quantity: 16 })]);
    expect(taps.setTo(ticket, line, 'ready', 1)([])).toEqual([tapped('LK', { quantity: -3 })]);
  });

  test('three more than the 8 expected go over as extra, out of the condition that has them', () => {
    const draft = [tapped('WB', { quantity: 9 }), tapped('WB', { condition: 'to-clean', quantity: 2 })];
    const line = shown(ticket, kept(ticket, draft), 'WB');
    expect(standsWords(line)).toBe('11 of 8 expected, 3 more than expected');
    const lines = taps.overAsExtra(line)(draft);
    expect(lines).toContainEqual(tapped('WB', { quantity: 8 }));
    expect(lines).toContainEqual(tapped('WB', { quantity: 1, extra: true }));
    expect(lines).toContainEqual(tapped('WB', { condition: 'to-clean', quantity: 2, extra: true }));
    expect(standsWords(shown(ticket, kept(ticket, lines), 'WB'))).toBe('8 of 8 expected, all there, 3 extra');
  });

  test('none there is a figure of nothing; taken back it is not counted again', () => {
    const line = shown(ticket, kept(ticket, []), 'WB');
    expect(standsWords(line)).toBe('8 expected, not counted yet');
    const none = taps.noneThere(ticket, line)([]);
    expect(none).toEqual([tapped('WB', { quantity: 0 })]);
    expect(standsWords(shown(ticket, kept(ticket, none), 'WB'))).toBe('0 of 8 expected, 8 missing');
    expect(taps.forget(line)(none)).toEqual([]);
  });

  test('something that nobody expects is a line of its own, and all of it is extra', () => {
    const draft = taps.somethingElse('P01/A1', 'R8', 'ready', 1)([]);
    const line = shown(ticket, kept(ticket, draft), 'R8');
    expect(standsWords(line)).toBe('not expected, 1 extra');
    expect(taps.addTo(ticket, line, 'ready', 2)(draft)).toEqual([tapped('R8', { extra: true, quantity: 3 })]);
  });
});

const lk = (condition: Condition, quantity: number): EntryLine =>
  tapped('LK', { group: 'Y1', condition, quantity });

describe('a line of a count', () => {
  test('is entered whole: the condition that was taken to nothing is gone from it', () => {
    const before = [lk('ready', 9), lk('to-clean', 2)];
    const line = shown(count, kept(count, before), 'LK');
    const lines = taps.setTo(count, line, 'to-clean', 0)(before);
    expect(lines).toEqual([lk('ready', 9)]);
    expect(standsWords(line)).toBe('11 counted');
  });

  test('a later figure stands for an earlier one that is still on its way', () => {
    const of = kept(count, [lk('ready', 6)], [batch(count, 'one', [lk('ready', 5), lk('to-clean', 2)])]);
    expect(total(shown(count, of, 'LK').counted)).toBe(6);
    expect(unsentWords(unsentLines(of.batches, of.drafts))).toBe('1 line not yet sent');
  });

  test('a bundle more is 20 more on what stands', () => {
    const line = shown(count, kept(count, [lk('ready', 40)]), 'LK');
    expect(taps.addTo(count, line, 'ready', line.bundleSize ?? 0)([lk('ready', 40)])).toEqual([
      lk('ready', 60),
    ]);
  });

  test('nothing there is entered as nothing', () => {
    const line = shown(count, kept(count, []), 'LK');
    expect(taps.noneThere(count, line)([])).toEqual([lk('ready', 0)]);
  });
});

const row = (id: string, more: Partial<TicketRow> = {}): TicketRow => ({
  ...ticket.read.ticket,
  id,
  name: `S-${id}`,
  parts: [{ part: 'P01/A1', title: '', nextWords: '' }],
  expected: 0,
  counted: 0,
  linesCounted: 0,
  lines: 0,
  missing: null,
  entries: 0,
  booked: null,
  ...more,
});
const offered = (...tickets: readonly TicketRow[]): readonly string[] => {
  const of = { ...kept(ticket, []), work: { job: 'TB26', tickets, counts: [] } };
  return otherTickets(of, batch(ticket, 'one', [tapped('LK')], 'refused')).map(({ name }) => name);
};

describe('lines that their ticket does not take any more', () => {
  test('can be counted on its ticket of late finds and on another of the same pour with the same part', () => {
    const late = { follows: { id: 'T1', name: 'S-1' } };
    expect(offered(row('2', late), row('3'), row('T1'))).toEqual(['S-2', 'S-3']);
  });

  test('and on none of another pour, nor on one without the part', () => {
    expect(offered(row('2', { pour: 'P02' }), row('3', { parts: [] }))).toEqual([]);
  });
});

describe('over random taps', () => {
  const tap = fc.record({
    component: fc.constantFrom('LK', 'WB'),
    condition: fc.constantFrom(...conditions),
    what: fc.oneof(
      fc.record({ how: fc.constant('add' as const), by: fc.integer({ min: -5, max: 9 }) }),
      fc.record({ how: fc.constant('set' as const), by: fc.integer({ min: 0, max: 30 }) }),
      fc.record({ how: fc.constant('expected' as const), by: fc.constant(0) }),
      fc.record({ how: fc.constant('extra' as const), by: fc.constant(0) }),
    ),
    seals: fc.boolean(),
  });

  test('nothing stands below nothing, and what is read and all that goes out add up to what is shown', () => {
    fc.assert(
      fc.property(fc.array(tap, { maxLength: 40 }), (all) => {
        let draft: readonly EntryLine[] = [];
        let batches: readonly Batch[] = [];
        for (const { component, condition, what, seals } of all) {
          const line = shown(ticket, kept(ticket, draft, batches), component);
          if (what.how === 'add') draft = taps.addTo(ticket, line, condition, what.by)(draft);
          if (what.how === 'set') draft = taps.setTo(ticket, line, condition, what.by)(draft);
          if (what.how === 'expected' && total(line.counted) < (line.expected ?? 0))
            draft = taps.asExpected(line, condition)(draft);
          if (what.how === 'extra') draft = taps.overAsExtra(line)(draft);
          if (seals && draft.length > 0) {
            batches = [...batches, batch(ticket, `b${batches.length}`, draft)];
            draft = [];
          }
        }
        for (const [component, read] of [
          ['LK', 4],
          ['WB', 0],
        ] as const) {
          const line = shown(ticket, kept(ticket, draft, batches), component);
          for (const condition of conditions) {
            expect(line.counted[condition]).toBeGreaterThanOrEqual(0);
            expect(line.extra[condition]).toBeGreaterThanOrEqual(0);
          }
          const out = [...batches.flatMap(({ lines }) => lines), ...draft].filter(
            (each) => each.component === component,
          );
          expect(read + out.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(
            total(line.counted) + total(line.extra),
          );
        }
      }),
    );
  });
});
