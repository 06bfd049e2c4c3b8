// Adds a location or an owner, or renames one. Gangs, containers and pours get theirs where they are made.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { locationKinds, ownerKinds } from '../yard/movement.ts';
import { command } from './procedure.ts';
import { code, commandId } from './shapes.ts';

const name = z.string().trim().min(1).max(120);

export const yardPlaceSave = command({
  name: 'yard.placeSave',
  input: z.strictObject({
    commandId,
    place: z.discriminatedUnion('what', [
      z.strictObject({
        what: z.literal('location'),
        code,
        name,
        kind: z.enum(locationKinds).exclude(['container', 'gang', 'pour']),
      }),
      z.strictObject({
        what: z.literal('owner'),
        code,
        name,
        kind: z.enum(ownerKinds),
        agreement: z.string().trim().max(60).nullable(),
      }),
    ]),
  }),
  output: z.strictObject({ code }),
  run: async (book, { place }) => {
    if (place.what === 'location') {
      const { what: _, ...location } = place;
      const before = (await book.locations()).find((each) => each.code === place.code);
      if (before !== undefined && before.kind !== place.kind)
        return refuse('kind-stays', `${place.code} is a location of kind ${before.kind} and stays so.`, {
          field: 'place.kind',
          hint: 'Maybe another code is meant.',
        });
      await book.putLocation(location);
    } else {
      const { what: _, ...owner } = place;
      const before = (await book.owners()).find((each) => each.code === place.code);
      if (before !== undefined && before.kind !== place.kind)
        return refuse('kind-stays', `${place.code} is an owner of kind ${before.kind} and stays so.`, {
          field: 'place.kind',
          hint: 'Maybe another code is meant.',
        });
      await book.putOwner(owner);
    }
    return answer({ code: place.code });
  },
});
