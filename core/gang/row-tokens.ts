// Reads the text of a design typed as rows into widths and heights, each with its place in the text.
import { type Answer, answer, refuse } from '../answer.ts';
import { parseLength, type UnitSystem } from '../units/length.ts';

export interface RowToken {
  readonly kind: 'upright' | 'on-side' | 'filler';
  readonly lengthNm: number;
  /** How many of it stand side by side. */
  readonly times: number;
  readonly text: string;
  /** Its first character, from 0. */
  readonly at: number;
}

/** Rows that share their widths, from the bottom. */
export interface RowBlock {
  readonly widths: readonly RowToken[];
  readonly heights: readonly RowToken[];
}

// Feet are joined to inches by a dash, by nothing, or by a space where the inches carry their own mark:
// so 3' 36 is two widths and 3'-6 or 3' 6" is one.
const fraction = String.raw`(?:\d+[/⁄∕]\d+|[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])`;
const decimal = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const amount = String.raw`(?:\d+(?: +| *[-‐-―−] *)\d+[/⁄∕]\d+|\d* *[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]|${fraction}|${decimal})`;
const feetMark = String.raw`(?:feet|foot|ft\.?|['’‘′])(?!['’′])`;
const inchMark = String.raw`(?:inches|inch|in\.?|["”“″]|''|’’|′′)`;
const feetInches = String.raw`\d+ ?${feetMark}(?: *[-‐-―−] *${amount} ?${inchMark}?| *${amount} ?${inchMark}|${amount})`;
const unit = String.raw`(?:millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?|mm|cm|m|${inchMark}|${feetMark})`;
const token = new RegExp(
  String.raw`(?:(?<times>\d{1,4}) ?[x×] ?)?(?<filler>f ?)?(?<size>${feetInches}|(?<bare>${amount})(?<unit> ?${unit})?)(?<side>s)?(?=[\s|+/]|$)`,
  'iuy',
);

/** Refuses with field 'text' and the place what is no token, and blocks without widths or heights. */
export function readRowTokens(text: string, units: UnitSystem): Answer<readonly RowBlock[]> {
  const blocks: RowBlock[] = [];
  let widths: RowToken[] = [];
  let heights: RowToken[] = [];
  let inHeights = false;
  let plusAt = -1;
  let at = 0;
  for (;;) {
    while (/\s/u.test(text[at] ?? '')) at += 1;
    const sign = text[at];
    if (sign === undefined || sign === '/') {
      if (plusAt >= 0) return misplaced('+', plusAt, 'A height belongs behind it.');
      if (widths.length === 0) return empty('widths', at);
      if (heights.length === 0) return empty('heights', at);
      blocks.push({ widths, heights });
      if (sign === undefined) return answer(blocks);
      [widths, heights, inHeights] = [[], [], false];
      at += 1;
      continue;
    }
    if (sign === '|') {
      if (inHeights) return misplaced('|', at, 'Rows that differ are parted by " / ".');
      inHeights = true;
      at += 1;
      continue;
    }
    if (sign === '+') {
      if (heights.length === 0 || plusAt >= 0)
        return misplaced('+', at, 'It stands between two heights, behind the |.');
      plusAt = at;
      at += 1;
      continue;
    }
    const read = readToken(text, at, inHeights ? 'height' : 'width', units);
    if (!read.ok) return read;
    if (inHeights && heights.length > 0 && plusAt < 0)
      return misplaced(read.value.text, at, 'Heights are joined by +, rows that differ parted by " / ".');
    (inHeights ? heights : widths).push(read.value);
    plusAt = -1;
    at += read.value.text.length;
  }
}

function readToken(text: string, at: number, what: 'width' | 'height', units: UnitSystem): Answer<RowToken> {
  token.lastIndex = at;
  const match = token.exec(text);
  const { times = '1', filler, size = '', bare, unit: named, side } = match?.groups ?? {};
  const written = match?.[0] ?? /^[^\s|+]+/u.exec(text.slice(at))?.[0] ?? '';
  const place = `"${written}" at character ${at + 1}`;
  if (match === null)
    return refuse('row-unreadable', `${place} is no ${what}.`, {
      field: 'text',
      hint:
        what === 'width'
          ? 'Maybe a width such as 36, 3x36 for three of them, f4 for a filler, or 96s for a panel on its side.'
          : 'Maybe a height such as 8, 8+4 for two rows, or 96 in.',
    });
  if (what === 'height' && (filler !== undefined || side !== undefined || times !== '1'))
    return refuse('row-unreadable', `${place} is no height.`, {
      field: 'text',
      hint: 'Maybe heights are joined by +, such as 8+4.',
    });
  if (filler !== undefined && side !== undefined)
    return refuse('row-unreadable', `${place} is a filler and a panel on its side at once.`, {
      field: 'text',
    });
  const isBare = bare !== undefined && named === undefined;
  if (isBare && units === 'metric' && /\D/u.test(bare))
    return refuse('row-without-unit', `${place} has decimals and no unit; a plain ${what} is millimetres.`, {
      field: 'text',
      hint: `Maybe ${bare} m was meant, or ${bare} mm.`,
    });
  const plainUnit = units === 'metric' ? 'mm' : what === 'width' ? 'in' : 'ft';
  const read = parseLength(isBare ? `${bare} ${plainUnit}` : size);
  if (!read.ok) {
    const { code, message, ...more } = read.error;
    return refuse(code, `${place}: ${message}`, { ...more, field: 'text' });
  }
  if (read.value <= 0 || Number(times) === 0)
    return refuse('row-nothing', `${place} is nothing.`, { field: 'text' });
  const kind = filler !== undefined ? 'filler' : side !== undefined ? 'on-side' : 'upright';
  return answer({ kind, lengthNm: read.value, times: Number(times), text: written, at });
}

function misplaced(sign: string, at: number, why: string): Answer<never> {
  return refuse('row-unreadable', `"${sign}" at character ${at + 1} does not belong there. ${why}`, {
    field: 'text',
    hint: 'Maybe like 36 36 24 36 | 8+4.',
  });
}

function empty(what: 'widths' | 'heights', at: number): Answer<never> {
  return refuse('row-empty', `There are no ${what} before character ${at + 1}.`, {
    field: 'text',
    hint: 'Maybe like 36 36 24 36 | 8+4: widths, then heights from the bottom.',
  });
}
