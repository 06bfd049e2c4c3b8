import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { bookFileIn, bookName } from '../../core/host/book-files.ts';
import { dataFolder } from '../../core/host/folders.ts';
import { contained, pageFile } from '../../core/host/page-files.ts';

describe('the folder for data', () => {
  const home = path.resolve('/home/site');
  const cases: readonly (readonly [NodeJS.Platform, Record<string, string>, string])[] = [
    ['linux', {}, path.join(home, '.local', 'share', 'regang')],
    ['linux', { XDG_DATA_HOME: path.resolve('/data') }, path.join(path.resolve('/data'), 'regang')],
    ['linux', { XDG_DATA_HOME: 'relative' }, path.join(home, '.local', 'share', 'regang')],
    ['darwin', {}, path.join(home, 'Library', 'Application Support', 'Regang')],
    ['win32', {}, path.join(home, 'AppData', 'Roaming', 'Regang')],
    ['win32', { APPDATA: path.resolve('/roaming') }, path.join(path.resolve('/roaming'), 'Regang')],
    ['linux', { REGANG_HOME: path.resolve('/elsewhere') }, path.resolve('/elsewhere')],
    ['win32', { REGANG_HOME: '' }, path.join(home, 'AppData', 'Roaming', 'Regang')],
  ];
  for (const [platform, env, folder] of cases)
    test(`${platform} with ${JSON.stringify(env)}: ${folder}`, () => {
      expect(dataFolder({ platform, env, home })).toBe(folder);
    });
});

describe('names of books', () => {
  const folder = path.resolve('/books');

  test('a bare name goes into the folder with the ending added once', () => {
    expect(bookFileIn(folder, ' north yard ')).toEqual({
      ok: true,
      value: path.join(folder, 'north yard.regang'),
    });
    expect(bookFileIn(folder, 'a.regang')).toEqual({ ok: true, value: path.join(folder, 'a.regang') });
  });

  test('a full path stays', () => {
    const file = path.resolve('/elsewhere/job.regang');
    expect(bookFileIn(folder, file)).toEqual({ ok: true, value: file });
  });

  for (const name of ['../up', 'sub/name', 'sub\\name', '', '   ', '.hidden', '..', 'c:name'])
    test(`"${name}" is neither a plain name nor a full path, and refused`, () => {
      expect(bookFileIn(folder, name)).toMatchObject({ ok: false, error: { code: 'bad-file-name' } });
    });

  test('the name to show is that of the file without its ending', () => {
    expect(bookName(path.resolve('/books/north yard.regang'))).toBe('north yard');
  });
});

describe('files of the page', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'regang-pages-'));
  const pages = path.join(folder, 'pages');
  mkdirSync(path.join(pages, 'assets'), { recursive: true });
  mkdirSync(path.join(folder, 'pages-secret'));
  writeFileSync(path.join(pages, 'index.html'), 'index');
  writeFileSync(path.join(pages, 'assets', 'main-Ab3_x9Zq.js'), 'script');
  writeFileSync(path.join(pages, 'assets', 'notes.txt'), 'a kind that is not served');
  writeFileSync(path.join(folder, 'pages-secret', 'secret.html'), 'secret');
  writeFileSync(path.join(folder, 'secret.html'), 'secret');
  symlinkSync(path.join(folder, 'secret.html'), path.join(pages, 'link.html'));

  test('a file inside is found, with its type, and kept for ever where its name holds a digest', async () => {
    expect(await pageFile(pages, '/index.html')).toMatchObject({
      type: 'text/html; charset=utf-8',
      keep: false,
    });
    expect(await pageFile(pages, '/assets/main-Ab3_x9Zq.js')).toMatchObject({
      type: 'text/javascript; charset=utf-8',
      keep: true,
    });
  });

  const attacks = [
    '/../secret.html',
    '/%2e%2e/secret.html',
    '/..%2fsecret.html',
    '/%2e%2e%2fsecret.html',
    '/..%5csecret.html',
    '/..\\secret.html',
    '/assets/../../secret.html',
    '/assets/%2e%2e/%2e%2e/secret.html',
    '/../pages-secret/secret.html',
    '//etc/passwd',
    '/%2fetc/passwd',
    `/${encodeURIComponent(path.join(folder, 'secret.html'))}`,
    '/index.html%00.js',
    '/%E0%A4%A',
    '/link.html',
    '/assets',
    '/assets/notes.txt',
    '/',
    '/.',
  ];
  for (const attack of attacks)
    test(`${attack.replace(folder, 'FOLDER')} finds nothing`, async () => {
      expect(await pageFile(pages, attack)).toBeNull();
    });

  test('a name that only begins with two dots is a name', () => {
    expect(contained(pages, '/..name.html')).toBe(path.join(pages, '..name.html'));
  });
});
