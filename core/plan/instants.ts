// Instants of a plan as whole units of time, and back to ISO text with the offset the answer carries.
import { Temporal } from 'temporal-polyfill';
import type { Scale } from './calendar.ts';
import type { PlanInput } from './contract.ts';
import { dayMs } from './days.ts';

/** A tenth of a microsecond: hours with nine decimals and instants with seven of a second are whole. */
const unitsPerMs = 10_000;
const nanosecondsPerUnit = 100n;

/** How instants of one plan are read and written. */
export interface Instants {
  readonly scale: Scale;
  /** The zone whose midnights divide the days of hire. */
  readonly dayZone: string;
  readonly unitsOf: (text: string) => number;
  readonly textOf: (units: number) => string;
}

/** The first instant of the input in the order of the contract; undefined where there is none. */
function firstInstant(input: PlanInput): string | undefined {
  for (const { stock } of input.components) {
    const first = typeof stock === 'number' ? undefined : stock[0];
    if (first !== undefined) return first.from;
  }
  return input.turns[0]?.from ?? input.loose?.[0]?.from;
}

export function instantsOf(input: PlanInput): Instants {
  const first = firstInstant(input) ?? '1970-01-01T00:00:00Z';
  const offset = first.endsWith('Z')
    ? 'UTC'
    : Temporal.PlainDateTime.from(first).toZonedDateTime(offsetOf(first)).offset;
  const zone = input.shifts?.timeZone ?? offset;
  const anchor = input.turns[0]?.from ?? first;
  const originMs = Math.floor(Temporal.Instant.from(anchor).epochMilliseconds / dayMs) * dayMs;
  const scale: Scale = { unitsPerMs, originMs };
  const originNs = BigInt(originMs) * 1_000_000n;
  const read = new Map<string, number>();
  const written = new Map<number, string>();
  const unitsOf = (text: string): number => {
    const known = read.get(text);
    if (known !== undefined) return known;
    const nanoseconds = Temporal.Instant.from(text).epochNanoseconds - originNs;
    const units = Number(nanoseconds / nanosecondsPerUnit);
    read.set(text, units);
    return units;
  };
  const textOf = (units: number): string => {
    const known = written.get(units);
    if (known !== undefined) return known;
    const instant = Temporal.Instant.fromEpochNanoseconds(originNs + BigInt(units) * nanosecondsPerUnit);
    const text =
      zone === 'UTC' && input.shifts === undefined
        ? instant.toString()
        : instant.toZonedDateTimeISO(zone).toString({ timeZoneName: 'never' });
    written.set(units, text);
    return text;
  };
  return { scale, dayZone: zone, unitsOf, textOf };
}

function offsetOf(text: string): string {
  const digits = /([+-]\d\d):?(\d\d)?$/u.exec(text);
  return `${digits?.[1] ?? '+00'}:${digits?.[2] ?? '00'}`;
}
