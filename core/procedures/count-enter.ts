// What one counter found. Sent twice it is entered once; a line entered again by the same counter is a recount and
// takes the place of its earlier figure, which stays in the book.
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import { named } from '../yard/count-explained.ts';
import { lineKey, overlap } from '../yard/count-figures.ts';
import { momentMs } from '../yard/moment.ts';
import { countEntry, countName, type CountEntry, type StockCount } from '../yard/stock-count.ts';
import type { BookReader } from '../book/book.ts';
import type { Answer } from '../answer.ts';
import { checkLines } from './count-lines.ts';
import { countId } from './count-shapes.ts';
import { findCount } from './find-count.ts';
import { command } from './procedure.ts';
import { commandId, instant } from './shapes.ts';

export const countEnter = command({
  name: 'count.enter',
  input: z.strictObject({
    commandId,
    count: countId,
    /** Made by whoever enters it, a phone or a screen: the same id again changes nothing. */
    id: z.string().min(8).max(64),
    counter: z.union([z.literal(1), z.literal(2)]).default(1),
    lines: countEntry.shape.lines,
    /** When it was counted; absent: now. */
    at: instant.optional(),
    device: countEntry.shape.device.default('here'),
  }),
  output: z.strictObject({ entry: z.int(), repeated: z.boolean(), lines: z.int() }),
  run: async (book, input, context) => {
    const found = await findCount(book, input.count);
    if (!found.ok) return found;
    const count = found.value;
    const entries = await book.countEntries(count.id);
    const before = entries.find((entry) => entry.id === input.id);
    const lines = new Set(input.lines.map(lineKey)).size;
    if (before !== undefined) return answer({ entry: before.number, repeated: true, lines });
    const refused = await refusalOf(book, count, entries, input);
    if (!refused.ok) return refused;
    const { counter, device } = input;
    const at = input.at ?? context.at;
    await book.addCountEntry(count.id, {
      id: input.id,
      counter,
      lines: input.lines,
      at,
      who: context.who,
      device,
    });
    return answer({ entry: entries.length + 1, repeated: false, lines });
  },
});

async function refusalOf(
  book: BookReader,
  count: StockCount,
  entries: readonly CountEntry[],
  input: z.output<typeof countEnter.input>,
): Promise<Answer<null>> {
  const { counter, lines, at } = input;
  const name = countName(count);
  if (count.state !== 'open')
    return refuse(
      `count-${count.state}`,
      `Count ${name} is ${count.state}: nothing more can be entered on it.`,
      {
        field: 'count',
        hint: 'Maybe start another count of what is left.',
      },
    );
  if (counter > count.counters)
    return refuse('one-counter', `Count ${name} has one counter.`, { field: 'counter' });
  if (at !== undefined && (momentMs(at) ?? 0) < (momentMs(count.startedAt) ?? 0))
    return refuse(
      'counted-before-start',
      `Count ${name} began at ${count.startedAt}; ${at} is before that.`,
      {
        field: 'at',
        hint: 'Maybe the clock of the device is behind.',
      },
    );
  const checked = await checkLines(book, lines);
  if (!checked.ok) return checked;
  const known = [...count.lines, ...entries.flatMap((entry) => entry.lines)];
  for (const [index, line] of lines.entries()) {
    const field = `lines.${index}.component`;
    if (known.some((other) => lineKey(other) === lineKey(line))) continue;
    if (known.some((other) => overlap(other, line)))
      return refuse('count-line-twice', `${named(line)} would be counted twice.`, {
        field,
        hint: 'Maybe the line is for every owner together, or for each by itself.',
      });
    const isPlace = count.lines.some(({ location }) => location === line.location);
    if (count.kind === 'spot' || !isPlace)
      return refuse('not-on-count', `${named(line)} is not on count ${name}.`, {
        field,
        hint: 'Maybe a count of the whole place is wanted.',
      });
  }
  return answer(null);
}
