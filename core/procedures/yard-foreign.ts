// Pieces that are not where they belong: found with us and not ours, and ours at another job, each with the
// movement that brought it there and whether a note went with it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { conditions } from '../yard/movement.ts';
import { byCode, found } from './by-code.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

export const yardForeign = query({
  name: 'yard.foreign',
  input: z.strictObject({}),
  output: z.strictObject({
    rows: z.array(
      z.strictObject({
        /** `not-ours`: found with us; `elsewhere`: ours, or on hire to us, at another job. */
        what: z.enum(['not-ours', 'elsewhere']),
        component: code,
        name: z.string(),
        owner: code,
        location: code,
        condition: z.enum(conditions),
        quantity: z.int(),
        /** Of the newest movement that brought any of them there. */
        since: instant.nullable(),
        noteNumber: z.string().nullable(),
        remark: z.string().nullable(),
      }),
    ),
  }),
  run: async (book) => {
    const [stock, owners, locations, components] = await Promise.all([
      book.stock(),
      book.owners(),
      book.locations(),
      book.components(),
    ]);
    const [owner, place, component] = [byCode(owners), byCode(locations), byCode(components)];
    const rows = [];
    for (const line of stock) {
      const { kind } = found(place, line.location);
      const what =
        kind === 'other-job'
          ? ('elsewhere' as const)
          : found(owner, line.owner).kind === 'others'
            ? ('not-ours' as const)
            : null;
      if (what === null || line.quantity <= 0) continue;
      const moved = await book.movements({
        component: line.component,
        owner: line.owner,
        location: line.location,
        limit: 100,
      });
      const brought = moved.find((each) => each.to === line.location && each.reversedBy === null);
      rows.push({
        what,
        component: line.component,
        name: found(component, line.component).name,
        owner: line.owner,
        location: line.location,
        condition: line.condition,
        quantity: line.quantity,
        since: brought?.at ?? null,
        noteNumber: brought?.noteNumber ?? null,
        remark: brought?.remark ?? null,
      });
    }
    return answer({ rows });
  },
});
