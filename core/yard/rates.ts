// Loss and damage of a component by turn, from the book's own strip tickets and counts: pieces lost and damaged over the
// pieces that came back from turns, with how many turns and pieces that rests on. Until there are enough turns a
// default by kind serves: common practice, no source.
import type { StockCount } from './stock-count.ts';
import type { StripTicket } from './strip-ticket.ts';
import type { YardSettings } from './yard-settings.ts';

export interface RateFacts {
  /** Booked ones. */
  readonly tickets: readonly Pick<StripTicket, 'parts' | 'result'>[];
  readonly counts: readonly Pick<StockCount, 'result'>[];
  readonly components: readonly { readonly code: string; readonly kind: string }[];
  readonly settings: Pick<YardSettings, 'defaultRates' | 'turnsForOwnRate'>;
}

export interface ComponentRate {
  readonly component: string;
  /** Parts of tickets that expected pieces of it back: gangs one by one, the loose pieces of a pour as one. */
  readonly turns: number;
  /** Pieces expected back by them, a piece once a turn. */
  readonly pieces: number;
  /** Missing at strips and lost in counts, less what was found later; never below nothing. */
  readonly lost: number;
  /** To repair and scrapped at strips. */
  readonly damaged: number;
  /** What spares are reckoned with. */
  readonly used: UsedRate;
}

export type UsedRate =
  /** So many of so many. */
  | { readonly basis: 'own'; readonly worn: number; readonly of: number }
  /** In millionths, by kind. */
  | { readonly basis: 'default'; readonly millionths: number }
  /** One piece for each set of forms that stands at once. */
  | { readonly basis: 'default-per-set' }
  | { readonly basis: 'none' };

interface Tally {
  turns: number;
  pieces: number;
  missing: number;
  found: number;
  damaged: number;
}

export function componentRates(facts: RateFacts): readonly ComponentRate[] {
  const tallies = new Map<string, Tally>();
  const of = (component: string): Tally => {
    const known = tallies.get(component) ?? { turns: 0, pieces: 0, missing: 0, found: 0, damaged: 0 };
    tallies.set(component, known);
    return known;
  };
  for (const { result } of facts.tickets)
    for (const line of result?.lines ?? []) {
      // What nobody counted says nothing of losses.
      if (line.uncounted === true) continue;
      const tally = of(line.component);
      if (line.expected > 0) tally.turns += 1;
      tally.pieces += line.expected;
      tally.missing += line.missing;
      tally.found += line.found;
      tally.damaged += line.toRepair + line.scrapped;
    }
  for (const { result } of facts.counts)
    for (const line of result?.lines ?? [])
      for (const { how, quantity } of line.explained) {
        if (how === 'lost') of(line.component).missing += quantity;
        if (how === 'found') of(line.component).found += quantity;
      }
  return facts.components.map(({ code, kind }) => {
    const { turns, pieces, missing, found, damaged } = of(code);
    const lost = Math.max(0, missing - found);
    const isOwn = pieces > 0 && turns >= facts.settings.turnsForOwnRate;
    const used: UsedRate = isOwn
      ? { basis: 'own', worn: lost + damaged, of: pieces }
      : defaultRate(kind, facts.settings.defaultRates);
    return { component: code, turns, pieces, lost, damaged, used };
  });
}

function defaultRate(kind: string, rates: Readonly<Record<string, number>>): UsedRate {
  const rate = rates[kind];
  if (rate !== undefined) return { basis: 'default', millionths: Math.round(rate * 1_000_000) };
  return kind === 'panel' ? { basis: 'default-per-set' } : { basis: 'none' };
}
