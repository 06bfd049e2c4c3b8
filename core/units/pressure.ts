// Pressures of fresh concrete: whole pascals inside, read and printed in kPa or pounds to the square foot.
import { type Answer, answer, refuse } from '../answer.ts';
import { decimalRatio, numberRatio, type Ratio, roundHalfAway, safeNumber } from './exact.ts';
import type { UnitSystem } from './length-format.ts';
import { groupDigits } from './weight.ts';

/**
 * 1 psf is one pound-force (4.4482216152605 N) on a square foot (0.09290304 m2), both exact by definition of
 * the pound, the foot and standard gravity.
 */
const psf: Ratio = { over: 44_482_216_152_605n, under: 929_030_400_000n };
const pascals: Readonly<Record<'kpa' | 'pa' | 'psf', Ratio>> = {
  kpa: { over: 1000n, under: 1n },
  pa: { over: 1n, under: 1n },
  psf,
};

const hint = 'Maybe write it like 1200 psf or 60 kPa.';

/**
 * Reads a pressure with its unit (kPa, kN/m2, psf, Pa) as whole pascals, halves up. Refuses:
 * pressure-without-unit, pressure-ambiguous, pressure-unreadable, pressure-out-of-range.
 */
export function parsePressure(text: string): Answer<number> {
  const plain = text.trim().toLowerCase().replace('kn/m2', 'kpa').replace('kn/m²', 'kpa');
  if (/,\d{3}(?!\d)/u.test(plain)) {
    return refuse(
      'pressure-ambiguous',
      `"${text}" can be read in two ways: the comma may part thousands or decimals.`,
      { hint },
    );
  }
  const [, value = '', unit = ''] = /^(\d+(?:[.,]\d+)?) ?([a-z]*)$/u.exec(plain) ?? [];
  const ratio = value.length > 20 ? undefined : decimalRatio(value.replace(',', '.'));
  if (ratio !== undefined && unit === '')
    return refuse('pressure-without-unit', `"${text}" is a pressure without a unit.`, { hint });
  if (ratio === undefined || (unit !== 'kpa' && unit !== 'pa' && unit !== 'psf'))
    return refuse('pressure-unreadable', `"${text}" cannot be read as a pressure.`, { hint });
  const scale = pascals[unit];
  const whole = safeNumber(roundHalfAway(ratio.over * scale.over, ratio.under * scale.under));
  if (whole !== undefined) return answer(whole);
  return refuse('pressure-out-of-range', `The pressure ${text} is more than is kept exactly.`, { hint });
}

/** A number of kilopascals as whole pascals, halves up. Refuses: pressure-not-positive, pressure-out-of-range. */
export function pressureFromKpa(kilopascals: number): Answer<number> {
  const ratio = numberRatio(kilopascals);
  if (ratio === undefined || ratio.over <= 0n) {
    return refuse(
      'pressure-not-positive',
      `A pressure of ${kilopascals} kPa cannot be: it must be over zero.`,
    );
  }
  const whole = safeNumber(roundHalfAway(ratio.over * 1000n, ratio.under));
  if (whole !== undefined) return answer(whole);
  return refuse('pressure-out-of-range', `The pressure ${kilopascals} kPa is more than is kept exactly.`, {
    hint,
  });
}

/** "1,200 psf" (whole) or "57.5 kPa" (tenths). Whole pascals in. */
export function formatPressure(pressurePa: number, system: UnitSystem): string {
  if (system === 'us') {
    const whole = roundHalfAway(BigInt(pressurePa) * psf.under, psf.over);
    return `${groupDigits(whole.toString())} psf`;
  }
  const tenths = roundHalfAway(BigInt(pressurePa), 100n);
  return `${groupDigits((tenths / 10n).toString())}${tenths % 10n === 0n ? '' : `.${tenths % 10n}`} kPa`;
}
