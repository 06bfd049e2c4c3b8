// Counted against booked. Each figure is held against what was booked at the moment at which it was counted, so that
// what moved before or after is allowed for. A difference is never netted against another one.
import type { LocationKind, OwnerKind } from './movement.ts';
import { type ConditionChanges, conditionChanges } from './condition-moves.ts';
import { isWithin } from './count-class.ts';
import {
  type ByCondition,
  countedLines,
  type CountedLine,
  type CounterFigure,
  sumOf,
} from './count-figures.ts';
import { type CountBases, countBases } from './count-bases.ts';
import { momentMs } from './moment.ts';
import { type Condition, conditions } from './movement.ts';
import type { StockLine } from './quantities.ts';
import type { CountClass, CountEntry, CountLine, StockCount } from './stock-count.ts';

export interface DifferenceFacts {
  readonly count: Pick<StockCount, 'lines' | 'counters'>;
  readonly entries: readonly CountEntry[];
  /** Everything that was booked up to a moment, at least of the components counted; asked for moments of entries. */
  readonly stockAt: (at: string) => readonly StockLine[];
  readonly locations: ReadonlyMap<string, LocationKind>;
  readonly owners: ReadonlyMap<string, OwnerKind>;
  readonly classes: ReadonlyMap<string, CountClass>;
  /** What a new piece costs; null where nobody has entered it. */
  readonly valueCents: (component: string) => number | null;
  /** Pieces that have left by truck and have not arrived: still booked where they came from. */
  readonly onTheRoad: (component: string) => number;
}

export type RecountReason = 'counters-differ' | 'uncertain' | 'out-of-tolerance';

export interface CountDifference extends CountedLine {
  /** `waiting`: a counter has not entered it; `differ`: the two counters did not find the same. */
  readonly state: 'waiting' | 'differ' | 'counted';
  /** The figure that stands; null while there is none. */
  readonly stands: CounterFigure | null;
  readonly booked: number;
  readonly bookedByCondition: ByCondition;
  /** Counted less booked. */
  readonly difference: number;
  readonly changes: ConditionChanges;
  /** The difference is no greater than what the figure may be off by: nobody can say whether there is one. */
  readonly unclear: boolean;
  readonly bases: CountBases;
  /** Of the difference, with its sign. */
  readonly valueCents: number | null;
  readonly class: CountClass;
  readonly within: boolean;
  readonly recount: RecountReason | null;
}

export function countDifferences(facts: DifferenceFacts): readonly CountDifference[] {
  return countedLines(facts.count, facts.entries).map((line) => differenceOf(line, facts));
}

function differenceOf(line: CountedLine, facts: DifferenceFacts): CountDifference {
  const { figures, component } = line;
  const against = (figure: CounterFigure) => {
    const stock = facts.stockAt(figure.at);
    return { figure, stock, booked: bookedOf(line, stock) };
  };
  const compared = figures.map(against);
  // With two counters the later of two figures that agree is the one that stands.
  const last = compared.reduce<(typeof compared)[number] | null>(
    (latest, each) => (latest === null || msOf(each.figure) >= msOf(latest.figure) ? each : latest),
    null,
  );
  const state = stateOf(compared, facts.count.counters);
  const place = facts.classes.get(component) ?? 'C';
  const bookedByCondition = last?.booked ?? {};
  const counted = last?.figure.byCondition ?? {};
  const booked = sumOf(bookedByCondition);
  const difference = last === null ? 0 : last.figure.quantity - booked;
  const uncertainty = last?.figure.uncertainty ?? 0;
  const unclear = uncertainty > 0 && Math.abs(difference) <= uncertainty;
  const within = isWithin(booked, booked + difference, place);
  const each = facts.valueCents(component);
  return {
    ...line,
    state,
    stands: state === 'counted' ? (last?.figure ?? null) : null,
    booked,
    bookedByCondition,
    difference,
    changes: conditionChanges(last === null ? {} : bookedByCondition, counted),
    unclear,
    bases: countBases(line, last?.stock ?? [], facts),
    valueCents: each === null ? null : each * difference,
    class: place,
    within,
    recount: recountOf(state, unclear, within || compared.length > 1),
  };
}

function msOf({ at }: CounterFigure): number {
  return momentMs(at) ?? 0;
}

/** @param sure within tolerance, or found alike by two */
function recountOf(state: CountDifference['state'], unclear: boolean, sure: boolean): RecountReason | null {
  if (state === 'differ') return 'counters-differ';
  if (state === 'waiting') return null;
  if (unclear) return 'uncertain';
  return sure ? null : 'out-of-tolerance';
}

/** Two counters agree where each differs from the book in the same way: pieces may have moved between them. */
function stateOf(
  compared: readonly { readonly figure: CounterFigure; readonly booked: ByCondition }[],
  counters: 1 | 2,
): CountDifference['state'] {
  if (compared.length < counters) return 'waiting';
  const [one, other] = compared;
  if (one === undefined || other === undefined) return 'counted';
  const by = ({ figure, booked }: typeof one, condition: Condition): number =>
    (figure.byCondition[condition] ?? 0) - (booked[condition] ?? 0);
  return conditions.every((condition) => by(one, condition) === by(other, condition)) ? 'counted' : 'differ';
}

/** What is booked at a line's place, of its owner or of every one, by condition. */
export function bookedOf(line: CountLine, stock: readonly StockLine[]): ByCondition {
  const booked: Partial<Record<Condition, number>> = {};
  for (const each of stock) {
    if (each.location !== line.location || each.component !== line.component) continue;
    if (line.owner !== null && each.owner !== line.owner) continue;
    booked[each.condition] = (booked[each.condition] ?? 0) + each.quantity;
  }
  return booked;
}
