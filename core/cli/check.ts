// `regang check --book FILE`: what is broken in a book; exit 2 where anything is.
import { z } from 'zod';
import { bookCheck } from '../procedures/book-check.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { ask, bookOption, readOptions, withBook } from './with-book.ts';

const input = z.strictObject({ book: bookOption });

export const check: BookCommand = {
  input,
  output: bookCheck.output,
  run: async (given) => {
    const options = readOptions(input, given);
    if (!options.ok) return outcomeOf(options);
    const asked = await withBook(options.value.book, async (book) => ask(book, bookCheck, {}));
    if (!asked.ok) return outcomeOf(asked);
    if (!asked.value.ok) return outcomeOf(asked.value);
    const found = bookCheck.output.parse(asked.value.value);
    return { document: found, exitCode: found.problems.length === 0 ? 0 : 2 };
  },
};
