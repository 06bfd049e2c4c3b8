// Overloads of the demo job: of each kind, every way offered is carried out and seen to do what it said, then taken back.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let overloads: Awaited<ReturnType<typeof listed>>;

beforeAll(async () => {
  host = await demoHost();
  overloads = await listed();
});
afterAll(() => host.close());

async function listed() {
  return (await host.ask('overload.list', { job })).overloads;
}

test.each(['crew', 'crane', 'pads'] as const)(
  'every way offered for the first overload of the %s clears it, makes no other worse, and costs what it said',
  async (kind) => {
    const overload = overloads.find((each) => each.kind === kind);
    if (overload === undefined) throw new Error(`The demo has no overload of the ${kind}.`);
    const { ways } = await host.ask('overload.clear', { job, overload: overload.id });
    expect(ways.length).toBeGreaterThan(0);
    const before = await host.ask('board.read', { job });
    const missing = new Map(overloads.map((each) => [each.id, each.missing]));
    for (const [
      index,
      { change, costChangeCents, overloadsGone, newShortfalls, goneShortfalls },
    ] of ways.entries()) {
      const { applied } = await host.ask('plan.apply', {
        commandId: `clear-${kind}-${index}`,
        job,
        changes: [change],
        about: `clear ${overload.id}`,
      });
      const after = await listed();
      const board = await host.ask('board.read', { job });
      const left = after.map((each) => each.id);
      expect(overloads.map((each) => each.id).filter((id) => !left.includes(id))).toEqual(overloadsGone);
      expect(overloadsGone).toContain(overload.id);
      for (const each of after) expect(each.missing).toBeLessThanOrEqual((missing.get(each.id) ?? 0) + 1e-6);
      expect(board.cost.totalCents - before.cost.totalCents).toBe(costChangeCents);
      expect(board.shortfalls.length - before.shortfalls.length).toBe(newShortfalls - goneShortfalls);
      await host.ask('plan.takeback', { commandId: `back-${kind}-${index}`, job, applied });
    }
    expect(await listed()).toEqual(overloads);
  },
  60_000,
);

test('on Thu 5 March the crew is asked for 62.5 of 42.5 hours and no single change clears it', async () => {
  const overload = overloads.find(({ id }) => id === 'crew@2026-03-05');
  expect([overload?.needed, overload?.there]).toEqual([62.5, 42.5]);
  const { ways, tried, moveTheClash } = await host.ask('overload.clear', {
    job,
    overload: 'crew@2026-03-05',
  });
  expect(ways).toEqual([]);
  expect(tried).toBeGreaterThan(15);
  expect(moveTheClash).toBeGreaterThan(0);
}, 30_000);

test('the same day the crane is asked for one pick more than its two hours hold: a quarter of an hour more does', async () => {
  const { overload, ways } = await host.ask('overload.clear', { job, overload: 'crane:TC1@2026-03-05' });
  expect([overload.needed, overload.there, overload.missing]).toEqual([132, 120, 12]);
  const [least] = ways;
  if (least?.change.kind !== 'crane') throw new Error('The least change is no longer crane.');
  const { from, to, kind } = least.change.booking;
  expect([(Date.parse(to) - Date.parse(from)) / 60_000, kind]).toEqual([15, 'extra']);
}, 30_000);

test('a pour by weather lost a day: its picks and hours are those of the next shift', async () => {
  const exception = { kind: 'off', date: '2026-03-05', reason: 'weather', remark: null } as const;
  const { id } = await host.ask('calendar.set', { commandId: 'weather-1', job, exception });
  const { days } = await host.ask('work.read', { job });
  const of = (date: string) => days.find((day) => day.date === date);
  expect([of('2026-03-05')?.crew.needed, of('2026-03-05')?.cranes[0]?.minutesNeeded]).toEqual([0, 0]);
  const set =
    of('2026-03-06')?.cranes[0]?.picks.filter(({ pour, kind }) => pour === 'P04' && kind === 'set') ?? [];
  expect(set.length).toBe(4);
  await host.ask('calendar.remove', { commandId: 'weather-2', job, id });
}, 30_000);
