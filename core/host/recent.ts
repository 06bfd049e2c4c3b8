// Remembers the files opened lately, in a small JSON file beside the books. Losing it loses nothing but
// convenience, so that a broken one counts as empty.
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';

const remembered = z.object({ recent: z.array(z.string()) });
const most = 10;

export function recentFiles(folder: string): readonly string[] {
  try {
    const parsed = remembered.safeParse(JSON.parse(readFileSync(fileOf(folder), 'utf8')));
    return parsed.success ? parsed.data.recent.filter((file) => existsSync(file)) : [];
  } catch {
    return [];
  }
}

/** Puts `file` first. A folder that cannot be written to is no reason to refuse a book. */
export function remember(folder: string, file: string): void {
  const recent = [file, ...recentFiles(folder).filter((other) => other !== file)].slice(0, most);
  try {
    mkdirSync(folder, { recursive: true });
    const target = fileOf(folder);
    writeFileSync(`${target}.new`, JSON.stringify({ recent }, null, 2));
    renameSync(`${target}.new`, target);
  } catch (error) {
    console.error(`The list of recent books could not be kept: ${String(error)}`);
  }
}

function fileOf(folder: string): string {
  return path.join(folder, 'recent.json');
}
