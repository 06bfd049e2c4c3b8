// The import rules are enforced twice, and this holds both to it: a wrong import is put into a copy of each
// folder, and the linter, and for the pure folders also the compiler, must refuse it. The right import beside
// it must pass, so that a check that refuses everything, or looks at nothing, is found out.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = path.join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(path.join(tmpdir(), 'regang-layers-'));
const bin = (name: string): string => path.join(root, 'node_modules', '.bin', name);

/** A file, what it wrongly imports, and what it may import. */
const rows: readonly [file: string, wrong: string, right: string][] = [
  ['core/units/a.ts', '../catalogue/a.ts', '../answer.ts'],
  ['core/units/b.ts', 'node:fs', 'zod'],
  ['core/catalogue/a.ts', '../gang/a.ts', '../units/a.ts'],
  ['core/gang/a.ts', '../plan/a.ts', '../catalogue/a.ts'],
  ['core/gang/b.ts', '../book/a.ts', '../units/a.ts'],
  ['core/gang/c.ts', '../face/a.ts', '../catalogue/a.ts'],
  ['core/pick/a.ts', '../face/a.ts', '../gang/a.ts'],
  ['core/pick/b.ts', 'node:fs', '../units/a.ts'],
  ['core/face/a.ts', '../plan/a.ts', '../gang/a.ts'],
  ['core/face/b.ts', '../book/a.ts', '../units/a.ts'],
  ['core/sheets/a.ts', '../book/a.ts', '../pick/a.ts'],
  ['core/sheets/b.ts', 'react', '../gang/a.ts'],
  ['core/plan/c.ts', '../sheets/a.ts', '../face/a.ts'],
  ['core/plan/a.ts', '../procedures/a.ts', '../gang/a.ts'],
  ['core/plan/b.ts', '../book/a.ts', '../units/a.ts'],
  ['core/yard/a.ts', '../plan/a.ts', '../units/a.ts'],
  ['core/yard/b.ts', 'kysely', '../answer.ts'],
  ['core/book/a.ts', '../procedures/a.ts', 'kysely'],
  ['core/exchange/a.ts', 'kysely', '../book/a.ts'],
  ['core/procedures/a.ts', '../host/a.ts', '../book/a.ts'],
  ['core/procedures/b.ts', 'better-sqlite3', '../plan/a.ts'],
  ['core/host/a.ts', 'kysely', '../procedures/a.ts'],
  ['core/host/b.ts', '../../renderer/a.ts', '../book/a.ts'],
  ['renderer/a.ts', '../core/book/a.ts', '../core/units/a.ts'],
  ['renderer/b.ts', '../core/host/a.ts', '../core/answer.ts'],
  ['renderer/c.ts', 'node:fs', 'react'],
];

function write(file: string, text: string): void {
  mkdirSync(path.join(folder, path.dirname(file)), { recursive: true });
  writeFileSync(path.join(folder, file), text);
}

function lint(file: string, imported: string): string {
  write(file, `import * as thing from '${imported}';\nexport const it = thing;\n`);
  const { stdout } = spawnSync(bin('oxlint'), ['--format=unix', '-A', 'all', file], {
    cwd: folder,
    encoding: 'utf8',
  });
  return stdout;
}

function compile(text: string): string {
  write('core/plan/wrong.ts', text);
  const { stdout } = spawnSync(bin('tsc'), ['-p', 'core/tsconfig.pure.json'], {
    cwd: folder,
    encoding: 'utf8',
  });
  return stdout;
}

beforeAll(() => {
  copyFileSync(path.join(root, '.oxlintrc.json'), path.join(folder, '.oxlintrc.json'));
  writeFileSync(path.join(folder, 'package.json'), '{"type":"module"}');
  symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the linter', () => {
  test.each(rows)('%s may not import %s, but may import %s', (file, wrong, right) => {
    expect(lint(file, wrong)).toContain('no-restricted-imports');
    expect(lint(file, right)).not.toContain('no-restricted-imports');
  });

  test('every folder of the core has its rule', () => {
    const looked = new Set(rows.map(([file]) => file.split('/')[1]));
    const folders = readdirSync(path.join(root, 'core'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && entry.name !== 'cli')
      .map((entry) => entry.name);
    expect(folders.length).toBeGreaterThan(7);
    for (const name of folders) expect(looked).toContain(name);
  });
});

describe('the compiler of the pure folders', () => {
  beforeAll(() => {
    copyFileSync(path.join(root, 'tsconfig.json'), path.join(folder, 'tsconfig.json'));
    copyFileSync(
      path.join(root, 'core', 'tsconfig.pure.json'),
      path.join(folder, 'core', 'tsconfig.pure.json'),
    );
    rmSync(path.join(folder, 'core'), { recursive: true, force: true });
    mkdirSync(path.join(folder, 'core'));
    copyFileSync(
      path.join(root, 'core', 'tsconfig.pure.json'),
      path.join(folder, 'core', 'tsconfig.pure.json'),
    );
    write(
      'core/book/open.ts',
      "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
    );
  });

  test.each([
    ['Node', 'export const it = process.pid;', 'process'],
    ['a file', "import { readFileSync } from 'node:fs';\nexport const it = readFileSync;", 'node:fs'],
    ['the book', "import { read } from '../book/open.ts';\nexport const it = read;", 'node:fs'],
    ['a window', 'export const it = document.title;', 'document'],
  ])('refuses %s', (_, text, named) => {
    expect(compile(text)).toContain(named);
  });

  test('takes plain data', () => {
    expect(compile('export const it = [1, 2, 3].map((one) => one + 1);')).toBe('');
  });

  test('compiles all the pure folders of the project, and each has files', () => {
    const args = ['-p', 'core/tsconfig.pure.json', '--listFilesOnly'];
    const files = execFileSync(bin('tsc'), args, { cwd: root, encoding: 'utf8' }).split('\n');
    for (const name of ['units', 'catalogue', 'gang', 'plan', 'yard'])
      expect(files.filter((file) => file.includes(`/core/${name}/`)).length).toBeGreaterThan(2);
  });
});
