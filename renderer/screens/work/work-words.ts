// Days of crew, crane and pads in words.
import { never } from '../../../core/answer.ts';
import type { Output } from '../../client/shapes.ts';

export type Work = Output<'work.read'>;
export type WorkDay = Work['days'][number];
export type CraneOfDay = WorkDay['cranes'][number];
type PickKind = CraneOfDay['picks'][number]['kind'];

/** "37.5 of 42.5" */
export function ofThere(needed: number, there: number): string {
  return `${oneDecimal(needed)} of ${oneDecimal(there)}`;
}

export function oneDecimal(value: number): string {
  return (Math.round(value * 10) / 10).toString();
}

export function pickWords(kind: PickKind, toPour: string | null): string {
  switch (kind) {
    case 'set':
      return 'set';
    case 'strip':
      return 'strip';
    case 'fly-on':
      return `fly on to ${toPour ?? ''}`;
    case 'set-loose':
      return 'loose pieces there';
    case 'strip-loose':
      return 'loose pieces away';
    default:
      return never(kind);
  }
}

/** Minutes of all cranes of a day; null where none is set. */
export function craneMinutes({
  cranes,
}: WorkDay): { readonly needed: number; readonly there: number } | null {
  if (cranes.length === 0) return null;
  return {
    needed: cranes.reduce((sum, each) => sum + each.minutesNeeded, 0),
    there: cranes.reduce((sum, each) => sum + each.minutesThere, 0),
  };
}

/** What is too much on a day, by kind: "crew, crane" */
export function tooMuch({ overloads }: WorkDay): string {
  const kinds = overloads.map((id) =>
    id.startsWith('crew') ? 'crew' : id.startsWith('crane') ? 'crane' : 'pads',
  );
  return [...new Set(kinds)].join(', ');
}
