// A book of a test's own, asked through the procedures themselves: every input and every answer held against its shape.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { z } from 'zod';
import type { Answer } from '../../core/answer.ts';
import type { BookWriter } from '../../core/book/book.ts';
import { openBook } from '../../core/book/open.ts';
import { type ProcedureName, procedures, type Procedures } from '../../core/procedures/all.ts';
import type { Procedure } from '../../core/procedures/procedure.ts';

type In<N extends ProcedureName> = z.input<Procedures[N]['input']>;
type Out<N extends ProcedureName> = z.output<Procedures[N]['output']>;
type CommandIn<N extends ProcedureName> = Omit<In<N>, 'commandId'> & { readonly commandId?: string };

export interface AskedBook {
  readonly ask: <N extends ProcedureName>(name: N, input: CommandIn<N>, at?: string) => Promise<Out<N>>;
  /** The code of a refusal, which the answer must be. */
  readonly refused: <N extends ProcedureName>(name: N, input: CommandIn<N>, at?: string) => Promise<string>;
  /** Written past the procedures. */
  readonly write: (work: (book: BookWriter) => Promise<unknown>) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** @param now at which commands are given where they do not say */
export async function askedBook(now: string): Promise<AskedBook> {
  const folder = mkdtempSync(path.join(tmpdir(), 'regang-asked-'));
  const opened = await openBook(path.join(folder, 'book.regang'), { mode: 'create', now });
  if (!opened.ok) throw new Error(opened.error.message);
  const book = opened.value;
  let commands = 0;
  const call = async (name: ProcedureName, given: object, at = now): Promise<Answer<unknown>> => {
    const procedure = procedures[name] as Procedure;
    const commandId = `command-${(commands += 1)}`;
    const input = procedure.input.parse(procedure.kind === 'command' ? { commandId, ...given } : given);
    if (procedure.kind === 'calculation') throw new Error(`${name} needs no book.`);
    const context = { at, who: 'tester' };
    const answered =
      procedure.kind === 'query'
        ? await book.read((reader) => procedure.run(reader, input))
        : await book.command(
            { commandId: (input as { commandId: string }).commandId, name, ...context },
            (writer) => procedure.run(writer, input, context),
          );
    return answered.ok ? { ok: true, value: procedure.output.parse(answered.value) } : answered;
  };
  return {
    ask: async (name, input, at) => {
      const answered = await call(name, input, at);
      if (!answered.ok) throw new Error(`${name}: ${answered.error.code}: ${answered.error.message}`);
      return answered.value as never;
    },
    refused: async (name, input, at) => {
      const answered = await call(name, input, at);
      if (answered.ok) throw new Error(`${name} was not refused`);
      return answered.error.code;
    },
    write: async (work) => {
      const meta = { commandId: `write-${(commands += 1)}`, name: 'test', at: now, who: 'tester' };
      const done = await book.command(meta, async (writer) => {
        await work(writer);
        return { ok: true, value: null };
      });
      if (!done.ok) throw new Error(done.error.message);
    },
    close: async () => {
      await book.close();
      rmSync(folder, { recursive: true });
    },
  };
}
