// Books cleaning done: pieces that were to clean are ready, ready for hidden faces only, to repair or scrapped. All of the
// quantity is told; scrap needs a second name.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { careMovements } from '../yard/care-moves.ts';
import { pieces } from '../yard/paper-shapes.ts';
import { command } from './procedure.ts';
import { scrapPlace, unknownLocation } from './scrap-place.ts';
import { code, commandId, instant, quantity } from './shapes.ts';

export const yardClean = command({
  name: 'yard.clean',
  input: z.strictObject({
    commandId,
    component: code,
    owner: code,
    location: code,
    quantity,
    ready: pieces,
    readyHidden: pieces.default(0),
    toRepair: pieces.default(0),
    scrapped: pieces.default(0),
    at: instant,
    /** Who agreed beside the one who books it; needed where pieces are scrapped. */
    secondName: z.string().trim().max(80).optional(),
    remark: z.string().trim().max(400).optional(),
  }),
  output: z.strictObject({ booked: z.int() }),
  run: async (book, input, { at: recordedAt, who }) => {
    const locations = await book.locations();
    if (!locations.some((each) => each.code === input.location)) return unknownLocation(input.location);
    const { commandId: id, at, secondName, remark } = input;
    const movements = careMovements(
      input,
      input,
      { condition: 'to-clean', reason: 'clean' },
      { id, at, who, secondName, remark, paper: null, scrap: scrapPlace(locations) },
    );
    if (!movements.ok) return movements;
    await book.appendMovements(movements.value, recordedAt);
    return answer({ booked: movements.value.length });
  },
});
