// Files that nobody meant: good files with letters changed, and random components written and read back.
// A test that fails prints the seed it can be repeated with.
import * as fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { componentKinds } from '../../core/catalogue/component.ts';
import { componentColumns, readComponents } from '../../core/exchange/components-csv.ts';
import { filledBook, files, type TestBook } from './a-book.ts';

let book: TestBook;
beforeAll(async () => {
  book = await filledBook();
});
afterAll(() => book.end());

type Kind = keyof typeof files;
const kinds = Object.keys(files) as Kind[];
const scrap = [
  '',
  '"',
  "'",
  ',',
  ';',
  '\n',
  '\r\n',
  '\t',
  '-',
  '0',
  '9',
  '@',
  ':',
  'P836',
  ' ',
  'ft',
  '\uFEFF',
  '½',
  '\0',
  '2026-13-40 99:99',
];

const spoiled = fc
  .record({
    kind: fc.constantFrom(...kinds),
    changes: fc.array(fc.record({ at: fc.nat(2000), take: fc.nat(12), put: fc.constantFrom(...scrap) }), {
      minLength: 1,
      maxLength: 4,
    }),
  })
  .map(({ kind, changes }) => {
    let text: string = files[kind];
    for (const { at, take, put } of changes) {
      const place = at % (text.length + 1);
      text = text.slice(0, place) + put + text.slice(place + take);
    }
    return { kind, text };
  });

describe('A file with letters changed at random', () => {
  test('is stored without a bad row, or refused with one and the book unchanged; it never throws', async () => {
    let refused = 0;
    let before = await book.content();
    await fc.assert(
      fc.asyncProperty(spoiled, async ({ kind, text }) => {
        const done = await book.take(kind, text);
        const after = await book.content();
        expect(done.stored).toBe(done.bad.length === 0);
        if (!done.stored) {
          refused += 1;
          expect(after).toEqual(before);
          const last = text.split(/\r\n?|\n/u).length;
          for (const one of done.bad) {
            expect(one.line).toBeGreaterThanOrEqual(1);
            expect(one.line).toBeLessThanOrEqual(last);
            expect(one.wanted).not.toBe('');
          }
        }
        before = after;
      }),
      { numRuns: 150 },
    );
    expect(refused).toBeGreaterThan(50);
    expect(await book.book.read((reader) => reader.check())).toEqual([]);
  });
});

const thousandths = fc.integer({ min: 1, max: 9_000_000 }).map((micrometres) => micrometres * 1000);
const code = fc.stringMatching(/^[A-Z]{1,3}[0-9]{1,4}$/u);
const component = fc.record({
  code,
  name: fc.stringMatching(/^[a-z"',;x]{1,12}$/u),
  kind: fc.constantFrom(...componentKinds),
  weightGrams: fc.integer({ min: 0, max: 2_000_000 }),
  widthNm: thousandths,
  heightNm: thousandths,
  lengthNm: thousandths,
  pressurePa: fc.integer({ min: 1, max: 200_000 }),
  pressureOnSidePa: fc.integer({ min: 1, max: 200_000 }),
  canShrink: fc.constant(true),
  system: fc.option(fc.constantFrom('S', 'T')),
  hirePerDayCents: fc.option(fc.integer({ min: 0, max: 99_999 })),
  valueCents: fc.integer({ min: 0, max: 9_999_999 }),
  regangPerPieceH: fc.constantFrom(0, 0.05, 2.5),
  remark: fc.option(fc.stringMatching(/^[a-z(),"\n]{0,20}[a-z]$/u)),
});

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

describe('Components written as CSV', () => {
  test('are read back as they were, whatever marks stand in their texts', () => {
    const written = (one: (typeof component extends fc.Arbitrary<infer T> ? T : never)): string =>
      [
        one.code, one.name, one.kind, one.system ?? '', `${one.weightGrams / 1000} kg`,
        `${one.widthNm / 1_000_000} mm`, `${one.heightNm / 1_000_000} mm`, `${one.lengthNm / 1_000_000} mm`, '', '',
        `${one.pressurePa / 1000} kPa`, `${one.pressureOnSidePa} Pa`, one.canShrink ? 'yes' : '',
        one.hirePerDayCents === null ? '' : (one.hirePerDayCents / 100).toFixed(2),
        (one.valueCents / 100).toFixed(2), String(one.regangPerPieceH), one.remark ?? '',
      ].map(quoted).join(','); // prettier-ignore
    const heading = componentColumns.map((column) => column.name).join(',');
    fc.assert(
      fc.property(
        fc.uniqueArray(component, { selector: (one) => one.code, minLength: 1, maxLength: 20 }),
        (list) => {
          const read = readComponents([heading, ...list.map(written)].join('\r\n'), {}, []);
          expect(read.bad).toEqual([]);
          expect(read.values).toEqual(
            list.map((one) => ({ ...one, name: one.name.trim(), remark: one.remark?.trim() ?? null })),
          );
        },
      ),
      { numRuns: 100 },
    );
  });
});
