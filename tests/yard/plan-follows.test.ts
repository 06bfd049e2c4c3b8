// What the yard changes for a plan, found from a small yard: each cause once, joined by paper, in the order of what
// matters first.
import { describe, expect, test } from 'vitest';
import { traceOf, type YardFacts } from '../../core/yard/availability.ts';
import type { ComponentFigure } from '../../core/yard/component-figure.ts';
import { type YardFinding, yardFindings } from '../../core/yard/plan-follows.ts';
import { draftsOf } from '../../core/yard/promised.ts';
import { at, hour, line, movement, startMs, yardOf } from './yard-of.ts';

function findings(changes: Partial<YardFacts>, figures: ReadonlyMap<string, ComponentFigure> = new Map()) {
  const facts = yardOf({ start: [line({ quantity: 40 }), line({ location: 'TB/P1' })], ...changes });
  const found = yardFindings({
    ...facts,
    trace: traceOf(facts),
    drafts: draftsOf(facts.notes, facts.locations, facts.nowMs),
    figures,
    today: new Date(facts.nowMs).toISOString().slice(0, 10),
  });
  return found.map(told);
}

/** Kind, pieces, hours since and until, paper. */
const told = ({ kind, quantity, sinceMs, untilMs, paper }: YardFinding) => [
  kind,
  quantity,
  sinceMs === null ? null : (sinceMs - startMs) / hour,
  untilMs === null ? null : (untilMs - startMs) / hour,
  paper?.id ?? null,
];

const of = (changes: Parameters<typeof movement>[0]) =>
  movement({
    from: 'TB/P1',
    to: 'YARD',
    reason: 'strip',
    paper: 'ticket-1',
    quantity: 2,
    at: at(8),
    ...changes,
  });

describe('what is gone', () => {
  test('lost at one ticket in two parts is one finding, by another paper another', () => {
    const movements = [
      of({ to: 'LOST', reason: 'lost' }),
      of({ to: 'LOST', reason: 'lost', quantity: 1 }),
      of({ from: 'YARD', to: 'LOST', reason: 'lost', paper: 'count-1', at: at(20) }),
    ];
    expect(findings({ movements })).toEqual([
      ['lost', 3, 8, null, 'ticket-1'],
      ['lost', 2, 20, null, 'count-1'],
    ]);
  });

  test('found late, the loss of that day is gone first; what was found not ours changes nothing', () => {
    const movements = [
      of({ to: 'LOST', reason: 'lost', quantity: 3 }),
      of({ from: 'YARD', to: 'LOST', reason: 'lost', paper: 'count-1', at: at(20) }),
      of({ from: 'LOST', reason: 'found', quantity: 3, paper: 'ticket-2', at: at(30) }),
      of({ owner: 'other', from: 'LOST', reason: 'found', paper: 'count-1', at: at(30) }),
    ];
    expect(findings({ movements })).toEqual([['lost', 2, 20, null, 'count-1']]);
  });

  test('to repair, then scrapped, is scrapped; repaired it is nothing', () => {
    const damaged = of({ conditionAfter: 'to-repair' });
    const scrapped = of({
      from: 'YARD',
      to: 'SCRAP',
      condition: 'to-repair',
      conditionAfter: 'scrapped',
      reason: 'scrap',
      quantity: 1,
      paper: 'repair-1',
      at: at(30),
    });
    const ready = of({
      from: 'YARD',
      condition: 'to-repair',
      conditionAfter: 'ready',
      reason: 'repair',
      quantity: 1,
      at: at(31),
    });
    expect(findings({ movements: [damaged, scrapped, ready] })).toEqual([
      ['scrapped', 1, 30, null, 'repair-1'],
    ]);
  });

  test('what was to repair and lost before the plan began changes nothing for it, wherever it goes', () => {
    const before = [line({ location: 'SHOP', condition: 'to-repair', quantity: 3 })];
    const scrapped = of({
      from: 'SHOP',
      to: 'SCRAP',
      condition: 'to-repair',
      conditionAfter: 'scrapped',
      reason: 'scrap',
    });
    expect(findings({ start: before, movements: [scrapped] })).toEqual([]);
  });
});

describe('what is dirty', () => {
  const dirty = of({ conditionAfter: 'to-clean', quantity: 10 });

  test('in its time nothing; beyond it since then, with the ticket it came from', () => {
    expect(findings({ movements: [dirty] })).toEqual([]);
    expect(findings({ movements: [dirty], nowMs: startMs + 24 * hour })).toEqual([
      ['dirty', 10, 23, null, 'ticket-1'],
    ]);
  });

  test('with a capacity a day that is too little, until when', () => {
    const pace: YardFacts['pace'] = {
      how: 'by-the-day',
      perDay: 6,
      shiftEndingAfter: (ms) => {
        const day = 24 * hour;
        const today = Math.floor(ms / day) * day;
        const from = (ms < today + 15 * hour ? today : today + day) + 7 * hour;
        return { from, to: from + 8 * hour };
      },
    };
    // Stripped at 8 on the first day: five that day by 15:00, the other five by 15:00 of the second, held until 23:00.
    expect(findings({ movements: [dirty], pace })).toEqual([['dirty', 5, 23, 39, 'ticket-1']]);
  });
});

describe('figures', () => {
  test('estimated, listed and old ones are told, counted ones are not', () => {
    const figures = new Map<string, ComponentFigure>([
      ['LK', { basis: 'taken-from-list', date: '2026-02-20', isOld: false }],
      ['R8', { basis: 'counted', date: '2026-02-20', isOld: true }],
      ['P836', { basis: 'counted', date: '2026-02-20', isOld: false }],
    ]);
    expect(findings({}, figures)).toEqual([
      ['figure', 0, null, null, null],
      ['figure', 0, null, null, null],
    ]);
  });
});
