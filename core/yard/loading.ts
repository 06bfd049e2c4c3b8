// Which things go on which truck and where they stand there: as few loads as can be found, each within payload, deck
// and stack height, last on first off. The weight on each axle is not computed: nothing of the truck's is known but
// its payload and its deck.
import { byStops, type Deck, passedAlone, placed, type Row, rowLength, weightOf } from './deck.ts';
import { type AtLeast, atLeast } from './load-bound.ts';
import { arrange, fewestLoads, mostTriedExactly } from './load-exact.ts';
import { loadsByRule } from './load-heuristic.ts';
import type { LoadLayer, LoadStack, Truck } from './truck.ts';

export interface ProposedLoad {
  readonly truck: string;
  readonly stacks: readonly LoadStack[];
  readonly weightGrams: number;
  /** From the cab to the end of the last stack. */
  readonly usedLengthNm: number;
}

export interface NotFitting {
  readonly layer: LoadLayer;
  /** What it passes on the truck on which it passes least. */
  readonly passes: readonly ('weight' | 'length' | 'width' | 'height')[];
}

export interface Loading {
  readonly loads: readonly ProposedLoad[];
  readonly notFitting: readonly NotFitting[];
  readonly atLeast: AtLeast;
  /** Whether fewer are surely not possible: by the bound, or because everything was tried. */
  readonly fewest: boolean;
}

/** Each truck may go as often as it takes. */
export function proposeLoading(layers: readonly LoadLayer[], trucks: readonly Truck[]): Loading {
  const fits = (layer: LoadLayer): boolean => trucks.some((truck) => passedAlone(layer, truck).length === 0);
  const fitting = layers.filter(fits);
  const notFitting = layers
    .filter((layer) => !fits(layer))
    .map((layer) => ({ layer, passes: leastPassed(layer, trucks) }));
  const bound = atLeast(fitting, trucks);
  const least = Math.max(bound.byWeight, bound.byDeck, fitting.length === 0 ? 0 : 1);
  const byRule = loadsByRule(fitting, trucks, least);
  const triesAll = byRule.length > least && fitting.length <= mostTriedExactly;
  const found: readonly { readonly truck: Truck; readonly rows: readonly Row[] }[] =
    (triesAll ? fewestLoads(fitting, trucks, byRule.length) : undefined) ?? byRule;
  const bySize = [...trucks].sort(smallestFirst);
  return {
    loads: found.map((load) => inSmallest(load, bySize)).sort(earliestStopFirst),
    notFitting,
    atLeast: bound,
    fewest: found.length === least || triesAll,
  };
}

function leastPassed(layer: LoadLayer, trucks: readonly Truck[]): NotFitting['passes'] {
  const [least] = trucks
    .map((truck) => passedAlone(layer, truck))
    .sort((one, other) => one.length - other.length);
  return least ?? [];
}

function smallestFirst(one: Deck, other: Deck): number {
  return one.payloadGrams - other.payloadGrams || one.deckLengthNm - other.deckLengthNm;
}

/** A smaller truck that takes the same load goes in place of a larger one. */
function inSmallest(
  { truck, rows }: { readonly truck: Truck; readonly rows: readonly Row[] },
  bySize: readonly Truck[],
): ProposedLoad {
  const layers = rows.flat(2);
  for (const smaller of bySize) {
    if (smaller.code === truck.code) break;
    const again = onOne(layers, smaller);
    if (again !== undefined) return asLoad(smaller, again);
  }
  return asLoad(truck, byStops(rows) ?? rows);
}

function onOne(layers: readonly LoadLayer[], truck: Truck): readonly Row[] | undefined {
  if (layers.length <= mostTriedExactly) return arrange(layers, truck);
  if (layers.some((layer) => passedAlone(layer, truck).length > 0)) return undefined;
  const [load, ...others] = loadsByRule(layers, [truck], 1);
  return others.length === 0 ? load?.rows : undefined;
}

function asLoad(truck: Truck, rows: readonly Row[]): ProposedLoad {
  return {
    truck: truck.code,
    stacks: placed(rows),
    weightGrams: weightOf(rows.flat(2)),
    usedLengthNm: rows.reduce((sum, row) => sum + rowLength(row), 0),
  };
}

/** Loads of the first stops first. */
function earliestStopFirst(one: ProposedLoad, other: ProposedLoad): number {
  return firstStop(one) - firstStop(other) || other.weightGrams - one.weightGrams;
}

function firstStop({ stacks }: ProposedLoad): number {
  return Math.min(...stacks.flatMap(({ layers }) => layers.map(({ stop }) => stop)));
}
