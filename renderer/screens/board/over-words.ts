// Days that are asked for too much, in words.
import { never } from '../../../core/answer.ts';
import type { Output } from '../../client/shapes.ts';

export type Overload = Output<'overload.list'>['overloads'][number];
type Cause = Overload['causes'][number];
type Way = Output<'overload.clear'>['ways'][number];

/** "crew: 62.5 of 42.5 hours", "crane TC1: 180 of 120 minutes", "places to assemble: 5 of 4" */
export function overloadWords({ kind, crane, use, needed, there }: Overload): string {
  const of = `${amount(needed)} of ${amount(there)}`;
  switch (kind) {
    case 'crew':
      return `crew: ${of} hours`;
    case 'crane':
      return needed > there
        ? `crane ${crane ?? ''}: ${of} minutes`
        : `crane ${crane ?? ''}: ${of} minutes, but not when they are wanted`;
    case 'pads':
      return `places ${use === 'assemble' ? 'to assemble' : use === 'clean' ? 'to clean' : 'on the pads'}: ${of}`;
    default:
      return never(kind);
  }
}

/** "re-gang P04 for P07: 7.5 hours" */
export function causeWords(
  { step, pour, toPour, amount: much }: Cause,
  { kind }: Pick<Overload, 'kind'>,
): string {
  const what = `${verbs[step] ?? step} ${pour}${toPour === null ? '' : ` for ${toPour}`}`;
  switch (kind) {
    case 'crew':
      return `${what}: ${amount(much)} h`;
    case 'crane':
      return `${what}: ${amount(much)} min`;
    case 'pads':
      return `${what}: ${amount(much)} ${much === 1 ? 'gang' : 'gangs'}`;
    default:
      return never(kind);
  }
}

const verbs: Readonly<Record<string, string>> = {
  'fly-on': 'fly on from',
  regang: 're-gang from',
  'break-down': 'break down from',
  'set-loose': 'loose pieces to',
  'strip-loose': 'loose pieces from',
};

/** What a way does besides: "2 new shortfalls, 1 gone; changes 3 told instructions more" */
export function wayEffects(way: Way): string {
  const { newShortfalls, goneShortfalls, changedShortfalls, toldChanged, overloadsGone } = way;
  const counts = [
    newShortfalls === 0 ? '' : `${newShortfalls} new ${newShortfalls === 1 ? 'shortfall' : 'shortfalls'}`,
    goneShortfalls === 0 ? '' : `${goneShortfalls} gone`,
    changedShortfalls === 0 ? '' : `${changedShortfalls} changed`,
  ].filter((each) => each !== '');
  const others = overloadsGone.length - 1;
  return [
    counts.join(', '),
    toldChanged > 0
      ? `changes ${toldChanged} told ${toldChanged === 1 ? 'instruction' : 'instructions'}`
      : '',
    others > 0 ? `clears ${others} more ${others === 1 ? 'day' : 'days'} besides` : '',
  ]
    .filter((each) => each !== '')
    .join('; ');
}

function amount(much: number): string {
  return String(Math.round(much * 10) / 10);
}
