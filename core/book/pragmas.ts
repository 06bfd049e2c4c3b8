// What every connection must be told, since SQLite keeps these settings per connection and not in the
// file. The library's builds start a second opening with synchronous=NORMAL: a commit would then not yet
// be on disk when it is acknowledged.
import type { Handle } from './load-sqlite.ts';

/** The mark in the file's header that says it is a book of this app: `Regn` in ASCII. */
export const applicationId = 0x52_65_67_6e;

const busyTimeoutMs = 5000;

export function setPragmas(handle: Handle): void {
  handle.pragma('journal_mode = WAL');
  handle.pragma('synchronous = FULL');
  handle.pragma('foreign_keys = ON');
  handle.pragma('recursive_triggers = ON');
  handle.pragma('trusted_schema = OFF');
  handle.pragma(`busy_timeout = ${busyTimeoutMs}`);
}

/**
 * For a connection that only reads. The file is still opened for writing, since SQLite forgets the checks of
 * tables on one that is not, and `integrity_check` would then not look at them.
 */
export function setReaderPragmas(handle: Handle): void {
  handle.pragma('query_only = ON');
  handle.pragma('trusted_schema = OFF');
  handle.pragma(`busy_timeout = ${busyTimeoutMs}`);
}

/** A pragma whose answer is one whole number. */
export function numberPragma(
  handle: Handle,
  name: 'application_id' | 'user_version' | 'synchronous' | 'page_count' | 'page_size',
): number {
  return Number(handle.pragma(name, { simple: true }));
}
