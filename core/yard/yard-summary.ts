// What the yard has of each component, as its manager asks for it: ready, to clean, to repair, set apart, away; what
// is due in and out by the drafts of notes; and by how many the ready pieces are below what a plan needs. Components
// are never set off against each other, and pieces that are not ours count nowhere but in their own column.
import type { Location, Owner } from './movement.ts';
import { isHeld, isInHand, isReady } from './movement.ts';
import type { YardNote } from './note.ts';
import type { StockLine } from './quantities.ts';

export interface SummaryFacts {
  readonly stock: readonly Pick<StockLine, 'component' | 'owner' | 'location' | 'condition' | 'quantity'>[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
  readonly drafts: readonly Pick<YardNote, 'from' | 'to' | 'expectedAt' | 'lines'>[];
  /** The most that the plan needs at once, by component; null where nobody asked for a job. */
  readonly needs: ReadonlyMap<string, number> | null;
  /** Orders two moments given as texts. */
  readonly earlier: (one: string, other: string) => boolean;
}

export interface Due {
  readonly quantity: number;
  /** The earliest of those that say when; null where none does. */
  readonly at: string | null;
}

export interface YardSummary {
  readonly component: string;
  readonly ready: number;
  readonly toClean: number;
  readonly toRepair: number;
  readonly quarantine: number;
  readonly scrapped: number;
  /** At another job or out for repair, in whatever condition. */
  readonly away: number;
  /** Found with us and belonging to others. */
  readonly notOurs: number;
  readonly dueIn: Due;
  readonly dueOut: Due;
  readonly need: number | null;
  readonly below: number | null;
}

type Counted = 'ready' | 'toClean' | 'toRepair' | 'quarantine' | 'scrapped' | 'away' | 'notOurs';

/** Of the components that are there, due, or needed, in the order of their codes. */
export function yardSummary(facts: SummaryFacts): readonly YardSummary[] {
  const kinds = new Map(facts.locations.map(({ code, kind }) => [code, kind]));
  const notOurs = new Set(facts.owners.filter(({ kind }) => kind === 'others').map(({ code }) => code));
  const sums = new Map<string, Record<Counted, number>>();
  const nothing = { ready: 0, toClean: 0, toRepair: 0, quarantine: 0, scrapped: 0, away: 0, notOurs: 0 };
  for (const line of facts.stock) {
    const kind = kinds.get(line.location);
    if (kind === undefined || !isHeld(kind)) continue;
    const sum = sums.get(line.component) ?? { ...nothing };
    sums.set(line.component, sum);
    sum[notOurs.has(line.owner) ? 'notOurs' : isInHand(kind) ? columnOf(line) : 'away'] += line.quantity;
  }
  const dueIn = dueOf(facts, (from, to) => !from && to, kinds);
  const dueOut = dueOf(facts, (from, to) => from && !to, kinds);
  const codes = new Set([...sums.keys(), ...dueIn.keys(), ...dueOut.keys(), ...(facts.needs?.keys() ?? [])]);
  return [...codes].sort(byCode).map((component) => {
    const sum = sums.get(component) ?? nothing;
    const need = facts.needs === null ? null : (facts.needs.get(component) ?? 0);
    return {
      component,
      ...sum,
      dueIn: dueIn.get(component) ?? { quantity: 0, at: null },
      dueOut: dueOut.get(component) ?? { quantity: 0, at: null },
      need,
      below: need === null ? null : Math.max(0, need - sum.ready),
    };
  });
}

function byCode(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

function columnOf({ condition }: Pick<StockLine, 'condition'>): Counted {
  if (isReady(condition)) return 'ready';
  if (condition === 'to-clean') return 'toClean';
  if (condition === 'to-repair') return 'toRepair';
  return condition === 'scrapped' ? 'scrapped' : 'quarantine';
}

/** @param isMeant by whether a note goes from, and to, a place where pieces are in hand */
function dueOf(
  { drafts, earlier }: SummaryFacts,
  isMeant: (from: boolean, to: boolean) => boolean,
  kinds: ReadonlyMap<string, Location['kind']>,
): ReadonlyMap<string, Due> {
  const inHand = (place: string): boolean => {
    const kind = kinds.get(place);
    return kind !== undefined && isInHand(kind);
  };
  const due = new Map<string, Due>();
  for (const { from, to, expectedAt, lines } of drafts) {
    if (!isMeant(inHand(from), inHand(to))) continue;
    for (const { component, sent, counted } of lines) {
      const known = due.get(component) ?? { quantity: 0, at: null };
      const isSooner = known.at === null || (expectedAt !== null && earlier(expectedAt, known.at));
      due.set(component, {
        quantity: known.quantity + (counted ?? sent),
        at: isSooner ? expectedAt : known.at,
      });
    }
  }
  return due;
}

/** The highest level within a stretch, the one that holds when it begins among them. */
export function peakBetween(
  steps: readonly { readonly fromMs: number; readonly quantity: number }[],
  fromMs: number,
  toMs: number,
): number {
  let before = 0;
  let most = 0;
  for (const step of steps) {
    if (step.fromMs <= fromMs) before = step.quantity;
    else if (step.fromMs < toMs) most = Math.max(most, step.quantity);
  }
  return Math.max(before, most);
}
