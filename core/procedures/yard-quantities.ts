// What is where, whose, and in what condition, on any date: the sum of the ledger up to then.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { byCode, found } from './by-code.ts';
import { bases, conditions, isHeld, locationKinds, ownerKinds } from '../yard/movement.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';

export const stockRow = z.strictObject({
  component: code,
  name: z.string(),
  kind: z.string(),
  owner: code,
  ownerKind: z.enum(ownerKinds),
  location: code,
  locationKind: z.enum(locationKinds),
  condition: z.enum(conditions),
  quantity: z.int(),
  weightGrams: z.int(),
  /** How the opening figure under it was got, and its date. */
  basis: z.enum(bases).nullable(),
  basisDate: date.nullable(),
});

export const yardQuantities = query({
  name: 'yard.quantities',
  input: z.strictObject({
    /** Everything up to this instant; all that is booked, if absent. */
    at: instant.optional(),
    location: code.optional(),
    /** Places outside (suppliers, scrap, lost) as well. */
    outside: z.boolean().optional(),
  }),
  output: z.strictObject({ at: instant.nullable(), rows: z.array(stockRow) }),
  run: async (book, { at, location, outside = false }) => {
    const [lines, components, locations, owners] = await Promise.all([
      book.stock(at),
      book.components(),
      book.locations(),
      book.owners(),
    ]);
    if (location !== undefined && !locations.some((each) => each.code === location))
      return refuse('unknown-location', `There is no location ${location}.`, { field: 'location' });
    const component = byCode(components);
    const place = byCode(locations);
    const owner = byCode(owners);
    const rows = lines
      .filter((line) => location === undefined || line.location === location)
      .map((line) => {
        const { name, kind, weightGrams } = found(component, line.component);
        return {
          ...line,
          name,
          kind,
          ownerKind: found(owner, line.owner).kind,
          locationKind: found(place, line.location).kind,
          weightGrams: weightGrams * line.quantity,
        };
      })
      .filter((row) => outside || location !== undefined || isHeld(row.locationKind));
    return answer({ at: at ?? null, rows });
  },
});
