// Week plan and day sheet from the command line: by the job, or with the first day; nothing is kept as printed.
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
    'week',
    ['--id', 'TB26@2026-03-02'],
    ['Mon 2 Mar to Sun 15 Mar', 'first strip shift', '>P01<', 'never a release'],
  ],
  ['week', ['--id', 'TB26', '--from', '2026-03-09'], ['Mon 9 Mar to Sun 22 Mar', 'landscape']],
  ['day', ['--id', 'TB26', '--from', '2026-03-03'], ['Tue 3 Mar 2026', 'set 4 GA at P02', 'pour P01']],
])('sheet %s %j is one file', async (kind, args, parts) => {
  const out = `${kind}-${args.length}.html`;
  const ran = await sheet(kind, ...args, '--out', out);
  expect(ran).toMatchObject({ code: 0, stderr: '' });
  const html = readFileSync(path.join(folder, out), 'utf8');
  for (const part of parts) expect(html).toContain(part);
  expect(html).toMatch(/Revision<\/dt><dd class="sh-cell-value">1</u);
  expect(html).not.toMatch(/<script|<link|<img|<iframe|\s(?:src|href|style|on\w+)=|@import|url\(/iu);
  expect(html).not.toMatch(/\bsafe\b/iu);
});

test.each([
  [['week', '--id', 'NONE'], 'unknown-job', 'id'],
  [['week', '--id', 'TB26', '--from', '3/9/26'], 'bad-input', 'from'],
])('sheet %j is refused as %s', async (args, code, field) => {
  const ran = await sheet(...args, '--out', 'none.html');
  expect(ran.code).toBe(2);
  expect(ran.document()).toMatchObject({ error: { code, field } });
});
