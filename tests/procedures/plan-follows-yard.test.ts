// The demo's plan follows the yard: what is stripped, cleaned, lost, promised and late changes its shortfalls, and what
// the plan holds itself is not missed twice.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { demoHost, job, type DemoHost } from './demo-host.ts';

let host: DemoHost;
let commands = 0;
const id = (): string => `follows-test-${(commands += 1)}`;

beforeEach(async () => {
  host = await demoHost();
});

afterEach(async () => {
  await host.close();
});

/** Everything of P01 goes from ready to dirty where it lies, at the moment at which the plan has it stripped. */
async function stripP01(): Promise<{ readonly at: string; readonly strips: readonly Strip[] }> {
  const board = await host.ask('board.read', { job });
  const pour = board.pours.find((each) => each.pour.code === 'P01');
  const at = pour?.times.stripTo ?? '';
  const pieces = new Map<string, number>();
  const add = (component: string, quantity: number): void => {
    pieces.set(component, (pieces.get(component) ?? 0) + quantity);
  };
  for (const gang of pour?.pour.sides.flatMap(({ gangs }) => gangs) ?? []) {
    const { lines } = await host.ask('design.read', { design: gang.design });
    for (const { component, quantity, kind } of lines) if (kind !== 'hook') add(component, quantity);
  }
  const { pours } = await host.ask('pour.list', { job });
  for (const line of pours.find((each) => each.pour.code === 'P01')?.loose ?? [])
    add(line.component, line.quantity);
  const strips = [...pieces].map(([component, quantity]) => ({ component, quantity }));
  expect(strips.length).toBeGreaterThan(8);
  await host.ask('yard.move', {
    commandId: id(),
    movements: strips.map(({ component, quantity }) => ({
      id: `strip-${component}`,
      component,
      quantity,
      owner: 'OURS',
      from: 'ENN',
      to: 'ENN',
      condition: 'ready',
      conditionAfter: 'to-clean',
      reason: 'strip',
      at,
    })),
  });
  return { at, strips };
}

interface Strip {
  readonly component: string;
  readonly quantity: number;
}

const after = (at: string, hours: number): string =>
  new Date(Date.parse(at) + hours * 3_600_000).toISOString();

async function clean({ strips, at }: Awaited<ReturnType<typeof stripP01>>, hours: number): Promise<void> {
  for (const { component, quantity } of strips)
    await host.ask('yard.clean', {
      commandId: id(),
      component,
      owner: 'OURS',
      location: 'ENN',
      quantity,
      ready: quantity,
      at: after(at, hours),
    });
}

const shortOf = async (now?: string) =>
  (await host.ask('shortfall.list', now === undefined ? { job } : { job, now })).shortfalls;

describe('stripping P01 by its plan', () => {
  test('with all pieces dirty and cleaned in time every shortfall is as it was', async () => {
    const before = await shortOf();
    expect(before.length).toBeGreaterThan(10);
    const strip = await stripP01();
    expect(await shortOf()).toEqual(before);
    await clean(strip, 14);
    expect(await shortOf()).toEqual(before);
    expect(await shortOf(after(strip.at, 72))).toEqual(before);
  });

  test('cleaned three days late, they are away from when the plan lets them go until they are clean', async () => {
    const { at, strips } = await stripP01();
    await clean({ at, strips }, 15 + 72);
    for (const { component, quantity } of strips.slice(0, 4)) {
      const { stock } = await host.ask('curve.read', { job, component, now: after(at, 200) });
      const [all, less, again] = stock;
      expect(less?.quantity).toBe((all?.quantity ?? 0) - quantity);
      expect(again?.quantity).toBe(all?.quantity);
      expect([less, again].map((each) => Date.parse(each?.from ?? ''))).toEqual(
        [15, 15 + 72].map((hours) => Date.parse(after(at, hours))),
      );
    }
  });

  test('never cleaned, once the time is over, the plan is short of them from then on and says why', async () => {
    const before = await shortOf();
    const { at, strips } = await stripP01();
    const now = after(at, 16);
    const { shortfalls, yardNotes } = await host.ask('shortfall.list', { job, now });
    const pieceHours = (list: typeof before): number =>
      list.reduce((sum, each) => sum + each.quantity * (Date.parse(each.to) - Date.parse(each.from)), 0);
    expect(pieceHours(shortfalls)).toBeGreaterThan(pieceHours(before));
    // As many as were not cleaned, and from 15 hours after the strip on: none is short before it that was not.
    const held = Date.parse(after(at, 15));
    expect(shortfalls.filter((each) => Date.parse(each.to) <= held)).toEqual(
      before.filter((each) => Date.parse(each.to) <= held),
    );
    const dirty = yardNotes.filter(({ kind }) => kind === 'dirty');
    expect(dirty.map(({ component, quantity }) => ({ component, quantity })).sort(byComponent)).toEqual(
      [...strips].sort(byComponent),
    );
    expect(dirty.every(({ since, until }) => Date.parse(since ?? '') === held && until === null)).toBe(true);
    const { stock } = await host.ask('curve.read', { job, component: 'LK', now });
    const locks = strips.find(({ component }) => component === 'LK')?.quantity ?? 0;
    expect(stock.map(({ quantity }) => quantity)).toEqual([630, 630 - locks]);
    expect(Date.parse(stock[1]?.from ?? '')).toBe(held);
  });
});

const oldOn = async (now: string) =>
  (await host.ask('board.read', { job, now })).yardNotes.filter(
    ({ kind, figure }) => kind === 'figure' && figure?.old === true,
  ).length;

const railsOn = async (now: string) => {
  const { yardNotes } = await host.ask('board.read', { job, now });
  const { stock } = await host.ask('curve.read', { job, component: 'R8', now });
  const note = yardNotes.find(({ component, paper }) => component === 'R8' && paper?.number === 'D-101');
  return { kind: note?.kind, since: note?.since, levels: stock.map(({ quantity }) => quantity) };
};

describe('what the yard changes', () => {
  const at = '2026-03-09T10:00:00-04:00';
  const move = {
    component: 'LK',
    owner: 'OURS',
    from: 'ENN',
    condition: 'ready',
    at,
  } as const;

  test('four locks lost are four fewer at once, and every shortfall of locks is four larger', async () => {
    const before = (await shortOf()).filter(({ component }) => component === 'LK');
    const lost = { ...move, id: 'lost-locks', quantity: 4, to: 'LOST', reason: 'lost' } as const;
    await host.ask('yard.move', { commandId: id(), movements: [lost] });
    const { shortfalls, yardNotes } = await host.ask('shortfall.list', { job });
    const locks = shortfalls.filter(({ component }) => component === 'LK');
    for (const each of before) {
      const now = locks.find(({ from, to }) => from <= each.from && to >= each.to);
      expect(now?.quantity).toBe(each.quantity + 4);
    }
    const [note] = yardNotes;
    expect(note).toMatchObject({ kind: 'lost', component: 'LK', quantity: 4, since: at, paper: null });
    expect(note?.shortfalls).toEqual(locks.map(({ id: short }) => short));
    // Found again, it is as if they had not been.
    const found = { ...lost, id: 'found-locks', from: 'LOST', to: 'ENN', reason: 'found' } as const;
    await host.ask('yard.move', { commandId: id(), movements: [{ ...found, at: after(at, 1) }] });
    const again = await host.ask('board.read', { job });
    expect(again.yardNotes.filter(({ kind }) => kind === 'lost')).toEqual([]);
  });

  test('six rails of D-101 are promised for 12 March; not come by then, they count for nothing and are late', async () => {
    const since = '2026-03-12T09:00:00-04:00';
    expect(await railsOn('2026-03-12T08:59:00-04:00')).toEqual({ kind: 'promised', since, levels: [18, 24] });
    expect(await railsOn(since)).toEqual({ kind: 'late', since, levels: [18] });
  });

  test('days that are short or nearly so of a component whose figure came from a list are marked', async () => {
    const { days, shortfalls } = await host.ask('board.read', { job });
    const marked = days.filter(({ restsOnWeak }) => restsOnWeak.length > 0);
    expect(marked.length).toBeGreaterThan(0);
    for (const { restsOnWeak } of marked) expect(restsOnWeak).toEqual(['LK']);
    for (const short of shortfalls.filter(({ component }) => component === 'LK'))
      for (const day of days.filter((each) => each.shortfalls.includes(short.id)))
        expect(day.restsOnWeak).toContain('LK');
    // A brace was counted: its day rests on a count.
    const brace = shortfalls.find(({ component }) => component === 'BR');
    expect(days.find((each) => each.shortfalls.includes(brace?.id ?? ''))?.restsOnWeak).toEqual([]);
  });

  test('figures of 20 February are old on 23 March, 31 days later, and not on 22 March', async () => {
    expect(await oldOn('2026-03-22T12:00:00-04:00')).toBe(0);
    expect(await oldOn('2026-03-23T12:00:00-04:00')).toBeGreaterThan(10);
  });

  test('spares that are kept back are taken off, and put back they are as before', async () => {
    const before = await shortOf();
    const { settings } = await host.ask('yard.settings.read', {});
    await host.ask('yard.settings.save', { commandId: id(), settings: { ...settings, keepSpares: true } });
    const { rates } = await host.ask('yard.rates', { job });
    const locks = rates.find(({ component }) => component === 'LK');
    const { stock } = await host.ask('curve.read', { job, component: 'LK' });
    expect(stock.map(({ quantity }) => quantity)).toEqual([630 - (locks?.spare ?? 0)]);
    expect(locks?.spare).toBeGreaterThan(0);
    const { yardNotes } = await host.ask('board.read', { job });
    expect(yardNotes.find(({ kind, component }) => kind === 'spares' && component === 'LK')?.quantity).toBe(
      locks?.spare,
    );
    await host.ask('yard.settings.save', { commandId: id(), settings });
    expect(await shortOf()).toEqual(before);
  });
});

function byComponent(one: { readonly component: string }, other: { readonly component: string }): number {
  return one.component < other.component ? -1 : 1;
}
