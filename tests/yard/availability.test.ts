import { describe, expect, test } from 'vitest';
import type { LiftingGear } from '../../core/yard/lifting-gear.ts';
import type { YardNote } from '../../core/yard/note.ts';
import type { RepairJob } from '../../core/yard/repair-job.ts';
import { at, hour, levels, line, movement, startMs } from './yard-of.ts';

describe('what a plan may count on', () => {
  test('ready pieces in hand count, ours and suppliers, in gangs and at pours: 10 + 5 + 3 + 2 of 46', () => {
    const start = [
      line({}),
      line({ owner: 'H1', location: 'SITE', quantity: 5 }),
      line({ location: 'G-1', quantity: 3, condition: 'ready-hidden' }),
      line({ location: 'TB/P1', quantity: 2 }),
      line({ condition: 'to-clean', quantity: 7 }),
      line({ location: 'SHOP', quantity: 8 }),
      line({ condition: 'quarantine', quantity: 4 }),
      line({ owner: 'other', quantity: 6 }),
      line({ location: 'JOB2', quantity: 1 }),
    ];
    expect(levels({ start })).toEqual([[null, 20]]);
  });

  test('a delivery to come raises the level from its moment on, a return lowers it', () => {
    const movements = [
      movement({ at: at(14) }),
      movement({ from: 'YARD', to: 'H1', quantity: 6, reason: 'return', at: at(20) }),
    ];
    expect(levels({ start: [line({})], movements })).toEqual([
      [null, 10],
      [14, 14],
      [20, 8],
    ]);
  });

  test('movements of one moment are one step, in whatever offset it is written', () => {
    const movements = [
      movement({ at: '2026-03-02T09:00:00-05:00' }),
      movement({ quantity: 2, at: '2026-03-02T14:00:00Z' }),
    ];
    expect(levels({ movements })).toEqual([
      [null, 0],
      [14, 6],
    ]);
  });

  test('what is moved within what is in hand changes nothing, nor do pieces that are not ours', () => {
    const movements = [
      movement({ from: 'YARD', to: 'SITE', reason: 'transfer' }),
      movement({ owner: 'other', from: 'LOST', reason: 'found' }),
    ];
    expect(levels({ start: [line({})], movements })).toEqual([[null, 10]]);
  });
});

const cleaned = (hours: number, quantity = 10) =>
  movement({
    from: 'YARD',
    condition: 'to-clean',
    conditionAfter: 'ready',
    reason: 'clean',
    quantity,
    at: at(hours),
  });

const back = (of: { readonly id: string; readonly at: string }, changes: Parameters<typeof movement>[0]) =>
  movement({ reason: 'reversal', reverses: of.id, at: of.at, quantity: 10, ...changes });

describe('a strip, whose pieces the plan holds for 15 hours more itself', () => {
  const start = [line({ location: 'TB/P1' })];
  const strip = movement({
    id: 'strip',
    from: 'TB/P1',
    to: 'YARD',
    conditionAfter: 'to-clean',
    reason: 'strip',
    quantity: 10,
    at: at(8),
  });

  test('cleaned by then, nothing changes; cleaned at 30 hours, they are away from 23 to 30', () => {
    expect(levels({ start, movements: [strip, cleaned(20)], nowMs: startMs + 50 * hour })).toEqual([
      [null, 10],
    ]);
    expect(levels({ start, movements: [strip, cleaned(30)] })).toEqual([
      [null, 10],
      [23, 0],
      [30, 10],
    ]);
  });

  test('four of ten cleaned and the rest never: six are away from 23 hours on, once that has passed', () => {
    const movements = [strip, cleaned(20, 4)];
    expect(levels({ start, movements, nowMs: startMs + 22 * hour })).toEqual([[null, 10]]);
    expect(levels({ start, movements, nowMs: startMs + 23 * hour })).toEqual([
      [null, 10],
      [23, 4],
    ]);
  });

  test('found damaged while being cleaned, they are away at once; brought elsewhere dirty, the time runs on', () => {
    const damaged = movement({
      from: 'YARD',
      condition: 'to-clean',
      conditionAfter: 'to-repair',
      reason: 'clean',
      quantity: 3,
      at: at(12),
    });
    expect(levels({ start, movements: [strip, damaged, cleaned(20, 7)] })).toEqual([
      [null, 10],
      [12, 7],
    ]);
    const brought = movement({
      from: 'YARD',
      to: 'SITE',
      condition: 'to-clean',
      reason: 'transfer',
      quantity: 10,
      at: at(9),
    });
    expect(levels({ start, movements: [strip, brought], nowMs: startMs + 30 * hour })).toEqual([
      [null, 10],
      [23, 0],
    ]);
  });

  test('of a ticket whose pieces were never issued to the pour, it is the same', () => {
    const never = { ...strip, from: 'YARD', to: 'SITE', reason: 'transfer', paper: 'ticket-1' } as const;
    const inYard = [line({})];
    expect(levels({ start: inYard, movements: [never] })).toEqual([[null, 10]]);
    expect(levels({ start: inYard, movements: [{ ...never, paper: null }] })[1]).toEqual([8, 0]);
  });

  test('dirty in a gang that stays together they count; broken down, the 15 hours begin', () => {
    const inGang = [line({ location: 'G-1' })];
    const hangs = { ...strip, from: 'G-1', to: 'G-1' };
    const late = { nowMs: startMs + 99 * hour };
    expect(levels({ start: inGang, movements: [hangs], ...late })).toEqual([[null, 10]]);
    const broken = movement({
      from: 'G-1',
      condition: 'to-clean',
      reason: 'break-down',
      quantity: 10,
      at: at(60),
    });
    expect(levels({ start: inGang, movements: [hangs, broken], ...late })).toEqual([
      [null, 10],
      [75, 0],
    ]);
  });

  test('lost at the strip they are away at once, found again they count again', () => {
    const lost = movement({ from: 'TB/P1', to: 'LOST', reason: 'lost', quantity: 4, at: at(8) });
    const found = movement({ from: 'LOST', reason: 'found', quantity: 1, at: at(40) });
    expect(levels({ start, movements: [{ ...strip, quantity: 6 }, lost, cleaned(10, 6), found] })).toEqual([
      [null, 10],
      [8, 6],
      [40, 7],
    ]);
  });

  test('a strip or a late cleaning that is taken back is as if it had not been', () => {
    const noStrip = back(strip, {
      from: 'YARD',
      to: 'TB/P1',
      condition: 'to-clean',
      conditionAfter: 'ready',
    });
    expect(levels({ start, movements: [strip, noStrip], nowMs: startMs + 99 * hour })).toEqual([[null, 10]]);
    const late = cleaned(30);
    const notCleaned = back(late, {
      from: 'YARD',
      to: 'YARD',
      condition: 'ready',
      conditionAfter: 'to-clean',
    });
    expect(levels({ start, movements: [strip, late, notCleaned], nowMs: startMs + 99 * hour })).toEqual([
      [null, 10],
      [23, 0],
    ]);
  });
});

describe('what is to clean without a strip', () => {
  test('counts from when it is due back on, 15 hours after it came, and not where that has passed', () => {
    const dirty = movement({ condition: 'to-clean', quantity: 6, at: at(2) });
    expect(levels({ movements: [dirty] })).toEqual([
      [null, 0],
      [17, 6],
    ]);
    expect(levels({ movements: [dirty], nowMs: startMs + 17 * hour })).toEqual([]);
  });

  test('booked dirty in the yard, ready pieces are away until then', () => {
    const dirty = movement({ from: 'YARD', conditionAfter: 'to-clean', reason: 'clean', at: at(2) });
    expect(levels({ start: [line({})], movements: [dirty] })).toEqual([
      [null, 10],
      [2, 6],
      [17, 10],
    ]);
  });
});

const note = (changes: Partial<YardNote>): YardNote => ({
  id: 'note-0001',
  countedThere: null,
  kind: 'delivery',
  number: 'D-7',
  state: 'draft',
  expectedAt: at(40),
  version: 1,
  from: 'H1',
  to: 'YARD',
  job: null,
  arrivedAt: null,
  leftAt: null,
  vehicle: null,
  signedHere: null,
  signedThere: null,
  protest: null,
  remark: null,
  lines: [
    {
      component: 'LK',
      owner: 'H1',
      condition: 'ready',
      sent: 6,
      counted: null,
      container: null,
      remark: null,
    },
  ],
  ...changes,
});

const repair = (changes: Partial<RepairJob>): RepairJob => ({
  id: 'repair-01',
  state: 'open',
  version: 1,
  component: 'LK',
  owner: 'ours',
  quantity: 3,
  place: 'SHOP',
  fault: 'bent',
  hours: 2,
  dueAt: at(60),
  partsFrom: [],
  done: null,
  remark: null,
  ...changes,
});

describe('papers that are not booked yet', () => {
  const start = [line({})];

  test('a delivery counts from the day it is promised for; past that day, or without one, it counts for nothing', () => {
    expect(levels({ start, notes: [note({})] })).toEqual([
      [null, 10],
      [40, 16],
    ]);
    expect(levels({ start, notes: [note({})], nowMs: startMs + 40 * hour })).toEqual([[null, 10]]);
    expect(levels({ start, notes: [note({ expectedAt: null })] })).toEqual([[null, 10]]);
    expect(levels({ start, notes: [note({ state: 'dropped' })] })).toEqual([[null, 10]]);
  });

  test('a return is taken off from its day on, and never to less than nothing', () => {
    const out = note({ kind: 'return', from: 'YARD', to: 'H1' });
    expect(levels({ start, notes: [out] })).toEqual([
      [null, 10],
      [40, 4],
    ]);
    expect(levels({ start: [line({ quantity: 5 })], notes: [out] })).toEqual([
      [null, 5],
      [40, 0],
    ]);
  });

  test('dirty pieces that are due out are not cleaned for the plan first', () => {
    const dirty = movement({ condition: 'to-clean', owner: 'H1', quantity: 6, at: at(2) });
    const [first] = note({}).lines;
    const out = note({
      kind: 'return',
      from: 'YARD',
      to: 'H1',
      expectedAt: at(10),
      lines: first === undefined ? [] : [{ ...first, condition: 'to-clean', sent: 4 }],
    });
    expect(levels({ start, movements: [dirty], notes: [out] })).toEqual([
      [null, 10],
      [17, 12],
    ]);
  });

  test('repairs count from when they are due back, as many as are to repair there; late or without a day never', () => {
    const inShop = [...start, line({ location: 'SHOP', condition: 'to-repair', quantity: 2 })];
    expect(levels({ start: inShop, repairs: [repair({})] })).toEqual([
      [null, 10],
      [60, 12],
    ]);
    expect(levels({ start: inShop, repairs: [repair({ dueAt: null })] })).toEqual([[null, 10]]);
    expect(levels({ start: inShop, repairs: [repair({})], nowMs: startMs + 60 * hour })).toEqual([
      [null, 10],
    ]);
    expect(levels({ start: inShop, repairs: [repair({ state: 'done' })] })).toEqual([[null, 10]]);
  });
});

const gear = (serial: string, goodUntil: string | null, place = 'YARD'): LiftingGear => ({
  serial,
  component: 'LK',
  owner: 'ours',
  place,
  last:
    goodUntil === null
      ? null
      : { number: 1, inspectedOn: '2026-01-01', goodUntil, passed: true, by: 'inspector', remark: null },
});

describe('what is taken off', () => {
  test('gear out of date from the day after its last day on, never inspected at all times, elsewhere not', () => {
    const all = [gear('1', '2026-03-03'), gear('2', null), gear('3', '2026-03-03', 'JOB2')];
    // The last day is a day on which it may still lift: from 4 March on, 48 hours after the start, it may not.
    expect(levels({ start: [line({})], gear: all })).toEqual([
      [null, 9],
      [48, 8],
    ]);
  });

  test('spares that are kept back are taken off at all times', () => {
    const movements = [movement({ at: at(5) })];
    expect(levels({ start: [line({})], movements, spares: new Map([['LK', 3]]) })).toEqual([
      [null, 7],
      [5, 11],
    ]);
  });
});
