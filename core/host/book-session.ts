// Which book is open, and what can be done about its file: begin one, open another, copy it. The caller
// sees to it that these go one after another.
import { existsSync, mkdirSync, realpathSync } from 'node:fs';
import path from 'node:path';
import type { z } from 'zod';
import { answer, refuse } from '../answer.ts';
import type { Answer } from '../answer.ts';
import { copyFiles } from '../book/attached-files.ts';
import type { OpenBook } from '../book/open.ts';
import type { CommandContext } from '../procedures/procedure.ts';
import { bookFileIn, bookName, demoFile } from './book-files.ts';
import type { hostState } from './host-calls.ts';
import type { BackUp, OpenBookFile } from './open-book-file.ts';
import { recentFiles, remember } from './recent.ts';

export type HostState = z.output<typeof hostState>;

export interface SessionOptions {
  readonly door: HostState['door'];
  /** Where new books, the demo and the list of recent books go. */
  readonly folder: string;
  readonly version: string;
  readonly context: () => CommandContext;
  readonly openFile: OpenBookFile;
  readonly backUp: BackUp;
  readonly log: (line: string) => void;
  readonly makeDemo: (file: string, context: CommandContext) => Promise<Answer<unknown>>;
}

export class BookSession {
  readonly #options: SessionOptions;
  #book: OpenBook | null = null;

  constructor(options: SessionOptions) {
    this.#options = options;
  }

  book(): OpenBook | null {
    return this.#book;
  }

  state(): HostState {
    const { door, folder, version } = this.#options;
    const book = this.#book;
    return {
      door,
      book: book === null ? null : { file: book.file, name: bookName(book.file), readOnly: book.readOnly },
      recent: recentFiles(folder).map((file) => ({ file, name: bookName(file) })),
      folder,
      version,
      who: this.#options.context().who,
    };
  }

  /** The book that was open stays open where the other cannot be opened. */
  async open(file: string, mode: 'create' | 'open' = 'open'): Promise<Answer<HostState>> {
    const full = path.resolve(file);
    const before = this.#book;
    // Opened twice, a book would stand in its own way. One that could only be read is tried again.
    if (mode === 'open' && before !== null && !before.readOnly && isSameFile(before.file, full))
      return answer(this.state());
    const opened = await this.#options.openFile(full, mode, this.#options.context().at);
    if (!opened.ok) return opened;
    this.#book = opened.value;
    await this.#leave(before);
    remember(this.#options.folder, opened.value.file);
    return answer(this.state());
  }

  /** An existing demo is opened as it was left. */
  async demo(): Promise<Answer<HostState>> {
    const { folder, makeDemo, context } = this.#options;
    const file = demoFile(folder);
    if (!existsSync(file)) {
      mkdirSync(folder, { recursive: true });
      const made = await makeDemo(file, context());
      if (!made.ok) return made;
    }
    return this.open(file);
  }

  async create(given: string): Promise<Answer<HostState>> {
    const file = bookFileIn(this.#options.folder, given);
    if (!file.ok) return file;
    mkdirSync(path.dirname(file.value), { recursive: true });
    return this.open(file.value, 'create');
  }

  async copy(given: string): Promise<Answer<{ file: string }>> {
    if (this.#book === null) return refuse('no-book', 'No book is open.');
    const file = bookFileIn(this.#options.folder, given);
    if (!file.ok) return file;
    const copied = await this.#book.backup(file.value);
    if (copied.ok) copyFiles(this.#book.file, copied.value.file);
    return copied;
  }

  async close(): Promise<void> {
    const book = this.#book;
    this.#book = null;
    await this.#leave(book);
  }

  /** A copy that cannot be made is no reason to keep a book from closing: it is said, and that is all. */
  async backUp(book: OpenBook | null = this.#book): Promise<void> {
    if (book === null) return;
    const kept = await this.#options.backUp(book, this.#options.context().at);
    if (!kept.ok) this.#options.log(kept.error.message);
  }

  async #leave(book: OpenBook | null): Promise<void> {
    if (book === null) return;
    await this.backUp(book);
    await book.close();
  }
}

function isSameFile(open: string, asked: string): boolean {
  return existsSync(asked) && realpathSync(asked) === open;
}
