// Books a repair done: its pieces come out ready, ready for hidden faces only, or scrapped, and pieces that were given up for
// their parts are scrapped. Once only.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { paperId, pieces } from '../yard/paper-shapes.ts';
import { finishMovements } from '../yard/repair-moves.ts';
import { command } from './procedure.ts';
import { openRepair } from './repair-facts.ts';
import { scrapPlace } from './scrap-place.ts';
import { code, commandId, instant } from './shapes.ts';

export const repairFinish = command({
  name: 'repair.finish',
  input: z.strictObject({
    commandId,
    repair: paperId,
    version: z.int(),
    at: instant,
    ready: pieces,
    readyHidden: pieces.default(0),
    scrapped: pieces.default(0),
    /** Hours that it took. */
    hours: z.number().min(0).max(10_000),
    /** Where the pieces are then; absent: where they are. */
    backTo: code.optional(),
    /** Who agreed beside the one who books it; needed where pieces are scrapped, given up for their parts as well. */
    secondName: z.string().trim().max(80).optional(),
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({ movements: z.int() }),
  run: async (book, input, { at: recordedAt, who }) => {
    const repair = await openRepair(book, input.repair, input.version);
    if (!repair.ok) return repair;
    const [stock, locations] = await Promise.all([book.stock(), book.locations()]);
    const { commandId: id, at, ready, readyHidden, scrapped, hours, secondName, remark } = input;
    const movements = finishMovements(
      repair.value,
      { ready, readyHidden, scrapped },
      input.backTo ?? null,
      { stock, locations },
      { id, at, who, secondName, remark, paper: repair.value.id, scrap: scrapPlace(locations) },
    );
    if (!movements.ok) return movements;
    await book.appendMovements(movements.value, recordedAt);
    const done = { at, ready, readyHidden, scrapped, hours };
    await book.putRepair({ ...repair.value, state: 'done', version: repair.value.version + 1, done });
    return answer({ movements: movements.value.length });
  },
});
