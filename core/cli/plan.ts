// `regang plan --book FILE --job CODE`: plans a job, stores the plan, and prints it in the words of
// `calc plan`.
import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import { planMake } from '../procedures/plan-make.ts';
import { code } from '../procedures/shapes.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { ask, bookOption, readOptions, withBook } from './with-book.ts';

const input = z.strictObject({
  book: bookOption,
  job: code,
  improve: z.coerce.number().min(0).max(600).optional().meta({ description: 'Seconds' }),
});

const output = planMake.output.omit({ cost: true, boundCents: true }).extend({
  cost: z.strictObject({ labour: z.int(), hire: z.int(), total: z.int(), unmet: z.int() }),
  bound: z.int(),
});

export const plan: BookCommand = {
  input,
  output,
  run: async (given) => {
    const options = readOptions(input, given);
    if (!options.ok) return outcomeOf(options);
    const { book: file, job, improve } = options.value;
    const seconds = improve === undefined ? {} : { improveSeconds: improve };
    const asked = await withBook(file, async (book) =>
      ask(book, planMake, { commandId: randomUUID(), job, ...seconds }),
    );
    if (!asked.ok) return outcomeOf(asked);
    return outcomeOf(asked.value, (value) => printed(planMake.output.parse(value)));
  },
};

function printed(made: z.output<typeof planMake.output>): z.output<typeof output> {
  const { cost, boundCents, ...rest } = made;
  const { labourCents, hireCents, totalCents, unmet } = cost;
  return {
    ...rest,
    cost: { labour: labourCents, hire: hireCents, total: totalCents, unmet },
    bound: boundCents,
  };
}
