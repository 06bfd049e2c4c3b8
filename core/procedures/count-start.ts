// Starts a count: a spot check of some lines, or everything at places. What is left out is as the settings say.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { inShelfOrder } from '../yard/count-lines.ts';
import { overlap } from '../yard/count-figures.ts';
import { named } from '../yard/count-explained.ts';
import { countLine, countName, type CountLine } from '../yard/stock-count.ts';
import { checkLines, chooseLines } from './count-lines.ts';
import { command } from './procedure.ts';
import { code, commandId, instant } from './shapes.ts';

export const countStart = command({
  name: 'count.start',
  input: z.strictObject({
    commandId,
    kind: z.enum(['spot', 'location']),
    /** Places of a count of places, or to which a spot check keeps. */
    locations: z.array(code).min(1).max(200).optional(),
    /** Of a spot check, chosen by hand; absent: the lines that are most worth looking at. */
    lines: z.array(countLine).min(1).max(2000).optional(),
    /** Of a count of places: each owner's pieces by themselves. */
    byOwner: z.boolean().default(false),
    blind: z.boolean().optional(),
    counters: z.union([z.literal(1), z.literal(2)]).optional(),
    remark: z.string().trim().max(400).optional(),
    /** When counting begins; absent: now. */
    at: instant.optional(),
  }),
  output: z.strictObject({ count: z.string(), number: z.int(), name: z.string(), lines: z.int() }),
  run: async (book, input, context) => {
    const startedAt = input.at ?? context.at;
    if (input.kind === 'location' && input.locations === undefined)
      return refuse('no-places', 'A count of places names at least one place.', { field: 'locations' });
    const given = input.lines ?? null;
    const checked = given === null ? null : await checkLines(book, given);
    if (checked !== null && !checked.ok) return checked;
    const chosen =
      given === null
        ? await chooseLines(book, { ...input, now: startedAt })
        : answer(given.map((line) => ({ ...line, lastCountedOn: null, reasons: [] })));
    if (!chosen.ok) return chosen;
    const lines = chosen.value
      .map(({ location, component, owner }): CountLine => ({ location, component, owner }))
      .sort(inShelfOrder);
    const [first] = lines;
    if (first === undefined)
      return refuse('nothing-to-count', 'Nothing is booked there that could be counted.', {
        field: 'locations',
        hint: 'Maybe choose other places, or give the lines by hand.',
      });
    const twice = lines.find((line, index) => lines.some((other, at) => at < index && overlap(line, other)));
    if (twice !== undefined)
      return refuse('count-line-twice', `${named(twice)} would be counted twice.`, { field: 'lines' });
    const settings = await book.yardSettings();
    const number = await book.nextCountNumber();
    const id = `N${number}-${input.commandId}`.slice(0, 56);
    await book.putCount({
      id,
      number,
      state: 'open',
      result: null,
      kind: input.kind,
      lines,
      blind: input.blind ?? settings.blindCounts,
      counters: input.counters ?? settings.counters,
      startedAt,
      remark: input.remark ?? null,
    });
    return answer({ count: id, number, name: countName({ number }), lines: lines.length });
  },
});
