// The bound and the plan against the linear relaxation of the whole plan, solved by HiGHS, an outside solver:
// no plan is cheaper than the relaxation, and no bound from prices is above it.
import { expect, test } from 'vitest';
import { edgesOf } from '../../core/plan/edges.ts';
import { planReuse, readModel } from '../../core/plan/plan-reuse.ts';
import { Prices } from '../../core/plan/prices.ts';
import { jobOf } from '../bench/jobs.ts';
import { loadHighs, solveRelaxation } from '../bench/relaxation.ts';

test('30 turns x 10 components, five seeds: bound of the prices <= relaxation <= plan, the two bounds within 1 % after 60 steps', async () => {
  const highs = await loadHighs();
  for (let seed = 1; seed <= 5; seed += 1) {
    const job = jobOf({ seed, turns: 30, components: 10, weeks: 3 });
    const dear = {
      ...job,
      components: job.components.map((part) => ({ ...part, hirePerDay: 20 * (part.hirePerDay ?? 0) })),
    };
    const model = readModel(dear);
    if (!model.ok) throw new Error(model.error.message);
    const edges = edgesOf(model.value);
    const { least, rows, columns } = solveRelaxation(highs, model.value, edges);
    const made = planReuse(dear, () => 0);
    if (!made.ok) throw new Error(made.error.message);
    const prices = new Prices(model.value, edges);
    const minor = 10 ** model.value.grains.places;
    for (let step = 0; step < 60; step += 1) prices.step(made.value.cost.total * minor);
    expect(rows * columns, `seed ${seed}`).toBeGreaterThan(10_000);
    expect(prices.bound, `seed ${seed}`).toBeLessThanOrEqual(least * (1 + 1e-6));
    expect(prices.bound, `seed ${seed}`).toBeGreaterThan(least * 0.99);
    expect(made.value.cost.total * minor, `seed ${seed}`).toBeGreaterThanOrEqual(least * (1 - 1e-6));
  }
});
