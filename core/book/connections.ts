// The query builder's way to SQLite. Transactions that write begin IMMEDIATE, so that a lock is met at
// the start and not half-way; a query on a connection that was given back is a bug and throws, since it
// would run outside the transaction it was meant for.
import { CompiledQuery, Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from 'kysely';
import type { DatabaseConnection, Dialect, Driver, QueryResult } from 'kysely';
import type { Handle } from './load-sqlite.ts';
import type { BookTables } from './tables.ts';

/** One handle: writes go one after another. */
export function writing(handle: Handle): Kysely<BookTables> {
  return new Kysely<BookTables>({
    dialect: dialect(new BookDriver(() => handle, 'begin immediate'), new SqliteAdapter()),
  });
}

/** As many handles as there are readers at once: no reader waits for another or for a command. */
export function reading(open: () => Handle): Kysely<BookTables> {
  return new Kysely<BookTables>({ dialect: dialect(new BookDriver(open, 'begin'), new ManyReaders()) });
}

/** Without it Kysely hands out one connection at a time, and a read within a read waits for ever. */
class ManyReaders extends SqliteAdapter {
  override get supportsMultipleConnections(): boolean {
    return true;
  }
}

function dialect(driver: Driver, adapter: SqliteAdapter): Dialect {
  return {
    createDriver: () => driver,
    createAdapter: () => adapter,
    createQueryCompiler: () => new SqliteQueryCompiler(),
    createIntrospector: (db) => new SqliteIntrospector(db),
  };
}

const idleHandlesKept = 2;

class BookDriver implements Driver {
  readonly #open: () => Handle;
  readonly #begin: string;
  readonly #idle: Handle[] = [];
  #isEnded = false;

  constructor(open: () => Handle, begin: string) {
    this.#open = open;
    this.#begin = begin;
  }

  async init(): Promise<void> {
    await Promise.resolve();
  }

  acquireConnection(): Promise<BookConnection> {
    try {
      return Promise.resolve(new BookConnection(this.#idle.pop() ?? this.#open()));
    } catch (error) {
      return Promise.reject(error);
    }
  }

  async beginTransaction(connection: BookConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw(this.#begin));
  }

  async commitTransaction(connection: BookConnection): Promise<void> {
    await connection.executeQuery(CompiledQuery.raw('commit'));
  }

  rollbackTransaction(connection: BookConnection): Promise<void> {
    connection.rollBack();
    return Promise.resolve();
  }

  releaseConnection(connection: BookConnection): Promise<void> {
    const handle = connection.giveBack();
    if (!this.#isEnded && this.#idle.length < idleHandlesKept) this.#idle.push(handle);
    else handle.close();
    return Promise.resolve();
  }

  /** A reader still under way closes its handle when it is done. */
  destroy(): Promise<void> {
    this.#isEnded = true;
    for (const handle of this.#idle.splice(0)) handle.close();
    return Promise.resolve();
  }
}

class BookConnection implements DatabaseConnection {
  #handle: Handle | null;

  constructor(handle: Handle) {
    this.#handle = handle;
  }

  executeQuery<R>(query: CompiledQuery): Promise<QueryResult<R>> {
    try {
      return Promise.resolve(this.#run<R>(query));
    } catch (error) {
      return Promise.reject(error);
    }
  }

  // No BigInt leaves here: neither inserted ids nor counts are answered, since nothing needs them.
  #run<R>(query: CompiledQuery): QueryResult<R> {
    const statement = this.#live().prepare<unknown[], R>(query.sql);
    if (statement.reader) return { rows: statement.all(...query.parameters) };
    statement.run(...query.parameters);
    return { rows: [] };
  }

  streamQuery(): never {
    throw new Error('The book does not stream: a statement left open would hold up every write.');
  }

  /** SQLite may have ended the transaction by itself, on a full disk for one. */
  rollBack(): void {
    if (this.#live().inTransaction) this.#live().exec('rollback');
  }

  giveBack(): Handle {
    const handle = this.#live();
    this.#handle = null;
    return handle;
  }

  #live(): Handle {
    if (this.#handle === null) throw new Error('The book was used after its query or command had ended.');
    return this.#handle;
  }
}
