// Files beside the book: photos and scans in a folder that bears the book's name, each under the digest of what it
// holds, so that none is ever written over. A file is whole on disk before the book names it.
import { createHash } from 'node:crypto';
import {
  closeSync,
  cpSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { sql } from 'kysely';
import type { Kysely } from 'kysely';
import { type Answer, answer, refuse } from '../answer.ts';
import type { Attachment } from '../yard/note.ts';
import { syncFolder } from './make-book.ts';
import type { BookTables } from './tables.ts';

const endings: Readonly<Record<Attachment['mediaType'], string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
  'application/pdf': 'pdf',
};

export function filesFolder(bookFile: string): string {
  return `${bookFile}.files`;
}

/** Answers its digest, under which it is found again. The same content twice is one file. */
export async function keepFile(
  db: Kysely<BookTables>,
  content: Uint8Array,
  mediaType: Attachment['mediaType'],
): Promise<string> {
  const sha256 = digestOf(content);
  const folder = filesFolder(await bookFileOf(db));
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, `${sha256}.${endings[mediaType]}`);
  // One that was damaged meanwhile is written anew.
  if (existsSync(file) && digestOf(readFileSync(file)) === sha256) return sha256;
  const part = `${file}.part`;
  const opened = openSync(part, 'w');
  try {
    writeFileSync(opened, content);
    fsyncSync(opened);
  } finally {
    closeSync(opened);
  }
  renameSync(part, file);
  // The name is on disk before the row that says it.
  for (const named of [folder, path.dirname(folder)]) syncFolder(named);
  return sha256;
}

function digestOf(content: Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/** Codes: file-missing, file-changed. */
export async function readKeptFile(
  db: Kysely<BookTables>,
  { sha256, mediaType, fileName }: Pick<Attachment, 'sha256' | 'mediaType' | 'fileName'>,
): Promise<Answer<Uint8Array>> {
  const file = path.join(filesFolder(await bookFileOf(db)), `${sha256}.${endings[mediaType]}`);
  if (!existsSync(file))
    return refuse('file-missing', `${fileName} is not in the folder beside the book any more.`, {
      hint: `Maybe the book was moved without its folder: ${path.basename(path.dirname(file))} belongs beside it.`,
    });
  const content = readFileSync(file);
  if (digestOf(content) === sha256) return answer(content);
  return refuse('file-changed', `${fileName} is not what was attached: its content was changed.`);
}

/** To a copy of the book goes a copy of its files; a book without any has no folder. What is there already is alike. */
export function copyFiles(fromBook: string, toBook: string): void {
  if (existsSync(filesFolder(fromBook)))
    cpSync(filesFolder(fromBook), filesFolder(toBook), { recursive: true });
}

async function bookFileOf(db: Kysely<BookTables>): Promise<string> {
  const { rows } = await sql<{ name: string; file: string }>`pragma database_list`.execute(db);
  const file = rows.find(({ name }) => name === 'main')?.file;
  if (file === undefined || file === '') throw new Error('The book has no file of its own.');
  return file;
}
