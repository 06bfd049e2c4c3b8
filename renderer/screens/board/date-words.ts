// Possible dates of a pour in words: what speaks for one, what it breaks, what keeps it from being sooner.
import { never } from '../../../core/answer.ts';
import type { Output } from '../../client/shapes.ts';
import { dateWords, type TimeWords } from '../../parts/time-words.ts';

type Dates = Output<'pour.dates'>;
type Merits = Dates['dates'][number]['merits'];
type Effects = Pick<
  Dates['dates'][number],
  | 'newShortfalls'
  | 'changedShortfalls'
  | 'overfullDays'
  | 'fullCranesAndPads'
  | 'findings'
  | 'toldChange'
  | 'unmetChange'
>;

const words: Readonly<Record<Merits[number], string>> = {
  earliest: 'the soonest',
  cheapest: 'the cheapest',
  'breaks-nothing': 'breaks nothing',
  'breaks-least': 'breaks least',
};

export function meritWords(merits: Merits): string {
  return merits.map((each) => words[each]).join(', ');
}

/** "4 LK, 2 R8 short; crew over its hours Wed 11 Mar; changes 1 told instruction", or "breaks nothing" */
export function breaksWords(effects: Effects): string {
  const grown = effects.changedShortfalls.filter(({ before, after }) => after.quantity > before.quantity);
  const longer = effects.changedShortfalls.filter(
    ({ before, after }) =>
      after.quantity <= before.quantity &&
      (Date.parse(after.from) < Date.parse(before.from) || Date.parse(after.to) > Date.parse(before.to)),
  );
  const short = [...effects.newShortfalls, ...grown.map(({ after }) => after)];
  const days = effects.overfullDays.map(({ date }) => dateWords(date));
  const { toldChange, unmetChange, findings } = effects;
  const parts = [
    short.length === 0
      ? ''
      : `${short.map(({ quantity, component }) => `${quantity} ${component}`).join(', ')} short`,
    longer.length === 0 ? '' : `${longer.map(({ after }) => after.component).join(', ')} short for longer`,
    unmetChange > 0 ? `${unmetChange} piece-days more cannot be hired` : '',
    days.length === 0 ? '' : `crew over its hours ${days.join(', ')}`,
    ...effects.fullCranesAndPads.map(fullWords),
    toldChange > 0 ? `changes ${toldChange} told ${toldChange === 1 ? 'instruction' : 'instructions'}` : '',
    ...findings.map(({ message }) => message),
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'breaks nothing' : parts.join('; ');
}

function fullWords({ kind, crane, date }: Effects['fullCranesAndPads'][number]): string {
  const what = kind === 'crane' ? `crane ${crane ?? ''}` : 'places on the ground';
  return `${what} over ${dateWords(date)}`;
}

export function heldBackWords(why: NonNullable<Dates['heldBack']>, times: TimeWords): string {
  const until = times.full(why.until);
  switch (why.kind) {
    case 'first-day':
      return `Not sooner: nothing is set before ${until}.`;
    case 'after':
      return `Not sooner: it comes after ${why.pour}, ${until}.`;
    case 'stands-on':
      return `Not sooner: ${why.pour} is strong enough to stand on ${until}.`;
    case 'gate':
      return `Not sooner: ${why.name} by ${why.who} is promised ${until}.`;
    default:
      return never(why);
  }
}
