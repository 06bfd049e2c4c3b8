// Lifting gear and containers of the demo job: what is refused, and what moves with a container.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const id = (): string => `thing-test-${(commands += 1)}`;
const at = '2026-03-02T07:00:00-05:00';
const later = '2026-03-03T07:00:00-05:00';

beforeAll(async () => {
  host = await demoHost();
});

afterAll(async () => {
  await host.close();
});

describe('lifting gear', () => {
  const hook = { component: 'LH', owner: 'OURS', place: 'ENN', isNew: true };
  const inspection = {
    inspectedOn: '2026-02-10',
    goodUntil: '2026-05-10',
    passed: true,
    by: 'tester',
    remark: null,
  };

  test('8 hooks at ENN bear 8 numbers; with the ninth the list says 9 numbers for 8 pieces', async () => {
    for (let number = 1; number <= 8; number += 1)
      expect(await host.ask('gear.save', { commandId: id(), serial: `LH-${number}`, ...hook })).toEqual({
        serialsOver: [],
      });
    const ninth = await host.ask('gear.save', { commandId: id(), serial: 'LH-9', ...hook });
    expect(ninth.serialsOver).toEqual([
      { component: 'LH', owner: 'OURS', place: 'ENN', serials: 9, pieces: 8 },
    ]);
    expect(await host.refused('gear.save', { commandId: id(), serial: 'LH-9', ...hook })).toBe(
      'serial-taken',
    );
  });

  test('moved to TB the number is there and no piece has moved', async () => {
    const before = await host.ask('yard.quantities', {});
    const { serialsOver } = await host.ask('gear.save', {
      commandId: id(),
      serial: 'LH-9',
      ...hook,
      place: 'TB',
      isNew: false,
    });
    expect(serialsOver).toEqual([{ component: 'LH', owner: 'OURS', place: 'TB', serials: 1, pieces: 0 }]);
    expect(await host.ask('yard.quantities', {})).toEqual(before);
  });

  test('inspections: the newest stands, and none is entered before it', async () => {
    const inspect = { serial: 'LH-1', ...inspection };
    await host.ask('gear.inspect', { commandId: id(), ...inspect });
    const earlier = { ...inspect, inspectedOn: '2026-02-09' };
    expect(await host.refused('gear.inspect', { commandId: id(), ...earlier })).toBe('inspected-since');
    const backwards = { ...inspect, inspectedOn: '2026-05-11' };
    expect(await host.refused('gear.inspect', { commandId: id(), ...backwards })).toBe('bad-dates');
    expect(await host.refused('gear.inspect', { commandId: id(), ...inspect, serial: 'LH-99' })).toBe(
      'unknown-serial',
    );
    await host.ask('gear.inspect', { commandId: id(), ...inspect, inspectedOn: '2026-02-20', passed: false });
    const { gear } = await host.ask('gear.list', { now: later });
    expect(gear.find((each) => each.serial === 'LH-1')?.standing).toEqual({ is: 'failed', on: '2026-02-20' });
    const other = { commandId: id(), serial: 'LH-1', ...hook, component: 'EQ', isNew: false };
    expect(await host.refused('gear.save', other)).toBe('gear-is-other');
  });
});

const held = async (location: string): Promise<readonly (readonly [string, number])[]> =>
  (await host.ask('yard.quantities', { location })).rows
    .filter((row) => ['RK', 'P836'].includes(row.component) && row.condition === 'ready')
    .map((row) => [row.component, row.quantity] as const);

describe('containers', () => {
  const rack = { component: 'RK', owner: 'OURS', place: 'ENN', at };
  test('4 racks at ENN bear 4 tags and no fifth', async () => {
    for (let number = 1; number <= 4; number += 1)
      await host.ask('container.make', { commandId: id(), container: `RK-${number}`, ...rack });
    const fifth = { commandId: id(), container: 'RK-5', ...rack };
    expect(await host.refused('container.make', fifth)).toBe('no-piece');
    expect(await host.refused('container.make', { ...fifth, container: 'RK-4' })).toBe('tag-taken');
    expect((await host.ask('container.list', {})).nextTags['RK']).toBe('RK-5');
  });

  test('a rack with 30 panels moved to TB: the rack alone moves in the ledger, the panels stay in it', async () => {
    const panels = {
      id: 'thing-panels-in',
      component: 'P836',
      quantity: 30,
      owner: 'OURS',
      from: 'ENN',
    } as const;
    const movement = { ...panels, to: 'RK-1', condition: 'ready', reason: 'transfer', at } as const;
    await host.ask('yard.move', { commandId: id(), movements: [movement] });
    const step = { container: 'RK-1', at: later } as const;
    expect(await host.refused('container.step', { commandId: id(), ...step, filling: 'empty' })).toBe(
      'not-empty',
    );
    await host.ask('container.step', { commandId: id(), ...step, filling: 'full', place: 'TB' });
    expect(await held('TB')).toEqual([['RK', 1]]);
    expect(await held('RK-1')).toEqual([['P836', 30]]);
    expect((await held('ENN')).find(([component]) => component === 'RK')).toEqual(['RK', 3]);
    expect(await host.refused('container.step', { commandId: id(), ...step, at, filling: 'part' })).toBe(
      'step-too-early',
    );
    expect(await host.refused('container.step', { commandId: id(), ...step, place: 'RK-1' })).toBe(
      'moves-nothing',
    );
    expect(await host.refused('container.step', { commandId: id(), ...step, place: 'TFH' })).toBe(
      'not-empty',
    );
  });

  test('a gang takes panels from the rack that stands at the place, and the rack is not full any more', async () => {
    const bring = (component: string, quantity: number, owner: string) =>
      ({
        id: `thing-${component}-${owner}`,
        component,
        quantity,
        owner,
        from: 'ENN',
        to: 'TB',
        condition: 'ready',
        reason: 'transfer',
        at: later,
      }) as const;
    const { lines } = await host.ask('gang.lines', { design: 'GA', from: 'TB' });
    const missing = lines.filter((line) => line.short > 0);
    expect(lines.find((line) => line.component === 'P836')).toMatchObject({ there: 30, short: 0 });
    await host.ask('yard.move', {
      commandId: id(),
      movements: missing.map((line) => bring(line.component, line.short, 'OURS')),
    });
    await host.ask('gang.build', { commandId: id(), gang: 'GA-1', design: 'GA', from: 'TB', at: later });
    expect(await held('RK-1')).toEqual([['P836', 26]]);
    const { containers } = await host.ask('container.list', {});
    expect(containers.find((each) => each.container === 'RK-1')).toMatchObject({
      filling: 'part',
      pieces: 26,
    });
  });

  test('lighter than it is empty is refused; mixed content is named', async () => {
    const weigh = { container: 'RK-1', component: 'P836', grossGrams: 20_000 };
    expect(await host.refused('container.count', weigh)).toBe('gross-below-tare');
    const movement = { id: 'thing-mixed', component: 'LK', quantity: 5, owner: 'OURS', from: 'ENN' } as const;
    await host.ask('yard.move', {
      commandId: id(),
      movements: [{ ...movement, to: 'RK-1', condition: 'ready', reason: 'transfer', at: later }],
    });
    // The rack weighs 180 lb, a panel 200 lb; 1 lb = 453.59237 g (international pound, 1959).
    const grossGrams = Math.round((180 + 26 * 200) * 453.592_37);
    const counted = await host.ask('container.count', { ...weigh, grossGrams, scaleStepGrams: 5000 });
    expect(counted).toMatchObject({ quantity: 26, least: 26, most: 26, booked: 26, others: ['LK'] });
  });
});

test('weighed, the weight stands until something goes in or out', async () => {
  const weighed = { container: 'RK-1', at: later, grossGrams: 2_500_000 } as const;
  await host.ask('container.step', { commandId: id(), ...weighed });
  const gross = async (): Promise<number | null | undefined> =>
    (await host.ask('container.list', {})).containers.find((each) => each.container === 'RK-1')?.grossGrams;
  expect(await gross()).toBe(2_500_000);
  const movement = {
    id: 'thing-out-again',
    component: 'LK',
    quantity: 5,
    owner: 'OURS',
    from: 'RK-1',
  } as const;
  const after = '2026-03-04T07:00:00-05:00';
  await host.ask('yard.move', {
    commandId: id(),
    movements: [{ ...movement, to: 'ENN', condition: 'ready', reason: 'transfer', at: after }],
  });
  expect(await gross()).toBeNull();
});

test('a hired rack goes back to its supplier empty and comes again; one of ours does not go there', async () => {
  const hired = { component: 'RK', quantity: 1, owner: 'TFH', from: 'TFH', to: 'ENN' } as const;
  await host.ask('yard.move', {
    commandId: id(),
    movements: [{ ...hired, id: 'thing-hired-rack', condition: 'ready', reason: 'delivery', at }],
  });
  const tag = { container: 'HR-1', component: 'RK', owner: 'TFH', place: 'ENN', at };
  await host.ask('container.make', { commandId: id(), ...tag });
  const back = { container: 'HR-1', place: 'TFH', at: later };
  await host.ask('container.step', { ...back, commandId: id() });
  const ofHire = async (): Promise<number> =>
    (await host.ask('yard.quantities', { location: 'ENN' })).rows
      .filter((row) => row.component === 'RK' && row.owner === 'TFH')
      .reduce((sum, row) => sum + row.quantity, 0);
  expect(await ofHire()).toBe(0);
  const again = { ...back, place: 'ENN', at: '2026-03-05T07:00:00-05:00' };
  await host.ask('container.step', { ...again, commandId: id() });
  expect(await ofHire()).toBe(1);
  const ours = { ...back, commandId: id(), container: 'RK-2' };
  expect(await host.refused('container.step', ours)).toBe('not-theirs');
});
