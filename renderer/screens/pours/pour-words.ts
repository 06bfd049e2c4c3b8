// Sentences of this screen that follow from a pour and the instants the core gave: why it may be stripped
// when, what a copy is called, which gates are open.
import { timeWords } from '../../parts/time-words.ts';
import type { Gate, PourRow } from './pour-shapes.ts';

/** How the forecast of the strip comes about, one thought a line. */
export function stripReasons(row: PourRow, timeZone: string): string[] {
  const words = timeWords(timeZone);
  const { pour, times } = row;
  const hours = Math.round(pour.stripMinimumH * 100) / 100;
  const forecast = `Finish ${words.full(times.finishAt)} + ${hours} h by the clock = ${words.full(times.readyAt)}.`;
  const first =
    times.stripFrom === times.readyAt
      ? `That lies in a shift, so stripping can begin then.`
      : `That is outside the shifts, so stripping can begin with the next one: ${words.full(times.stripFrom)}.`;
  return [
    forecast,
    first,
    `Stripping ends ${words.full(times.stripTo)}; its pieces are ready again ${words.full(times.freeAt)}.`,
  ];
}

/** What a gate stands before. */
export const stepWords = { set: 'setting', close: 'closing', pour: 'the pour' } as const;

export function openGates(gates: readonly Gate[]): Gate[] {
  return gates.filter(({ done }) => !done);
}

/** The code with its last number raised until no pour has it: P07 becomes P08; "Wall" becomes "Wall 2". */
export function nextCode(code: string, taken: ReadonlySet<string>): string {
  const found = /^(.*?)(\d+)(\D*)$/u.exec(code);
  const [start, digits, end] = found === null ? [`${code} `, '1', ''] : [found[1], found[2] ?? '1', found[3]];
  for (let number = Number(digits) + 1; ; number += 1) {
    const next = `${start}${String(number).padStart(digits.length, '0')}${end}`;
    if (!taken.has(next)) return next;
  }
}
