// Native dialogs that ask for a file. The page gets a path to hand to the core, or, for a CSV file, its
// text: a page of its own accord reads no file.
import { readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import { dialog } from 'electron';
import type { BrowserWindow } from 'electron';
import { z } from 'zod';
import { bookEnding } from '../core/host/book-files.ts';
import type { Memory } from './remembered.ts';

export const pickKind = z.enum(['open-book', 'new-book', 'copy-book', 'open-csv']);
export type PickKind = z.output<typeof pickKind>;
export type Picked =
  | string
  | { readonly name: string; readonly text: string }
  | { readonly error: string }
  | null;

const largestCsvBytes = 20 * 1024 * 1024;
const books = { name: 'Regang books', extensions: [bookEnding.slice(1)] };
const tables = { name: 'CSV tables', extensions: ['csv', 'txt'] };

export async function pick(window: BrowserWindow, memory: Memory, kind: PickKind): Promise<Picked> {
  const file =
    kind === 'new-book' || kind === 'copy-book'
      ? await askWhere(window, memory, kind)
      : await askWhich(window, memory, kind);
  if (file === null) return null;
  memory.keep({ folder: path.dirname(file) });
  return kind === 'open-csv' ? readTable(file) : file;
}

async function askWhich(window: BrowserWindow, memory: Memory, kind: PickKind): Promise<string | null> {
  const { canceled, filePaths } = await dialog.showOpenDialog(window, {
    title: kind === 'open-csv' ? 'Import a CSV table' : 'Open a book',
    ...startingAt(memory, null),
    properties: ['openFile'],
    filters: [kind === 'open-csv' ? tables : books, { name: 'All files', extensions: ['*'] }],
  });
  return canceled ? null : (filePaths[0] ?? null);
}

async function askWhere(window: BrowserWindow, memory: Memory, kind: PickKind): Promise<string | null> {
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    title: kind === 'copy-book' ? 'Save a copy of the book' : 'Begin a new book',
    ...startingAt(memory, kind === 'copy-book' ? `copy${bookEnding}` : `book${bookEnding}`),
    filters: [books],
  });
  return canceled || filePath === '' ? null : filePath;
}

/** Without a folder of our own the dialogs open in Downloads. */
function startingAt(memory: Memory, name: string | null): { defaultPath?: string } {
  const { folder } = memory.values;
  if (folder === undefined) return name === null ? {} : { defaultPath: name };
  return { defaultPath: name === null ? folder : path.join(folder, name) };
}

async function readTable(file: string): Promise<Picked> {
  const name = path.basename(file);
  const { size } = await stat(file);
  if (size > largestCsvBytes)
    return { error: `${name} has ${size} bytes; a table may have ${largestCsvBytes} at most.` };
  return { name, text: await readFile(file, 'utf8') };
}
