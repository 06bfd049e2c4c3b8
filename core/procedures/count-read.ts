// A count as a counter sees it. Counted blind, a line keeps its booked figure and the other counter's to itself
// until this counter has entered it.
import { z } from 'zod';
import { answer } from '../answer.ts';
import { bookedOf, type CountDifference } from '../yard/count-differences.ts';
import { countClasses } from '../yard/stock-count.ts';
import { found } from './by-code.ts';
import { readCountFacts } from './count-facts.ts';
import { headOf } from './count-list.ts';
import { movedDuring } from './count-moved.ts';
import { byCondition, counterFigure, countHead, countId, lineOf, movedMeanwhile } from './count-shapes.ts';
import { query } from './procedure.ts';
import { code } from './shapes.ts';

const counter = z.union([z.literal(1), z.literal(2)]);

export const countRead = query({
  name: 'count.read',
  input: z.strictObject({
    count: countId,
    /** Who looks; absent: whoever is not one of the counters, and sees of a blind line what all of them may see. */
    counter: counter.optional(),
  }),
  output: z.strictObject({
    count: countHead,
    places: z.array(z.strictObject({ code, name: z.string() })),
    lines: z.array(
      z.strictObject({
        ...lineOf,
        name: z.string(),
        class: z.enum(countClasses),
        lookAlikes: z.array(code),
        bundleSize: z.int().nullable(),
        /** Counters that have entered it. */
        entered: z.array(counter),
        /** Null while it is counted blind and this counter has not entered it. */
        booked: byCondition.nullable(),
        figures: z.array(counterFigure),
      }),
    ),
    moved: z.array(movedMeanwhile),
    /** How many entries there are: a booking names it, so that nothing entered since is booked over. */
    entries: z.int(),
  }),
  run: async (book, { count: id, counter: who }) => {
    const facts = await readCountFacts(book, id);
    if (!facts.ok) return facts;
    const { count, entries, differences, stockAt, locations, components, classed, partners } = facts.value;
    const classes = new Map(classed.map((each) => [each.component, each.class]));
    const { bundleSizes } = await book.yardSettings();
    const head = headOf(count, entries);
    return answer({
      count: head,
      places: locations
        .filter((place) => head.places.includes(place.code))
        .map(({ code: place, name }) => ({ code: place, name })),
      lines: differences.map((line) => {
        const isOpen = isShown(line, count, who);
        const { location, component, owner } = line;
        return {
          location,
          component,
          owner,
          name: found(components, component).name,
          class: classes.get(component) ?? 'C',
          lookAlikes: [...(partners.get(component) ?? [])],
          bundleSize: Object.hasOwn(bundleSizes, component) ? (bundleSizes[component] ?? null) : null,
          entered: line.figures.map((figure) => figure.counter),
          booked: isOpen
            ? line.figures.length > 0
              ? line.bookedByCondition
              : bookedOf(line, stockAt(count.startedAt))
            : null,
          figures: line.figures
            .filter((figure) => isOpen || figure.counter === who)
            .map((figure) => ({ ...figure, notes: [...figure.notes] })),
        };
      }),
      moved: await movedDuring(book, count, differences),
      entries: entries.length,
    });
  },
});

function isShown(
  { figures }: CountDifference,
  { blind, counters, state }: { readonly blind: boolean; readonly counters: 1 | 2; readonly state: string },
  who: 1 | 2 | undefined,
): boolean {
  if (!blind || state !== 'open') return true;
  return who === undefined ? figures.length >= counters : figures.some((figure) => figure.counter === who);
}
