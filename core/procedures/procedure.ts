// The form of everything a door may ask of the core: a name, what goes in, what comes out, whether it
// only reads, and the handler. Doors, tests and the command line take their types from here.
import type { z } from 'zod';
import type { Answer } from '../answer.ts';
import type { BookReader, BookWriter } from '../book/book.ts';

/** Sums that need no book: `regang calc NAME`. */
export interface Calculation<In extends z.ZodType, Out extends z.ZodType> {
  readonly kind: 'calculation';
  readonly name: string;
  readonly input: In;
  readonly output: Out;
  readonly run: (input: z.output<In>) => Answer<z.input<Out>> | Promise<Answer<z.input<Out>>>;
}

/** Reads the book and changes nothing. */
export interface Query<In extends z.ZodType, Out extends z.ZodType> {
  readonly kind: 'query';
  readonly name: string;
  readonly input: In;
  readonly output: Out;
  readonly run: (book: BookReader, input: z.output<In>) => Promise<Answer<z.input<Out>>>;
}

/** Who asks and when, given by the door: the core reads no clock of its own. */
export interface CommandContext {
  readonly at: string;
  readonly who: string;
}

/** Changes the book in one transaction, or not at all. The input carries the caller's `commandId`. */
export interface Command<In extends z.ZodType, Out extends z.ZodType> {
  readonly kind: 'command';
  readonly name: string;
  readonly input: In;
  readonly output: Out;
  readonly run: (
    book: BookWriter,
    input: z.output<In>,
    context: CommandContext,
  ) => Promise<Answer<z.input<Out>>>;
}

export type Procedure =
  | Calculation<z.ZodType, z.ZodType>
  | Query<z.ZodType, z.ZodType>
  | Command<z.ZodType, z.ZodType>;

export function calculation<In extends z.ZodType, Out extends z.ZodType>(
  parts: Omit<Calculation<In, Out>, 'kind'>,
): Calculation<In, Out> {
  return { kind: 'calculation', ...parts };
}

export function query<In extends z.ZodType, Out extends z.ZodType>(
  parts: Omit<Query<In, Out>, 'kind'>,
): Query<In, Out> {
  return { kind: 'query', ...parts };
}

export function command<In extends z.ZodType, Out extends z.ZodType>(
  parts: Omit<Command<In, Out>, 'kind'>,
): Command<In, Out> {
  return { kind: 'command', ...parts };
}
