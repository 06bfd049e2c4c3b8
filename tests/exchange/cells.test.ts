// What people type into cells, read or refused. The texts are those of the trade (sizes turned to dates by
// spreadsheets, notes in quantity cells); common practice, no source. Serial numbers of days: 46085 is 4 March
// 2026 counted from 30 December 1899, as spreadsheets count. Clock changes by the IANA time zone database:
// New York leaves out 02:00-03:00 on 8 March 2026 and repeats 01:00-02:00 on 1 November 2026.
import { describe, expect, test } from 'vitest';
import {
  readCode,
  readDate,
  readHours,
  readLength,
  readMoney,
  readQuantity,
  type Reading,
  readWeight,
  readYesNo,
} from '../../core/exchange/cells.ts';
import { readInstant } from '../../core/exchange/local-time.ts';
import { nearest } from '../../core/exchange/nearest.ts';

const wanted = (reading: Reading<unknown>): string => ('wanted' in reading ? reading.wanted : 'nothing');

describe('A length', () => {
  const read = readLength('positive');
  test.each([
    [`12'-6"`, null, 3_810_000_000],
    [`12' 6"`, null, 3_810_000_000],
    ["12'6", null, 3_810_000_000],
    ['3\'-0½"', null, 927_100_000],
    ['3’-0 5/8”', null, 930_275_000],
    ['2400', 'mm', 2_400_000_000],
    ['2,4', 'm', 2_400_000_000],
    ['2.40m', null, 2_400_000_000],
    ['240cm', 'in', 2_400_000_000],
    ['36', 'in', 914_400_000],
    ['3/4', 'in', 19_050_000],
    ['6 1/2', 'in', 165_100_000],
  ])('%s under a heading in %s is %i nm', (text, unit, value) => {
    expect(read(text, unit)).toEqual({ ok: true, value });
  });

  test.each([
    ['12-6', null, `Maybe 12'-6" is meant`],
    ['36', null, 'a length with its unit'],
    ['12/6', 'in', 'turned a size into a date'],
    ['12/6', null, 'turned a size into a date'],
    ['3/4/26', 'in', 'turned a size into a date'],
    ['4-Mar', 'in', 'turned a size into a date'],
    ['8x3', 'ft', 'a number of ft'],
    ['1,250', 'mm', 'a number of mm'],
    ['-3', 'in', 'more than zero'],
    ['0', 'in', 'more than zero'],
    ['thirty', null, 'a length with its unit'],
  ])('%s under a heading in %s is refused: %s', (text, unit, words) => {
    expect(wanted(read(text, unit))).toContain(words);
  });

  test('of 0 needs no unit', () => {
    expect(readLength('zero')('0', null)).toEqual({ value: 0 });
  });
});

describe('A quantity', () => {
  const read = readQuantity(1);
  test.each([
    ['40 (2 bent)', 'the note apart, in the column remark'],
    ['40+6', 'two figures on two rows'],
    ['~40', 'the column basis'],
    ['about 20', 'the column basis'],
    ['2 bdl', 'counted singly'],
    ['1,250', 'without marks between thousands'],
    ['-4', 'a whole number of pieces, 1 or more'],
    ['0', 'a whole number of pieces, 1 or more'],
    ['2.5', 'a whole number of pieces'],
    ['1e3', 'a whole number of pieces'],
  ])('%s is refused: %s', (text, words) => {
    expect(wanted(read(text, null))).toContain(words);
  });
  test('40 is 40', () => expect(read('40', null)).toEqual({ value: 40 }));
});

describe('A date', () => {
  test.each([
    ['46085', '2026-03-04'],
    ['3/4/26', 'YYYY-MM-DD'],
    ['4-Mar', 'YYYY-MM-DD'],
    ['2026-02-30', 'YYYY-MM-DD'],
    ['2026-3-4', 'YYYY-MM-DD'],
  ])('%s is refused, naming %s', (text, words) => expect(wanted(readDate(text, null))).toContain(words));
  test('2026-03-04 is itself', () => expect(readDate('2026-03-04', null)).toEqual({ value: '2026-03-04' }));
});

describe('A local time', () => {
  const read = readInstant('America/New_York');
  test.each([
    ['2026-03-02 07:00', '2026-03-02T07:00:00-05:00'],
    ['2026-03-09 7:00', '2026-03-09T07:00:00-04:00'],
    ['2026-03-09T07:00', '2026-03-09T07:00:00-04:00'],
    ['2026-11-01T01:30:00-05:00', '2026-11-01T01:30:00-05:00'],
    ['2026-03-02 12:00Z', '2026-03-02T07:00:00-05:00'],
  ])('%s is %s', (text, value) => expect(read(text, null)).toEqual({ value }));

  test('02:30 on 8 March 2026 is refused, since the clock passes over it', () => {
    expect(wanted(read('2026-03-08 02:30', null))).toContain('passes over 02:30');
    expect(wanted(read('2026-03-08 02:30', null))).toContain('2026-03-08T03:30:00-04:00');
  });
  test('01:30 on 1 November 2026 is refused, since the clock shows it twice', () => {
    expect(wanted(read('2026-11-01 01:30', null))).toContain(
      'Maybe 2026-11-01T01:30:00-04:00 or 2026-11-01T01:30:00-05:00 is meant',
    );
  });
  test('25:00, a date alone and a time without a zone are refused', () => {
    expect(wanted(read('2026-03-02 25:00', null))).toContain('YYYY-MM-DD HH:MM');
    expect(wanted(read('2026-03-02', null))).toContain('YYYY-MM-DD HH:MM');
    expect(wanted(readInstant(null)('2026-03-02 07:00', null))).toContain('with its offset');
  });
});

describe('Other cells', () => {
  test('weights: 200 lb is 90718 g, 90.5 under kg is 90500 g, 200 alone is refused', () => {
    expect(readWeight('200 lb', null)).toMatchObject({ value: 90_718 });
    expect(readWeight('90.5', 'kg')).toMatchObject({ value: 90_500 });
    expect(wanted(readWeight('200', null))).toContain('a weight with its unit');
  });
  test('money: $0.35 is 35, 12,5 is 1250, 1,250 and 0.345 are refused', () => {
    expect(readMoney('$0.35', null)).toEqual({ value: 35 });
    expect(readMoney('12,5', null)).toEqual({ value: 1250 });
    for (const text of ['1,250', '0.345', '-1', 'free'])
      expect(wanted(readMoney(text, null))).toContain('an amount');
  });
  test('hours: 2.5 and 2,5 h are 2.5, 10001 and -1 are refused, and 1,250, which may be either', () => {
    expect(readHours('2.5', null)).toEqual({ value: 2.5 });
    expect(readHours('2,5 h', null)).toEqual({ value: 2.5 });
    for (const text of ['10001', '-1', '2:30', '1,250', '12,345 h'])
      expect(wanted(readHours(text, null))).toContain('hours from 0');
  });
  test('yes and no in any case; a code without marks that part lists', () => {
    expect(readYesNo('Yes', null)).toEqual({ value: true });
    expect(wanted(readYesNo('perhaps', null))).toBe('yes or no');
    expect(wanted(readCode('A;B', null))).toContain('a code of at most 40');
    expect(wanted(readCode('__proto__', null))).toContain('a code of at most 40');
  });
  test('the nearest of P836 and P824 to "p 836" is P836, to "P835" P836, to "R12" none', () => {
    const known = ['P836', 'P824'];
    expect(nearest('p 836', known)).toBe('P836');
    expect(nearest('R12', known)).toBeUndefined();
    expect(nearest('P835', known)).toBe('P836');
  });
});
