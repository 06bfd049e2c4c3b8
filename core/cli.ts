// The command line: JSON in, one JSON document out, and an exit code that scripts can trust. 0 done, 2 the
// input is refused, 1 a bug or the machine failed. Progress and warnings go to standard error.
import process from 'node:process';
import { parseArgs } from 'node:util';
import { refuse } from './answer.ts';
import { bug, done, outcomeOf } from './cli/outcome.ts';
import type { Outcome } from './cli/outcome.ts';

const optionShapes = {
  at: { type: 'string' },
  book: { type: 'string' },
  counted: { type: 'string' },
  design: { type: 'string' },
  'dry-run': { type: 'boolean' },
  from: { type: 'string' },
  help: { type: 'boolean' },
  id: { type: 'string' },
  improve: { type: 'string' },
  job: { type: 'string' },
  lines: { type: 'boolean' },
  location: { type: 'string' },
  map: { type: 'string' },
  move: { type: 'string', multiple: true },
  out: { type: 'string' },
  pour: { type: 'string' },
  turn: { type: 'string' },
  today: { type: 'string' },
  units: { type: 'string' },
} as const;

async function run(args: readonly string[]): Promise<Outcome | null> {
  const { findBookCommand, findCalculation, usage } = await import('./cli/commands.ts');
  let parsed;
  try {
    parsed = parseArgs({ args: [...args], allowPositionals: true, options: optionShapes });
  } catch (error) {
    return outcomeOf(refuse('bad-option', error instanceof Error ? error.message : String(error)));
  }
  const { positionals, values } = parsed;
  const [command, ...rest] = positionals;
  const { help, ...options } = values;
  if (help === true) return done({ usage });
  if (command === 'schema') return (await import('./cli/schema.ts')).schema(rest);
  if (command === 'calc') {
    const calculation = await findCalculation(rest[0]);
    if (!calculation.ok) return outcomeOf(calculation);
    const wrong = [...Object.keys(options).filter((name) => name !== 'lines'), ...rest.slice(1)][0];
    if (wrong !== undefined)
      return outcomeOf(refuse('bad-option', `"${wrong}" was not expected after calc.`));
    const { calculateLines, calculateOne } = await import('./cli/calculate.ts');
    if (options.lines !== true) return calculateOne(calculation.value, await readAll());
    process.exitCode = await calculateLines(calculation.value, process.stdin, write);
    return null;
  }
  const found = await findBookCommand(command);
  return found.ok ? found.value.run({ positionals: rest, options }) : outcomeOf(found);
}

async function readAll(): Promise<string> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of process.stdin as AsyncIterable<Uint8Array>) chunks.push(chunk);
  return Buffer.concat(chunks).toString('utf8');
}

/** Waits where the reader is slow, so that nothing piles up in memory or is cut off at the end. */
async function write(text: string): Promise<void> {
  await new Promise<void>((resolve) => {
    process.stdout.write(text, () => resolve());
  });
}

// A reader that has seen enough closes the pipe (`| head`): that is no failure of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? 0 : 1);
});

const outcome = await run(process.argv.slice(2)).catch((error: unknown) => {
  process.stderr.write(`regang: ${error instanceof Error ? error.stack : String(error)}\n`);
  return bug(error);
});
if (outcome !== null) {
  process.exitCode = outcome.exitCode;
  await write(`${JSON.stringify(outcome.document, null, 2)}\n`);
}
