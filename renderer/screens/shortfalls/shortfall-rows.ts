// A shortfall as one row of the table: every part as words and as something to sort by.
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import { never } from '../../../core/answer.ts';
import type { z } from 'zod';
import type { shortfallList } from '../../../core/procedures/shortfall-list.ts';

type List = z.output<(typeof shortfallList)['output']>;
export type Shortfall = List['shortfalls'][number];
export type Tight = List['tightest'][number];

export interface Holder {
  readonly pour: string;
  readonly what: string;
  readonly pieces: number;
  /** The design of the gangs; null for loose pieces. */
  readonly design: string | null;
}

/** Who holds the pieces, the most first: gangs of one design at one pour are one line. */
export function holders(shortfall: Shortfall): readonly Holder[] {
  const gangs = new Map<string, { pour: string; design: string; pieces: number; count: number }>();
  for (const turn of shortfall.turns) {
    const key = `${turn.pour}|${turn.design}`;
    const gang = gangs.get(key) ?? { pour: turn.pour, design: turn.design, pieces: 0, count: 0 };
    gang.pieces += turn.pieces;
    gang.count += 1;
    gangs.set(key, gang);
  }
  const loose = shortfall.loose.map((one) => ({
    pour: one.pour,
    what: `loose, ${one.purpose}`,
    pieces: one.pieces,
    design: null,
  }));
  return [
    ...[...gangs.values()].map((gang) => ({
      pour: gang.pour,
      what: gang.count === 1 ? `1 ${gang.design}` : `${gang.count} ${gang.design}`,
      pieces: gang.pieces,
      design: gang.design,
    })),
    ...loose,
  ].sort((one, other) => other.pieces - one.pieces || one.pour.localeCompare(other.pour));
}

/** "W5 92 in 4 GA, 10 loose, between gangs; K1 …": pours in the order of the pieces they hold. */
export function holderWords(shortfall: Shortfall): string {
  const byPour = Map.groupBy(holders(shortfall), (holder) => holder.pour);
  return [...byPour]
    .map(([pour, list]) => `${pour}: ${list.map((one) => `${one.pieces} in ${one.what}`).join(', ')}`)
    .join('; ')
    .replaceAll(/ in loose/gu, ' loose');
}

/** "Wed 11 Mar 07:00 – Thu 12 Mar 15:30"; the day once where it is one day. */
export function spanWords(from: string, to: string, words: TimeWords): string {
  return words.date(from) === words.date(to)
    ? `${words.full(from)} – ${words.time(to)}`
    : `${words.full(from)} – ${words.full(to)}`;
}

/** Calendar days that a shortfall touches. */
export function daysOf(shortfall: Shortfall, words: TimeWords): number {
  const [from, to] = [Date.parse(words.date(shortfall.from)), Date.parse(words.date(shortfall.to))];
  return Math.max(1, Math.round((to - from) / 86_400_000) + 1);
}

/** "hire 94 for 6 days: $23.00" or "cannot be hired". */
export function hireWords(shortfall: Shortfall, days: number, money: (cents: number) => string): string {
  if (!shortfall.canBeHired || shortfall.hireCents === null) return 'cannot be hired';
  return `hire ${shortfall.quantity} for ${days} ${days === 1 ? 'day' : 'days'}: ${money(shortfall.hireCents)}`;
}

export function restsOnWords(restsOn: Shortfall['restsOn']): string {
  switch (restsOn) {
    case 'counted':
      return 'counted';
    case 'taken-from-list':
      return 'from a list';
    case 'estimated':
      return 'estimated';
    case 'nothing':
      return 'no figure';
    default:
      return never(restsOn);
  }
}

/** "counted", "from a list", "counted, old". */
export function figureWords(shortfall: Pick<Shortfall, 'restsOn' | 'restsOnOld'>): string {
  return `${restsOnWords(shortfall.restsOn)}${shortfall.restsOnOld ? ', old' : ''}`;
}

export function tightWords(tight: Tight, words: TimeWords): string {
  const spare = tight.stock - tight.held;
  const left = spare === 0 ? 'none to spare' : `${spare} to spare`;
  return `${left} ${dateWords(words.date(tight.at))}`;
}
