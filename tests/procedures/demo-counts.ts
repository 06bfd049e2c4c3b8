// The questions of counts, look-alikes and the yard's settings, each asked once of the demo job.
import { expect } from 'vitest';
import type { DemoHost } from './demo-host.ts';

const at = '2026-03-10T16:00:00-04:00';
const later = '2026-03-10T17:00:00-04:00';

export async function askOfLookAlikes(ask: DemoHost['ask']): Promise<void> {
  const { pairs, twoOwners } = await ask('lookalike.list', {});
  // 36 in against 30 in panels of one height; rails of 8 ft against 10 ft, and 8 ft rails of two owners.
  const proposed = pairs.map(({ one, other }) => `${one.code} ${other.code}`);
  expect(proposed).toEqual(expect.arrayContaining(['P830 P836', 'P430 P436', 'R10 R8']));
  expect(twoOwners.map((each) => each.component)).toContain('R8');
  const pair = { component: 'P836', other: 'P830' };
  await ask('lookalike.save', { commandId: 'demo-alike-1', ...pair, tellApart: 'six inches' });
  const entered = (await ask('lookalike.list', {})).pairs.filter((each) => each.isEntered);
  expect(entered).toMatchObject([
    { one: { code: 'P830' }, other: { code: 'P836' }, tellApart: 'six inches' },
  ]);
  expect(await ask('lookalike.remove', { commandId: 'demo-alike-2', ...pair })).toEqual({
    tellApart: 'six inches',
  });
}

export async function askOfSettings(ask: DemoHost['ask']): Promise<void> {
  const { settings, first } = await ask('yard.settings.read', {});
  expect(settings).toEqual(first);
  const own = { ...settings, classes: { IC8: 'A' as const } };
  await ask('yard.settings.save', { commandId: 'demo-settings-1', settings: own });
  const { components } = await ask('count.classes', { now: at });
  // Locks rest on a list: they were never counted, and are due.
  expect(components.find((each) => each.component === 'LK')).toMatchObject({
    lastCountedOn: null,
    isDue: true,
  });
  expect(components.find((each) => each.component === 'IC8')).toMatchObject({ class: 'A', by: 'hand' });
  const back = await ask('yard.settings.save', { commandId: 'demo-settings-2', settings });
  expect(back.before).toEqual(own);
}

export async function askOfCounts(ask: DemoHost['ask']): Promise<void> {
  const chosen = await ask('count.lines', { kind: 'spot', now: at });
  expect(chosen.lines).toHaveLength(10);
  const line = { location: 'ENN', component: 'TC', owner: null };
  const started = await ask('count.start', {
    commandId: 'demo-count-1',
    kind: 'spot',
    lines: [line],
    blind: true,
    at,
  });
  const { count } = started;
  const before = await ask('count.read', { count, counter: 1 });
  expect(before.lines).toMatchObject([{ booked: null, entered: [] }]);
  expect((await ask('count.differences', { count })).lines).toEqual([]);
  const found = { ...line, condition: 'ready' as const, quantity: 188 };
  const entry = { count, id: 'demo-entry-1', lines: [found], at: later };
  const first = await ask('count.enter', { commandId: 'demo-count-2', ...entry });
  expect(first).toEqual({ entry: 1, repeated: false, lines: 1 });
  // The same batch again changes nothing.
  expect(await ask('count.enter', { commandId: 'demo-count-3', ...entry })).toEqual({
    ...first,
    repeated: true,
  });
  const { lines } = await ask('count.differences', { count });
  expect(lines).toMatchObject([{ booked: 200, difference: -12, bases: { percentOfOwned: 6 } }]);
  const explained = [
    { ...line, explained: [{ how: 'lost' as const, quantity: 12, remark: 'with the ties' }] },
  ];
  const booked = await ask('count.book', {
    commandId: 'demo-count-4',
    count,
    at: later,
    explained,
    entries: 1,
  });
  expect(booked).toMatchObject({ movements: 1, accuracy: { records: 1, within: 0 } });
  const sheet = await ask('sheet.count', { id: count });
  expect(sheet.title).toBe(`Count sheet ${started.name}`);
  const other = await ask('count.start', {
    commandId: 'demo-count-5',
    kind: 'location',
    locations: ['ENN'],
    at,
  });
  await ask('count.drop', { commandId: 'demo-count-6', count: other.count });
  const { counts } = await ask('count.list', {});
  expect(counts.map(({ state }) => state).slice(0, 2)).toEqual(['dropped', 'booked']);
}
