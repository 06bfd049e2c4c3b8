// What changed rule tables and components would do: everything in them that makes no sense, and which designs
// they would change and by how much. Stores nothing.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { ruleTables } from '../catalogue/rules.ts';
import { asData } from './as-data.ts';
import { checkChangedRules } from './changed-rules.ts';
import { bookComponent } from './component-shape.ts';
import { designChangeShape } from './design-change.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';

export const rulesCheck = query({
  name: 'rules.check',
  input: z.strictObject({
    system: code,
    rules: ruleTables,
    /** Changed or new ones alone. */
    components: z.array(bookComponent).max(5000).default([]),
  }),
  output: z.strictObject({
    /** All of them; `field` as the rule settings name it: locks.bands[1].upTo, components.P836.weight. */
    problems: z.array(
      z.strictObject({
        code: z.string(),
        message: z.string(),
        field: z.exactOptional(z.string()),
        hint: z.exactOptional(z.string()),
      }),
    ),
    /** Empty while there are problems. */
    changes: z.array(designChangeShape),
    unchanged: z.int(),
  }),
  run: async (book, entered) => answer(asData(await checkChangedRules(book, entered))),
});
