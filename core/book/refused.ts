// A refusal that must undo a transaction travels as an exception inside book/ and comes out of it as a
// value. What SQLite refuses by a check, a trigger, a lock or a full disk is an expected outcome too.
import type { Refusal } from '../answer.ts';

export class Refused extends Error {
  override readonly name = 'Refused';
  readonly refusal: Refusal;

  constructor(refusal: Refusal) {
    super(refusal.message);
    this.refusal = refusal;
  }
}

/** SQLite's extended result code of an error, or '' where it is another error. */
export function sqliteCode(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  return typeof code === 'string' && code.startsWith('SQLITE_') ? code : '';
}

/** The refusal in an error; null where the error is a bug and must be thrown on. */
export function refusalIn(error: unknown): Refusal | null {
  if (error instanceof Refused) return error.refusal;
  const code = sqliteCode(error);
  const text = error instanceof Error ? error.message : '';
  if (code === 'SQLITE_CONSTRAINT_FOREIGNKEY')
    return {
      code: 'names-unknown',
      message: 'The book refused it, and is unchanged: something names a code that the book does not have.',
      hint: 'Maybe a component, location, owner, design, job or pour has to be entered first.',
    };
  if (code.startsWith('SQLITE_CONSTRAINT'))
    return { code: 'book-refused', message: `The book refused it, and is unchanged: ${text}` };
  if (code.startsWith('SQLITE_BUSY'))
    return {
      code: 'book-busy',
      message: 'The book is locked by another program; nothing was changed.',
      hint: 'Maybe a copy or a scan of the file is running: try again in a moment.',
    };
  if (code === 'SQLITE_FULL')
    return { code: 'disk-full', message: 'The disk is full; nothing was changed in the book.' };
  if (isDamage(error)) return { code: 'book-damaged', message: `The book's file is damaged: ${text}.` };
  if (code.startsWith('SQLITE_READONLY') || code.startsWith('SQLITE_IOERR'))
    return {
      code: 'book-not-writable',
      message: `The book's file could not be written (${code}: ${text}).`,
      hint: 'Maybe the file or its folder may not be written to, or the disk was taken away.',
    };
  return null;
}

/** A file that ends before its last page is damaged too. */
export function isDamage(error: unknown): boolean {
  const code = sqliteCode(error);
  return code.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB' || code === 'SQLITE_IOERR_SHORT_READ';
}
