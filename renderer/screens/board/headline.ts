// The board's first sentence: what is first to go wrong. A person in a doorway reads this and nothing else.
import type { TimeWords } from '../../parts/time-words.ts';
import type { Board, Shortfall } from './board-types.ts';

export interface Headline {
  readonly state: 'short' | 'ok';
  readonly text: string;
  readonly first: Shortfall | undefined;
}

export function headlineOf(board: Board, words: TimeWords): Headline {
  const [first] = [...board.shortfalls].sort((one, other) => Date.parse(one.from) - Date.parse(other.from));
  if (first === undefined) {
    const text =
      board.pours.length === 0
        ? 'No pour is planned yet.'
        : `Nothing is short: every piece of ${board.pours.length} pours is there on its day.`;
    return { state: 'ok', text, first };
  }
  const count = board.shortfalls.length;
  const many = count === 1 ? '1 shortfall' : `${count} shortfalls; first`;
  return { state: 'short', text: `${many}: ${shortWords(first, words)}`, first };
}

/** "94 × lock short Wed 11 Mar 07:00, held by W5, K1" */
function shortWords(shortfall: Shortfall, words: TimeWords): string {
  const holders = holdersOf(shortfall);
  const shown = holders.slice(0, 4).join(', ');
  const more = holders.length > 4 ? ` and ${holders.length - 4} more` : '';
  const held = holders.length === 0 ? '' : `, held by ${shown}${more}`;
  return `${shortfall.quantity} ${shortfall.component} (${shortfall.name}) short ${words.full(shortfall.from)}${held}`;
}

/** Pours whose gangs or loose pieces hold the component, the most pieces first. */
function holdersOf(shortfall: Shortfall): readonly string[] {
  const pieces = new Map<string, number>();
  for (const holder of [...shortfall.turns, ...shortfall.loose]) {
    pieces.set(holder.pour, (pieces.get(holder.pour) ?? 0) + holder.pieces);
  }
  return [...pieces].sort(([, one], [, other]) => other - one).map(([pour]) => pour);
}
