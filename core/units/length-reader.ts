// Reads many lengths, weights and pressures of one document and remembers the first that is refused, with its place, so
// that a reader of a large document need not ask after every number.
import type { Answer, Refusal } from '../answer.ts';
import { refuse } from '../answer.ts';
import { formatLengthMetric, parseLength } from './length.ts';
import { pressureFromKpa } from './pressure.ts';
import { parseWeight } from './weight.ts';

export type LengthText = string | number;

export interface LengthReader {
  /** Whole nanometres, any sign; 0 where refused. */
  readonly any: (value: LengthText, field: string) => number;
  readonly notNegative: (value: LengthText, field: string) => number;
  readonly positive: (value: LengthText, field: string) => number;
  /** Kilograms to whole grams, halves up. */
  readonly weight: (kilograms: number, field: string) => number;
  /** Kilopascals over zero to whole pascals, halves up. */
  readonly pressure: (kilopascals: number, field: string) => number;
  /** The first refusal met so far. */
  readonly refusal: () => { readonly ok: false; readonly error: Refusal } | undefined;
}

export function lengthReader(): LengthReader {
  let first: { readonly ok: false; readonly error: Refusal } | undefined;
  function take(read: Answer<number>, field: string, least: number): number {
    if (!read.ok) {
      first ??= { ok: false, error: { ...read.error, field } };
      return 0;
    }
    if (read.value < least) {
      const [code, wanted] =
        least === 0 ? ['length-negative', 'not be negative'] : ['length-not-positive', 'be over zero'];
      const shown = formatLengthMetric(read.value);
      first ??= refuse(code ?? 'length-negative', `${field} is ${shown}, it must ${wanted}.`, { field });
    }
    return read.value;
  }
  return {
    any: (value, field) => take(parseLength(value), field, Number.NEGATIVE_INFINITY),
    notNegative: (value, field) => take(parseLength(value), field, 0),
    positive: (value, field) => take(parseLength(value), field, 1),
    weight: (kilograms, field) => take(parseWeight(kilograms), field, Number.NEGATIVE_INFINITY),
    pressure: (kilopascals, field) => take(pressureFromKpa(kilopascals), field, Number.NEGATIVE_INFINITY),
    refusal: () => first,
  };
}
