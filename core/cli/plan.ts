// `regang plan --book FILE --job CODE`: plans a job, stores the plan, and prints it in the words of
// `calc plan`. While it looks for a better one, standard error says how far it is, and Ctrl-C ends it with its best.
import { randomUUID } from 'node:crypto';
import process from 'node:process';
import { z } from 'zod';
import { planAhead } from '../host/plan-ahead.ts';
import { planMake } from '../procedures/plan-make.ts';
import { code } from '../procedures/shapes.ts';
import type { PlanAnswer } from '../plan/contract.ts';
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
    const question = { commandId: randomUUID(), job, ...seconds };
    const asked = await withBook(file, async (book) => {
      await untilInterrupted(async (stop) =>
        planAhead(book, planMake.name, question, { report: printer(), stop }),
      );
      return ask(book, planMake, question);
    });
    if (!asked.ok) return outcomeOf(asked);
    return outcomeOf(asked.value, (value) => printed(planMake.output.parse(value)));
  },
};

async function untilInterrupted(work: (stop: AbortSignal) => Promise<void>): Promise<void> {
  const stop = new AbortController();
  const interrupt = (): void => stop.abort();
  process.once('SIGINT', interrupt);
  await work(stop.signal).finally(() => process.off('SIGINT', interrupt));
}

/** A line on standard error each time there is something new, amounts as the document has them. */
function printer(): (plan: PlanAnswer) => void {
  const startedMs = performance.now();
  let last = '';
  return ({ cost: { total, unmet }, bound, proven }) => {
    const wanting = unmet === 0 ? '' : `, ${unmet} piece-days that cannot be hired`;
    const saved = proven ? 'no plan costs less' : `at most ${total - bound} still to be saved`;
    const line = `total ${total}${wanting}, ${saved}`;
    if (line === last) return;
    last = line;
    process.stderr.write(`regang: ${((performance.now() - startedMs) / 1000).toFixed(1)} s: ${line}\n`);
  };
}

function printed(made: z.output<typeof planMake.output>): z.output<typeof output> {
  const { cost, boundCents, ...rest } = made;
  const { labourCents, hireCents, totalCents, unmet } = cost;
  return {
    ...rest,
    cost: { labour: labourCents, hire: hireCents, total: totalCents, unmet },
    bound: boundCents,
  };
}
