// The count sheet of a count, blind or not, with its look-alikes.
import { answer } from '../answer.ts';
import { instantText, msOf } from '../plan/local-time.ts';
import { bookedOf } from '../yard/count-differences.ts';
import { sumOf } from '../yard/count-figures.ts';
import { ofTwoOwners } from '../yard/look-alikes.ts';
import { scanCode } from '../yard/scan-code.ts';
import { countName } from '../yard/stock-count.ts';
import { type CountSheetFacts, countSheet } from '../sheets/count-sheet.ts';
import { asData } from './as-data.ts';
import { found } from './by-code.ts';
import { readCountFacts } from './count-facts.ts';
import { movedDuring } from './count-moved.ts';
import { pairOf } from './lookalike-list.ts';
import { query } from './procedure.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';

export const sheetCount = query({
  name: 'sheet.count',
  input: paperSheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const facts = await readCountFacts(book, asked.id);
    if (!facts.ok) return facts;
    const { count, differences, stockAt, locations, components, classed, pairs, partners } = facts.value;
    const { bundleSizes } = await book.yardSettings();
    const [job] = await book.jobs();
    // By the clock of the job, as every screen tells it.
    const local = (at: string): string => (job === undefined ? at : instantText(msOf(at), job.timeZone));
    const stock = stockAt(count.startedAt);
    const classes = new Map(classed.map((each) => [each.component, each.class]));
    const places = locations.flatMap(({ code, name }): CountSheetFacts['places'] => {
      const lines = differences
        .filter((line) => line.location === code)
        .map((line) => ({
          component: line.component,
          name: found(components, line.component).name,
          owner: line.owner,
          class: classes.get(line.component) ?? 'C',
          booked: count.blind ? null : sumOf(bookedOf(line, stock)),
          lookAlikes: partners.get(line.component) ?? [],
          bundleSize: Object.hasOwn(bundleSizes, line.component)
            ? (bundleSizes[line.component] ?? null)
            : null,
        }));
      return lines.length === 0 ? [] : [{ code, name, lines }];
    });
    const counted = new Set(differences.map(({ component }) => component));
    const at = new Set(places.map(({ code }) => code));
    const together = stock.filter((line) => at.has(line.location) && counted.has(line.component));
    const moved = await movedDuring(book, count, differences);
    const sheet = countSheet({
      name: countName(count),
      kind: count.kind,
      blind: count.blind,
      counters: count.counters,
      startedAt: local(count.startedAt),
      remark: count.remark,
      scanCode: scanCode({ kind: 'count', job: null, code: countName(count) }),
      places,
      pairs: pairs
        .filter(({ component, other }) => counted.has(component) || counted.has(other))
        .map(({ component, other, tellApart }) =>
          pairOf(found(components, component), found(components, other), tellApart, null, true),
        ),
      twoOwners: ofTwoOwners(together).filter(({ component }) =>
        differences.some((line) => line.component === component),
      ),
      moved: moved.map((each) => ({ ...each, at: local(each.at) })),
      units: asked.units ?? job?.units ?? 'us',
    });
    return answer(asData(sheet));
  },
});
