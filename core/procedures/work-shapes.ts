// Overloads of a plan as doors are shown them.
import { z } from 'zod';
import type { Overload } from '../plan/work/overloads.ts';
import { code, date } from './shapes.ts';

export const shownOverload = z.strictObject({
  id: z.string(),
  kind: z.enum(['crew', 'crane', 'pads']),
  date,
  crane: code.nullable(),
  /** Of pads: of which use places are wanting. */
  use: z.enum(['assemble', 'clean', 'both']).nullable(),
  /** Hours of people, minutes of the crane, or gangs on the ground, and what there is of them. */
  needed: z.number(),
  there: z.number(),
  /** Of a crane also what does not fit although there are minutes enough. */
  missing: z.number(),
  causes: z.array(
    z.strictObject({ step: z.string(), pour: code, toPour: code.nullable(), amount: z.number() }),
  ),
});

export function overloadShape(overload: Overload): z.input<typeof shownOverload> {
  return { ...overload, causes: overload.causes.map((each) => ({ ...each })) };
}
