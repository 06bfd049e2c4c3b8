// The repairs, open ones first by when they are due back; and pieces to repair that no repair has in hand.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { momentMs } from '../yard/moment.ts';
import { isHeld } from '../yard/movement.ts';
import { repairText } from '../yard/repair-job.ts';
import { freeToRepair } from '../yard/repair-moves.ts';
import { byCode, found } from './by-code.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';
import { yardNow } from './yard-now.ts';

const row = repairText.extend({
  id: z.string(),
  version: z.int(),
  state: z.enum(['open', 'done', 'dropped']),
  name: z.string(),
  /** Open, and its day has passed: no plan counts on it until a new one is entered. */
  late: z.boolean(),
});

export const repairList = query({
  name: 'repair.list',
  input: z.strictObject({ state: z.enum(['open', 'done', 'dropped']).optional(), now: instant.optional() }),
  output: z.strictObject({
    repairs: z.array(row),
    /** To repair, and in no open repair. */
    waiting: z.array(
      z.strictObject({ component: code, name: z.string(), owner: code, location: code, quantity: z.int() }),
    ),
  }),
  run: async (book, { state, now }) => {
    const [repairs, stock, locations, components, nowText] = await Promise.all([
      book.repairs(),
      book.stock(),
      book.locations(),
      book.components(),
      yardNow(book, now),
    ]);
    const nowMs = momentMs(nowText) ?? 0;
    const component = byCode(components);
    const place = byCode(locations);
    const rows = repairs
      .filter((each) => state === undefined || each.state === state)
      .map((each) => ({
        ...each,
        partsFrom: [...each.partsFrom],
        name: found(component, each.component).name,
        late: each.state === 'open' && dueOf(each.dueAt) <= nowMs,
      }))
      .sort(
        (one, other) =>
          Number(one.state !== 'open') - Number(other.state !== 'open') ||
          Number(dueOf(one.dueAt) > dueOf(other.dueAt)) - Number(dueOf(one.dueAt) < dueOf(other.dueAt)) ||
          (one.id < other.id ? -1 : 1),
      );
    const waiting = stock
      .filter(({ condition, location }) => condition === 'to-repair' && isHeld(found(place, location).kind))
      .map((line) => ({
        component: line.component,
        name: found(component, line.component).name,
        owner: line.owner,
        location: line.location,
        quantity: freeToRepair(line, [line], repairs),
      }))
      .filter(({ quantity }) => quantity > 0);
    return answer({ repairs: rows, waiting });
  },
});

/** Without a day: after all others. */
function dueOf(dueAt: string | null): number {
  return dueAt === null ? Infinity : (momentMs(dueAt) ?? Infinity);
}
