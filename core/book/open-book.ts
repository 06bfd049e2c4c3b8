// An open book: reads on connections of their own that see the last finished command, commands one after
// another on the one connection that writes.
import type { Kysely } from 'kysely';
import { refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import type { BookReader, BookWriter } from './book.ts';
import { makeQueue, runCommand } from './commands.ts';
import type { CommandAnswer, CommandMeta, Queue } from './commands.ts';
import { reading, writing } from './connections.ts';
import { copyBook } from './copy-book.ts';
import type { Handle, OpenHandle } from './load-sqlite.ts';
import type { Migration } from './migration.ts';
import { readerOf } from './reader-writer.ts';
import type { BookTables } from './tables.ts';
import type { WriterLock } from './writer-lock.ts';

export interface OpenBook {
  /** The full path of the file. */
  readonly file: string;
  /** True where another process writes to this book: commands are refused. */
  readonly readOnly: boolean;
  /** What a person should know about how it was opened; null where there is nothing to say. */
  readonly notice: string | null;
  /** Runs a query on one state of the book: what is committed meanwhile is not seen. */
  read<T>(query: (reader: BookReader) => Promise<T>): Promise<T>;
  /** One transaction: a refused answer, or an error thrown, undoes all of it. */
  command<T>(meta: CommandMeta, run: (writer: BookWriter) => Promise<Answer<T>>): Promise<CommandAnswer<T>>;
  /** A copy of the book as it is now, under a name that is not taken. */
  backup(toFile: string): Promise<Answer<{ readonly file: string }>>;
  /** Waits for commands under way. Using the book afterwards is a bug. */
  close(): Promise<void>;
}

export interface OpenParts {
  readonly file: string;
  readonly notice: string | null;
  readonly migrations: readonly Migration[];
  readonly openReader: () => Handle;
  readonly openHandle: OpenHandle;
  /** Null where another process writes. */
  readonly writer: { readonly handle: Handle; readonly lock: WriterLock } | null;
}

export function makeOpenBook(parts: OpenParts): OpenBook {
  const { file, notice, migrations, openReader, openHandle, writer } = parts;
  const readers = reading(openReader);
  const writers = writer === null ? null : writing(writer.handle);
  const queue = makeQueue();

  async function backup(toFile: string): Promise<Answer<{ readonly file: string }>> {
    // In the queue, since a commit in between would start the copy over.
    return queue.add(async () => {
      const source = openReader();
      try {
        return await copyBook(source, toFile, openHandle);
      } finally {
        source.close();
      }
    });
  }

  async function close(): Promise<void> {
    await queue.add(async () => {
      await readers.destroy();
      await writers?.destroy();
      // Kysely closes only what a query has used before.
      if (writer !== null && writer.handle.open) writer.handle.close();
      writer?.lock.release();
    });
  }

  return {
    file,
    readOnly: writer === null,
    notice,
    read: (query) => readers.transaction().execute((transaction) => query(readerOf(transaction, migrations))),
    command: (meta, run) => commandOn(writers, file, queue, meta, run),
    backup,
    close,
  };
}

async function commandOn<T>(
  writers: Kysely<BookTables> | null,
  file: string,
  queue: Queue,
  meta: CommandMeta,
  run: (writer: BookWriter) => Promise<Answer<T>>,
): Promise<CommandAnswer<T>> {
  if (writers !== null) return queue.add(() => runCommand(writers, meta, run));
  return refuse('book-read-only', `${file} is open for reading only: another Regang writes to it.`, {
    hint: 'Maybe close the other one, then open the book again.',
  });
}
