// The questions of gangs, lifting gear and containers, each asked once of the demo job.
import { expect } from 'vitest';
import { wordsOf } from '../sheets/read-tree.ts';
import { job, type DemoHost } from './demo-host.ts';

const at = '2026-03-02T07:00:00-05:00';
const later = '2026-03-06T07:00:00-05:00';

export async function askOfGangs(ask: DemoHost['ask']): Promise<void> {
  const { short } = await ask('gang.lines', { design: 'GH', from: 'ENN' });
  expect(short).toBe(0);
  const gang = 'GH-1';
  await ask('gang.build', { commandId: 'demo-gang-1', gang, design: 'GH', from: 'ENN', at });
  await ask('gang.regang', {
    commandId: 'demo-gang-2',
    gang,
    design: 'GB',
    from: 'ENN',
    to: 'ENN',
    condition: 'ready',
    at,
    turn: 'P05/A3',
    job,
  });
  const stood = await ask('gang.step', { commandId: 'demo-gang-3', gang, state: 'standing', at });
  expect(stood.place).toBe('TB26/P05');
  const tag = wordsOf((await ask('sheet.tags', { id: gang })).tree);
  // GB by its take-off, without hooks; its width is 36 + 24 + 36 in.
  for (const part of ['GH-1', 'Wall gang 8 x 12 ft', 'Hooks', '8\'-0"']) expect(tag).toContain(part);
  await ask('gang.step', { commandId: 'demo-gang-4', gang, state: 'stripped', at: later, place: 'TB' });
  await ask('gang.break', { commandId: 'demo-gang-5', gang, to: 'ENN', at: later, condition: 'ready' });
  const { content, steps } = await ask('gang.read', { gang });
  expect([content, steps.length]).toEqual([[], 5]);
  expect((await ask('gang.list', {})).gangs.map((each) => each.gang)).toContain(gang);
  const issued = await ask('pour.issue', { commandId: 'demo-gang-6', job, pour: 'P03', from: 'ENN', at });
  expect(issued.pieces).toMatchObject({ OC8: 8, OC4: 8 });
}

export async function askOfGear(ask: DemoHost['ask']): Promise<void> {
  const gear = { serial: 'LH-07', component: 'LH', owner: 'OURS', place: 'ENN', isNew: true };
  expect(await ask('gear.save', { commandId: 'demo-gear-1', ...gear })).toEqual({ serialsOver: [] });
  await ask('gear.inspect', {
    commandId: 'demo-gear-2',
    serial: 'LH-07',
    inspectedOn: '2025-12-03',
    goodUntil: '2026-03-03',
    passed: true,
    by: 'Inspector of the demo',
    remark: null,
  });
  const list = await ask('gear.list', { now: '2026-03-04T00:30:00-05:00' });
  expect(list.date).toBe('2026-03-04');
  expect(list.gear).toMatchObject([
    { serial: 'LH-07', standing: { is: 'out-of-date', since: '2026-03-03' }, placeName: 'Ennorby yard' },
  ]);
}

export async function askOfContainers(ask: DemoHost['ask']): Promise<void> {
  const container = 'BKT-1';
  const made = { container, component: 'BKT', owner: 'OURS', place: 'ENN', at };
  await ask('container.make', { commandId: 'demo-box-1', ...made });
  const filled = { id: 'demo-bucket-full', component: 'LK', quantity: 40, owner: 'OURS', from: 'ENN' };
  await ask('yard.move', {
    commandId: 'demo-box-2',
    movements: [{ ...filled, to: container, condition: 'ready', reason: 'transfer', at }],
  });
  const step = await ask('container.step', {
    commandId: 'demo-box-3',
    container,
    place: 'TB',
    filling: 'full',
    at: later,
  });
  expect(step).toEqual({ container, place: 'TB', filling: 'full', moved: true });
  // A lock weighs 5 lb, the bucket 30 lb: 230 lb with 40 in it; 1 lb = 453.59237 g (international pound, 1959).
  const counted = await ask('container.count', {
    container,
    component: 'LK',
    grossGrams: 104_326,
    scaleStepGrams: 1000,
  });
  expect(counted).toMatchObject({ quantity: 40, least: 40, most: 40, booked: 40, others: [] });
  const [row] = (await ask('container.list', {})).containers;
  expect(row).toMatchObject({ container, place: 'TB', pieces: 40, onHire: false, filling: 'full' });
  expect((row?.tareGrams ?? 0) + (row?.contentGrams ?? 0)).toBe(row?.reckonedGrams);
}
