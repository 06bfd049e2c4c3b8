// Opens the book that a command names, runs one procedure on it through the same router as every other
// door, and closes it again whatever came out.
import path from 'node:path';
import process from 'node:process';
import { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { OpenBook } from '../book/open.ts';
import { badInput } from '../host/bad-input.ts';
import { doorContext } from '../host/door-context.ts';
import { openBookFile } from '../host/open-book-file.ts';
import { route } from '../host/router.ts';
import type { Procedure } from '../procedures/procedure.ts';
import type { Given } from './commands.ts';

export const bookOption = z.string().min(1).meta({ description: 'The file of the book' });

/** Reads options by the shape of a command; wrong ones are refused by their name. */
export function readOptions<T extends z.ZodType>(
  shape: T,
  given: Given,
  positionals: readonly string[] = [],
): Answer<z.output<T>> {
  const over = given.positionals[positionals.length];
  if (over !== undefined)
    return refuse('bad-option', `"${over}" was not expected here.`, {
      hint: 'Maybe an option lacks its dashes.',
    });
  const named = Object.fromEntries(positionals.map((name, index) => [name, given.positionals[index]]));
  const input = Object.fromEntries(
    Object.entries({ ...given.options, ...named }).filter(([, value]) => value !== undefined),
  );
  const parsed = shape.safeParse(input);
  return parsed.success ? answer(parsed.data) : badInput(parsed.error, input);
}

/** npm runs scripts in the package's folder; a file is meant from where the person stands. */
export function fileFromHere(file: string): string {
  return path.resolve(process.env['INIT_CWD'] ?? process.cwd(), file);
}

export async function withBook<T>(
  file: string,
  work: (book: OpenBook) => Promise<T>,
  mode: 'create' | 'open' = 'open',
): Promise<Answer<T>> {
  const opened = await openBookFile(fileFromHere(file), mode, doorContext().at);
  if (!opened.ok && opened.error.field === 'file')
    return { ok: false, error: { ...opened.error, field: 'book' } };
  if (!opened.ok) return opened;
  try {
    return answer(await work(opened.value));
  } finally {
    await opened.value.close();
  }
}

/** Runs one procedure on an open book. */
export async function ask(book: OpenBook, procedure: Procedure, input: unknown): Promise<Answer<unknown>> {
  return route(
    {
      procedures: { [procedure.name]: procedure },
      book: () => book,
      context: doorContext,
      checkOutput: process.env['REGANG_CHECK_OUTPUT'] === '1',
      log: (line) => void process.stderr.write(`regang: ${line}\n`),
    },
    procedure.name,
    input,
  );
}
