// One writer at a time, over all processes. The lock is a second SQLite file beside the book on which an
// exclusive transaction stays open: the operating system frees it when the process ends in whatever
// way, so that a killed app leaves no stale lock behind. The file itself stays, empty: removing it could
// give two processes two different files of the same name.
import type { Handle, OpenHandle } from './load-sqlite.ts';

export interface WriterLock {
  release(): void;
}

/** Null where another holds it, or where nothing may be written beside the book. */
export function takeWriterLock(bookFile: string, openHandle: OpenHandle): WriterLock | null {
  let handle: Handle | null = null;
  try {
    handle = openHandle(`${bookFile}-writer`, { timeout: 0 });
    handle.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    handle?.close();
    if (isHeldOrForbidden(error)) return null;
    throw error;
  }
  const held = handle;
  return { release: () => void held.close() };
}

function isHeldOrForbidden(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return (
    code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_CANTOPEN') || code.startsWith('SQLITE_READONLY')
  );
}
