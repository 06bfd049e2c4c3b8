// Containers: what each is, whose, where, how full, what is in it and what that weighs; and the pieces that could be
// given a tag.
import { z } from 'zod';
import { answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { type Container, fillings } from '../yard/container.ts';
import { momentMs } from '../yard/moment.ts';
import { conditions } from '../yard/movement.ts';
import { byCode, found } from './by-code.ts';
import { nextTags, weightOf } from './gang-facts.ts';
import { query } from './procedure.ts';
import { code, instant } from './shapes.ts';

export const containerList = query({
  name: 'container.list',
  input: z.strictObject({}),
  output: z.strictObject({
    containers: z.array(
      z.strictObject({
        /** Its tag. */
        container: code,
        component: code,
        name: z.string(),
        owner: code,
        /** A supplier's: hire runs for the container itself. */
        onHire: z.boolean(),
        place: code,
        placeName: z.string(),
        filling: z.enum(fillings),
        content: z.array(
          z.strictObject({
            component: code,
            name: z.string(),
            owner: code,
            condition: z.enum(conditions),
            quantity: z.int(),
            weightGrams: z.int(),
          }),
        ),
        pieces: z.int(),
        contentGrams: z.int(),
        tareGrams: z.int(),
        /** By the piece weights: tare and content. */
        reckonedGrams: z.int(),
        /** As it was weighed, where it was weighed since its content changed. */
        grossGrams: z.int().nullable(),
        at: instant,
        who: z.string(),
        remark: z.string().nullable(),
      }),
    ),
    /** The tag that a further piece of a component would bear. */
    nextTags: z.record(code, z.string()),
  }),
  run: async (book) => {
    const [containers, stock, components, locations, owners] = await Promise.all([
      book.containers(),
      book.stock(),
      book.components(),
      book.locations(),
      book.owners(),
    ]);
    const component = byCode(components);
    const place = byCode(locations);
    const owner = byCode(owners);
    const inside = Map.groupBy(
      stock.filter((line) => line.quantity > 0),
      (line) => line.location,
    );
    const weighedStill = await Promise.all(containers.map((each) => isWeighedStill(book, each)));
    const rows = containers.map(({ code: tag, last, ...piece }, index) => {
      const content = inside.get(tag) ?? [];
      const { name, weightGrams: tareGrams } = found(component, piece.component);
      const contentGrams = weightOf(content, component);
      return {
        container: tag,
        ...piece,
        name,
        onHire: found(owner, piece.owner).kind === 'supplier',
        place: last.place,
        placeName: found(place, last.place).name,
        filling: last.filling === 'empty' && content.length > 0 ? ('part' as const) : last.filling,
        content: content.map((line) => ({
          component: line.component,
          name: found(component, line.component).name,
          owner: line.owner,
          condition: line.condition,
          quantity: line.quantity,
          weightGrams: weightOf([line], component),
        })),
        pieces: content.reduce((sum, line) => sum + line.quantity, 0),
        contentGrams,
        tareGrams,
        reckonedGrams: tareGrams + contentGrams,
        grossGrams: weighedStill[index] === true ? last.grossGrams : null,
        at: last.at,
        who: last.who,
        remark: last.remark,
      };
    });
    return answer({ containers: rows, nextTags: nextTags(components, locations) });
  },
});

/** Whether nothing went in or out of it since it was weighed. */
async function isWeighedStill(book: BookReader, { code: tag, last }: Container): Promise<boolean> {
  if (last.grossGrams === null) return false;
  const newest = await book.movements({ location: tag, limit: 100 });
  const weighedAt = momentMs(last.at) ?? 0;
  return newest.every((each) => (momentMs(each.at) ?? 0) <= weighedAt);
}
