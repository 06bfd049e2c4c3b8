import { describe, expect, test } from 'vitest';
import { procedures } from '../../core/procedures/all.ts';
import { planBeside } from '../../core/host/plan-ahead.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';
import { jobOf } from '../bench/jobs.ts';
import { aHost } from './a-host.ts';

describe('a plan that takes its time', () => {
  test('does not hold up another call, which is answered while it is still being made', async () => {
    const { host } = aHost({ procedures, makeDemo });
    await host.call('host.demo', {});
    const state = (await host.call('book.state', {})) as {
      readonly value: { readonly jobs: { code: string }[] };
    };
    const job = state.value.jobs[0]!.code;
    const order: string[] = [];
    const plan = host
      .call('plan.make', { commandId: 'plan-command-1', job, improveSeconds: 1 })
      .then((answered) => {
        order.push('plan');
        return answered;
      });
    // Long enough for the thread to have begun, far shorter than its search.
    await new Promise((resolve) => setTimeout(resolve, 300));
    await host.call('book.state', {});
    order.push('state');
    expect(await plan).toMatchObject({ ok: true, value: { job } });
    expect(order).toEqual(['state', 'plan']);
    await host.close();
  });

  test('is stopped within a second, and its best so far is the plan', async () => {
    const input = { ...jobOf({ seed: 1, turns: 300, components: 60, weeks: 12 }), improveSeconds: 300 };
    const stopping = new AbortController();
    const reported: number[] = [];
    let stoppedMs = Infinity;
    const made = await planBeside(input, {
      stop: stopping.signal,
      report: ({ cost }) => {
        reported.push(cost.total);
        // The solver is at work by then, which asks nobody while it is.
        if (reported.length === 1)
          setTimeout(() => {
            stoppedMs = performance.now();
            stopping.abort();
          }, 3000);
      },
    });
    expect(performance.now() - stoppedMs).toBeLessThan(1000);
    if (!made.ok) throw new Error(made.error.message);
    expect(made.value.cost.total).toBe(reported.at(-1));
    expect(made.value.bound).toBeLessThanOrEqual(made.value.cost.total);
    expect(made.value.runs.flatMap(({ turns }) => turns)).toHaveLength(300);
  }, 60_000);

  test('refused in its thread, it comes back as that refusal', async () => {
    const input = {
      components: [],
      designs: [],
      turns: [{ id: 't', design: 'NONE', from: '2026-03-02T07:00:00Z', to: '2026-03-03T07:00:00Z' }],
      turnaround: { flyOnH: 1, regangBaseH: 1, regangPerPieceH: 0 },
      labourPerH: 100,
    };
    expect(await planBeside(input)).toMatchObject({
      ok: false,
      error: { message: expect.stringContaining('NONE') },
    });
  });
});
