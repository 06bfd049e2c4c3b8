import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { demoFiles } from '../../../seed-demo/make-demo.ts';
import { guessKind, importSteps, orderOf } from '../../../renderer/screens/book/import-steps.ts';

test('every file of the demo is known by its name, and none is left over', () => {
  const files = readdirSync(new URL('../../../seed-demo/', import.meta.url)).filter((name) =>
    name.endsWith('.csv'),
  );
  expect(files).toHaveLength(importSteps.length);
  for (const { kind, file } of demoFiles) expect(guessKind(file, [])).toBe(kind);
});

test('files go in the order in which the demo is made', () => {
  const order = demoFiles.map(({ kind }) => orderOf(kind));
  expect(order).toEqual(order.toSorted((one, other) => one - other));
});

test('a name that says nothing is taken for the first kind still missing', () => {
  expect(guessKind('export (3).csv', ['components', 'rules'])).toBe('places');
});
