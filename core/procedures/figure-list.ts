// The owner's figure, ours and the agreed one side by side, each with what the ledger has of the owner's pieces at the
// end of the day that it speaks of, and every figure that was ever signed.
import { z } from 'zod';
import { answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { dateOfDay, dayOfDate } from '../plan/days.ts';
import { instantText, startOfDate } from '../plan/local-time.ts';
import { ledgerFigure } from '../yard/figure-ledger.ts';
import { figuresBeside } from '../yard/figures-beside.ts';
import type { StockLine } from '../yard/quantities.ts';
import type { SignedFigure } from '../yard/signed-figure.ts';
import { byCode, found } from './by-code.ts';
import { figureText } from './figure-shapes.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

const signed = figureText.extend({
  number: z.int(),
  at: instant,
  /** Of the same owner and component by the ledger, at the end of the day that it speaks of. */
  held: z.int(),
  gone: z.int(),
});

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
        /** By the ledger as it stands: with us, and scrapped or lost. */
        held: z.int(),
        gone: z.int(),
      }),
    ),
    /** Every figure, newest first. */
    all: z.array(signed),
  }),
  run: async (book) => {
    const [figures, components, locations, stock, jobs] = await Promise.all([
      book.signedFigures(),
      book.components(),
      book.locations(),
      book.stock(),
      book.jobs(),
    ]);
    const [component, place] = [byCode(components), byCode(locations)];
    const onDay = await stockByDay(book, figures, jobs[0]?.timeZone ?? 'UTC');
    const beside = (figure: SignedFigure) => ({
      ...figure,
      ...ledgerFigure(figure, onDay.get(figure.asOf) ?? [], place),
    });
    const rows = figuresBeside(figures).map(({ theirs, ours, agreed, ...row }) => ({
      ...row,
      name: found(component, row.component).name,
      theirs: theirs === null ? null : beside(theirs),
      ours: ours === null ? null : beside(ours),
      agreed: agreed === null ? null : beside(agreed),
      ...ledgerFigure(row, stock, place),
    }));
    return answer({ rows, all: figures.map(beside).reverse() });
  },
});

/** Quantities at the end of each day that a figure speaks of. */
async function stockByDay(
  book: BookReader,
  figures: readonly SignedFigure[],
  timeZone: string,
): Promise<ReadonlyMap<string, readonly StockLine[]>> {
  const days = [...new Set(figures.map(({ asOf }) => asOf))];
  return new Map(
    await Promise.all(
      days.map(async (day) => {
        const last = startOfDate(dateOfDay(dayOfDate(day) + 1), timeZone) - 1;
        return [day, await book.stock(instantText(last, timeZone))] as const;
      }),
    ),
  );
}
