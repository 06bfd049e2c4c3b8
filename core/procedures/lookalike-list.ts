// Components that are taken for each other: those entered, those that the catalogue's sizes propose, and those that
// lie here for two owners.
import { z } from 'zod';
import { answer } from '../answer.ts';
import type { BookComponent } from '../book/book.ts';
import {
  differingMeasure,
  type Measured,
  ofTwoOwners,
  proposedPairs,
  type TellApart,
} from '../yard/look-alikes.ts';
import { isHeld } from '../yard/movement.ts';
import { byCode, found } from './by-code.ts';
import { query } from './procedure.ts';
import { code, lengthNm } from './shapes.ts';

const size = z.strictObject({
  code,
  name: z.string(),
  kind: z.string(),
  widthNm: lengthNm.nullable(),
  heightNm: lengthNm.nullable(),
  lengthNm: lengthNm.nullable(),
  weightGrams: z.int(),
});

export const lookAlikePair = z.strictObject({
  one: size,
  other: size,
  /** In words, as somebody entered it; empty where the measure says it. */
  tellApart: z.string(),
  /** What differs by the catalogue; null where nothing known does. */
  measure: z
    .strictObject({ what: z.enum(['width', 'height', 'length']), oneNm: lengthNm, otherNm: lengthNm })
    .nullable(),
  isEntered: z.boolean(),
});

export const lookalikeList = query({
  name: 'lookalike.list',
  input: z.strictObject({}),
  output: z.strictObject({
    pairs: z.array(lookAlikePair),
    /** Only the mark tells these apart. */
    twoOwners: z.array(z.strictObject({ component: code, name: z.string(), owners: z.array(code) })),
  }),
  run: async (book) => {
    const [components, entered, stock, locations] = await Promise.all([
      book.components(),
      book.lookAlikes(),
      book.stock(),
      book.locations(),
    ]);
    const ofCode = byCode(components);
    const place = byCode(locations);
    const held = stock.filter((line) => isHeld(found(place, line.location).kind));
    return answer({
      pairs: [
        ...entered.map(({ component, other, tellApart }) =>
          pairOf(found(ofCode, component), found(ofCode, other), tellApart, null, true),
        ),
        ...proposedPairs(components.map(measuredOf), entered).map(({ component, other, tellApart }) =>
          pairOf(found(ofCode, component), found(ofCode, other), '', tellApart, false),
        ),
      ],
      twoOwners: ofTwoOwners(held).map(({ component, owners }) => ({
        component,
        name: found(ofCode, component).name,
        owners: [...owners],
      })),
    });
  },
});

export function measuredOf({
  code: component,
  kind,
  widthNm,
  heightNm,
  lengthNm: long,
}: BookComponent): Measured {
  return { component, kind, widthNm: widthNm ?? null, heightNm: heightNm ?? null, lengthNm: long ?? null };
}

export function pairOf(
  one: BookComponent,
  other: BookComponent,
  tellApart: string,
  known: TellApart | null,
  isEntered: boolean,
): z.input<typeof lookAlikePair> {
  const measure = known ?? differingMeasure(measuredOf(one), measuredOf(other));
  return {
    one: sizeOf(one),
    other: sizeOf(other),
    tellApart,
    measure:
      measure === null
        ? null
        : { what: measure.measure, oneNm: measure.componentNm, otherNm: measure.otherNm },
    isEntered,
  };
}

function sizeOf(component: BookComponent): z.input<typeof size> {
  const { widthNm, heightNm, lengthNm: long } = measuredOf(component);
  const { code: own, name, kind, weightGrams } = component;
  return { code: own, name, kind, widthNm, heightNm, lengthNm: long, weightGrams };
}
