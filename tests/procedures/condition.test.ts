// Cleaning, quarantine and repairs of the demo job: what is refused, what the ledger has afterwards, and what the plan
// counts on meanwhile.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const id = (): string => `condition-test-${(commands += 1)}`;

beforeAll(async () => {
  host = await demoHost();
});

afterAll(async () => {
  await host.close();
});

const at = '2026-03-02T08:00:00-05:00';
const panels = { component: 'P836', owner: 'OURS' } as const;

async function held(component: string): Promise<Record<string, number>> {
  const { rows } = await host.ask('yard.quantities', { outside: true });
  return Object.fromEntries(
    rows
      .filter((row) => row.component === component && row.owner === 'OURS')
      .map((row) => [`${row.location} ${row.condition}`, row.quantity]),
  );
}

describe('cleaning', () => {
  const of = { component: 'LK', owner: 'OURS', location: 'ENN', quantity: 5, at } as const;

  test('parts that do not add up are refused with both figures', async () => {
    expect(await host.refused('yard.clean', { commandId: id(), ...of, ready: 4 })).toBe('does-not-add-up');
  });

  test('scrap needs a second name, and another one than that of who books it', async () => {
    const scrap = { ...of, ready: 3, toRepair: 1, scrapped: 1 };
    expect(await host.refused('yard.clean', { commandId: id(), ...scrap })).toBe('second-name');
    const same = { ...scrap, secondName: ' Tester' };
    expect(await host.refused('yard.clean', { commandId: id(), ...same })).toBe('same-name');
    const before = await held('LK');
    const booked = await host.ask('yard.clean', { commandId: id(), ...scrap, secondName: 'yard hand' });
    expect(booked).toEqual({ booked: 3 });
    expect(await held('LK')).toEqual({
      ...before,
      'ENN ready': (before['ENN ready'] ?? 0) + 3,
      'ENN to-clean': (before['ENN to-clean'] ?? 0) - 5,
      'ENN to-repair': 1,
      'SCRAP scrapped': 1,
    });
    const { rows } = await host.ask('yard.movements', { component: 'LK', limit: 1 });
    expect(rows[0]).toMatchObject({ reason: 'scrap', remark: 'Agreed by yard hand.' });
  });

  test('more than are dirty there are refused, and nothing is booked', async () => {
    const before = await held('LK');
    const refused = await host.refused('yard.clean', { commandId: id(), ...of, quantity: 500, ready: 500 });
    expect(refused).toBe('not-enough');
    expect(await held('LK')).toEqual(before);
  });

  test('with a capacity a day, first in is first out: the day each quantity is due back is told', async () => {
    const { settings } = await host.ask('yard.settings.read', {});
    await host.ask('yard.settings.save', { commandId: id(), settings: { ...settings, cleanedPerDay: 10 } });
    const { dueBack, toClean } = await host.ask('yard.care', { job, now: '2026-03-02T12:00:00-05:00' });
    // 13 locks, 2 panels P836 and 2 P436 of 20 February; from noon on there is time for 4 of the day's 10.
    const days = Map.groupBy(
      dueBack.filter(({ from }) => from === 'cleaning'),
      ({ date }) => date,
    );
    const pieces = [...days].map(([day, list]) => [day, list.reduce((sum, each) => sum + each.quantity, 0)]);
    expect(pieces).toEqual([
      ['2026-03-02', 4],
      ['2026-03-03', 10],
      ['2026-03-04', 3],
    ]);
    expect(toClean.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(17);
    // What is due back the plan counts on from then on.
    const { stock } = await host.ask('curve.read', {
      job,
      component: 'P836',
      now: '2026-03-02T12:00:00-05:00',
    });
    expect(stock.at(-1)?.quantity).toBe(62);
    await host.ask('yard.settings.save', { commandId: id(), settings });
  });
});

describe('quarantine', () => {
  const of = { ...panels, location: 'ENN', quantity: 2, condition: 'ready', at } as const;

  test('pieces set apart are away from the plan at once, told with when and why, and come back', async () => {
    const level = async () =>
      (await host.ask('curve.read', { job, component: 'P836' })).stock.at(-1)?.quantity;
    expect(await level()).toBe(60);
    expect(await host.refused('yard.quarantine', { commandId: id(), way: 'in', ...of, why: '  ' })).toBe(
      'no-reason',
    );
    await host.ask('yard.quarantine', { commandId: id(), way: 'in', ...of, why: 'face came off' });
    expect(await level()).toBe(58);
    const { quarantine } = await host.ask('yard.care', { job });
    expect(quarantine).toEqual([
      {
        ...panels,
        name: 'Panel 36 in x 8 ft',
        location: 'ENN',
        quantity: 2,
        since: at,
        why: 'face came off',
      },
    ]);
    const { yardNotes } = await host.ask('board.read', { job });
    expect(yardNotes.find(({ component }) => component === 'P836')).toMatchObject({
      kind: 'quarantine',
      component: 'P836',
      quantity: 2,
      since: at,
    });
    await host.ask('yard.quarantine', { commandId: id(), way: 'out', ...of, why: 'glued' });
    expect(await level()).toBe(60);
    expect((await host.ask('yard.care', { job })).quarantine).toEqual([]);
  });
});

describe('repairs', () => {
  const repair = {
    ...panels,
    place: 'REP',
    quantity: 1,
    fault: 'Hole in the face, 90 x 60 mm',
    hours: 3,
    dueAt: '2026-03-11T15:00:00-04:00',
    partsFrom: [{ component: 'P830', owner: 'OURS', quantity: 1, place: 'ENN' }],
    remark: null,
  } as const;
  const asked = { ...repair, partsFrom: [...repair.partsFrom] };

  test('more than are to repair there are refused; due back, they count from that day on', async () => {
    const two = { commandId: id(), id: 'repair-0001', repair: { ...asked, quantity: 2 }, at };
    expect(await host.refused('repair.save', two)).toBe('not-enough');
    await host.ask('repair.save', { commandId: id(), id: 'repair-0001', repair: asked, at });
    const { repairs, waiting } = await host.ask('repair.list', {});
    expect(repairs).toMatchObject([{ id: 'repair-0001', version: 1, state: 'open', late: false }]);
    expect(waiting.map(({ component }) => component)).not.toContain('P836');
    const { stock } = await host.ask('curve.read', { job, component: 'P836' });
    expect(stock.map(({ quantity }) => quantity)).toEqual([60, 61]);
    expect(stock[1]?.from).toBe(repair.dueAt);
    // The piece in hand is not to be had twice.
    const again = { commandId: id(), id: 'repair-0002', repair: asked, at };
    expect(await host.refused('repair.save', again)).toBe('not-enough');
  });

  test('late, it counts for nothing until a new day is entered, and the board says so', async () => {
    const now = '2026-03-12T07:00:00-04:00';
    const late = await host.ask('board.read', { job, now });
    expect(late.yardNotes).toContainEqual(
      expect.objectContaining({ kind: 'repair-late', component: 'P836', quantity: 1, since: repair.dueAt }),
    );
    expect((await host.ask('repair.list', { now })).repairs[0]?.late).toBe(true);
    const changed = { ...asked, dueAt: '2026-03-20T15:00:00-04:00' };
    const edit = { id: 'repair-0001', repair: changed, at };
    expect(await host.refused('repair.save', { commandId: id(), ...edit, version: 7 })).toBe(
      'repair-changed',
    );
    expect(await host.ask('repair.save', { commandId: id(), ...edit, version: 1 })).toMatchObject({
      version: 2,
    });
    const { yardNotes } = await host.ask('board.read', { job, now });
    expect(yardNotes.filter(({ kind }) => kind === 'repair-late')).toEqual([]);
  });

  test('done, it comes back ready for hidden faces; the donor of its parts is scrapped with two names', async () => {
    const done = { repair: 'repair-0001', version: 2, at, ready: 0, readyHidden: 1, hours: 2.5 } as const;
    expect(await host.refused('repair.finish', { commandId: id(), ...done, secondName: 'yard hand' })).toBe(
      'where-to',
    );
    const back = { ...done, backTo: 'ENN' };
    expect(await host.refused('repair.finish', { commandId: id(), ...back })).toBe('second-name');
    const before = { panels: await held('P836'), donors: await held('P830') };
    await host.ask('repair.finish', { commandId: id(), ...back, secondName: 'yard hand' });
    expect(await held('P836')).toEqual({
      'ENN ready': before.panels['ENN ready'],
      'ENN to-clean': before.panels['ENN to-clean'],
      'OPENING ready': before.panels['OPENING ready'],
      'OPENING to-clean': before.panels['OPENING to-clean'],
      'OPENING to-repair': before.panels['OPENING to-repair'],
      'ENN ready-hidden': 1,
    });
    const donors = await held('P830');
    expect(donors['ENN ready']).toBe((before.donors['ENN ready'] ?? 0) - 1);
    expect(donors['SCRAP scrapped']).toBe(1);
    const { rows } = await host.ask('yard.movements', { component: 'P830', limit: 1 });
    expect(rows[0]?.remark).toBe('Agreed by yard hand. Given up for its parts: repair of 1 P836 at REP.');
    expect(await host.refused('repair.finish', { commandId: id(), ...back, version: 3 })).toBe('repair-done');
  });

  test('pieces found damaged where they lie are sent to the shop with their repair, and stay to repair when it is dropped', async () => {
    const { partsFrom: _, ...plain } = asked;
    const found = { ...plain, partsFrom: [], place: 'ENN', fault: 'edge bent', dueAt: null };
    const sent = {
      commandId: id(),
      id: 'repair-0003',
      repair: found,
      sendTo: 'REP',
      was: 'ready',
      at,
    } as const;
    expect(await host.ask('repair.save', sent)).toEqual({ id: 'repair-0003', version: 1, moved: 1 });
    expect((await held('P836'))['REP to-repair']).toBe(1);
    await host.ask('repair.drop', { commandId: id(), repair: 'repair-0003', version: 1 });
    expect((await held('P836'))['REP to-repair']).toBe(1);
    const { waiting } = await host.ask('repair.list', {});
    expect(waiting).toContainEqual({
      ...panels,
      name: 'Panel 36 in x 8 ft',
      location: 'REP',
      quantity: 1,
    });
    expect((await host.ask('book.check', {})).problems).toEqual([]);
  });
});
