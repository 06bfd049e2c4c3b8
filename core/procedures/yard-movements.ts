// The ledger, newest first, a page at a time.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { byCode, found } from './by-code.ts';
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

export const yardMovements = query({
  name: 'yard.movements',
  input: z.strictObject({
    component: code.optional(),
    location: code.optional(),
    owner: code.optional(),
    beforeNumber: z.int().optional(),
    limit: z.int().min(1).max(1000).default(200),
  }),
  output: z.strictObject({ rows: z.array(movementRow), more: z.boolean() }),
  run: async (book, { limit, ...filter }) => {
    const [rows, components] = await Promise.all([
      book.movements({ ...filter, limit: limit + 1 }),
      book.components(),
    ]);
    const component = byCode(components);
    return answer({
      rows: rows.slice(0, limit).map((row) => ({ ...row, name: found(component, row.component).name })),
      more: rows.length > limit,
    });
  },
});
