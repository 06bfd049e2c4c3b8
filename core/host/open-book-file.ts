// How the host comes by a book. Loaded only when one is wanted, so that a start without a book does not
// wait for the database library.
import type { Answer } from '../answer.ts';
import type { OpenBook } from '../book/open.ts';

export type OpenBookFile = (file: string, mode: 'create' | 'open', now: string) => Promise<Answer<OpenBook>>;

export const openBookFile: OpenBookFile = async (file, mode, now) => {
  const { openBook } = await import('../book/open.ts');
  return openBook(file, { mode, now });
};

/** Today's copy of a book, where it has changed since the newest one. */
export type BackUp = (book: OpenBook, now: string) => Promise<Answer<unknown>>;

export const backUpBook: BackUp = async (book, now) => {
  const { keepBackup } = await import('../book/keep-backups.ts');
  return keepBackup(book, now);
};
