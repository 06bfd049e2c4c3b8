// The sheets of notes from the command line, by the number that people know.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { newFolder, run } from './run-cli.ts';

const folder = newFolder();
const sheet = (...args: string[]) => run(['sheet', ...args, '--book', 'B.regang'], '', folder);

beforeAll(async () => {
  expect(await run(['demo', '--book', 'B.regang'], '', folder)).toMatchObject({ code: 0 });
});

test.each([
  [
    'delivery',
    'D-099',
    ['Delivery note', '40 on the paper, 36 counted here', 'Four locks fewer than on the paper'],
  ],
  ['return', 'R-207', ['Return note', '8 counted at loading, 6 at the depot', 'depot counted']],
])('sheet %s prints %s with its claim', async (kind, number, parts) => {
  const ran = await sheet(kind, '--id', number, '--out', `${kind}.html`);
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  const html = readFileSync(path.join(folder, `${kind}.html`), 'utf8');
  for (const part of parts) expect(html).toContain(part);
  expect(html).not.toMatch(/<script|<link|<img|<iframe|\s(?:src|href|style|on\w+)=|@import|url\(/iu);
});

test.each([
  ['delivery', 'R-207', 'unknown-note'],
  ['return', 'nowhere-1', 'unknown-note'],
])('sheet %s of %s is refused as %s', async (kind, number, code) => {
  const ran = await sheet(kind, '--id', number, '--out', 'none.html');
  expect(ran.code).not.toBe(0);
  expect(ran.document()).toMatchObject({ error: { code, field: 'id' } });
});
