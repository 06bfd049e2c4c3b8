// `regang demo --book FILE`: a new book with the demo job.
import { existsSync } from 'node:fs';
import { z } from 'zod';
import { refuse } from '../answer.ts';
import { doorContext } from '../host/door-context.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { bookOption, fileFromHere, readOptions } from './with-book.ts';

const input = z.strictObject({ book: bookOption });
const output = z.strictObject({ book: z.string(), job: z.string() });

export const demo: BookCommand = {
  input,
  output,
  run: async (given) => {
    const options = readOptions(input, given);
    if (!options.ok) return outcomeOf(options);
    const book = fileFromHere(options.value.book);
    if (existsSync(book))
      return outcomeOf(
        refuse('file-exists', `${book} is there already; it was not touched.`, {
          field: 'book',
          hint: 'Maybe give another name: demo only makes new books.',
        }),
      );
    const { makeDemo } = await import('../../seed-demo/make-demo.ts');
    return outcomeOf(await makeDemo(book, doorContext()), ({ job }) => ({ book, job }));
  },
};
