// Sheets from the command line: one file that needs nothing beside it, and refusals that name what is wrong.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { newFolder, run } from './run-cli.ts';

const folder = newFolder();
const regang = (...args: string[]) => run(args, '', folder);
const sheet = (...args: string[]) => regang('sheet', ...args, '--book', 'B.regang');

beforeAll(async () => {
  expect(await regang('demo', '--book', 'B.regang')).toMatchObject({ code: 0 });
});

test.each(['assembly', 'pick'])('the %s sheet is one HTML file and one JSON document', async (kind) => {
  const ran = await sheet(kind, '--design', 'GC', '--out', `${kind}.html`);
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  const file = path.join(folder, `${kind}.html`);
  expect(ran.document()).toEqual({ file, sheet: kind, design: 'GC' });
  const html = readFileSync(file, 'utf8');
  expect(html).toMatch(/^<!doctype html>\n/u);
  expect(html).toMatch(/printed-here">\w{3} \d+ \w{3} \d{4},? \d\d:\d\d by tester</u);
  // Nothing is loaded and nothing runs.
  expect(html).not.toMatch(/<script|<link|<img|<iframe|\s(?:src|href|style|on\w+)=|@import|url\(/iu);
});

test('a pour names the wall in which the gang is shown, in the units asked for', async () => {
  const args = ['--design', 'GC', '--job', 'TB26', '--pour', 'P04', '--units', 'metric', '--out', 'p.html'];
  expect((await sheet('assembly', ...args)).code).toBe(0);
  const html = readFileSync(path.join(folder, 'p.html'), 'utf8');
  // 8'-4" is 100 in of 25.4 mm.
  for (const part of ['P04 side A', 'P04 side B', '2540 mm']) expect(html).toContain(part);
});

test('a file that is there already is not touched', async () => {
  const file = path.join(folder, 'mine.html');
  writeFileSync(file, 'mine');
  const ran = await sheet('assembly', '--design', 'GC', '--out', 'mine.html');
  expect(ran.code).toBe(2);
  expect(ran.document()).toMatchObject({ error: { code: 'file-exists', field: 'out' } });
  expect(readFileSync(file, 'utf8')).toBe('mine');
});

test.each([
  [['assembly', '--design', 'NONE', '--out', 'x.html'], 'unknown-design', 'design'],
  [['assembly', '--design', 'GC', '--job', 'NONE', '--out', 'x.html'], 'unknown-job', 'job'],
  [
    ['assembly', '--design', 'GC', '--job', 'TB26', '--pour', 'NONE', '--out', 'x.html'],
    'unknown-pour',
    'pour',
  ],
  [
    ['assembly', '--design', 'GC', '--job', 'TB26', '--pour', 'P01', '--out', 'x.html'],
    'not-at-pour',
    'pour',
  ],
  [['assembly', '--design', 'GC', '--out', 'no/folder/x.html'], 'file-not-written', 'out'],
  [['drawing', '--design', 'GC', '--out', 'x.html'], 'bad-input', 'kind'],
  [['assembly', '--design', 'GC'], 'bad-input', 'out'],
  [['assembly', '--design', 'GC', '--units', 'inch', '--out', 'x.html'], 'bad-input', 'units'],
] as const)('refused: %j', async (args, code, field) => {
  const ran = await sheet(...args);
  expect(ran.code).toBe(2);
  expect(ran.document()).toMatchObject({ error: { code, field } });
  expect(existsSync(path.join(folder, 'x.html'))).toBe(false);
});
