// The count class of every component, why it has it, when it was last counted and when it is due again.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { countsAYear, nextDue, tolerancePercent } from '../yard/count-class.ts';
import { lastCounted } from '../yard/last-counted.ts';
import { isLoose } from '../yard/movement.ts';
import { countClasses } from '../yard/stock-count.ts';
import { byCode, found } from './by-code.ts';
import { classesOf, heldOf } from './count-facts.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';
import { yardNow } from './yard-now.ts';

export const countClassesQuery = query({
  name: 'count.classes',
  input: z.strictObject({ now: instant.optional() }),
  output: z.strictObject({
    today: date,
    classes: z.array(
      z.strictObject({ class: z.enum(countClasses), tolerancePercent: z.number(), countsAYear: z.int() }),
    ),
    components: z.array(
      z.strictObject({
        component: code,
        name: z.string(),
        kind: z.string(),
        held: z.int(),
        valueCents: z.int().nullable(),
        hirePerDayCents: z.int().nullable(),
        class: z.enum(countClasses),
        by: z.enum(['hand', 'value', 'hire', 'nothing', 'none-held']),
        sharePercent: z.number().nullable(),
        /** Of the place that was counted longest ago; null where one was never counted piece by piece. */
        lastCountedOn: date.nullable(),
        /** Null: at once. */
        due: date.nullable(),
        isDue: z.boolean(),
      }),
    ),
  }),
  run: async (book, input) => {
    const now = await yardNow(book, input.now);
    const today = now.slice(0, 10);
    const [stock, components, locations, owners, settings, counts] = await Promise.all([
      book.stock(now),
      book.components(),
      book.locations(),
      book.owners(),
      book.yardSettings(),
      book.counts({ state: 'booked' }),
    ]);
    const place = byCode(locations);
    const held = heldOf(stock, locations, owners);
    const loose = stock.filter((line) => line.quantity > 0 && isLoose(found(place, line.location).kind));
    const last = new Map<string, string | null>();
    for (const { component, basis, date: on } of lastCounted(loose, counts)) {
      const known = last.get(component);
      const counted = basis === 'counted' ? on : null;
      const isOlder = counted === null || known === undefined || (known !== null && counted < known);
      if (known !== null && isOlder) last.set(component, counted);
    }
    const ofCode = byCode(components);
    return answer({
      today,
      classes: countClasses.map((each) => ({
        class: each,
        tolerancePercent: tolerancePercent[each],
        countsAYear: countsAYear[each],
      })),
      components: classesOf(stock, components, locations, owners, settings.classes).map((each) => {
        const { name, kind, valueCents, hirePerDayCents } = found(ofCode, each.component);
        const lastCountedOn = last.get(each.component) ?? null;
        const due = nextDue(each.class, lastCountedOn);
        return {
          component: each.component,
          name,
          kind,
          held: held.get(each.component) ?? 0,
          valueCents: valueCents ?? null,
          hirePerDayCents,
          class: each.class,
          by: each.by,
          sharePercent: each.sharePercent,
          lastCountedOn,
          due,
          // What does not lie loose anywhere is not due.
          isDue: last.has(each.component) && (due === null || due <= today),
        };
      }),
    });
  },
});
