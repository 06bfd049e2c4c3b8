// What is where, whose, and in what condition, on any date: the sum of the ledger up to then.
import { z } from 'zod';
import { bases, conditions, locationKinds, ownerKinds } from '../yard/movement.ts';
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
  run: () => Promise.reject(new Error('being built')),
});
