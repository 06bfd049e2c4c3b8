// Counts as doors ask for them: what is refused, what a blind counter sees, what is sent twice, what two people book.
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { component } from '../book/a-book.ts';
import { type AskedBook, askedBook } from './asked-book.ts';

const began = '2026-03-01T07:00:00-05:00';
const day = '2026-03-10T16:00:00-04:00';
const hourLater = '2026-03-10T17:00:00-04:00';
let book: AskedBook;

beforeAll(async () => {
  book = await askedBook(began);
  await book.write(async (writer) => {
    const kinds = {
      START: 'opening',
      YARD: 'yard',
      RACK: 'rack',
      JOB: 'other-job',
      SCRAP: 'scrap',
      LOST: 'lost',
      H1: 'supplier',
    } as const;
    for (const [code, kind] of Object.entries(kinds)) await writer.putLocation({ code, name: code, kind });
    await writer.putOwner({ code: 'OURS', name: 'Ours', kind: 'ours', agreement: null });
    await writer.putOwner({ code: 'H1', name: 'Hired in', kind: 'supplier', agreement: 'A-17' });
    for (const code of ['LK', 'R8', 'TR', 'X']) await writer.putComponent(component(code));
  });
  const opening = (id: string, code: string, quantity: number, owner: string, to: string) => ({
    id,
    component: code,
    quantity,
    owner,
    from: 'START',
    to,
    condition: 'ready' as const,
    reason: 'opening' as const,
    at: began,
    basis: 'taken-from-list' as const,
    basisDate: '2026-03-01',
  });
  await book.ask('yard.move', {
    movements: [
      opening('opening-1', 'LK', 100, 'OURS', 'YARD'),
      opening('opening-2', 'R8', 12, 'OURS', 'YARD'),
      opening('opening-3', 'R8', 6, 'H1', 'YARD'),
      opening('opening-4', 'TR', 40, 'OURS', 'RACK'),
    ],
  });
});
afterAll(() => book.close());

const LK = { location: 'YARD', component: 'LK', owner: null };
const found = (
  quantity: number,
  line: { location: string; component: string; owner: string | null } = LK,
) => ({ ...line, condition: 'ready' as const, quantity });
let entries = 0;
const enter = (count: string, lines: ReturnType<typeof found>[], more: object = {}) =>
  ({ count, id: `entry-of-test-${(entries += 1)}`, at: hourLater, lines, ...more }) as const;
const start = (more: object = {}) => book.ask('count.start', { kind: 'spot', lines: [LK], at: day, ...more });

describe('what is not started', () => {
  test.each([
    ['a count of no place', { kind: 'location' }, 'no-places'],
    ['an unknown place', { kind: 'location', locations: ['NOWHERE'] }, 'unknown-location'],
    ['what is lost', { kind: 'location', locations: ['LOST'] }, 'not-held-there'],
    ['a place where nothing is booked', { kind: 'location', locations: ['JOB'] }, 'nothing-to-count'],
    ['an unknown component', { kind: 'spot', lines: [{ ...LK, component: 'NONE' }] }, 'unknown-component'],
    ['an unknown owner', { kind: 'spot', lines: [{ ...LK, owner: 'NOBODY' }] }, 'unknown-owner'],
    ['the same line twice', { kind: 'spot', lines: [LK, LK] }, 'count-line-twice'],
    [
      'all owners together and one of them too',
      { kind: 'spot', lines: [LK, { ...LK, owner: 'OURS' }] },
      'count-line-twice',
    ],
  ] as const)('%s', async (_, input, code) => {
    expect(await book.refused('count.start', { at: day, ...input } as never)).toBe(code);
  });

  test('each owner by itself: R8 of two owners are two lines', async () => {
    const { lines } = await book.ask('count.lines', {
      kind: 'location',
      locations: ['YARD'],
      byOwner: true,
      now: day,
    });
    expect(lines.map(({ component: code, owner }) => [code, owner])).toEqual([
      ['LK', 'OURS'],
      ['R8', 'H1'],
      ['R8', 'OURS'],
    ]);
  });
});

describe('what is entered', () => {
  let count = '';
  beforeEach(async () => {
    count = (await start()).count;
  });

  test('what is not on a spot check is refused; on a count of a place it is a line more', async () => {
    const stray = [found(3, { location: 'YARD', component: 'X', owner: null })];
    expect(await book.refused('count.enter', enter(count, stray))).toBe('not-on-count');
    const place = (await book.ask('count.start', { kind: 'location', locations: ['YARD'], at: day })).count;
    await book.ask('count.enter', enter(place, stray));
    const { lines } = await book.ask('count.read', { count: place });
    expect(lines.map((line) => line.component)).toEqual(['LK', 'R8', 'X']);
    const elsewhere = [found(3, { location: 'RACK', component: 'X', owner: null })];
    expect(await book.refused('count.enter', enter(place, elsewhere))).toBe('not-on-count');
    const owned = [found(3, { location: 'YARD', component: 'LK', owner: 'OURS' })];
    expect(await book.refused('count.enter', enter(place, owned))).toBe('count-line-twice');
  });

  test('a second counter of a count with one, an unknown count, a clock set back', async () => {
    expect(await book.refused('count.enter', enter(count, [found(99)], { counter: 2 }))).toBe('one-counter');
    expect(await book.refused('count.enter', enter('no-such-count', [found(99)]))).toBe('unknown-count');
    const early = { at: '2026-03-10T15:59:59-04:00' };
    expect(await book.refused('count.enter', enter(count, [found(99)], early))).toBe('counted-before-start');
    expect(await book.refused('count.read', { count: 'no-such-count' })).toBe('unknown-count');
    expect(await book.refused('count.read', { count: 'N-999' })).toBe('unknown-count');
    // By the name that is printed and scanned.
    const { name } = (await book.ask('count.read', { count })).count;
    expect((await book.ask('count.read', { count: name })).count.id).toBe(count);
  });

  test('sent again after a day it changes nothing, though the figures were counted again since', async () => {
    const first = enter(count, [found(95)]);
    await book.ask('count.enter', first);
    await book.ask('count.enter', enter(count, [found(100)]));
    expect(await book.ask('count.enter', first, '2026-03-11T17:00:00-04:00')).toMatchObject({
      repeated: true,
    });
    expect((await book.ask('count.read', { count })).lines[0]?.figures).toMatchObject([
      { quantity: 100, recounts: 1 },
    ]);
  });
});

describe('counted blind by two', () => {
  test('neither sees the book nor the other before his own figure is in; then each sees both', async () => {
    const { count } = await start({ blind: true, counters: 2 });
    const see = async (counter?: 1 | 2) => {
      const [line] = (await book.ask('count.read', { count, ...(counter !== undefined && { counter }) }))
        .lines;
      return [line?.booked ?? null, line?.figures.map((figure) => figure.counter), line?.entered];
    };
    await book.ask('count.enter', enter(count, [found(95)], { counter: 1 }));
    expect(await see(2)).toEqual([null, [], [1]]);
    expect(await see()).toEqual([null, [], [1]]);
    expect(await see(1)).toEqual([{ ready: 100 }, [1], [1]]);
    expect((await book.ask('count.differences', { count })).lines).toEqual([]);
    await book.ask('count.enter', enter(count, [found(94)], { counter: 2 }));
    expect(await see(2)).toEqual([{ ready: 100 }, [1, 2], [1, 2]]);
    expect(await book.refused('count.book', { count, explained: [] })).toBe('counters-differ');
    await book.ask('count.enter', enter(count, [found(95)], { counter: 2 }));
    expect((await book.ask('count.differences', { count })).lines).toMatchObject([
      { state: 'counted', difference: -5 },
    ]);
    await book.ask('count.drop', { count });
    expect(await book.refused('count.enter', enter(count, [found(95)]))).toBe('count-dropped');
    expect(await book.refused('count.book', { count, explained: [] })).toBe('count-dropped');
  });
});

describe('what is booked', () => {
  test('not over what somebody has entered since, not with lines nobody counted, and once', async () => {
    const { count } = await start({ lines: [LK, { location: 'RACK', component: 'TR', owner: null }] });
    await book.ask('count.enter', enter(count, [found(98)]));
    const lost = { ...LK, explained: [{ how: 'lost' as const, quantity: 2, remark: null }] };
    expect(await book.refused('count.book', { count, explained: [lost] })).toBe('not-counted');
    expect(await book.refused('count.book', { count, explained: [lost], leaveOut: true, entries: 0 })).toBe(
      'count-changed',
    );
    const booked = await book.ask(
      'count.book',
      { count, explained: [lost], leaveOut: true, entries: 1 },
      hourLater,
    );
    expect(booked).toMatchObject({ movements: 1, accuracy: { records: 1, within: 1, percent: 100 } });
    expect(await book.refused('count.book', { count, explained: [lost], leaveOut: true })).toBe(
      'count-booked',
    );
    // What was counted rests on the count from now on; what was left out still on its list.
    const { components } = await book.ask('count.classes', { now: hourLater });
    const last = (code: string) => components.find((each) => each.component === code)?.lastCountedOn;
    expect([last('LK'), last('TR')]).toEqual(['2026-03-10', null]);
  });

  test('pieces that are not ours get an owner of their own, and no plan has to count on them', async () => {
    const { count } = await start({ lines: [{ location: 'RACK', component: 'TR', owner: null }] });
    await book.ask(
      'count.enter',
      enter(count, [found(43, { location: 'RACK', component: 'TR', owner: null })]),
    );
    const explained = [
      {
        location: 'RACK',
        component: 'TR',
        owner: null,
        explained: [{ how: 'not-ours' as const, quantity: 3, remark: null }],
      },
    ];
    await book.ask('count.book', { count, explained }, hourLater);
    const { rows } = await book.ask('yard.quantities', { location: 'RACK' });
    expect(rows.find((row) => row.ownerKind === 'others')).toMatchObject({ owner: 'NOT-OURS', quantity: 3 });
    expect((await book.ask('book.check', {})).problems).toEqual([]);
  });

  test('what moved after a line was counted is listed and allowed for', async () => {
    const { count } = await start({ at: '2026-03-12T15:00:00-04:00' });
    const move = {
      component: 'LK',
      owner: 'OURS',
      from: 'YARD',
      to: 'RACK',
      condition: 'ready' as const,
      reason: 'transfer' as const,
    };
    await book.ask('yard.move', {
      movements: [{ ...move, id: 'before-count', quantity: 10, at: '2026-03-12T15:30:00-04:00' }],
    });
    await book.ask('count.enter', enter(count, [found(88)], { at: '2026-03-12T16:00:00-04:00' }));
    await book.ask('yard.move', {
      movements: [{ ...move, id: 'after-count', quantity: 20, at: '2026-03-12T16:30:00-04:00' }],
    });
    const { lines, moved } = await book.ask('count.differences', { count });
    expect(lines).toMatchObject([{ booked: 88, difference: 0 }]);
    expect(moved.map((each) => [each.quantity, each.isAfter])).toEqual([
      [10, false],
      [20, true],
    ]);
  });

  test('the list tells how right the records were, the newest count first', async () => {
    const { counts, accuracy, floorPercent, bestPercent } = await book.ask('count.list', {});
    expect(counts[0]?.number).toBe(counts.length);
    // 98 of 100 in class C, and 43 of 40: 7.5 % of the book.
    expect(accuracy).toEqual({ records: 2, within: 1, percent: 50 });
    expect([floorPercent, bestPercent]).toEqual([95, 99]);
  });
});

describe('look-alikes and settings', () => {
  test('a component is no look-alike of itself; what is not entered is not taken out', async () => {
    expect(await book.refused('lookalike.save', { component: 'LK', other: 'LK', tellApart: '' })).toBe(
      'same-component',
    );
    expect(await book.refused('lookalike.save', { component: 'LK', other: 'NONE', tellApart: '' })).toBe(
      'unknown-component',
    );
    expect(await book.refused('lookalike.remove', { component: 'LK', other: 'R8' })).toBe('no-look-alike');
  });

  test('settings name components that are there', async () => {
    const { settings } = await book.ask('yard.settings.read', {});
    const wrong = { ...settings, bundleSizes: { NONE: 20 } };
    expect(await book.refused('yard.settings.save', { settings: wrong })).toBe('unknown-component');
  });
});
