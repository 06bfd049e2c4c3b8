// `regang calc NAME`: sums without a book, JSON on standard input. Each is loaded only when it is asked
// for, so that a script's small question does not wait for all of the app.
import { refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { badInput } from '../host/bad-input.ts';
import { bug, outcomeOf, refused } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import type { AnyCalculation } from './commands.ts';

export async function calculateOne(calculation: AnyCalculation, text: string): Promise<Outcome> {
  const parsed = parseJson(text);
  if (!parsed.ok) return refused(parsed.error);
  const input = calculation.input.safeParse(parsed.value);
  if (!input.success) return outcomeOf(badInput(input.error, parsed.value));
  try {
    return outcomeOf(await calculation.run(input.data));
  } catch (error) {
    process.stderr.write(
      `regang: calc ${calculation.name}: ${error instanceof Error ? error.stack : String(error)}\n`,
    );
    return bug(error);
  }
}

/**
 * One document a line, one answer a line, in order; a refused line answers its error and the rest go on.
 * @returns 1 where a line met a bug, else 0
 */
export async function calculateLines(
  calculation: AnyCalculation,
  input: AsyncIterable<Uint8Array>,
  write: (line: string) => Promise<void>,
): Promise<0 | 1> {
  let exitCode: 0 | 1 = 0;
  for await (const line of lines(input)) {
    if (line.trim() === '') continue;
    const outcome = await calculateOne(calculation, line);
    if (outcome.exitCode === 1) exitCode = 1;
    await write(`${JSON.stringify(outcome.document)}\n`);
  }
  return exitCode;
}

/** Split at line feeds only: a JSON text may hold other separators of lines as they are. */
async function* lines(input: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  // a long line comes in many chunks: they are put together once, when it ends
  let parts: string[] = [];
  for await (const chunk of input) {
    const [first = '', ...more] = decoder.decode(chunk, { stream: true }).split('\n');
    parts.push(first);
    for (const start of more) {
      yield parts.join('');
      parts = [start];
    }
  }
  const last = parts.join('') + decoder.decode();
  if (last !== '') yield last;
}

export function parseJson(text: string): Answer<unknown> {
  const bare = text.replace(/^\uFEFF/u, '').trim();
  if (bare === '')
    return refuse('bad-json', 'Standard input is empty; one JSON document was wanted.', {
      hint: 'Maybe pass it on: echo \'{"text":"8 ft"}\' | npm run -s regang -- calc length',
    });
  try {
    return { ok: true, value: JSON.parse(bare, bare.includes(unreadableKey) ? refuseKey : undefined) };
  } catch (error) {
    return refuse(
      'bad-json',
      `Standard input is not JSON: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

/** The one key that objects do not hold like any other: pieces under it would be lost without a word. */
const unreadableKey = '__proto__';

function refuseKey(key: string, value: unknown): unknown {
  if (key === unreadableKey) throw new Error(`the key "${unreadableKey}" cannot be used`);
  return value;
}
