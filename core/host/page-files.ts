// Finds a file of the built page by the path of an address, and nothing outside its folder. The path is
// decoded and resolved, and what comes out is compared as a relative path, never by its beginning.
import { readFile, realpath } from 'node:fs/promises';
import path from 'node:path';

export interface PageFile {
  readonly body: Buffer;
  readonly type: string;
  /** Its name holds a digest of its content, so that it may be kept for ever. */
  readonly keep: boolean;
}

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/** Null where there is no such file, whatever the reason: the answer does not say which. */
export async function pageFile(folder: string, urlPath: string): Promise<PageFile | null> {
  const file = contained(folder, urlPath);
  const type = file === null ? undefined : types[path.extname(file).toLowerCase()];
  if (file === null || type === undefined) return null;
  try {
    // A link inside the folder that leads out of it is not followed either.
    const real = await realpath(file);
    if (!isInside(await realpath(folder), real)) return null;
    const keep = /^\/assets\/.+-[\w-]{8}\.\w+$/u.test(urlPath);
    return { body: await readFile(real), type, keep };
  } catch {
    return null;
  }
}

/** The file that an address means, or null where it would lie outside of `folder`. */
export function contained(folder: string, urlPath: string): string | null {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return null;
  }
  // The backslash is a separator on one platform only: refused on all, as is the zero byte.
  if (decoded.includes('\\') || decoded.includes('\0')) return null;
  const file = path.resolve(folder, `.${path.posix.normalize(`/${decoded}`)}`);
  const steps = decoded.split('/');
  return !steps.includes('..') && isInside(folder, file) ? file : null;
}

function isInside(folder: string, file: string): boolean {
  const relative = path.relative(folder, file);
  return relative !== '' && !path.isAbsolute(relative) && relative.split(path.sep)[0] !== '..';
}
