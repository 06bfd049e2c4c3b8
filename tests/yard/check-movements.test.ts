// Rules of booking as a table: what is booked, what is asked for, and the one code that should come out.
import { describe, expect, test } from 'vitest';
import { checkMovements } from '../../core/yard/check-movements.ts';
import type { LedgerView } from '../../core/yard/check-movements.ts';
import { reversalOf } from '../../core/yard/movement.ts';
import type { LocationKind, Movement } from '../../core/yard/movement.ts';

const places: readonly (readonly [string, LocationKind])[] = [
  ['NORTH', 'yard'],
  ['SITE', 'site'],
  ['SHOP', 'repair'],
  ['HIRE', 'supplier'],
  ['H1', 'supplier'],
  ['LOST', 'lost'],
  ['SCRAP', 'scrap'],
  ['G-07', 'gang'],
  ['TB26/P01', 'pour'],
  ['START', 'opening'],
];

function view(booked: readonly Movement[] = []): LedgerView {
  const takenBack = new Map(booked.map((each) => [each.reverses, each.id]));
  return {
    components: new Set(['P1']),
    owners: new Map([
      ['OURS', 'ours'],
      ['H1', 'supplier'],
      ['H2', 'supplier'],
    ]),
    locations: new Map(places),
    booked: new Map(
      booked.map((each) => [each.id, { movement: each, reversedBy: takenBack.get(each.id) ?? null }]),
    ),
    before: [],
    since: booked,
  };
}

let ids = 0;
const move = (more: Partial<Movement> = {}): Movement => ({
  id: `m${(ids += 1)}`,
  component: 'P1',
  quantity: 10,
  owner: 'OURS',
  from: 'NORTH',
  to: 'SITE',
  condition: 'ready',
  conditionAfter: 'ready',
  reason: 'issue',
  at: '2026-03-02T07:00:00-05:00',
  who: 'tester',
  noteNumber: null,
  remark: null,
  basis: null,
  basisDate: null,
  reverses: null,
  paper: null,
  ...more,
});
const opening = (more: Partial<Movement> = {}): Movement =>
  move({
    from: 'START',
    to: 'NORTH',
    reason: 'opening',
    basis: 'counted',
    basisDate: '2026-03-01',
    at: '2026-03-01T07:00:00-05:00',
    ...more,
  });
const back = (movement: Movement, more: Partial<Movement> = {}): Movement => ({
  ...reversalOf(movement, {
    id: `m${(ids += 1)}`,
    at: '2026-03-05T07:00:00-05:00',
    who: 'tester',
    remark: 'wrong',
  }),
  ...more,
});

const ten = opening({ id: 'ten' });
const taken = move({ id: 'taken', quantity: 4 });
const takenBack = back(taken, { id: 'taken-back' });
const inGang = opening({ to: 'G-07' });
const theirs = (owner: string): Movement => opening({ owner });
const sentTo = (to: string, owner: string): Movement => move({ to, owner, reason: 'return' });
const early = '2026-03-01T20:00:00-05:00';
const late = '2026-03-09T07:00:00-05:00';

const rules: readonly (readonly [string, readonly Movement[], readonly Movement[], string])[] = [
  ['all of 10', [ten], [move()], 'booked'],
  ['11 of 10', [ten], [move({ quantity: 11 })], 'not-enough'],
  ['6 and 5 of 10', [ten], [move({ quantity: 6 }), move({ quantity: 5 })], 'not-enough'],
  [
    '10, given back at the same moment, and 10 again',
    [ten],
    [move(), move({ from: 'SITE', to: 'NORTH', reason: 'transfer' }), move()],
    'booked',
  ],
  ['10 that come at the same moment', [], [opening(), move({ at: opening().at })], 'booked'],
  [
    '10 that come at the same moment, named after they are taken',
    [],
    [move({ at: opening().at }), opening()],
    'booked',
  ],
  ['10 a second before they come', [], [opening(), move({ at: '2026-03-01T06:59:59-05:00' })], 'not-enough'],
  [
    '10 that come at the same moment of another offset',
    [],
    [opening(), move({ at: '2026-03-01T13:00:00+01:00' })],
    'booked',
  ],
  ['10 dirty of 10 ready', [ten], [move({ condition: 'to-clean' })], 'not-enough'],
  ['7 earlier than 4 booked of 10', [ten, taken], [move({ quantity: 7, at: early })], 'not-enough'],
  ['6 earlier than 4 booked of 10', [ten, taken], [move({ quantity: 6, at: early })], 'booked'],
  ['1 from a repair shop that has none', [ten], [move({ from: 'SHOP', quantity: 1 })], 'not-enough'],
  [
    '500 from a supplier, who stands outside',
    [],
    [move({ from: 'HIRE', quantity: 500, reason: 'delivery' })],
    'booked',
  ],
  ['the same id again', [ten], [opening({ id: 'ten' })], 'movement-exists'],
  [
    'one id twice',
    [ten],
    [move({ id: 'x', quantity: 1 }), move({ id: 'x', quantity: 1 })],
    'movement-exists',
  ],
  ['no piece', [ten], [move({ quantity: 0 })], 'bad-quantity'],
  ['half a piece', [ten], [move({ quantity: 0.5 })], 'bad-quantity'],
  ['2^53 pieces', [ten], [move({ from: 'HIRE', quantity: 2 ** 53 })], 'bad-quantity'],
  [
    '2^53 - 1 pieces and one more',
    [],
    [move({ from: 'HIRE', quantity: 2 ** 53 - 1 }), move({ from: 'HIRE', quantity: 1 })],
    'too-many',
  ],
  ['a time without offset', [ten], [move({ at: '2026-03-02T07:00:00' })], 'bad-instant'],
  ['30 February', [ten], [move({ at: '2026-02-30T07:00:00-05:00' })], 'bad-instant'],
  ['an unknown component', [ten], [move({ component: 'P9' })], 'unknown-component'],
  ['an unknown owner', [ten], [move({ owner: 'H9' })], 'unknown-owner'],
  ['an unknown place to take from', [ten], [move({ from: 'EAST' })], 'unknown-location'],
  ['an unknown place to bring to', [ten], [move({ to: 'EAST' })], 'unknown-location'],
  ['from a place to itself', [ten], [move({ to: 'NORTH' })], 'moves-nothing'],
  [
    'from ready to dirty where they lie',
    [ten],
    [move({ to: 'NORTH', conditionAfter: 'to-clean', reason: 'quarantine' })],
    'booked',
  ],
  ['an opening figure without basis', [], [opening({ basis: null })], 'bad-opening'],
  ['an opening figure without date', [], [opening({ basisDate: null })], 'bad-opening'],
  ['an opening figure from a yard', [ten], [opening({ from: 'NORTH', to: 'SITE' })], 'bad-opening'],
  ['a delivery from the opening', [], [move({ from: 'START', reason: 'delivery' })], 'bad-opening'],
  ['a transfer back into the opening', [ten], [move({ to: 'START' })], 'bad-opening'],
  ['a basis on a transfer', [ten], [move({ basis: 'counted', basisDate: '2026-03-01' })], 'bad-opening'],
  ['a delivery from a yard', [ten], [move({ reason: 'delivery' })], 'wrong-place'],
  ['a hire on from a yard', [ten], [move({ reason: 'hire-on' })], 'wrong-place'],
  ['a return to a site', [ten], [move({ reason: 'return' })], 'wrong-place'],
  ['a hire off to a site', [ten], [move({ reason: 'hire-off' })], 'wrong-place'],
  ['an issue to a gang', [ten], [move({ to: 'G-07' })], 'booked'],
  ['an issue to a pour', [ten], [move({ to: 'TB26/P01' })], 'booked'],
  ['an issue to a repair shop', [ten], [move({ to: 'SHOP' })], 'wrong-place'],
  ['out of a gang broken down', [inGang], [move({ from: 'G-07', reason: 'break-down' })], 'booked'],
  ['a yard broken down', [ten], [move({ reason: 'break-down' })], 'wrong-place'],
  ['a strip from a gang', [inGang], [move({ from: 'G-07', to: 'NORTH', reason: 'strip' })], 'booked'],
  [
    'a strip that leaves pieces where they are, dirty',
    [ten],
    [move({ to: 'NORTH', conditionAfter: 'to-clean', reason: 'strip' })],
    'booked',
  ],
  ['a strip from a yard', [ten], [move({ reason: 'strip' })], 'wrong-place'],
  ['scrap to the scrap', [ten], [move({ to: 'SCRAP', reason: 'scrap' })], 'booked'],
  [
    'scrap that stays where it lies',
    [ten],
    [move({ to: 'NORTH', conditionAfter: 'scrapped', reason: 'scrap' })],
    'booked',
  ],
  ['scrap that stays ready', [ten], [move({ reason: 'scrap' })], 'wrong-place'],
  ['lost to the lost', [ten], [move({ to: 'LOST', reason: 'lost' })], 'booked'],
  ['lost to a site', [ten], [move({ reason: 'lost' })], 'wrong-place'],
  ['found among the lost', [], [move({ from: 'LOST', reason: 'found' })], 'booked'],
  ['found in a yard', [ten], [move({ reason: 'found' })], 'wrong-place'],
  ['pieces of a supplier to his depot', [theirs('H1')], [sentTo('H1', 'H1')], 'booked'],
  ['pieces of a supplier to a depot of nobody’s code', [theirs('H1')], [sentTo('HIRE', 'H1')], 'booked'],
  ['our own pieces returned to a supplier', [ten], [sentTo('H1', 'OURS')], 'not-theirs'],
  ['our own pieces to a depot of nobody’s code', [ten], [sentTo('HIRE', 'OURS')], 'not-theirs'],
  ['pieces of one supplier to another', [theirs('H2')], [sentTo('H1', 'H2')], 'not-theirs'],
  [
    'pieces of one supplier off hire to another',
    [theirs('H2')],
    [{ ...sentTo('H1', 'H2'), reason: 'hire-off' }],
    'not-theirs',
  ],
  [
    'our own pieces to a supplier in place of his',
    [ten],
    [{ ...sentTo('H1', 'OURS'), reason: 'owner-swap' }],
    'booked',
  ],
  ['more returned than ever came', [theirs('H1')], [{ ...sentTo('H1', 'H1'), quantity: 11 }], 'not-enough'],
  ['4 taken back', [ten, taken], [back(taken)], 'booked'],
  ['an opening figure taken back', [ten], [back(ten)], 'booked'],
  ['an opening figure taken back of which 4 are gone', [ten, taken], [back(ten)], 'not-enough'],
  ['a movement taken back twice', [ten, taken, takenBack], [back(taken, { at: late })], 'already-reversed'],
  ['a movement taken back twice in one list', [ten, taken], [back(taken), back(taken)], 'already-reversed'],
  ['a reversal taken back', [ten, taken, takenBack], [back(takenBack, { at: late })], 'reverses-a-reversal'],
  ['a movement nobody booked, taken back', [ten], [back(taken)], 'unknown-movement'],
  ['half of it taken back', [ten, taken], [back(taken, { quantity: 2 })], 'not-its-opposite'],
  ['taken back from elsewhere', [ten, taken], [back(taken, { from: 'SHOP' })], 'not-its-opposite'],
  [
    'taken back before it happened',
    [ten, taken],
    [back(taken, { at: early })],
    'reversed-before-it-happened',
  ],
  ['a reversal that names nothing', [ten], [move({ reason: 'reversal' })], 'bad-reversal'],
  ['a transfer that names what it takes back', [ten, taken], [move({ reverses: 'taken' })], 'bad-reversal'],
];

describe('Booking', () => {
  test.each(rules.map(([what, booked, asked, code]) => ({ what, booked, asked, code })))(
    '$what: $code',
    ({ booked, asked, code }) => {
      expect(checkMovements(asked, view(booked))?.code ?? 'booked').toBe(code);
    },
  );

  test('every code is there at least once', () => {
    expect([...new Set(rules.map((each) => each[3]))].sort()).toEqual([
      'already-reversed',
      'bad-instant',
      'bad-opening',
      'bad-quantity',
      'bad-reversal',
      'booked',
      'movement-exists',
      'moves-nothing',
      'not-enough',
      'not-its-opposite',
      'not-theirs',
      'reversed-before-it-happened',
      'reverses-a-reversal',
      'too-many',
      'unknown-component',
      'unknown-location',
      'unknown-movement',
      'unknown-owner',
      'wrong-place',
    ]);
  });
});

describe('A refusal for want of pieces', () => {
  test('names the component, the place, the owner, the condition, how many there are, and the line of the list', () => {
    const refusal = checkMovements([move({ quantity: 3 }), move({ quantity: 9 })], view([ten]));
    expect(refusal).toMatchObject({ code: 'not-enough', field: 'movements.0.quantity' });
    expect(refusal?.message).toBe(
      'NORTH has 10 of P1 (OURS, ready) at 2026-03-02T07:00:00-05:00; 12 cannot be taken from it.',
    );
  });

  test('of a movement booked for earlier says that later ones need the pieces', () => {
    const refusal = checkMovements([move({ quantity: 7, at: early })], view([ten, taken]));
    expect(refusal?.message).toBe(
      'NORTH has 6 of P1 (OURS, ready) at 2026-03-02T07:00:00-05:00; 7 cannot be taken from it.',
    );
    expect(refusal?.hint).toContain('booked for later');
  });

  test('counts what was there before the earliest of them, as the book sums it up', () => {
    const line = {
      component: 'P1',
      owner: 'OURS',
      location: 'NORTH',
      condition: 'ready',
      basis: null,
      basisDate: null,
    } as const;
    const of = (quantity: number): LedgerView => ({ ...view(), before: [{ ...line, quantity }] });
    expect(checkMovements([move()], of(10))).toBeNull();
    expect(checkMovements([move()], of(9))?.code).toBe('not-enough');
  });
});
