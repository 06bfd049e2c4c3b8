// The count sheet: what a counter needs in the yard, and nothing that a blind count must not show.
import { describe, expect, test } from 'vitest';
import { type CountSheetFacts, countSheet } from '../../core/sheets/count-sheet.ts';
import { sheetUnits } from '../../core/sheets/drawn-gang.ts';
import { pairPicture, type SheetPair, type SheetSize } from '../../core/sheets/look-alike-part.ts';
import { numberOf, rowsOf, withClass, withTag, wordsOf } from './read-tree.ts';

const inch = 25_400_000;
const panel = (code: string, width: number, height: number): SheetSize => ({
  code,
  name: `Panel ${code}`,
  widthNm: width * inch,
  heightNm: height * inch,
  lengthNm: null,
  weightGrams: 90_718,
});
const rail = (code: string, feet: number): SheetSize => ({
  code,
  name: `Rail ${code}`,
  widthNm: null,
  heightNm: null,
  lengthNm: feet * 12 * inch,
  weightGrams: 18_144,
});
const pair: SheetPair = {
  one: panel('P830', 30, 96),
  other: panel('P836', 36, 96),
  measure: { what: 'width', oneNm: 30 * inch, otherNm: 36 * inch },
  tellApart: 'count the ribs',
};
const line = (component: string, more: object = {}) => ({
  component,
  name: `Component ${component}`,
  owner: null,
  class: 'A',
  booked: 142,
  lookAlikes: [],
  bundleSize: null,
  ...more,
});

const facts: CountSheetFacts = {
  name: 'N-3',
  kind: 'location',
  blind: false,
  counters: 1,
  startedAt: '2026-03-10T16:00:00-04:00',
  remark: null,
  scanCode: 'RG:N::N-3',
  places: [
    {
      code: 'ENN',
      name: 'Yard',
      lines: [
        line('LK'),
        line('P830', { lookAlikes: ['P836'] }),
        line('P835'),
        line('P836', { lookAlikes: ['P830'] }),
        line('TR', { bundleSize: 20 }),
      ],
    },
  ],
  pairs: [pair],
  twoOwners: [{ component: 'R8', owners: ['OURS', 'TFH'] }],
  moved: [{ component: 'LK', quantity: 16, from: 'ENN', to: 'TB', at: '2026-03-10T16:20:00-04:00' }],
  units: 'us',
};
const rows = (of: CountSheetFacts) => rowsOf(countSheet(of).tree, 'count-place');

describe('a count sheet', () => {
  test('has a line a component with the book’s figure and a box a condition, look-alikes one after the other', () => {
    const [head, ...lines] = rows(facts);
    expect(head?.slice(2)).toEqual([
      'book',
      'ready',
      'hidden faces',
      'to clean',
      'to repair',
      'quarantine',
      'scrap',
      'at (time)',
    ]);
    expect(lines.slice(0, 5).map((cells) => cells.slice(0, 3))).toEqual([
      ['LK', 'Component LK', '142'],
      ['P830', 'Component P830 · not P836', '142'],
      ['P836', 'Component P836 · not P830', '142'],
      ['P835', 'Component P835', '142'],
      ['TR', 'Component TR · 20 a bundle', '142'],
    ]);
    expect(withClass(countSheet(facts).tree, 'count-box')).toHaveLength(5 * 7);
  });

  test('counted blind it bears no booked figure', () => {
    const blind = {
      ...facts,
      blind: true,
      places: [{ code: 'ENN', name: 'Yard', lines: [line('LK', { booked: null })] }],
    };
    expect(rows(blind)[0]).not.toContain('book');
    expect(wordsOf(countSheet(blind).tree)).not.toContain('142');
  });

  test('for two counters it has a row each, and each signs with the time', () => {
    const words = wordsOf(countSheet({ ...facts, counters: 2 }).tree);
    expect(rows({ ...facts, counters: 2 }).filter((cells) => cells[3] === '2')).toHaveLength(5);
    expect(words).toContain('counter 1 from (time) until (time) signature counter 2');
  });

  test('says what tells look-alikes apart, in the units asked for, and whose mark to look at', () => {
    expect(wordsOf(countSheet(facts).tree)).toContain('width: 2\'-6" against 3\'-0"; count the ribs');
    expect(wordsOf(countSheet({ ...facts, units: 'metric' }).tree)).toContain(
      'width: 762 mm against 914.4 mm',
    );
    expect(wordsOf(countSheet(facts).tree)).toContain('R8: OURS and TFH');
  });

  test('lists what moves meanwhile, with room for more, and the cautions', () => {
    const moves = rowsOf(countSheet(facts).tree, 'count-moves');
    expect(moves[1]).toEqual(['2026-03-10 16:20', '16', 'LK', 'ENN', 'TB']);
    expect(moves.length).toBeGreaterThan(4);
    expect(wordsOf(countSheet(facts).tree)).toContain('nobody counts under a suspended load');
  });
});

const boxes = (of: SheetPair) => withTag(pairPicture(of, sheetUnits('us'))!, 'rect');

describe('the picture of a pair', () => {
  test('is to one scale: 30 in against 36 in, of one height', () => {
    const [one, other] = boxes(pair);
    expect(numberOf(other!, 'width') / numberOf(one!, 'width')).toBeCloseTo(36 / 30, 2);
    expect(numberOf(other!, 'height')).toBe(numberOf(one!, 'height'));
    // Beside each other, not one over the other.
    expect(numberOf(other!, 'x')).toBeGreaterThan(numberOf(one!, 'x') + numberOf(one!, 'width'));
  });

  test('rails begin at one line, 8 ft under 10 ft', () => {
    const [one, other] = boxes({ ...pair, one: rail('R10', 10), other: rail('R8', 8) });
    expect(numberOf(other!, 'width') / numberOf(one!, 'width')).toBeCloseTo(0.8, 2);
    expect(numberOf(other!, 'x')).toBe(numberOf(one!, 'x'));
    expect(numberOf(other!, 'y')).toBeGreaterThan(numberOf(one!, 'y') + numberOf(one!, 'height'));
  });

  test('there is none where a size is not known', () => {
    expect(pairPicture({ ...pair, one: { ...rail('LK', 1), lengthNm: null } }, sheetUnits('us'))).toBeNull();
  });
});
