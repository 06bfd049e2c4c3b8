// A real book in a temporary folder, with a few invented places and components in it.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';
import type { Answer } from '../../core/answer.ts';
import type { BookComponent, BookWriter } from '../../core/book/book.ts';
import { loadSqlite } from '../../core/book/load-sqlite.ts';
import type { Handle } from '../../core/book/load-sqlite.ts';
import { openBook } from '../../core/book/open.ts';
import type { CommandAnswer, OpenBook, OpenOptions } from '../../core/book/open.ts';
import type { Movement } from '../../core/yard/movement.ts';

export const now = '2026-03-02T07:00:00-05:00';

/** Removed when the test ends. */
export function aFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'book-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Closed when the test ends. */
export async function opened(file: string, options: Partial<OpenOptions> = {}): Promise<OpenBook> {
  const answered = await openBook(file, { mode: 'open-or-create', now, ...options });
  if (!answered.ok) throw new Error(`${answered.error.code}: ${answered.error.message}`);
  let isClosed = false;
  const book = answered.value;
  const close = async (): Promise<void> => {
    if (isClosed) return;
    isClosed = true;
    await book.close();
  };
  onTestFinished(close);
  return { ...book, close };
}

let commands = 0;

export function run<T>(
  book: OpenBook,
  work: (writer: BookWriter) => Promise<Answer<T>>,
  commandId = `command-${(commands += 1)}`,
): Promise<CommandAnswer<T>> {
  return book.command({ commandId, name: 'test', at: now, who: 'tester' }, work);
}

/** The same, of work that answers nothing and must not be refused. */
export async function done(book: OpenBook, work: (writer: BookWriter) => Promise<unknown>): Promise<void> {
  const answered = await run(book, async (writer) => {
    await work(writer);
    return { ok: true, value: null };
  });
  if (!answered.ok) throw new Error(`${answered.error.code}: ${answered.error.message}`);
}

export function component(code: string, more: Partial<BookComponent> = {}): BookComponent {
  return {
    code,
    name: `Piece ${code}`,
    kind: 'other',
    weightGrams: 1500,
    system: null,
    hirePerDayCents: null,
    regangPerPieceH: 0,
    remark: null,
    ...more,
  };
}

/** Two yards, a site, a repair shop, and the places outside; two owners; components P1 and P2. */
export async function aYard(file: string): Promise<OpenBook> {
  const book = await opened(file);
  await done(book, async (writer) => {
    const kinds = { NORTH: 'yard', SOUTH: 'yard', SITE: 'site', SHOP: 'repair' } as const;
    const outside = { HIRE: 'supplier', SCRAP: 'scrap', LOST: 'lost', START: 'opening' } as const;
    for (const [code, kind] of Object.entries({ ...kinds, ...outside }))
      await writer.putLocation({ code, name: `Place ${code}`, kind });
    await writer.putOwner({ code: 'OURS', name: 'Ours', kind: 'ours', agreement: null });
    await writer.putOwner({ code: 'H1', name: 'Hired in', kind: 'supplier', agreement: 'A-17' });
    await writer.putComponent(component('P1'));
    await writer.putComponent(component('P2'));
  });
  return book;
}

let movements = 0;

/** Ten ready pieces of P1 from NORTH to SITE, unless told otherwise. */
export function movement(more: Partial<Movement> = {}): Movement {
  movements += 1;
  return {
    id: `movement-${movements}`,
    component: 'P1',
    quantity: 10,
    owner: 'OURS',
    from: 'NORTH',
    to: 'SITE',
    condition: 'ready',
    conditionAfter: 'ready',
    reason: 'issue',
    at: now,
    who: 'tester',
    noteNumber: null,
    remark: null,
    basis: null,
    basisDate: null,
    reverses: null,
    paper: null,
    ...more,
  };
}

export function openingFigure(more: Partial<Movement> = {}): Movement {
  const figure = {
    from: 'START',
    to: 'NORTH',
    reason: 'opening',
    basis: 'counted',
    basisDate: '2026-02-27',
  } as const;
  return movement({ ...figure, at: '2026-03-01T07:00:00-05:00', ...more });
}

/** The file as SQLite sees it, past everything that the book guards; closed when the test ends. */
export async function rawHandle(
  file: string,
  options: { readonly readonly?: boolean } = {},
): Promise<Handle> {
  const sqlite = await loadSqlite();
  if (!sqlite.ok) throw new Error(sqlite.error.message);
  const handle = sqlite.value(file, { fileMustExist: true, ...options });
  onTestFinished(() => void handle.close());
  return handle;
}
