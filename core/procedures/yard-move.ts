// Books movements: all of them, or none.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { bases, conditions, reasons } from '../yard/movement.ts';
import { command } from './procedure.ts';
import { code, commandId, date, instant, quantity } from './shapes.ts';

export const newMovement = z.strictObject({
  id: z.string().min(8).max(64),
  component: code,
  quantity,
  owner: code,
  from: code,
  to: code,
  condition: z.enum(conditions),
  conditionAfter: z.enum(conditions).optional(),
  reason: z.enum(reasons).exclude(['reversal']),
  at: instant,
  noteNumber: z.string().max(60).optional(),
  remark: z.string().max(400).optional(),
  basis: z.enum(bases).optional(),
  basisDate: date.optional(),
});

export const yardMove = command({
  name: 'yard.move',
  input: z.strictObject({ commandId, movements: z.array(newMovement).min(1).max(500) }),
  output: z.strictObject({ booked: z.int() }),
  run: async (book, { movements }, { at, who }) => {
    await book.appendMovements(
      movements.map((each) => ({
        ...each,
        conditionAfter: each.conditionAfter ?? each.condition,
        who,
        noteNumber: each.noteNumber ?? null,
        remark: each.remark ?? null,
        basis: each.basis ?? null,
        basisDate: each.basisDate ?? null,
        reverses: null,
        paper: null,
      })),
      at,
    );
    return answer({ booked: movements.length });
  },
});
