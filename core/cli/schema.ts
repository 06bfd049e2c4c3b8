// `regang schema COMMAND`: the JSON Schema of what a command takes and gives, from the very shapes by
// which it reads and answers.
import { z } from 'zod';
import type { Answer } from '../answer.ts';
import { findBookCommand, findCalculation } from './commands.ts';
import { done, outcomeOf } from './outcome.ts';
import type { Outcome } from './outcome.ts';

interface Shapes {
  readonly input: z.ZodType;
  readonly output: z.ZodType;
}

export async function schema(words: readonly string[]): Promise<Outcome> {
  const [first, second] = words;
  const found: Answer<Shapes> =
    first === 'calc' ? await findCalculation(second) : await findBookCommand(first);
  if (!found.ok) return outcomeOf(found);
  const { input, output } = found.value;
  return done({
    command: words.join(' '),
    input: z.toJSONSchema(input, { io: 'input', unrepresentable: 'any' }),
    output: z.toJSONSchema(output, { io: 'input', unrepresentable: 'any' }),
  });
}
