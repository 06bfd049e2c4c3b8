// Radii, weights and winds as they are typed: a bare number has the reader's unit.
import { type Answer, answer, refuse } from '../../../../core/answer.ts';
import { parseLength, type UnitSystem } from '../../../../core/units/length.ts';
import { parseWeight } from '../../../../core/units/weight.ts';

/** Over zero; a bare number is feet or metres: radii and legs are spoken of so. */
export function readRadius(text: string, system: UnitSystem): Answer<number> {
  const bare = /^[\d.,]+$/u.test(text);
  const read = parseLength(bare ? `${text} ${system === 'us' ? 'ft' : 'm'}` : text);
  if (!read.ok || read.value > 0) return read;
  return refuse('length-not-positive', `${text} must be over zero.`);
}

/** Grams, at least `least`; a bare number is pounds or kilograms, and a comma before three digits parts thousands. */
export function readWeight(text: string, system: UnitSystem, least: number): Answer<number> {
  const plain = text.replaceAll(/,(?=\d{3}(?!\d))/gu, '');
  const bare = /^[\d.,]+$/u.test(plain);
  const read = parseWeight(bare ? `${plain} ${system === 'us' ? 'lb' : 'kg'}` : plain);
  if (!read.ok || read.value >= least) return read;
  return refuse('weight-not-positive', `${text} must be over zero.`);
}

/** Metres a second; a bare number is miles an hour where lengths are in feet. 1 mile is 1609.344 m (1959). */
export function readSpeed(text: string, system: UnitSystem): Answer<number> {
  const [, digits = '', unit = ''] = /^(\d{1,3}(?:[.,]\d{1,3})?)\s*(m\/s|mph|)$/iu.exec(text) ?? [];
  if (digits === '')
    return refuse('speed-unreadable', `"${text}" cannot be read as a wind.`, {
      hint: 'Maybe write it like 15 mph or 7 m/s.',
    });
  const value = Number(digits.replace(',', '.'));
  const miles = unit === '' ? system === 'us' : unit.toLowerCase() === 'mph';
  const mps = miles ? (value * 1609.344) / 3600 : value;
  return mps <= 100 ? answer(mps) : refuse('speed-too-great', `${text} is more than any wind.`);
}
