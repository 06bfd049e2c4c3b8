// Ways out of the shortfalls of small random jobs: each, carried out, removes its shortfall and costs what it said. Also the
// kinds that the demo has no occasion for: another design, pieces of another job, two together.
import { afterEach, describe, expect, test } from 'vitest';
import type { z } from 'zod';
import type { shortfallWays } from '../../core/procedures/shortfall-ways.ts';
import { job as plainJob } from '../plan/pours-for-tests.ts';
import type { AskedBook } from './asked-book.ts';
import { smallBook, smallJob as job } from './small-jobs.ts';

type Ways = z.output<typeof shortfallWays.output>;

const now = '2026-02-23T07:00:00-05:00';
let book: AskedBook | null = null;

afterEach(async () => {
  await book?.close();
  book = null;
});

async function opened(seed: number): Promise<AskedBook> {
  book = await smallBook(seed);
  return book;
}

async function everyWayOf(asked: AskedBook): Promise<readonly Ways[]> {
  const { shortfalls } = await asked.ask('shortfall.list', { job, now });
  const all: Ways[] = [];
  for (const { component, from } of shortfalls.slice(0, 4))
    all.push(await asked.ask('shortfall.ways', { job, component, from, now }));
  return all;
}

async function holdsGood(
  asked: AskedBook,
  { shortfall, ask }: Ways,
  way: Ways['ways'][number],
): Promise<void> {
  const before = await asked.ask('board.read', { job, now });
  const changes = way.changes;
  const { applied } = await asked.ask('plan.apply', { job, changes, about: way.text });
  const after = await asked.ask('board.read', { job, now });
  const still = after.shortfalls.filter(
    (each) =>
      each.component === shortfall.component &&
      Date.parse(each.from) < Date.parse(shortfall.to) &&
      Date.parse(each.to) > Date.parse(shortfall.from),
  );
  expect(still).toEqual([]);
  const spent = after.cost.totalCents + after.plannedCents - before.cost.totalCents - before.plannedCents;
  expect(spent).toBe(way.costCents - (shortfall.hireCents ?? 0));
  expect(after.cost).toEqual(way.after.cost);
  const stocked = changes.flatMap((each) => (each.kind === 'stock' ? [each.entry.component] : []));
  for (const near of ask) expect(stocked).not.toContain(near.component);
  await asked.ask('plan.takeback', { job, applied });
  expect((await asked.ask('board.read', { job, now })).cost).toEqual(before.cost);
}

describe('small random jobs', () => {
  const seen = new Set<string>();
  test.each(Array.from({ length: 6 }, (_, index) => index + 1))(
    'every way out of job %i removes its shortfall and costs what it said',
    async (seed) => {
      const asked = await opened(seed);
      for (const found of await everyWayOf(asked))
        // The cheapest of every kind.
        for (const way of new Map(found.ways.toReversed().map((each) => [each.kind, each])).values()) {
          seen.add(way.kind);
          await holdsGood(asked, found, way);
        }
    },
    60_000,
  );

  test('among them were hired pieces, later pours and other designs', () => {
    expect([...seen].sort()).toEqual(expect.arrayContaining(['design', 'hire', 'slip']));
  });

  test('where nothing helps alone, two changes together do', async () => {
    const asked = await opened(3);
    const pairs = (await everyWayOf(asked)).flatMap((found) =>
      found.ways.filter(({ kind }) => kind === 'two-together').map((way) => ({ found, way })),
    );
    expect(pairs.length).toBeGreaterThan(0);
    for (const { found, way } of pairs) {
      expect(found.ways.every(({ kind }) => kind === 'two-together')).toBe(true);
      expect(way.changes.length).toBeGreaterThan(1);
      await holdsGood(asked, found, way);
    }
  }, 30_000);

  test('where nothing helps, every kind says why', async () => {
    let none = 0;
    for (let seed = 3; seed <= 60 && none === 0; seed += 3) {
      const asked = await opened(seed);
      for (const { ways, tried } of await everyWayOf(asked)) {
        if (ways.length > 0) continue;
        none += 1;
        for (const { why } of tried) expect(why).toMatch(/\S{3}/u);
      }
      await asked.close();
      book = null;
    }
    expect(none).toBeGreaterThan(0);
  }, 30_000);
});

describe('from another job of the book', () => {
  test('only what is planned to come for it, and only where it does not need it then', async () => {
    const asked = await opened(1);
    const [first] = (await asked.ask('shortfall.list', { job, now })).shortfalls;
    if (first === undefined) throw new Error('The small job is short of nothing.');
    const { component, from, quantity } = first;
    await asked.write((writer) => writer.putJob({ ...plainJob, code: 'J2', name: 'The other job' }));
    const transfers = async () =>
      (await asked.ask('shortfall.ways', { job, component, from, now })).ways.filter(
        ({ kind }) => kind === 'transfer',
      );
    expect(await transfers()).toEqual([]);
    const entry = {
      kind: 'hire' as const,
      component,
      from: '2026-02-24T00:00:00-05:00',
      to: null,
      costCents: 100,
      source: 'H1',
      remark: null,
    };
    const comes = (many: number) =>
      asked.ask('plan.apply', {
        job: 'J2',
        changes: [{ kind: 'stock', entry: { ...entry, quantity: many } }],
        about: 'for the other job',
      });
    const { applied } = await comes(quantity - 1 || 1);
    if (quantity > 1) expect(await transfers()).toEqual([]);
    await asked.ask('plan.takeback', { job: 'J2', applied });
    await comes(quantity);
    const [way] = await transfers();
    expect(way?.changes).toMatchObject([{ kind: 'stock', entry: { quantity, component, source: 'job J2' } }]);
    // The pieces cost nothing but what they save: the shortfall's own hire, which the plan need not pay any more.
    expect(way?.after.plannedCents).toBe(0);
  });
});
