// Dates of the demo's pours: three to choose from, a sequence placed, taken over and taken back; each answer held against what
// the book says when it is carried out.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let made = 0;
const commandId = (): string => `dates-test-${(made += 1)}`;
const sequence = ['P22', 'P23', 'P24', 'P25', 'P26', 'P27'];

beforeAll(async () => {
  host = await demoHost();
});
afterAll(() => host.close());

async function setOpen(pours: readonly string[], open: boolean): Promise<void> {
  for (const pour of pours) await host.ask('pour.open', { commandId: commandId(), job, pour, open });
}

test('a pour without a date leaves the board and is named beside it; with its date again the plan is as before', async () => {
  const before = await host.ask('board.read', { job });
  expect(before.undated).toEqual([]);
  await setOpen(['P26'], true);
  const { undated, pours } = await host.ask('board.read', { job });
  expect(undated.map(({ code }) => code)).toEqual(['P26']);
  expect(pours.map(({ pour }) => pour.code)).not.toContain('P26');
  const row = (await host.ask('pour.list', { job })).pours.find(({ pour }) => pour.code === 'P26');
  expect(row?.dateOpen).toBe(true);
  const turnsAt = async () =>
    (await host.ask('design.read', { design: 'GE' })).turns.map((turn) => turn.pour);
  expect(await turnsAt()).not.toContain('P26');
  expect(await host.refused('pour.open', { commandId: commandId(), job, pour: 'P26', open: true })).toBe(
    'open-already',
  );
  await setOpen(['P26'], false);
  const after = await host.ask('board.read', { job });
  expect(after.turns).toEqual(before.turns);
  expect(after.cost).toEqual(before.cost);
  expect(await turnsAt()).toContain('P26');
});

test('three dates: none before what it waits for, and each costs and breaks what it said when it is taken', async () => {
  await setOpen(['P26'], true);
  const without = await host.ask('board.read', { job });
  const { dates, heldBack, looked } = await host.ask('pour.dates', { job, pour: 'P26' });
  expect(looked).toBe(20);
  expect(dates).toHaveLength(3);
  expect(new Set(dates.map(({ times }) => times.finishAt)).size).toBe(3);
  expect(dates[0]?.merits).toContain('earliest');
  expect(dates.flatMap(({ merits }) => merits)).toContain('cheapest');
  // P25 is poured on Monday 20 April; P26 comes after it.
  expect(heldBack).toEqual({ kind: 'after', pour: 'P25', until: '2026-04-20T14:00:00-04:00' });
  for (const date of dates) {
    const { finishAt } = date.times;
    const changes = [{ kind: 'date' as const, pour: 'P26', finishAt }];
    const { applied } = await host.ask('plan.apply', { commandId: commandId(), job, changes, about: 'P26' });
    const board = await host.ask('board.read', { job });
    expect(board.undated).toEqual([]);
    expect(board.cost.totalCents - without.cost.totalCents).toBe(date.costChangeCents);
    const count = date.newShortfalls.length - date.goneShortfalls.length;
    expect(board.shortfalls.length - without.shortfalls.length).toBe(count);
    const overfull = board.days.filter((day) => day.crewHoursNeeded > day.crewHoursThere + 1e-6);
    for (const { date: of } of date.overfullDays) expect(overfull.map((day) => day.date)).toContain(of);
    await host.ask('plan.takeback', { commandId: commandId(), job, applied });
    expect((await host.ask('board.read', { job })).undated).toHaveLength(1);
  }
  await setOpen(['P26'], false);
});

test('a pour with a date gets three as well, and the one it has is named where it is among them', async () => {
  const { dates, dateOpen } = await host.ask('pour.dates', { job, pour: 'P27' });
  expect(dateOpen).toBe(false);
  const own = dates.find(({ isNow }) => isNow);
  if (own !== undefined) expect(own).toMatchObject({ costChangeCents: 0, newShortfalls: [], breaks: 0 });
  expect(dates.filter(({ isNow }) => isNow).length).toBeLessThanOrEqual(1);
});

test('the third storey of the core is never before the second', async () => {
  await setOpen(['P16'], true);
  const { dates } = await host.ask('pour.dates', { job, pour: 'P16' });
  // P12, the storey below, is poured on Wednesday 25 March.
  for (const { times } of dates) expect(times.finishAt > '2026-03-25T13:30:00-04:00').toBe(true);
  await setOpen(['P16'], false);
});

test('six retaining walls placed together: in their order, behind their gates, the bound not behind the end; taken over and back', async () => {
  await setOpen(sequence, true);
  const asked = { job, pours: sequence };
  const found = await host.ask('pour.place', asked);
  expect(await host.ask('pour.place', asked)).toEqual(found);
  expect(found.unplaced).toEqual([]);
  expect(found.boundDate <= found.lastDate).toBe(true);
  const finishes = sequence.map(
    (code) => found.placed.find(({ pour }) => pour === code)?.times.finishAt ?? '',
  );
  expect(finishes).toEqual(finishes.toSorted());
  expect(new Set(finishes).size).toBe(6);
  const { pours } = await host.ask('pour.list', { job });
  for (const { pour, times } of found.placed) {
    const gates = pours.find((row) => row.pour.code === pour)?.pour.gates ?? [];
    for (const gate of gates)
      if (!gate.done && gate.before === 'set')
        expect((times.sides[0]?.setFrom ?? '').slice(0, 10) >= gate.promised).toBe(true);
  }
  // It is a question: nothing has changed until it is taken over.
  expect((await host.ask('board.read', { job })).undated).toHaveLength(6);
  const without = await host.ask('board.read', { job });
  const { applied } = await host.ask('plan.apply', {
    commandId: commandId(),
    job,
    changes: found.changes,
    about: 'six pours placed',
  });
  const board = await host.ask('board.read', { job });
  expect(board.undated).toEqual([]);
  expect(board.cost.totalCents - without.cost.totalCents).toBe(found.costChangeCents);
  await host.ask('plan.takeback', { commandId: commandId(), job, applied });
  expect((await host.ask('board.read', { job })).undated).toHaveLength(6);
  await setOpen(sequence, false);
});

test('what cannot be asked is refused by name', async () => {
  expect(await host.refused('pour.place', { job, pours: ['P26'] })).toBe('has-date');
  expect(await host.refused('pour.place', { job, pours: ['P99'] })).toBe('unknown-pour');
  expect(await host.refused('pour.dates', { job, pour: 'P99' })).toBe('unknown-pour');
  expect(await host.refused('pour.open', { commandId: commandId(), job, pour: 'P26', open: false })).toBe(
    'has-date',
  );
});
