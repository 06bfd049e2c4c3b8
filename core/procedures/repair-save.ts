// Keeps a repair: which pieces, what is wrong with them, hours, parts from other pieces, when they are due back. Pieces that
// are not in the repair shop can be sent there with it.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { BookWriter } from '../book/book.ts';
import { conditions } from '../yard/movement.ts';
import { paperId } from '../yard/paper-shapes.ts';
import { type RepairJob, repairText } from '../yard/repair-job.ts';
import { checkToRepair } from '../yard/repair-moves.ts';
import { command } from './procedure.ts';
import { repairChanged, repairClosed } from './repair-facts.ts';
import { unknownLocation } from './scrap-place.ts';
import { code, commandId, instant } from './shapes.ts';

const input = z.strictObject({
  commandId,
  /** Made by the caller; the id of one that is there edits it. */
  id: paperId,
  /** Of the one that is edited, as it was read; absent for a new one. */
  version: z.int().optional(),
  repair: repairText.omit({ done: true }),
  /** Where the pieces are sent to be repaired; absent: they stay where they are. */
  sendTo: code.optional(),
  /** The condition in which they are booked until now; absent: to repair already. */
  was: z.enum(conditions).exclude(['scrapped']).optional(),
  at: instant,
});
type Input = z.output<typeof input>;

export const repairSave = command({
  name: 'repair.save',
  input,
  output: z.strictObject({ id: z.string(), version: z.int(), moved: z.int() }),
  run: async (book, given, { at: recordedAt, who }) => {
    const [repairs, locations] = await Promise.all([book.repairs(), book.locations()]);
    const known = repairs.find(({ id }) => id === given.id);
    if (known !== undefined && known.state !== 'open') return repairClosed(known);
    if (known !== undefined && known.version !== given.version) return repairChanged(known);
    if (known === undefined && given.version !== undefined)
      return refuse('unknown-repair', `There is no repair ${given.id} in this book.`, { field: 'id' });
    for (const place of [given.repair.place, given.sendTo ?? given.repair.place])
      if (!locations.some((each) => each.code === place)) return unknownLocation(place, 'place');
    const others = repairs.filter(({ id }) => id !== given.id);
    const moved = await moveToRepair(book, given, others, { recordedAt, who });
    if (!moved.ok) return moved;
    const repair: RepairJob = {
      ...given.repair,
      done: null,
      place: given.sendTo ?? given.repair.place,
      id: given.id,
      state: 'open',
      version: (known?.version ?? 0) + 1,
    };
    await book.putRepair(repair);
    return answer({ id: repair.id, version: repair.version, moved: moved.value });
  },
});

async function moveToRepair(
  book: BookWriter,
  { commandId: from, id, repair, was = 'to-repair', sendTo, at }: Input,
  others: readonly RepairJob[],
  by: { readonly recordedAt: string; readonly who: string },
) {
  const { component, owner, quantity, place, fault } = repair;
  const of = { component, owner, location: place, quantity };
  if (was === 'to-repair') {
    const refusal = checkToRepair(of, await book.stock(), others);
    if (refusal !== null) return { ok: false as const, error: refusal };
  }
  const to = sendTo ?? place;
  if (to === place && was === 'to-repair') return answer(0);
  await book.appendMovements(
    [
      {
        id: `${from}-1`,
        component,
        quantity,
        owner,
        from: place,
        to,
        condition: was,
        conditionAfter: 'to-repair',
        reason: 'repair',
        at,
        who: by.who,
        noteNumber: null,
        remark: `To repair: ${fault}`,
        basis: null,
        basisDate: null,
        reverses: null,
        paper: id,
      },
    ],
    by.recordedAt,
  );
  return answer(quantity);
}
