// What a cell of a rule table or of the catalogue can hold: how its value is printed, and how a text becomes
// one. Whether a value makes sense is the core's to say; here only whether it can be read.
import { type Answer, answer, never, refuse } from '../../../core/answer.ts';
import { formatLength, parseLength, type UnitSystem } from '../../../core/units/length.ts';
import { formatPressure, parsePressure } from '../../../core/units/pressure.ts';
import { formatWeight, parseWeight } from '../../../core/units/weight.ts';

/** A word that is kept, and the words that stand for it. */
export type Word = readonly [value: string, words: string];

export type CellKind =
  | {
      readonly as:
        | 'text'
        | 'code'
        | 'length'
        | 'weight'
        | 'pressure'
        | 'whole'
        | 'decimal'
        | 'money'
        | 'yes-no';
    }
  /** Lengths parted by semicolons; points are pairs of them, "18 in x 2 ft". */
  | { readonly as: 'lengths' | 'points' }
  | { readonly as: 'word' | 'words'; readonly options: readonly Word[] };

export const yesNo: readonly Word[] = [
  ['yes', 'yes'],
  ['no', 'no'],
];

const most = 1_000_000;

export function printValue(kind: CellKind, value: unknown, system: UnitSystem): string {
  if (value === undefined || value === null) return '';
  switch (kind.as) {
    case 'length':
      return formatLength(Number(value), system);
    // Commas between thousands are for reading only; what stands in a cell can be typed again.
    case 'weight':
      return formatWeight(Number(value), system).replaceAll(',', '');
    case 'pressure':
      return formatPressure(Number(value), system).replaceAll(',', '');
    case 'lengths':
      return (value as readonly number[]).map((one) => formatLength(one, system)).join('; ');
    case 'points':
      return (value as readonly (readonly [number, number])[])
        .map((point) => point.map((one) => formatLength(one, system)).join(' x '))
        .join('; ');
    case 'money':
      return (Number(value) / 100).toFixed(2);
    case 'yes-no':
      return value === true ? 'yes' : 'no';
    case 'word':
      return kind.options.find(([word]) => word === value)?.[1] ?? plainText(value);
    case 'words':
      return (value as readonly string[])
        .map((one) => kind.options.find(([word]) => word === one)?.[1] ?? one)
        .join(', ');
    case 'text':
    case 'code':
    case 'whole':
    case 'decimal':
      return plainText(value);
    default:
      return never(kind);
  }
}

function plainText(value: unknown): string {
  return `${value as string | number}`;
}

/** The value of a text; undefined for an empty one. */
export function readValue(kind: CellKind, text: string): Answer<unknown> {
  const plain = text.trim();
  if (plain === '') return answer(undefined);
  switch (kind.as) {
    case 'text':
    case 'code':
      return answer(plain);
    case 'length':
      return parseLength(plain);
    case 'weight':
      return parseWeight(plain);
    case 'pressure':
      return parsePressure(plain);
    case 'whole':
      return /^\d{1,7}$/u.test(plain) && Number(plain) <= most
        ? answer(Number(plain))
        : unreadable(plain, 'a whole number', 'Maybe write it like 2.');
    case 'decimal':
      return /^\d{1,6}(?:[.,]\d{1,4})?$/u.test(plain)
        ? answer(Number(plain.replace(',', '.')))
        : unreadable(plain, 'a number', 'Maybe write it like 60 or 0.75.');
    case 'money':
      return /^\d{1,9}(?:[.,]\d{1,2})?$/u.test(plain)
        ? answer(Math.round(Number(plain.replace(',', '.')) * 100))
        : unreadable(plain, 'an amount', 'Maybe write it like 640 or 17.50.');
    case 'yes-no': {
      const read = oneWord(yesNo, plain);
      return read.ok ? answer(read.value === 'yes') : read;
    }
    case 'lengths':
      return each(plain.split(';'), parseLength);
    case 'points':
      return each(plain.split(';'), readPoint);
    case 'word':
      return oneWord(kind.options, plain);
    case 'words':
      return each(plain.split(/[,;]| and | or /u), (one) => oneWord(kind.options, one));
    default:
      return never(kind);
  }
}

/**
 * A number typed or pasted without a unit takes the unit that stands over its column, and says so from then
 * on: inches or millimetres, pounds or kilograms, psf or kPa.
 */
export function withUnit(kind: CellKind, text: string, system: UnitSystem): string {
  const unit = unitOf(kind, system);
  if (unit === undefined) return text.trim();
  return text.trim().replaceAll(/[^;]+/gu, (part) =>
    part
      .split(/(?<= )[x×](?= )/u)
      .map((one) => (isBare(one.trim()) ? one.replace(one.trim(), `${one.trim()} ${unit}`) : one))
      .join('x'),
  );
}

/** The unit of bare numbers in a column, for its head. */
export function unitOf(kind: CellKind, system: UnitSystem): string | undefined {
  const us = system === 'us';
  if (kind.as === 'length' || kind.as === 'lengths' || kind.as === 'points') return us ? 'in' : 'mm';
  if (kind.as === 'weight') return us ? 'lb' : 'kg';
  if (kind.as === 'pressure') return us ? 'psf' : 'kPa';
  return undefined;
}

function isBare(text: string): boolean {
  return /^(?:\d+(?:\.\d+)?|\d+[ -]\d+\/\d+|\d+\/\d+|\.\d+)$/u.test(text);
}

function readPoint(text: string): Answer<[number, number]> {
  const [x, y, ...rest] = text.split(/\s[x×]\s/u);
  if (x === undefined || y === undefined || rest.length > 0)
    return unreadable(text.trim(), 'a place', 'Maybe write it like 18 in x 24 in, along and up.');
  const along = parseLength(x.trim());
  if (!along.ok) return along;
  const up = parseLength(y.trim());
  return up.ok ? answer([along.value, up.value]) : up;
}

function each<T>(parts: readonly string[], read: (text: string) => Answer<T>): Answer<T[]> {
  const values: T[] = [];
  for (const part of parts.map((one) => one.trim()).filter(Boolean)) {
    const one = read(part);
    if (!one.ok) return one;
    values.push(one.value);
  }
  return answer(values);
}

/** A word by its beginning, as long as only one of the options begins so. */
function oneWord(options: readonly Word[], text: string): Answer<string> {
  const typed = text.trim().toLowerCase().replaceAll('-', ' ');
  const exact = options.filter(([value, words]) => value === text.trim() || words.toLowerCase() === typed);
  const found = exact.length > 0 ? exact : options.filter(([, words]) => words.startsWith(typed));
  const [one, ...more] = found;
  if (one !== undefined && more.length === 0) return answer(one[0]);
  const list = options.map(([, words]) => words).join(', ');
  return refuse('word-unknown', `"${text.trim()}" is none of the words that can stand here.`, {
    hint: `Maybe one of: ${list}.`,
  });
}

function unreadable(text: string, wanted: string, hint: string): Answer<never> {
  return refuse('cell-unreadable', `"${text}" cannot be read as ${wanted}.`, { hint });
}
