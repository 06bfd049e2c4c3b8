// Three curves of one component over time, which are three different things: pieces in forms that
// stand (demand standing), pieces the plan keeps between turns as well (demand held by the plan), and
// pieces that are ready (stock).
import { z } from 'zod';
import { answer } from '../answer.ts';
import { curvesOf } from '../plan/curves.ts';
import { asData } from './as-data.ts';
import { readJobFacts } from './job-facts.ts';
import { planJob } from './job-plan.ts';
import { unknownComponent } from './unknown.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

/** A level that holds from each instant until the next. */
const curve = z.array(z.strictObject({ from: instant, quantity: z.int() }));

export const curveRead = query({
  name: 'curve.read',
  input: z.strictObject({ job: code, component: code, now: instant.optional() }),
  output: z.strictObject({ component: code, name: z.string(), standing: curve, held: curve, stock: curve }),
  run: async (book, { job: jobCode, component, now }) => {
    const facts = await readJobFacts(book, jobCode, now);
    if (!facts.ok) return facts;
    const catalogued = facts.value.components.get(component);
    if (catalogued === undefined) return unknownComponent(component);
    const plan = planJob(facts.value);
    if (!plan.ok) return plan;
    const curves = curvesOf(plan.value.input, plan.value.answer.runs);
    if (!curves.ok) return curves;
    const own = curves.value.find((each) => each.component === component);
    return answer({
      component,
      name: catalogued.name,
      standing: asData(own?.demandStanding ?? []),
      held: asData(own?.demandHeldByPlan ?? []),
      stock: asData(own?.stock ?? []),
    });
  },
});
