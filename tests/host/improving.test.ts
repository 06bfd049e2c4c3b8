import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Answer } from '../../core/answer.ts';
import { improveState, type ImproveState } from '../../core/host/improve-calls.ts';
import { procedures } from '../../core/procedures/all.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';
import { largeJob, makeLargeBook } from '../bench/large-book.ts';
import { aHost } from './a-host.ts';

const job = 'TB26';
type Search = NonNullable<ImproveState['search']>;

async function demo() {
  const { host } = aHost({ procedures, makeDemo });
  await host.call('host.demo', {});
  const ask = async (name: string, input: object): Promise<unknown> => {
    const answered: Answer<unknown> = await host.call(name, input);
    if (!answered.ok) throw new Error(`${name}: ${answered.error.message}`);
    return answered.value;
  };
  const search = async (name: string, input: object = {}): Promise<Search> => {
    const { search: found } = improveState.parse(await ask(`host.improve.${name}`, input));
    if (found === null) throw new Error('No search was begun.');
    return found;
  };
  const until = async (is: (found: Search) => boolean): Promise<Search> => {
    for (let tries = 0; tries < 400; tries += 1) {
      const found = await search('state');
      if (is(found)) return found;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    throw new Error('The search did not come so far in 20 s.');
  };
  const board = async () => procedures['board.read'].output.parse(await ask('board.read', { job }));
  return { host, ask, search, until, board };
}

describe('looking for a better plan', () => {
  test('goes on beside other calls, is stopped, and its best is kept and taken back', async () => {
    const { host, ask, search, until, board } = await demo();
    expect(await ask('host.improve.state', {})).toEqual({ search: null });
    const before = await board();
    const begun = await search('start', { job, seconds: 600 });
    expect([begun.state, begun.runs]).toEqual(['running', null]);
    const found = await until(({ best }) => best !== null);
    expect(found.before?.totalCents).toBe(before.cost.totalCents);
    // Another call is answered while it is under way.
    await ask('book.state', {});
    const stopped = await search('stop');
    expect(['stopped', 'proven']).toContain(stopped.state);
    expect(stopped.best?.totalCents).toBeLessThanOrEqual(before.cost.totalCents);
    expect(stopped.boundCents).toBeGreaterThanOrEqual(before.boundCents);

    const kept = procedures['plan.keep'].output.parse(
      await ask('plan.keep', {
        commandId: 'improve-keep-1',
        job,
        runs: stopped.runs,
        boundCents: stopped.boundCents,
        question: stopped.question,
      }),
    );
    expect(kept.cost.totalCents).toBeLessThanOrEqual(stopped.best?.totalCents ?? 0);
    const after = await board();
    expect(after.cost.totalCents).toBe(kept.cost.totalCents);
    expect(after.cost.totalCents - before.cost.totalCents).toBe(kept.costChangeCents);
    // What was proved stays known, as long as nothing of the job changes.
    expect(after.boundCents).toBeGreaterThanOrEqual(Math.min(stopped.boundCents, after.cost.totalCents));

    await ask('plan.keep', { commandId: 'improve-keep-2', job, ...kept.before });
    const back = await board();
    expect(back.cost).toEqual(before.cost);
    await host.close();
  }, 60_000);

  test('ends by itself when its time is up or its best is proven, and says so', async () => {
    const { host, search, until } = await demo();
    await search('start', { job, seconds: 1 });
    const ended = await until(({ state }) => state !== 'running');
    expect(['over', 'proven']).toContain(ended.state);
    expect(ended.runs?.flatMap(({ turns }) => turns)).toHaveLength(122);
    await host.close();
  }, 60_000);

  test('of an unknown job is refused, and a proof of one question is not taken for another', async () => {
    const { host, ask, board } = await demo();
    expect(await host.call('host.improve.start', { job: 'NONE', seconds: 1 })).toMatchObject({ ok: false });
    const { cost, boundCents, turns } = await board();
    const runs = [...Map.groupBy(turns, ({ run }) => run).values()].map((each) => ({
      turns: each.toSorted((one, other) => Date.parse(one.from) - Date.parse(other.from)).map(({ id }) => id),
    }));
    const keep = async (commandId: string, question?: string) =>
      procedures['plan.keep'].output.parse(
        await ask('plan.keep', {
          commandId,
          job,
          runs,
          boundCents: cost.totalCents,
          ...(question === undefined ? {} : { question }),
        }),
      );
    // A bound counts with the question that it is about.
    const { before, jobChanged } = await keep('improve-keep-3');
    expect([jobChanged, (await board()).proven]).toEqual([false, false]);
    expect((await keep('improve-keep-4', before.question)).jobChanged).toBe(false);
    expect((await board()).proven).toBe(true);
    // With a pour a day later the question is another one.
    await ask('pour.move', { commandId: 'improve-move-1', job, moves: [{ pour: 'P22', workingDays: 1 }] });
    const moved = await board();
    expect(moved.proven).toBe(false);
    expect(moved.boundCents).not.toBe(boundCents);
    // What was proved before the move is not taken for proved after it; the runs are kept as far as they fit.
    const kept = await keep('improve-keep-5', before.question);
    expect(kept.jobChanged).toBe(true);
    expect((await board()).proven).toBe(false);
    await host.close();
  }, 60_000);

  test('of a large job is stopped long before its end, with a whole plan and an honest bound', async () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'regang-large-'));
    const file = path.join(folder, 'large.regang');
    const { turns } = await makeLargeBook(file, { seed: 1, pours: 75, weeks: 12 });
    const { host } = aHost({ procedures });
    try {
      await host.call('host.open', { file });
      const stateOf = async (name: string, input: object = {}): Promise<Search | null> => {
        const answered = await host.call(`host.improve.${name}`, input);
        return answered.ok ? improveState.parse(answered.value).search : null;
      };
      await stateOf('start', { job: largeJob, seconds: 3600 });
      await expect
        .poll(async () => (await stateOf('state'))?.best ?? null, { timeout: 30_000 })
        .not.toBeNull();
      const stopped = await stateOf('stop');
      expect(stopped?.state).toBe('stopped');
      expect(stopped?.seconds).toBeLessThan(60);
      expect(stopped?.runs?.flatMap((run) => run.turns)).toHaveLength(turns);
      const total = stopped?.best?.totalCents ?? 0;
      expect(stopped?.boundCents).toBeGreaterThan(0.9 * total);
      expect(stopped?.boundCents).toBeLessThan(total);
      // It has ended for good.
      expect(await stateOf('state')).toEqual(stopped);
    } finally {
      await host.close();
      rmSync(folder, { recursive: true, force: true });
    }
  }, 90_000);
});
