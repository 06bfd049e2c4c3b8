// Says whether what is in dist/ was built from the sources as they are: a digest over the content of all
// of them is kept beside the output and compared.
import { createHash } from 'node:crypto';
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const sources = [
  'core/**/*.ts',
  'electron/**/*.ts',
  'migrations/**/*',
  'renderer/**/*',
  'seed-demo/**/*',
  'package.json',
  'package-lock.json',
];

export function sourceStamp(root: string): string {
  const files = globSync(sources, { cwd: root, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .sort();
  if (files.length < 20) throw new Error(`Only ${files.length} source files were found under ${root}.`);
  const digest = createHash('sha256');
  for (const file of files)
    digest
      .update(`${file}\n`)
      .update(readFileSync(path.join(root, file)))
      .update('\n');
  return digest.digest('hex');
}

export function isBuilt(root: string): boolean {
  try {
    return readFileSync(stampFile(root), 'utf8') === sourceStamp(root);
  } catch {
    return false;
  }
}

export function writeStamp(root: string, stamp: string): void {
  writeFileSync(stampFile(root), stamp);
}

function stampFile(root: string): string {
  return path.join(root, 'dist', 'stamp.txt');
}
