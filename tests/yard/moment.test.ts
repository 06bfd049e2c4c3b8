// The moment of a text against the calendar library, which reads the same texts by the rules of ISO 8601 and RFC 3339.
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { momentMs } from '../../core/yard/moment.ts';
import { dice, someSeed } from '../book/dice.ts';

function byLibrary(text: string): number | null {
  try {
    return Temporal.Instant.from(text).epochMilliseconds;
  } catch {
    return null;
  }
}

describe('The moment of a text', () => {
  test('is what the calendar library reads, of 20,000 random texts with days and hours that are none among them', () => {
    const throws = dice(someSeed());
    const two = (most: number): string => String(throws.below(most)).padStart(2, '0');
    let none = 0;
    for (let count = 0; count < 20_000; count += 1) {
      const year = String(throws.of([throws.below(9999), 1969, 1970, 2000, 1900, 2024, 2100])).padStart(
        4,
        '0',
      );
      const seconds = throws.of(['', `:${two(62)}`, `:${two(60)}.${throws.below(1000)}`, `:${two(60)}.5`]);
      const offset = throws.of(['Z', `+${two(25)}:${two(61)}`, `-${two(15)}:00`]);
      const text = `${year}-${two(14)}-${two(33)}T${two(25)}:${two(61)}${seconds}${offset}`;
      const wanted = byLibrary(text);
      expect(momentMs(text), `SEED=${throws.seed}, ${text}`).toBe(wanted);
      if (wanted === null) none += 1;
    }
    expect(none).toBeGreaterThan(1000);
    expect(none).toBeLessThan(15_000);
  });

  test.each([
    '',
    '2026-03-02',
    '2026-03-02T07:00:00',
    '2026-3-2T7:00Z',
    '2026-03-02 07:00Z',
    '+012026-03-02T07:00Z',
  ])('is none of "%s"', (text) => {
    expect(momentMs(text)).toBeNull();
  });
});
