// `regang whatif`: what moving pours would change in the whole plan; stores nothing.
import { z } from 'zod';
import { planWhatif, whatif as whatifOutput } from '../procedures/plan-whatif.ts';
import { code, date } from '../procedures/shapes.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { ask, bookOption, readOptions, withBook } from './with-book.ts';

const moveText = z.string().regex(/^.+=[+-]\d{1,3}d$/u, {
  error: (issue) => `"${String(issue.input)}" is not a move; write the pour and working days, as P14=+2d`,
});

const input = z.strictObject({
  book: bookOption,
  job: code,
  move: z.array(moveText).min(1).max(20),
  today: date.optional(),
});

export const whatif: BookCommand = {
  input,
  output: whatifOutput,
  run: async (given) => {
    const options = readOptions(input, given);
    if (!options.ok) return outcomeOf(options);
    const { book: file, job, move, today } = options.value;
    const asked = await withBook(file, async (book) =>
      ask(book, planWhatif, { job, moves: move.map(readMove), ...(today === undefined ? {} : { today }) }),
    );
    return asked.ok ? outcomeOf(asked.value) : outcomeOf(asked);
  },
};

/** `P14=+2d`: the last sign of equality parts them, since a code may hold one. */
function readMove(text: string): { readonly pour: string; readonly workingDays: number } {
  const at = text.lastIndexOf('=');
  return { pour: text.slice(0, at), workingDays: Number(text.slice(at + 1, -1)) };
}
