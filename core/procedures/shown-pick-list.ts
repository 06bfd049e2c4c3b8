// A pick list as every door is shown it: names beside codes, what is short with what lies elsewhere.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { conditions } from '../yard/movement.ts';
import { type PickAsked, pickId } from '../yard/pick-id.ts';
import { pickList } from '../yard/pick-list.ts';
import { byCode, found } from './by-code.ts';
import { loosePlaces } from './gang-places.ts';
import { readPickWanted } from './pick-wanted.ts';
import { code, instant } from './shapes.ts';
import { yardNow } from './yard-now.ts';

const held = { owner: code, condition: z.enum(conditions), quantity: z.int() };
const named = { component: code, name: z.string() };

export const shownPickList = z.strictObject({
  /** As in the address of its sheet. */
  id: z.string(),
  of: z.enum(['design', 'pour', 'note']),
  /** The moment of which the stock is. */
  at: instant,
  code: z.string(),
  name: z.string(),
  job: z.strictObject({ code, name: z.string(), units: z.enum(['us', 'metric']) }).nullable(),
  neededAt: instant.nullable(),
  /** The one place to take from; null: from everywhere that pieces lie loose. */
  from: code.nullable(),
  to: code.nullable(),
  places: z.array(
    z.strictObject({
      location: code,
      name: z.string(),
      lines: z.array(z.strictObject({ ...named, ...held, weightGrams: z.int() })),
      weightGrams: z.int(),
    }),
  ),
  short: z.array(
    z.strictObject({
      ...named,
      kind: z.string(),
      owner: code.nullable(),
      wanted: z.int(),
      there: z.int(),
      missing: z.int(),
      elsewhere: z.array(z.strictObject({ location: code, ...held })),
    }),
  ),
  /** They fly with the crane: fetched by their numbers, brought back after the last pick. */
  hooks: z.array(z.strictObject({ ...named, quantity: z.int() })),
  coming: z.array(
    z.strictObject({
      turn: z.string(),
      side: z.enum(['A', 'B']),
      design: code,
      how: z.enum(['new', 'regang', 'fly-on', 'is-built']),
      from: z.string().nullable(),
    }),
  ),
  pieces: z.int(),
  weightGrams: z.int(),
});
export type ShownPickList = z.output<typeof shownPickList>;

export async function readPickList(
  book: BookReader,
  asked: PickAsked,
  now: string | undefined,
): Promise<Answer<ShownPickList>> {
  const at = await yardNow(book, now);
  const read = await readPickWanted(book, asked.picked, at);
  if (!read.ok) return read;
  const { wanted, hooks, coming, job, ...rest } = read.value;
  const from = asked.from ?? rest.from ?? undefined;
  const places = from === undefined ? answer(undefined) : await loosePlaces(book, from);
  if (!places.ok) return places;
  const [stock, components, locations, owners] = await Promise.all([
    book.stock(at),
    book.components(),
    book.locations(),
    book.owners(),
  ]);
  const component = byCode(components);
  const location = byCode(locations);
  const list = pickList(wanted, {
    stock,
    locations,
    owners,
    weightGrams: new Map(components.map((each) => [each.code, each.weightGrams])),
    from: places.value,
  });
  const withName = <T extends { readonly component: string }>(line: T) => ({
    ...line,
    name: found(component, line.component).name,
  });
  return answer({
    ...rest,
    id: pickId(asked.picked, asked.from),
    at,
    of: asked.picked.of,
    job: job === null ? null : { code: job.code, name: job.name, units: job.units },
    from: from ?? null,
    places: list.places.map((place) => ({
      ...place,
      name: found(location, place.location).name,
      lines: place.lines.map(withName),
    })),
    short: list.short.map((line) => ({
      ...withName(line),
      kind: found(component, line.component).kind,
      elsewhere: [...line.elsewhere],
    })),
    hooks: hooks.map(({ component: hook, quantity }) => withName({ component: hook, quantity })),
    coming: [...coming],
    pieces: list.pieces,
    weightGrams: list.weightGrams,
  });
}
