// Lifting gear by serial number: where it is, when it was looked at, until when that holds, and whether it is ready on
// the day; and where more serial numbers are said to be than the ledger has pieces.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { localDate, msOf } from '../plan/local-time.ts';
import { gearStanding, serialsOver } from '../yard/gear-ready.ts';
import { byCode, found } from './by-code.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';
import { yardNow } from './yard-now.ts';

export const serial = z.string().trim().min(1).max(40);

export const serialOver = z.strictObject({
  component: code,
  owner: code,
  place: code,
  serials: z.int(),
  pieces: z.int(),
});

const standing = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('ready'), until: date }),
  z.strictObject({ is: z.literal('never-inspected') }),
  z.strictObject({ is: z.literal('failed'), on: date }),
  z.strictObject({ is: z.literal('out-of-date'), since: date }),
]);

export const gearList = query({
  name: 'gear.list',
  input: z.strictObject({ now: instant.optional() }),
  output: z.strictObject({
    /** The day for which it is said. */
    date,
    gear: z.array(
      z.strictObject({
        serial,
        component: code,
        name: z.string(),
        owner: code,
        place: code,
        placeName: z.string(),
        inspectedOn: date.nullable(),
        goodUntil: date.nullable(),
        passed: z.boolean().nullable(),
        by: z.string().nullable(),
        remark: z.string().nullable(),
        standing,
      }),
    ),
    serialsOver: z.array(serialOver),
  }),
  run: async (book, { now }) => {
    const [at, gear, components, locations, stock, jobs] = await Promise.all([
      yardNow(book, now),
      book.liftingGear(),
      book.components(),
      book.locations(),
      book.stock(),
      book.jobs(),
    ]);
    const day = localDate(msOf(at), jobs[0]?.timeZone ?? 'UTC');
    const component = byCode(components);
    const place = byCode(locations);
    return answer({
      date: day,
      gear: gear.map((each) => ({
        serial: each.serial,
        component: each.component,
        name: found(component, each.component).name,
        owner: each.owner,
        place: each.place,
        placeName: found(place, each.place).name,
        inspectedOn: each.last?.inspectedOn ?? null,
        goodUntil: each.last?.goodUntil ?? null,
        passed: each.last?.passed ?? null,
        by: each.last?.by ?? null,
        remark: each.last?.remark ?? null,
        standing: gearStanding(each, day),
      })),
      serialsOver: [...serialsOver(gear, stock)],
    });
  },
});
