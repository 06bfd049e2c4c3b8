// How a gang comes to a turn and where it goes, and the other ways that were weighed, in words.
import { never } from '../../../core/answer.ts';
import type { Output } from '../../client/shapes.ts';
import type { Turn } from './board-types.ts';

export type Why = Output<'plan.why'>;
export type Decision = Why['arrival'];
export type Alternative = Decision['alternatives'][number];
export type Barred = Decision['barred'][number];
type Side = Decision['side'];

/** "flies on from P04", "re-ganged from GC of P04, 1.9 h", "assembled, 3 h", "stands made up already" */
export function arrivalWords({ before }: Turn, byId: ReadonlyMap<string, Turn>): string {
  switch (before.how) {
    case 'assemble':
      return `assembled, ${hoursText(before.hours)}`;
    case 'built':
      return 'stands made up already';
    case 'fly-on':
      return `flies on from ${byId.get(before.turn)?.pour ?? '?'}`;
    case 'regang': {
      const from = byId.get(before.turn);
      return `re-ganged from ${from?.design ?? '?'} of ${from?.pour ?? '?'}, ${hoursText(before.hours)}`;
    }
    default:
      return never(before);
  }
}

export function departureWords({ after }: Turn, byId: ReadonlyMap<string, Turn>): string {
  switch (after.how) {
    case 'break-down':
      return `broken down, ${hoursText(after.hours)}`;
    case 'fly-on':
      return `flies on to ${byId.get(after.turn)?.pour ?? '?'}${standsBy(after.standsByH)}`;
    case 'regang': {
      const to = byId.get(after.turn);
      return `re-ganged into ${to?.design ?? '?'} for ${to?.pour ?? '?'}, ${hoursText(after.hours)}${standsBy(after.standsByH)}`;
    }
    default:
      return never(after);
  }
}

/** ", stands by 2 d": whole days of the clock; under a day nothing is said. */
function standsBy(hours: number): string {
  const days = Math.floor(hours / 24);
  return days === 0 ? '' : `, stands by ${days} d`;
}

/** "GA from P04 flies on", "GC from P04, re-ganged 1.9 h", "assemble it anew", "fly on to P05", "break it down" */
export function wayWords(
  way: Pick<Alternative, 'how' | 'pour' | 'design' | 'otherHand'>,
  side: Side,
): string {
  const hand = way.otherHand ? ', of the other hand' : '';
  switch (way.how) {
    case 'assemble':
      return 'assemble it anew';
    case 'built':
      return 'take the gang that stands made up';
    case 'break-down':
      return 'break it down';
    case 'no-regang':
      return 'not re-gang it';
    case 'fly-on':
      return side === 'arrival' ? `${way.design} from ${way.pour} flies on` : `fly on to ${way.pour}`;
    case 'regang':
      return side === 'arrival'
        ? `re-gang ${way.design} from ${way.pour}${hand}`
        : `re-gang into ${way.design} for ${way.pour}${hand}`;
    default:
      return never(way.how);
  }
}

/** ", 1.9 h of work, stands by 5 d" */
export function timeOfWay({ regangH, gapH }: Pick<Alternative, 'regangH' | 'gapH'>): string {
  const days = Math.floor(gapH / 24);
  return `${regangH > 0 ? `, ${hoursText(regangH)} of work` : ''}${days > 0 ? `, ${days} d between` : ''}`;
}

export function barrierWords({ barrier }: Barred, design: string): string {
  switch (barrier.kind) {
    case 'still-standing':
      return `stripped ${hoursText(barrier.hours)} too late`;
    case 'too-little-time':
      return `too little time between: ${hoursText(barrier.neededH)} needed, ${hoursText(barrier.thereH)} there`;
    case 'no-common-piece':
      return `has no piece in common with ${design}`;
    case 'fixed-otherwise':
      return 'fixed otherwise';
    default:
      return never(barrier);
  }
}

/** "LK 20 more short, P436 2 fewer"; nothing where no piece more or fewer is short. */
export function shortWords(shortfalls: Alternative['shortfalls']): string {
  const more = shortfalls.filter((each) => each.more > 0).map((each) => `${each.component} ${each.more}`);
  const fewer = shortfalls.filter((each) => each.more < 0).map((each) => `${each.component} ${-each.more}`);
  return [
    ...(more.length === 0 ? [] : [`short ${more.join(', ')} more`]),
    ...(fewer.length === 0 ? [] : [`${fewer.join(', ')} fewer`]),
  ].join('; ');
}

/** "+$12.00", "the same", "$12.00 less" */
export function costWords(cents: number, money: (cents: number) => string): string {
  if (cents === 0) return 'the same';
  return cents > 0 ? `+${money(cents)}` : `${money(-cents)} less`;
}

export function hoursText(hours: number): string {
  return `${Math.round(hours * 10) / 10} h`;
}
