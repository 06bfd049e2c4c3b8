// Gangs with what is booked to them, read at once for the list, the detail and the tags.
import { z } from 'zod';
import type { BookComponent, BookReader } from '../book/book.ts';
import { type Gang, gangStates, layings } from '../yard/gang.ts';
import { gangContentFindings } from '../yard/gang-findings.ts';
import { gangContent } from '../yard/gang-moves.ts';
import { mayFollow } from '../yard/gang-steps.ts';
import type { StockLine } from '../yard/quantities.ts';
import { byCode, found } from './by-code.ts';
import { type GangMakeUp, readMakeUps } from './gang-make-up.ts';
import { code, finding, instant } from './shapes.ts';

export const gangRow = z.strictObject({
  /** Its tag. */
  gang: code,
  design: code,
  designName: z.string(),
  revision: z.string(),
  /** The saved state it was built to, and the one in force; null where the design was taken out. */
  designState: z.int(),
  stateInForce: z.int().nullable(),
  state: z.enum(gangStates),
  /** Which may come next. */
  mayFollow: z.array(z.enum(gangStates)),
  place: code,
  placeName: z.string(),
  laying: z.enum(layings),
  job: code.nullable(),
  turn: z.string().nullable(),
  nextTurn: z.string().nullable(),
  at: instant,
  who: z.string(),
  remark: z.string().nullable(),
  pieces: z.int(),
  weightGrams: z.int(),
  findings: z.array(finding),
});

export interface GangFacts {
  readonly gangs: readonly Gang[];
  readonly components: ReadonlyMap<string, BookComponent>;
  readonly contentOf: (gang: string) => readonly StockLine[];
  readonly makeUpOf: (gang: Gang) => GangMakeUp;
  readonly row: (gang: Gang) => z.output<typeof gangRow>;
}

export async function readGangFacts(book: BookReader): Promise<GangFacts> {
  const [gangs, stock, components, locations] = await Promise.all([
    book.gangs(),
    book.stock(),
    book.components(),
    book.locations(),
  ]);
  const makeUps = await readMakeUps(
    book,
    gangs.map((each) => each.last),
  );
  const component = byCode(components);
  const place = byCode(locations);
  const byGang = Map.groupBy(stock, (line) => line.location);
  const contentOf = (gang: string): readonly StockLine[] => gangContent(byGang.get(gang) ?? [], gang);
  return {
    gangs,
    components: component,
    contentOf,
    makeUpOf: (gang) => makeUps(gang.last),
    row: (gang) => {
      const { gang: tag, number: _, ruleVersion: __, ...last } = gang.last;
      const makeUp = makeUps(gang.last);
      const content = contentOf(tag);
      return {
        ...last,
        gang: tag,
        designName: makeUp.name,
        revision: makeUp.revision,
        stateInForce: makeUp.inForce,
        mayFollow: [...mayFollow(last.state)],
        placeName: found(place, last.place).name,
        pieces: content.reduce((sum, line) => sum + line.quantity, 0),
        weightGrams: weightOf(content, component),
        findings: gangContentFindings(gang.last, content, makeUp).map((each) => ({ ...each, where: tag })),
      };
    },
  };
}

export function weightOf(
  lines: readonly Pick<StockLine, 'component' | 'quantity'>[],
  components: ReadonlyMap<string, BookComponent>,
): number {
  return lines.reduce((sum, line) => sum + line.quantity * found(components, line.component).weightGrams, 0);
}

/** The first free tag of each design: GA-1, GA-2 ...; a tag once used stays with its gang. */
export function nextTags(
  designs: readonly { readonly code: string }[],
  locations: readonly { readonly code: string }[],
): Record<string, string> {
  const taken = new Set(locations.map((each) => each.code));
  return Object.fromEntries(
    designs.map(({ code: design }) => {
      let number = 1;
      while (taken.has(`${design}-${number}`)) number += 1;
      return [design, `${design}-${number}`];
    }),
  );
}
