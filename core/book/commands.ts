// Runs a command in one transaction: all of it is in the book or none, and a command id that was done
// before is answered from the book and not done again. One that wrote nothing, such as a trial of an
// import, leaves no trace: the book is byte for byte as it was.
import { AsyncLocalStorage } from 'node:async_hooks';
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import type { Answer, Refusal } from '../answer.ts';
import type { BookWriter } from './book.ts';
import { readChangeNumber, writerOf } from './reader-writer.ts';
import { Refused, refusalIn } from './refused.ts';
import type { BookTables } from './tables.ts';

export interface CommandMeta {
  /** Made by the caller: sent twice, done once. */
  readonly commandId: string;
  readonly name: string;
  /** ISO 8601 with offset. */
  readonly at: string;
  readonly who: string;
}

/** An answer that also says whether the command had been done before. */
export type CommandAnswer<T> =
  | { readonly ok: true; readonly value: T; readonly repeated: boolean }
  | { readonly ok: false; readonly error: Refusal };

const running = new AsyncLocalStorage<string>();

/**
 * What the caller is answered is what the book keeps of the answer: a JSON value.
 * @throws what `run` throws and is not a refusal, after everything was undone
 */
export async function runCommand<T>(
  db: Kysely<BookTables>,
  meta: CommandMeta,
  run: (writer: BookWriter) => Promise<Answer<T>>,
): Promise<CommandAnswer<T>> {
  try {
    return await db.transaction().execute(async (transaction) => {
      const done = await repeated<T>(transaction, meta);
      if (done !== null) return done;
      const before = await rowsWritten(transaction);
      const answered = await running.run(meta.commandId, () => run(writerOf(transaction, meta.commandId)));
      if (!answered.ok) throw new Refused(answered.error);
      const text = JSON.stringify(answered.value ?? null);
      const kept = { ok: true, value: JSON.parse(text) as T, repeated: false } as const;
      if ((await rowsWritten(transaction)) === before) return kept;
      const number = (await readChangeNumber(transaction)) + 1;
      const { commandId, name, at, who } = meta;
      await transaction
        .insertInto('command')
        .values({ number, id: commandId, name, at, who, answer: text })
        .execute();
      return kept;
    });
  } catch (error) {
    const refusal = refusalIn(error);
    if (refusal === null) throw error;
    return { ok: false, error: refusal };
  }
}

/** Rows added, changed or removed on this connection since it was opened. */
async function rowsWritten(db: Kysely<BookTables>): Promise<number> {
  const { rows } = await sql<{ written: number }>`select total_changes() as written`.execute(db);
  const written = rows[0]?.written;
  if (written === undefined) throw new Error('SQLite did not say how many rows it had written.');
  return written;
}

async function repeated<T>(db: Kysely<BookTables>, meta: CommandMeta): Promise<CommandAnswer<T> | null> {
  const done = await db
    .selectFrom('command')
    .select(['name', 'answer'])
    .where('id', '=', meta.commandId)
    .executeTakeFirst();
  if (done === undefined) return null;
  if (done.name === meta.name) return { ok: true, value: JSON.parse(done.answer) as T, repeated: true };
  throw new Refused({
    code: 'command-id-used',
    message: `The id ${meta.commandId} was used for ${done.name} and cannot be used for ${meta.name}.`,
    field: 'commandId',
  });
}

/** Work that goes one after another, in the order in which it was asked for. */
export interface Queue {
  add<T>(work: () => Promise<T>): Promise<T>;
}

export function makeQueue(): Queue {
  let last: Promise<unknown> = Promise.resolve();
  return {
    add: (work) => {
      const outer = running.getStore();
      // It would wait for itself to end.
      if (outer !== undefined)
        return Promise.reject(new Error(`Command ${outer} asked for another in its midst.`));
      const done = last.then(work, work);
      last = done.then(
        () => undefined,
        () => undefined,
      );
      return done;
    },
  };
}
