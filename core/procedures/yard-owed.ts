// What is owed to each supplier, and what is still claimed because two ends of a note counted differently.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { owedTo } from '../yard/owed.ts';
import { byCode, found } from './by-code.ts';
import { allClaims, claimShape } from './note-shapes.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

export const yardOwed = query({
  name: 'yard.owed',
  input: z.strictObject({ at: instant.optional() }),
  output: z.strictObject({
    rows: z.array(
      z.strictObject({
        owner: code,
        ownerName: z.string(),
        component: code,
        name: z.string(),
        received: z.int(),
        returned: z.int(),
        owed: z.int(),
        ready: z.int(),
        notReady: z.int(),
        away: z.int(),
        scrapped: z.int(),
        lost: z.int(),
        /** What new ones for the scrapped and lost would cost; null where nobody has entered it. */
        goneCents: z.int().nullable(),
      }),
    ),
    claims: z.array(claimShape),
  }),
  run: async (book, { at }) => {
    const [owners, locations, components, flows, stock, claims] = await Promise.all([
      book.owners(),
      book.locations(),
      book.components(),
      book.supplierFlows(at),
      book.stock(at),
      allClaims(book),
    ]);
    const owner = byCode(owners);
    const component = byCode(components);
    const rows = owedTo(owners, locations, flows, stock).map((row) => {
      const { name, valueCents } = found(component, row.component);
      const goneCents = valueCents === undefined ? null : valueCents * (row.scrapped + row.lost);
      return { ...row, ownerName: found(owner, row.owner).name, name, goneCents };
    });
    return answer({ rows, claims });
  },
});
