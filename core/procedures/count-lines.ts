// Which lines a count would take, before it is started: the few of a spot check with the reasons why these, or what
// is booked at places.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { locationLines, spotLines } from '../yard/count-lines.ts';
import { isHeld } from '../yard/movement.ts';
import { byCode, found } from './by-code.ts';
import { lineOf, lineReason } from './count-shapes.ts';
import { query } from './procedure.ts';
import { code, date, instant } from './shapes.ts';
import { readSpotFacts } from './spot-facts.ts';
import { yardNow } from './yard-now.ts';
import type { BookReader } from '../book/book.ts';
import type { Answer } from '../answer.ts';
import type { CountLine } from '../yard/stock-count.ts';

export const countLines = query({
  name: 'count.lines',
  input: z.strictObject({
    kind: z.enum(['spot', 'location']),
    /** Only these; absent: every place for a spot check. */
    locations: z.array(code).max(200).optional(),
    byOwner: z.boolean().default(false),
    now: instant.optional(),
  }),
  output: z.strictObject({
    lines: z.array(
      z.strictObject({
        ...lineOf,
        name: z.string(),
        /** Null for a line of a place: only a spot check looks. */
        lastCountedOn: date.nullable(),
        reasons: z.array(lineReason),
      }),
    ),
  }),
  run: async (book, input) => {
    const now = await yardNow(book, input.now);
    const chosen = await chooseLines(book, { ...input, now });
    if (!chosen.ok) return chosen;
    const component = byCode(await book.components());
    return answer({
      lines: chosen.value.map((line) => ({ ...line, name: found(component, line.component).name })),
    });
  },
});

interface ChosenLine extends CountLine {
  readonly lastCountedOn: string | null;
  readonly reasons: z.input<typeof lineReason>[];
}

export async function chooseLines(
  book: BookReader,
  asked: {
    readonly kind: 'spot' | 'location';
    readonly locations?: readonly string[] | undefined;
    readonly byOwner: boolean;
    readonly now: string;
  },
): Promise<Answer<ChosenLine[]>> {
  const { locations, byOwner, now } = asked;
  const known = byCode(await book.locations());
  for (const place of locations ?? []) {
    const kind = known.get(place)?.kind;
    if (kind === undefined)
      return refuse('unknown-location', `There is no location ${place}.`, { field: 'locations' });
    if (!isHeld(kind)) return notCounted(place, 'locations');
  }
  if (asked.kind === 'location') {
    const lines = locationLines(await book.stock(now), locations ?? [], byOwner);
    return answer(lines.map((line) => ({ ...line, lastCountedOn: null, reasons: [] })));
  }
  const facts = await readSpotFacts(book, now, locations);
  return answer(
    spotLines(facts, facts.lines).map(({ location, component, owner, lastCountedOn, reasons }) => ({
      location,
      component,
      owner,
      lastCountedOn,
      reasons: [...reasons],
    })),
  );
}

/** Of lines given by hand: what the book does not know, or what would be counted twice. */
export async function checkLines(book: BookReader, lines: readonly CountLine[]): Promise<Answer<null>> {
  const [locations, components, owners] = await Promise.all([
    book.locations(),
    book.components(),
    book.owners(),
  ]);
  const names = {
    location: new Set(locations.map((each) => each.code)),
    component: new Set(components.map((each) => each.code)),
    owner: new Set(owners.map((each) => each.code)),
  };
  for (const [index, line] of lines.entries())
    for (const what of ['location', 'component', 'owner'] as const) {
      const named = line[what];
      if (named !== null && !names[what].has(named))
        return refuse(`unknown-${what}`, `The book has no ${what} ${named}.`, {
          field: `lines.${index}.${what}`,
        });
    }
  const away = lines.findIndex(({ location }) =>
    locations.some((each) => each.code === location && !isHeld(each.kind)),
  );
  return away < 0 ? answer(null) : notCounted(lines[away]?.location ?? '', `lines.${away}.location`);
}

function notCounted(place: string, field: string) {
  return refuse('not-held-there', `What is at ${place} is not held by us: there is nothing to count.`, {
    field,
  });
}
