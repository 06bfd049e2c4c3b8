// `regang strip --book FILE --turn ID [--counted C.json]`: what should come back from the strip of a gang and where it
// goes next; with counts, the ticket made and booked in one command, and what is missing against whom.
import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import { answer, type Answer, refuse } from '../answer.ts';
import type { OpenBook } from '../book/open.ts';
import { badInput } from '../host/bad-input.ts';
import { code, instant } from '../procedures/shapes.ts';
import { countedByComponent, partOfTurn, ticketStrip } from '../procedures/ticket-strip.ts';
import { ticketExpect } from '../procedures/ticket-make.ts';
import { expectedLine, shownPart } from '../procedures/ticket-shapes.ts';
import { unknownJob } from '../procedures/unknown.ts';
import type { BookCommand } from './commands.ts';
import { outcomeOf } from './outcome.ts';
import { ask, bookOption, fileFromHere, readOptions, withBook } from './with-book.ts';

const input = z.strictObject({
  book: bookOption,
  turn: z.string().trim().min(1).max(80).meta({
    description: 'As P01/A1, the first gang on side A of P01; P01/loose for the loose pieces of the pour',
  }),
  counted: z.string().min(1).optional().meta({
    description:
      'A JSON file: {"lines":[{"component","ready"?,"readyHidden"?,"toClean"?,"toRepair"?,"quarantine"?,"scrapped"?}]}',
  }),
  job: code.optional().meta({ description: 'Where the book holds several' }),
  at: instant.optional().meta({ description: 'When it was stripped; by the plan where absent' }),
  location: code
    .optional()
    .meta({ description: 'Where what is taken apart is laid; the first yard where absent' }),
});

export const countedFile = z.strictObject({ lines: z.array(countedByComponent).max(500) });

const expectedOutput = z.strictObject({
  job: code,
  ...shownPart.omit({ expected: true, extra: true }).shape,
  pour: code,
  /** Where what is taken apart is laid. */
  place: code,
  at: instant,
  expected: z.array(
    expectedLine.pick({
      component: true,
      name: true,
      quantity: true,
      unbooked: true,
      from: true,
      lookAlike: true,
    }),
  ),
  booked: z.literal(false),
});

const bookedOutput = ticketStrip.output.extend({
  job: code,
  booked: z.literal(true),
  /** Values in minor units. */
  missing: z.array(
    ticketStrip.output.shape.missing.element.omit({ valueCents: true }).extend({ value: z.int().nullable() }),
  ),
});

const output = z.union([expectedOutput, bookedOutput]);

export const strip: BookCommand = {
  input,
  output,
  run: async (given) => {
    const options = readOptions(input, given);
    if (!options.ok) return outcomeOf(options);
    const counted = await readCounted(options.value.counted);
    if (!counted.ok) return outcomeOf(counted);
    const asked = await withBook(options.value.book, async (book): Promise<Answer<unknown>> => {
      const job = await jobOf(book, options.value.job);
      if (!job.ok) return job;
      const { turn, at, location } = options.value;
      const of = {
        job: job.value,
        ...(at !== undefined && { at }),
        ...(location !== undefined && { place: location }),
      };
      return counted.value === null
        ? expected(book, { ...of, ...partOfTurn(turn) })
        : bookIt(book, { ...of, turn, ...counted.value });
    });
    return outcomeOf(asked.ok ? asked.value : asked);
  },
};

async function expected(
  book: OpenBook,
  asked: z.input<typeof ticketExpect.input>,
): Promise<Answer<z.output<typeof expectedOutput>>> {
  const answered = await ask(book, ticketExpect, asked);
  if (!answered.ok) return asTurn(answered);
  const { job, pour, place, plannedAt, parts } = ticketExpect.output.parse(answered.value);
  const [only] = parts;
  if (only === undefined) throw new Error('A ticket has a part.');
  const { part, turn, gang, design, title, next, nextWords, expected: lines } = only;
  return answer({
    job,
    part,
    turn,
    gang,
    design,
    title,
    next,
    nextWords,
    pour,
    place,
    at: plannedAt,
    expected: lines.map(({ component, name, quantity, unbooked, from, lookAlike }) => ({
      component,
      name,
      quantity,
      unbooked,
      from,
      lookAlike,
    })),
    booked: false as const,
  });
}

async function bookIt(
  book: OpenBook,
  asked: Omit<z.input<typeof ticketStrip.input>, 'commandId'>,
): Promise<Answer<z.output<typeof bookedOutput>>> {
  const answered = await ask(book, ticketStrip, { commandId: randomUUID(), ...asked });
  if (!answered.ok) return asTurn(answered);
  const { lines, missing, ...rest } = ticketStrip.output.parse(answered.value);
  return answer({
    job: asked.job,
    ...rest,
    booked: true as const,
    lines,
    missing: missing.map(({ valueCents: value, ...line }) => ({ ...line, value })),
  });
}

/** Refusals of the turns name the option by which one was given. */
function asTurn<T>(refused: Answer<T>): Answer<never> {
  if (refused.ok) throw new Error('A refusal was expected.');
  const { field, ...error } = refused.error;
  return {
    ok: false,
    error: { ...error, ...(field !== undefined && { field: field === 'turns' ? 'turn' : field }) },
  };
}

async function jobOf(book: OpenBook, asked: string | undefined): Promise<Answer<string>> {
  const jobs = await book.read((reader) => reader.jobs());
  const [only, ...others] = asked === undefined ? jobs : jobs.filter((each) => each.code === asked);
  if (only === undefined)
    return asked === undefined
      ? refuse('no-job', 'The book holds no job yet.', { field: 'book', hint: 'Maybe import one.' })
      : unknownJob(asked);
  if (others.length === 0) return answer(only.code);
  return refuse(
    'needs-job',
    `The book holds ${jobs.length} jobs: ${jobs.map((each) => each.code).join(', ')}.`,
    {
      field: 'job',
      hint: 'Maybe add --job CODE.',
    },
  );
}

async function readCounted(file: string | undefined): Promise<Answer<z.output<typeof countedFile> | null>> {
  if (file === undefined) return answer(null);
  let value: unknown;
  try {
    value = JSON.parse(await readFile(fileFromHere(file), 'utf8'));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return refuse('counted-not-read', `${file} could not be read as JSON: ${why}`, {
      field: 'counted',
      hint: 'Maybe the file is another one, or was cut off.',
    });
  }
  const parsed = countedFile.safeParse(value);
  return parsed.success ? answer(parsed.data) : badInput(parsed.error, value);
}
