// The book's shape is a file that is looked at: a change of it fails here until the snapshot is renewed on
// purpose (`npx vitest run --project core tests/book/schema.test.ts -u`).
import path from 'node:path';
import { expect, test } from 'vitest';
import { aFolder, opened, rawHandle } from './a-book.ts';

async function schemaOf(file: string): Promise<readonly { name: string; type: string; sql: string }[]> {
  const handle = await rawHandle(file, { readonly: true });
  return handle
    .prepare<[], { name: string; type: string; sql: string }>(
      "SELECT name, type, sql FROM sqlite_schema WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite%' ORDER BY type, name",
    )
    .all();
}

test('The shape of a new book is the one of the checked-in snapshot', async () => {
  const file = path.join(aFolder(), 'a.regang');
  await opened(file);
  const schema = await schemaOf(file);
  expect(schema.filter((each) => each.type === 'table').length).toBeGreaterThanOrEqual(16);
  const text = schema.map((each) => `${each.sql};\n`).join('\n');
  await expect(text).toMatchFileSnapshot('schema.snapshot.sql');
});

test('Every table is STRICT', async () => {
  const file = path.join(aFolder(), 'a.regang');
  await opened(file);
  const tables = (await schemaOf(file)).filter((each) => each.type === 'table');
  expect(tables.length).toBeGreaterThan(0);
  expect(tables.filter((each) => !each.sql.endsWith('STRICT')).map((each) => each.name)).toEqual([]);
});
