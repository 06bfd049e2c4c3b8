// The one wrapper around every procedure: it finds it by name, reads the input by its shape, runs it on
// the open book, and answers with a value. A door never runs a procedure in any other way.
import { inspect } from 'node:util';
import { never, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { OpenBook } from '../book/open.ts';
import type { CommandContext, Procedure } from '../procedures/procedure.ts';
import { badInput } from './bad-input.ts';

export interface Routing {
  readonly procedures: Readonly<Record<string, Procedure>>;
  /** Null while none is open. */
  readonly book: () => OpenBook | null;
  readonly context: () => CommandContext;
  /** Answers are held against their shape too: in development and tests. */
  readonly checkOutput: boolean;
  readonly log: (line: string) => void;
}

/** Runs one procedure. Never rejects: what was not expected is logged and answered as `bug`. */
export async function route(routing: Routing, name: string, input: unknown): Promise<Answer<unknown>> {
  const procedure = Object.hasOwn(routing.procedures, name) ? routing.procedures[name] : undefined;
  if (procedure === undefined)
    return refuse('unknown-procedure', `There is no procedure "${shortened(name)}".`, {
      hint: 'Maybe the page is of another version than the core: load it again.',
    });
  try {
    const parsed = procedure.input.safeParse(input);
    if (!parsed.success) return badInput(parsed.error, input);
    const answered = await run(routing, procedure, parsed.data);
    return routing.checkOutput ? withOutputChecked(procedure, answered) : answered;
  } catch (error) {
    routing.log(`${name} failed: ${inspect(error)}`);
    return refuse(
      'bug',
      `${name} could not be answered: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

async function run(routing: Routing, procedure: Procedure, input: unknown): Promise<Answer<unknown>> {
  if (procedure.kind === 'calculation') return procedure.run(input);
  const book = routing.book();
  if (book === null)
    return refuse('no-book', 'No book is open.', {
      hint: 'Maybe open the demo job, or a book of your own, first.',
    });
  switch (procedure.kind) {
    case 'query':
      return book.read((reader) => procedure.run(reader, input));
    case 'command': {
      const context = routing.context();
      const meta = { commandId: commandIdOf(input), name: procedure.name, ...context };
      return book.command(meta, (writer) => procedure.run(writer, input, context));
    }
    default:
      return never(procedure);
  }
}

function commandIdOf(input: unknown): string {
  if (
    typeof input === 'object' &&
    input !== null &&
    'commandId' in input &&
    typeof input.commandId === 'string'
  )
    return input.commandId;
  throw new Error('A command without a commandId in its input shape');
}

function withOutputChecked(procedure: Procedure, answered: Answer<unknown>): Answer<unknown> {
  if (!answered.ok) return answered;
  const parsed = procedure.output.safeParse(answered.value);
  if (parsed.success) return answered;
  const wrong = badInput(parsed.error, answered.value);
  throw new Error(`the answer is not of its shape: ${wrong.ok ? '' : wrong.error.message}`);
}

function shortened(name: string): string {
  return name.length > 60 ? `${name.slice(0, 57)}...` : name;
}
