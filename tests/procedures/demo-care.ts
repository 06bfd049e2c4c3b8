// The questions of condition, each asked once of the demo job: cleaning, quarantine, repairs, rates.
import { expect } from 'vitest';
import { job, type DemoHost } from './demo-host.ts';

const at = '2026-03-02T08:00:00-05:00';

export async function askOfCare(ask: DemoHost['ask']): Promise<void> {
  const ours = { component: 'LK', owner: 'OURS', location: 'ENN' } as const;
  const { toClean } = await ask('yard.care', { job });
  // One bucket from the last job, since the figure of 20 February: its time has passed.
  expect(toClean).toContainEqual({
    ...ours,
    name: 'Lock',
    quantity: 18,
    since: '2026-02-20T00:00:00-05:00',
    due: null,
  });
  const cleaned = { ...ours, quantity: 3, ready: 1, readyHidden: 1, toRepair: 1, at };
  expect((await ask('yard.clean', { commandId: 'demo-care-1', ...cleaned })).booked).toBe(3);
  const apart = { ...ours, quantity: 1, condition: 'ready', why: 'spring looks cracked', at } as const;
  await ask('yard.quarantine', { commandId: 'demo-care-2', way: 'in', ...apart });
  await ask('yard.quarantine', { commandId: 'demo-care-3', way: 'out', ...apart, why: 'looked at: sound' });
  const { waiting } = await ask('repair.list', {});
  expect(waiting.map(({ component, quantity }) => [component, quantity])).toContainEqual(['LK', 1]);
  const { location: place, ...pieces } = ours;
  const repair = {
    ...pieces,
    place,
    quantity: 1,
    fault: 'bent',
    hours: 0.5,
    dueAt: null,
    partsFrom: [],
    remark: null,
  };
  const saved = await ask('repair.save', { commandId: 'demo-care-4', id: 'demo-repair-1', repair, at });
  expect(saved).toEqual({ id: 'demo-repair-1', version: 1, moved: 0 });
  await ask('repair.drop', { commandId: 'demo-care-5', repair: saved.id, version: 1 });
  const again = await ask('repair.save', { commandId: 'demo-care-6', id: 'demo-repair-2', repair, at });
  const done = { repair: again.id, version: 1, at, ready: 1, hours: 0.4 };
  expect((await ask('repair.finish', { commandId: 'demo-care-7', ...done })).movements).toBe(1);
  const { rates } = await ask('yard.rates', { job });
  expect(rates.find(({ component }) => component === 'LK')?.used).toEqual({
    basis: 'default',
    millionths: 50_000,
  });
}
