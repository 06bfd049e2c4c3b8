// `regang stock --book FILE`: quantities by component, owner, location and condition, after all that is
// booked or at the end of a date. Weights go out in kilograms, as from every command.
import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';
import type { OpenBook } from '../book/open.ts';
import { code, date, instant } from '../procedures/shapes.ts';
import { stockRow, yardQuantities } from '../procedures/yard-quantities.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { ask, bookOption, readOptions, withBook } from './with-book.ts';

const input = z.strictObject({
  book: bookOption,
  at: z
    .union([date, instant])
    .optional()
    .meta({ description: 'A date means its end; an instant is taken as it is' }),
  location: code.optional(),
});

const output = yardQuantities.output.extend({
  rows: z.array(stockRow.omit({ weightGrams: true }).extend({ weightKg: z.number() })),
});

export const stock: BookCommand = {
  input,
  output,
  run: async (given) => {
    const options = readOptions(input, given);
    if (!options.ok) return outcomeOf(options);
    const { book: file, at, location } = options.value;
    const asked = await withBook(file, async (book) =>
      ask(book, yardQuantities, {
        ...(at === undefined ? {} : { at: await instantOf(book, at) }),
        ...(location === undefined ? {} : { location }),
      }),
    );
    if (!asked.ok) return outcomeOf(asked);
    return outcomeOf(asked.value, (value) => printed(yardQuantities.output.parse(value)));
  },
};

function printed({ at, rows }: z.output<typeof yardQuantities.output>): z.output<typeof output> {
  return { at, rows: rows.map(({ weightGrams, ...row }) => ({ ...row, weightKg: weightGrams / 1000 })) };
}

/** The last moment of a date, by the clock of the book's first job, or of this machine where it has none. */
async function instantOf(book: OpenBook, at: string): Promise<string> {
  if (at.includes('T')) return at;
  const jobs = await book.read((reader) => reader.jobs());
  const timeZone = jobs[0]?.timeZone ?? Temporal.Now.timeZoneId();
  return Temporal.PlainDate.from(at)
    .add({ days: 1 })
    .toZonedDateTime(timeZone)
    .subtract({ milliseconds: 1 })
    .toString({ timeZoneName: 'never' });
}
