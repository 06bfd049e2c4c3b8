// What follows each gang of a pour after the strip, in words. Gangs with the same fate are one phrase.
import { never } from '../../../core/answer.ts';
import type { Turn } from './board-types.ts';
import { departureMark, markedWords } from './choice-words.ts';

export interface Then {
  readonly how: 'fly-on' | 'regang' | 'break-down';
  readonly words: string;
  /** The pour to which they go; null for the yard. */
  readonly toPour: string | null;
  readonly turns: readonly string[];
}

/** "4 GA fly on to W3", "GB re-ganged for K1: +2 P824", "2 GA broken down"; first those that go soonest. */
export function thenOf(turns: readonly Turn[], byId: ReadonlyMap<string, Turn>): readonly Then[] {
  const groups = new Map<string, { readonly turn: Turn; readonly next: Turn | undefined; ids: string[] }>();
  for (const turn of turns) {
    const next = turn.after.how === 'break-down' ? undefined : byId.get(turn.after.turn);
    const key = [
      turn.design,
      turn.after.how,
      next?.pour,
      next?.design,
      standsBy(turn),
      changeWords(turn),
      markedWords(departureMark(turn)),
    ].join('|');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { turn, next, ids: [turn.id] });
    else group.ids.push(turn.id);
  }
  return [...groups.values()]
    .map(({ turn, next, ids }) => ({
      how: turn.after.how,
      words: `${phrase(turn, next, ids.length)}${markedWords(departureMark(turn))}`,
      toPour: next?.pour ?? null,
      turns: ids,
      at: next === undefined ? Infinity : Date.parse(next.from),
    }))
    .sort((one, other) => one.at - other.at || one.words.localeCompare(other.words))
    .map(({ how, words, toPour, turns: ids }) => ({ how, words, toPour, turns: ids }));
}

function phrase(turn: Turn, next: Turn | undefined, count: number): string {
  const gangs = count === 1 ? turn.design : `${count} ${turn.design}`;
  const one = count === 1;
  const { after } = turn;
  switch (after.how) {
    case 'break-down':
      return `${gangs} broken down`;
    case 'fly-on':
      return `${gangs} ${one ? 'flies' : 'fly'} on to ${next?.pour ?? '?'}${standsBy(turn)}`;
    case 'regang':
      return `${gangs} re-ganged for ${next?.pour ?? '?'}${changeWords(turn)}${standsBy(turn)}`;
    default:
      return never(after);
  }
}

/** ", stands by 2 d": whole days of the clock; under a day nothing is said. */
function standsBy(turn: Turn): string {
  if (turn.after.how === 'break-down') return '';
  const days = Math.floor(turn.after.standsByH / 24);
  return days === 0 ? '' : `, stands by ${days} d`;
}

/** ": +2 P824 −1 P836", the two largest changes of each kind. */
function changeWords(turn: Turn): string {
  if (turn.after.how !== 'regang') return '';
  const words = [...largest(turn.after.putIn, '+'), ...largest(turn.after.takenOut, '−')].join(' ');
  return words === '' ? '' : `: ${words}`;
}

function largest(pieces: Readonly<Record<string, number>>, sign: string): readonly string[] {
  return Object.entries(pieces)
    .sort(([, one], [, other]) => other - one)
    .slice(0, 2)
    .map(([component, quantity]) => `${sign}${quantity} ${component}`);
}
