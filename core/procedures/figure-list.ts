// The owner's figure, ours and the agreed one side by side, with what the ledger has of the owner's pieces now, and
// every figure that was ever signed.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { figuresBeside } from '../yard/figures-beside.ts';
import { isHeld } from '../yard/movement.ts';
import { byCode, found } from './by-code.ts';
import { figureText } from './figure-shapes.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

const signed = figureText.extend({ number: z.int(), at: instant });

export const figureList = query({
  name: 'figure.list',
  input: z.strictObject({}),
  output: z.strictObject({
    rows: z.array(
      z.strictObject({
        owner: code,
        component: code,
        name: z.string(),
        theirs: signed.nullable(),
        ours: signed.nullable(),
        agreed: signed.nullable(),
        open: z.int().nullable(),
        /** Held by us now, by the ledger. */
        booked: z.int(),
      }),
    ),
    /** Every figure, newest first. */
    all: z.array(signed),
  }),
  run: async (book) => {
    const [figures, components, stock, locations] = await Promise.all([
      book.signedFigures(),
      book.components(),
      book.stock(),
      book.locations(),
    ]);
    const [component, place] = [byCode(components), byCode(locations)];
    const rows = figuresBeside(figures).map((row) => ({
      ...row,
      name: found(component, row.component).name,
      booked: stock
        .filter((line) => line.owner === row.owner && line.component === row.component)
        .filter((line) => isHeld(found(place, line.location).kind))
        .reduce((sum, line) => sum + line.quantity, 0),
    }));
    return answer({ rows, all: [...figures].reverse() });
  },
});
