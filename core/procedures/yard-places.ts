// The locations and owners that a movement can name.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { isInHand, locationKinds, ownerKinds } from '../yard/movement.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';

export const yardPlaces = query({
  name: 'yard.places',
  input: z.strictObject({}),
  output: z.strictObject({
    locations: z.array(
      z.strictObject({ code, name: z.string(), kind: z.enum(locationKinds), inHand: z.boolean() }),
    ),
    owners: z.array(
      z.strictObject({ code, name: z.string(), kind: z.enum(ownerKinds), agreement: z.string().nullable() }),
    ),
  }),
  run: async (book) => {
    const [locations, owners] = await Promise.all([book.locations(), book.owners()]);
    return answer({
      locations: locations.map((each) => ({ ...each, inHand: isInHand(each.kind) })),
      owners: [...owners],
    });
  },
});
