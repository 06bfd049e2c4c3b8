// How single cells are read: each reader answers the value, or in plain words what was wanted. Nothing is
// guessed: where a text can be read in two ways, the answer says how to write it.
import { Temporal } from 'temporal-polyfill';
import { parseLength } from '../units/length.ts';
import { parsePressure } from '../units/pressure.ts';
import { parseWeight } from '../units/weight.ts';
import { maybe } from './nearest.ts';

export type Reading<T> = { readonly value: T } | { readonly wanted: string };
/** `unit` is what the heading said for bare numbers of the column, null where it said nothing. */
export type Read<T> = (text: string, unit: string | null) => Reading<T>;

const codeLength = 40;

export const readCode: Read<string> = (text) =>
  text.length <= codeLength && !/[\n;@,]|^__proto__$/u.test(text)
    ? { value: text }
    : { wanted: `a code of at most ${codeLength} characters on one line, without ; @ or a comma` };

/** @param most characters */
export function readText(most: number): Read<string> {
  return (text) =>
    text.length <= most ? { value: text } : { wanted: `a text of at most ${most} characters` };
}

/** One of the words, in any case, spaces and dashes alike. */
export function readWord<const T extends string>(words: readonly T[]): Read<T> {
  return (text) => {
    const found = words.find((word) => wordSign(word) === wordSign(text));
    return found === undefined
      ? { wanted: `one of ${words.join(', ')}${maybe(text, words)}` }
      : { value: found };
  };
}

function wordSign(text: string): string {
  return text.toLowerCase().replaceAll(/[\s_-]+/gu, ' ');
}

/**
 * A code that must be known; `what` names the kind of thing in the refusal. A file with hundreds of unknown
 * codes is another file than was meant: from there on the nearest is no longer looked for.
 */
export function readKnown(what: string, known: Iterable<string>): Read<string> {
  const codes = new Set(known);
  let hints = 200;
  return (text) => {
    if (codes.has(text)) return { value: text };
    hints -= 1;
    return { wanted: `a known ${what}${hints < 0 ? '' : maybe(text, codes)}` };
  };
}

/** Pieces: a whole number. Notes, bundles and estimates beside it are refused, not dropped. */
export function readQuantity(least: 0 | 1): Read<number> {
  return (text) => {
    if (/^\d{1,9}$/u.test(text) && Number(text) >= least) return { value: Number(text) };
    const whole = `a whole number of pieces, ${least} or more`;
    if (/^[-\u2212]/u.test(text) || text === '0') return { wanted: whole };
    if (/^\d+\s*\(.*\)$/u.test(text)) return { wanted: `${whole}; the note apart, in the column remark` };
    if (/^[~≈]|about|\?/iu.test(text))
      return { wanted: `${whole}; whether it is estimated is said in the column basis` };
    if (/^\d+\s*\+\s*\d+$/u.test(text)) return { wanted: `${whole}; two figures on two rows` };
    if (/^\d+\s*[a-z]+\.?$/iu.test(text)) return { wanted: `${whole}, counted singly and without a unit` };
    if (/^\d{1,3}([.,]\d{3})+$/u.test(text)) return { wanted: `${whole}, without marks between thousands` };
    return { wanted: whole };
  };
}

/** A number of hours, from 0 to 10 000: `2`, `2.5`, `2,5`, `2 h`. A comma and three digits can be read in two ways. */
export const readHours: Read<number> = (text) => {
  if (/^\d+,\d{3}(?!\d)/u.test(text))
    return { wanted: 'hours from 0 to 10000: a comma before three digits is thousands to some' };
  const [, digits] = /^(\d{1,5}(?:[.,]\d{1,4})?)\s*(?:h|hours?)?$/iu.exec(text) ?? [];
  const hours = Number(digits?.replace(',', '.'));
  return digits !== undefined && hours <= 10_000
    ? { value: hours }
    : { wanted: 'hours from 0 to 10000, such as 2 or 2.5' };
};

/** @param least the smallest whole number that is accepted */
export function readWhole(least: number, most: number): Read<number> {
  return (text) =>
    /^\d{1,9}$/u.test(text) && Number(text) >= least && Number(text) <= most
      ? { value: Number(text) }
      : { wanted: `a whole number from ${least} to ${most}` };
}

/** A decimal number over zero (or not under it) and at most `most`: 60, 7.5, 7,5. */
export function readDecimal(from: 'zero' | 'over zero', most: number): Read<number> {
  return (text) => {
    const value = /^\d{1,9}(?:[.,]\d{1,4})?$/u.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
    return (from === 'zero' ? value >= 0 : value > 0) && value <= most
      ? { value }
      : {
          wanted: `a number ${from === 'zero' ? 'from zero' : 'over zero'} to ${most}, such as ${Math.min(60, most)}`,
        };
  };
}

/** An amount of money in whole minor units, two decimals at most: `0.35`, `$12`, `12,50`. */
export const readMoney: Read<number> = (text) => {
  const [, whole, cents = ''] = /^[$€£]?\s*(\d{1,9})(?:[.,](\d{1,2}))?$/u.exec(text) ?? [];
  return whole === undefined
    ? { wanted: 'an amount such as 0.35 or 1250.00: at most two decimals, no marks between thousands' }
    : { value: Number(whole) * 100 + Number(cents.padEnd(2, '0')) };
};

export const readYesNo: Read<boolean> = (text) => {
  const word = text.toLowerCase();
  if (['yes', 'y', 'true', '1', 'x'].includes(word)) return { value: true };
  if (['no', 'n', 'false', '0'].includes(word)) return { value: false };
  return { wanted: 'yes or no' };
};

/** Whole nanometres. A bare number takes the unit of the heading, and is refused where that has none. */
export function readLength(from: 'any' | 'zero' | 'positive'): Read<number> {
  return (text, unit) => {
    const wanted = lengthWords(text, unit);
    // Nothing is nothing in every unit.
    if (/^0(?:\.0+)?$/u.test(text) && from !== 'positive') return { value: 0 };
    const bare = /^[-\u2212]?[\d.,\s/½¼¾⅛⅜⅝⅞-]+$/u.test(text);
    const read = parseLength(bare && unit !== null ? `${text} ${unit}` : text);
    if (!read.ok) return { wanted };
    if (from === 'zero' && read.value < 0) return { wanted: `${wanted}, not below zero` };
    if (from === 'positive' && read.value <= 0) return { wanted: `${wanted}, more than zero` };
    return read;
  };
}

function lengthWords(text: string, unit: string | null): string {
  if (looksLikeDate(text)) return 'a length. Maybe a spreadsheet turned a size into a date';
  const hint = /^\d+ ?[-\u2010-\u2015] ?\d+$/u.test(text)
    ? `. Maybe ${text.replace(/ ?[-\u2010-\u2015] ?/u, "'-")}" is meant`
    : '';
  return unit === null
    ? `a length with its unit, such as 12'-6 1/2", 18 in or 2700 mm${hint}`
    : `a number of ${unit}, or a length with its own unit, such as 12'-6 1/2" or 2700 mm${hint}`;
}

function looksLikeDate(text: string): boolean {
  const [, one, other] = /^(\d{1,2})\/(\d{1,2})(?:\/\d{2,4})?$/u.exec(text) ?? [];
  if (one !== undefined && other !== undefined)
    return text.split('/').length > 2 || Number(one) >= Number(other);
  return /^\d{1,2}[- ](jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/iu.test(text);
}

/** Whole grams. A bare number takes the unit of the heading. */
export const readWeight: Read<number> = (text, unit) => {
  const read = parseWeight(/^[\d.,]+$/u.test(text) && unit !== null ? `${text} ${unit}` : text);
  if (read.ok) return read;
  return {
    wanted:
      unit === null
        ? 'a weight with its unit, such as 200 lb or 90.5 kg'
        : `a weight in ${unit} or with its own unit, such as 200 lb or 90.5 kg`,
  };
};

/** Whole pascals over zero. A bare number takes the unit of the heading. */
export const readPressure: Read<number> = (text, unit) => {
  const read = parsePressure(/^[\d.,]+$/u.test(text) && unit !== null ? `${text} ${unit}` : text);
  if (read.ok && read.value > 0) return read;
  const own = 'its own unit, such as 1250 psf or 60 kPa';
  return {
    wanted:
      unit === null ? `a pressure over zero with ${own}` : `a pressure over zero in ${unit} or with ${own}`,
  };
};

/** YYYY-MM-DD and nothing else: the order of day and month is never guessed. */
export const readDate: Read<string> = (text) => {
  const date = /^\d{4}-\d{2}-\d{2}$/u.test(text) ? dateOrNull(text) : null;
  if (date !== null) return { value: date };
  // Spreadsheets count days from 30 December 1899.
  const serial = /^4\d{4}$/u.test(text)
    ? `. Maybe ${Temporal.PlainDate.from('1899-12-30')
        .add({ days: Number(text) })
        .toString()} is meant, the day that spreadsheets number ${text}`
    : '';
  return { wanted: `a date as YYYY-MM-DD, such as 2026-03-02${serial}` };
};

function dateOrNull(text: string): string | null {
  try {
    return Temporal.PlainDate.from(text).toString();
  } catch {
    return null;
  }
}

/** Several values in one cell, parted by semicolons; empty parts are passed over. */
export function readList<T>(read: Read<T>, most: number): Read<readonly T[]> {
  return (text, unit) => {
    const parts = text
      .split(/[;\n]/u)
      .map((part) => part.trim())
      .filter((part) => part !== '');
    if (parts.length > most) return { wanted: `at most ${most} entries parted by semicolons` };
    const values: T[] = [];
    for (const part of parts) {
      const reading = read(part, unit);
      if ('wanted' in reading)
        return parts.length === 1 ? reading : { wanted: `${reading.wanted}, in place of "${part}"` };
      values.push(reading.value);
    }
    return { value: values };
  };
}
