// The words of counts: what a difference comes to, its causes and explanations in sentences, why a line was chosen.
import { never } from '../../../../core/answer.ts';
import type { Output } from './asked.ts';
import type { TimeWords } from '../../../parts/time-words.ts';

export type DifferenceLine = Output<'count.differences'>['lines'][number];
export type Cause = DifferenceLine['causes'][number];
export type How = DifferenceLine['offered'][number]['how'];
export type CountHead = Output<'count.list'>['counts'][number];

export const howWords: Readonly<Record<How, string>> = {
  lost: 'lost',
  found: 'found',
  'stacked-with-look-alike': 'stacked with its look-alike',
  'left-at-pour': 'left at a pour',
  'moved-without-note': 'moved without a note',
  'at-other-job': 'at another job',
  'condition-changed': 'in another condition',
  scrapped: 'scrapped without a note',
  'owner-mixed': 'taken for another owner’s',
  'not-ours': 'not ours',
  miscounted: 'counted wrongly',
};

export const stateWords = { open: 'open', booked: 'booked', dropped: 'dropped' } as const;
export const kindWords = { spot: 'spot check', location: 'whole place' } as const;

/** "16 short", "1 over", "as booked". */
export function differenceWords({
  difference,
  unclear,
  state,
}: Pick<DifferenceLine, 'difference' | 'unclear' | 'state'>): string {
  if (state === 'waiting') return 'not counted yet';
  if (state === 'differ') return 'counters differ';
  if (difference === 0) return unclear ? 'as booked, or not' : 'as booked';
  const words = sizeWords(difference);
  return unclear ? `${words}, or not` : words;
}

export function percentWords(percent: number | null, of: number, what: string): string {
  return percent === null ? `none ${what}` : `${percent} % of ${of} ${what}`;
}

export const recountWords = {
  'counters-differ': 'the two counters differ: count again',
  uncertain: 'uncertain: open the bag and count again',
  'out-of-tolerance': 'out of tolerance: let another person count again',
} as const;

const noteWords: Readonly<Record<string, string>> = {
  delivery: 'Delivery',
  return: 'Return',
  transfer: 'Transfer',
  issue: 'Issue',
  'hire-on': 'Hire on',
  'hire-off': 'Hire off',
};

/** One sentence a cause. */
export function causeWords(cause: Cause, words: TimeWords): string {
  switch (cause.rule) {
    case 'look-alike':
      return `${cause.other} is ${sizeWords(cause.otherDifference)} at the same place: maybe ${cause.quantity} stacked with it.`;
    case 'open-ticket':
      return `Strip ticket ${cause.ticket} of ${cause.pour} is open and expects ${cause.quantity} more.`;
    case 'draft-note':
      return `${noteWords[cause.kind] ?? cause.kind} ${cause.note} with ${cause.quantity} ${cause.way === 'out' ? 'from' : 'to'} here is not booked.`;
    case 'other-owner':
      return `Those of ${cause.owner} are ${sizeWords(cause.otherDifference)} at the same place: maybe taken for one another.`;
    case 'returned-as-other':
      return `${cause.quantity} of ${cause.owner} went back on ${words.day(cause.at)}: maybe some of these with them.`;
    case 'other-place':
      return `${cause.place} is ${sizeWords(cause.otherDifference)}: maybe ${cause.quantity} moved without a note.`;
    case 'last-move':
      return cause.way === 'came-from'
        ? `${cause.quantity} were booked in from ${cause.place} on ${words.day(cause.at)}: maybe some never came.`
        : `${cause.quantity} were booked out to ${cause.place} on ${words.day(cause.at)}: maybe some never went.`;
    case 'other-job':
      return cause.quantity === 0
        ? `${cause.place} is another job: maybe lent to it without a note.`
        : `${cause.place}, another job, has ${cause.quantity} by the book.`;
    case 'losses':
      return `By the record ${cause.lost} of ${cause.turns} that came back from turns were lost so far.`;
    default:
      return never(cause);
  }
}

function sizeWords(difference: number): string {
  return `${Math.abs(difference)} ${difference < 0 ? 'short' : 'over'}`;
}

type Reason = Output<'count.lines'>['lines'][number]['reasons'][number];

export function lineReasonWords(reason: Reason): string {
  switch (reason.why) {
    case 'never-counted':
      return 'never counted';
    case 'estimated':
      return 'estimated';
    case 'from-a-list':
      return 'from a list';
    case 'old':
      return `last counted ${reason.date}`;
    case 'class':
      return `class ${reason.class}`;
    case 'moved':
      return `${reason.movements} ${reason.movements === 1 ? 'movement' : 'movements'} since`;
    case 'look-alike':
      return `looks like ${reason.other}`;
    default:
      return never(reason);
  }
}

export const classByWords = {
  hand: 'set by hand',
  value: 'by value held',
  hire: 'by hire per day, no value entered',
  nothing: 'neither value nor hire entered',
  'none-held': 'none held',
} as const;

export function accuracyWords(accuracy: {
  readonly records: number;
  readonly within: number;
  readonly percent: number | null;
}): string {
  if (accuracy.percent === null) return 'nothing counted yet';
  return `${accuracy.within} of ${accuracy.records} records right, ${Math.round(accuracy.percent * 10) / 10} %`;
}
