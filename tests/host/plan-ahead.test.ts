import { describe, expect, test } from 'vitest';
import { procedures } from '../../core/procedures/all.ts';
import { planBeside } from '../../core/host/plan-ahead.ts';
import { makeDemo } from '../../seed-demo/make-demo.ts';
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
