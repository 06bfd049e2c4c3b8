// Weights: whole grams inside, each piece rounded half up before it is multiplied, so that two sums of the
// same pieces are always the same.
import { type Answer, answer, refuse } from '../answer.ts';
import { decimalRatio, numberRatio, type Ratio, roundHalfAway, safeNumber } from './exact.ts';
import type { UnitSystem } from './length-format.ts';

/** 1 lb is 0.45359237 kg by definition (international yard and pound agreement, 1959). */
const gramsPerUnit: Readonly<Record<'g' | 'kg' | 't' | 'lb', Ratio>> = {
  g: { over: 1n, under: 1n },
  kg: { over: 1000n, under: 1n },
  t: { over: 1_000_000n, under: 1n },
  lb: { over: 45_359_237n, under: 100_000n },
};

const hint = 'Maybe write it like 200 lb or 90.5 kg.';

/**
 * Reads a weight: a number is kilograms, a text carries its unit (lb, lbs, kg, g, t). Answers whole grams,
 * halves up. Refuses: weight-without-unit, weight-ambiguous, weight-unreadable, weight-negative, weight-out-of-range.
 */
export function parseWeight(input: string | number): Answer<number> {
  if (typeof input === 'number') return grams(numberRatio(input), 'kg', `${input} kg`);
  const text = input.trim().toLowerCase();
  if (/,\d{3}(?!\d)/.test(text)) {
    return refuse(
      'weight-ambiguous',
      `"${input}" can be read in two ways: the comma may part thousands or decimals.`,
      { hint },
    );
  }
  const parts = /^(-?(?:\d+(?:[.,]\d+)?|[.,]\d+)) ?([a-z]*)\.?$/.exec(text);
  if (parts === null || text.length > 40) return unreadable(input);
  const [, value = '', name = ''] = parts;
  if (name === '') return refuse('weight-without-unit', `"${input}" is a weight without a unit.`, { hint });
  const unit = name === 'lbs' ? 'lb' : name;
  if (unit !== 'g' && unit !== 'kg' && unit !== 't' && unit !== 'lb') return unreadable(input);
  return grams(decimalRatio(value.replace(',', '.')), unit, input);
}

function grams(value: Ratio | undefined, unit: keyof typeof gramsPerUnit, shown: string): Answer<number> {
  if (value === undefined) return unreadable(shown);
  if (value.over < 0n) return refuse('weight-negative', `The weight ${shown} is negative.`, { hint });
  const scale = gramsPerUnit[unit];
  const rounded = safeNumber(roundHalfAway(value.over * scale.over, value.under * scale.under));
  if (rounded !== undefined) return answer(rounded);
  return refuse('weight-out-of-range', `The weight ${shown} is more than is kept exactly.`, { hint });
}

function unreadable(shown: string): Answer<number> {
  return refuse('weight-unreadable', `"${shown}" cannot be read as a weight.`, { hint });
}

/** Grams as a number of kilograms, for answers whose key ends in `Kg`. */
export function weightKg(weightGrams: number): number {
  return weightGrams / 1000;
}

/** "1,621 lb" (whole pounds, tenths under 100 lb) or "735.3 kg" (tenths). Whole grams in. */
export function formatWeight(weightGrams: number, system: UnitSystem): string {
  if (system === 'metric') return `${groupDigits(tenths(BigInt(weightGrams), 1000n))} kg`;
  const [over, under] = [BigInt(weightGrams) * 100_000n, 45_359_237n];
  const pounds = roundHalfAway(over, under);
  return `${pounds >= 100n || pounds <= -100n ? groupDigits(pounds.toString()) : tenths(over, under)} lb`;
}

function tenths(over: bigint, under: bigint): string {
  const rounded = roundHalfAway(over * 10n, under);
  const size = rounded < 0n ? -rounded : rounded;
  const point = size % 10n === 0n ? '' : `.${size % 10n}`;
  return `${rounded < 0n ? '-' : ''}${size / 10n}${point}`;
}

/** "12345.6" as "12,345.6": commas between thousands in print only, never read back. */
export function groupDigits(digits: string): string {
  const [whole = '', ...rest] = digits.split('.');
  return [whole.replaceAll(/\B(?=(\d{3})+$)/g, ','), ...rest].join('.');
}
