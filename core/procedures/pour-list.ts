// The pours of a job as entered, with the instants that follow and what is wrong with them.
import { z } from 'zod';
import { query } from './procedure.ts';
import { code, finding, instant, pour, pourTimes, quantity } from './shapes.ts';

export const pourList = query({
  name: 'pour.list',
  input: z.strictObject({ job: code }),
  output: z.strictObject({
    pours: z.array(
      z.strictObject({
        pour,
        times: pourTimes,
        /** Entered loose pieces and the ties counted from opposite holes, with the side's set time. */
        loose: z.array(
          z.strictObject({
            component: code,
            quantity,
            purpose: z.string(),
            from: instant,
            counted: z.boolean(),
          }),
        ),
        /** Contact area of both sides in square metres; volume is not known here. */
        areaM2: z.number(),
        findings: z.array(finding),
      }),
    ),
    findings: z.array(finding),
  }),
  run: () => Promise.reject(new Error('being built')),
});
