// Three curves of one component over time, which are three different things: pieces in forms that
// stand (demand standing), pieces the plan keeps between turns as well (demand held by the plan), and
// pieces that are ready (stock).
import { z } from 'zod';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

/** A level that holds from each instant until the next. */
const curve = z.array(z.strictObject({ from: instant, quantity: z.int() }));

export const curveRead = query({
  name: 'curve.read',
  input: z.strictObject({ job: code, component: code }),
  output: z.strictObject({ component: code, name: z.string(), standing: curve, held: curve, stock: curve }),
  run: () => Promise.reject(new Error('being built')),
});
