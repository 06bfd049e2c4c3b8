// The ledger, newest first, a page at a time; or the history of a number, each entry with the quantity after it.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { byCode, found as known } from './by-code.ts';
import { bases, conditions, reasons } from '../yard/movement.ts';
import { query } from './procedure.ts';
import { code, date, instant, quantity } from './shapes.ts';

export const movementRow = z.strictObject({
  number: z.int(),
  id: z.string(),
  component: code,
  name: z.string(),
  quantity,
  owner: code,
  from: code,
  to: code,
  condition: z.enum(conditions),
  conditionAfter: z.enum(conditions),
  reason: z.enum(reasons),
  at: instant,
  recordedAt: instant,
  who: z.string(),
  noteNumber: z.string().nullable(),
  remark: z.string().nullable(),
  basis: z.enum(bases).nullable(),
  basisDate: date.nullable(),
  reverses: z.string().nullable(),
  reversedBy: z.string().nullable(),
  /** The note, strip ticket, count or repair by which it was booked. */
  paper: z.string().nullable(),
});

/** Which pieces a number counts: at one location, or at all that hold pieces. */
const countedPieces = z.strictObject({
  component: code,
  owner: code.optional(),
  location: code.optional(),
  condition: z.enum(conditions).optional(),
});

export const yardMovements = query({
  name: 'yard.movements',
  input: z.strictObject({
    component: code.optional(),
    location: code.optional(),
    owner: code.optional(),
    /** Only those that one note, ticket, count or repair booked. */
    paper: z.string().min(1).max(64).optional(),
    reason: z.enum(reasons).optional(),
    /** In which pieces left, or in which they arrived. */
    condition: z.enum(conditions).optional(),
    /** In place of the filters: in order of time, with the running quantity. */
    historyOf: countedPieces.optional(),
    /** The next page: from before this entry on. */
    beforeNumber: z.int().optional(),
    limit: z.int().min(1).max(1000).default(200),
  }),
  output: z.strictObject({
    rows: z.array(
      movementRow.extend({
        /** Of a history: by how much this entry changed the number, and what it was then. */
        change: z.int().nullable(),
        quantityAfter: z.int().nullable(),
        /** Which paper that is, and its number as printed; null where it is none of this book. */
        paperName: z
          .strictObject({
            kind: z.enum(['note', 'ticket', 'count', 'repair']),
            number: z.string().nullable(),
          })
          .nullable(),
      }),
    ),
    more: z.boolean(),
  }),
  run: async (book, { limit, historyOf, beforeNumber, ...filter }) => {
    const page = { beforeNumber, limit: limit + 1 };
    const plain = { change: null, quantityAfter: null };
    if (historyOf !== undefined && Object.values(filter).some((each) => each !== undefined))
      return refuse('two-questions', 'A history names its pieces by itself; it takes no other filter.', {
        field: 'historyOf',
      });
    const found =
      historyOf === undefined
        ? (await book.movements({ ...filter, ...page })).map((row) => ({ ...row, ...plain }))
        : await book.history({ ...historyOf, ...page });
    const rows = found.slice(0, limit);
    const papers = await book.paperNames(rows.flatMap(({ paper }) => paper ?? []));
    const component = byCode(await book.components());
    return answer({
      rows: rows.map((row) => ({
        ...row,
        name: known(component, row.component).name,
        paperName: row.paper === null ? null : (papers.get(row.paper) ?? null),
      })),
      more: found.length > limit,
    });
  },
});
