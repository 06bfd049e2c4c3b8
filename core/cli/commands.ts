// Every command of the command line: what it is called, what may be given, and how it is loaded. Nothing
// here is loaded before it is called.
import type { z } from 'zod';
import { refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { Calculation } from '../procedures/procedure.ts';
import type { Outcome } from './outcome.ts';

export type AnyCalculation = Calculation<z.ZodType, z.ZodType>;

/** Options as typed, still texts. */
export interface Given {
  readonly positionals: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | readonly string[] | undefined>>;
}

/** A command that works on a book. Its shapes are what `schema` prints. */
export interface BookCommand {
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  readonly run: (given: Given) => Promise<Outcome>;
}

const calculations = {
  length: async () => (await import('../procedures/calc-length.ts')).calcLength,
  takeoff: async () => (await import('../procedures/calc-takeoff.ts')).calcTakeoff,
  pick: async () => (await import('../procedures/calc-pick.ts')).calcPick,
  fill: async () => (await import('../procedures/calc-fill.ts')).calcFill,
  plan: async () => (await import('../procedures/calc-plan.ts')).calcPlan,
  level: async () => (await import('../procedures/calc-level.ts')).calcLevel,
} as const;

const bookCommands = {
  check: async () => (await import('./check.ts')).check,
  demo: async () => (await import('./demo.ts')).demo,
  import: async () => (await import('./import.ts')).importCommand,
  plan: async () => (await import('./plan.ts')).plan,
  sheet: async () => (await import('./sheet.ts')).sheet,
  stock: async () => (await import('./stock.ts')).stock,
  strip: async () => (await import('./strip.ts')).strip,
  whatif: async () => (await import('./whatif.ts')).whatif,
} as const;

export const usage: readonly string[] = [
  'regang demo --book FILE',
  'regang import KIND --book FILE INPUT [--job CODE] [--map M.json] [--dry-run]',
  'regang plan --book FILE --job CODE [--improve SECONDS]',
  'regang whatif --book FILE --job CODE --move POUR=+2d [--move ...] [--today DATE]',
  'regang stock --book FILE [--at DATE] [--location CODE]',
  'regang strip --book FILE --turn ID [--counted C.json] [--job CODE] [--at INSTANT] [--location CODE]',
  'regang sheet assembly|pick --book FILE --design CODE --out FILE.html [--job CODE [--pour CODE]] [--units us|metric]',
  'regang sheet strip|count|picklist|loading|delivery|return|tags --book FILE --id ID --out FILE.html [--units us|metric]',
  'regang sheet week|day --book FILE --id JOB --out FILE.html [--from DATE] [--units us|metric]',
  'regang check --book FILE',
  'regang calc length|takeoff|fill|pick|plan|level [--lines] (JSON on standard input)',
  'regang schema COMMAND                       (as typed: schema calc takeoff)',
];

export async function findCalculation(name: string | undefined): Promise<Answer<AnyCalculation>> {
  if (name === undefined || !Object.hasOwn(calculations, name))
    return refuse(
      'unknown-command',
      name === undefined ? 'No calculation was named after calc.' : `There is no \`calc ${name}\`.`,
      { hint: `Maybe one of: ${Object.keys(calculations).join(', ')}.` },
    );
  const found: unknown = await calculations[name as keyof typeof calculations]();
  return { ok: true, value: found as AnyCalculation };
}

export async function findBookCommand(name: string | undefined): Promise<Answer<BookCommand>> {
  if (name === undefined || !Object.hasOwn(bookCommands, name))
    return refuse(
      'unknown-command',
      name === undefined ? 'No command was given.' : `There is no command \`${name}\`.`,
      {
        hint: `Maybe one of: ${[...Object.keys(bookCommands), 'calc', 'schema'].join(', ')}.`,
      },
    );
  return { ok: true, value: await bookCommands[name as keyof typeof bookCommands]() };
}
