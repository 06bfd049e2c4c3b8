// Loads made by hand's rule: things in an order, each onto the first load that takes it, onto a stack before beside it
// before behind it. Tried in several orders; how far from the fewest it can be is told by the bound (load-bound.ts).
import {
  byStops,
  type Deck,
  lowestFirst,
  mayLieOn,
  passedAlone,
  rowLength,
  rowWidth,
  stackHeight,
} from './deck.ts';
import type { LoadLayer } from './truck.ts';

/** A load being made: its rows from the cab backwards. */
export interface OpenLoad<D extends Deck> {
  readonly truck: D;
  readonly rows: LoadLayer[][][];
}

const orders: readonly ((one: LoadLayer, other: LoadLayer) => number)[] = [
  lowestFirst,
  (one, other) =>
    other.stop - one.stop ||
    other.lengthNm - one.lengthNm ||
    other.widthNm - one.widthNm ||
    lowestFirst(one, other),
  (one, other) =>
    other.stop - one.stop ||
    Number(other.carries) - Number(one.carries) ||
    other.widthNm - one.widthNm ||
    lowestFirst(one, other),
  (one, other) => other.stop - one.stop || other.heightNm - one.heightNm || lowestFirst(one, other),
];

/** Mixed orders for few things; fewer for many, so that an answer takes about a second at the most. */
const mostShuffles = 60;
const shuffledThings = 12_000;

/**
 * The fewest loads of all orders tried; none is tried any more once there are as few as `least`.
 * @param layers each must fit on one of the trucks by itself
 */
export function loadsByRule<D extends Deck>(
  layers: readonly LoadLayer[],
  trucks: readonly D[],
  least: number,
): readonly OpenLoad<D>[] {
  let best: readonly OpenLoad<D>[] = [];
  for (const sorted of everyOrder(layers))
    for (const first of trucks) {
      if (best.length > 0 && best.length <= least) return best;
      const loads = firstFit(sorted, [first, ...trucks]);
      if (best.length === 0 || loads.length < best.length) best = loads;
    }
  return best;
}

/** The orders of the rule, then mixed ones: the last stop always first, the same mixtures for the same things. */
function* everyOrder(layers: readonly LoadLayer[]): Generator<readonly LoadLayer[]> {
  for (const order of orders) yield [...layers].sort(order);
  const sorted = [...layers].sort(lowestFirst);
  const shuffles = Math.min(mostShuffles, Math.floor(shuffledThings / Math.max(1, layers.length)));
  for (let shuffle = 1; shuffle <= shuffles; shuffle += 1) {
    const keys = new Map(sorted.map((layer, index) => [layer, mixed(index, shuffle)]));
    yield [...sorted].sort(
      (one, other) => other.stop - one.stop || (keys.get(one) ?? 0) - (keys.get(other) ?? 0),
    );
  }
}

/** A number that looks like chance and is none: mixing by large odd factors (common practice, from memory). */
function mixed(index: number, shuffle: number): number {
  const started = Math.imul(index + 1, 0x9e37_79b1) ^ Math.imul(shuffle, 0x85eb_ca6b);
  const once = Math.imul(started ^ (started >>> 15), 0xc2b2_ae35);
  return (once ^ (once >>> 13)) >>> 0;
}

function firstFit<D extends Deck>(sorted: readonly LoadLayer[], trucks: readonly D[]): OpenLoad<D>[] {
  const loads: OpenLoad<D>[] = [];
  for (const layer of sorted) {
    if (loads.some((load) => put(layer, load))) continue;
    const truck = trucks.find((each) => passedAlone(layer, each).length === 0);
    if (truck === undefined) throw new Error('A thing that fits on no truck was to be loaded.');
    loads.push({ truck, rows: [[[layer]]] });
  }
  return loads;
}

/** Things come with falling stops, so whatever is there already is of this stop or of a later one. */
function put(layer: LoadLayer, { truck, rows }: OpenLoad<Deck>): boolean {
  const weight = rows.flat(2).reduce((sum, each) => sum + each.weightGrams, 0);
  if (weight + layer.weightGrams > truck.payloadGrams) return false;
  return (
    rows.some((row) =>
      row.some((stack) => {
        const top = stack.at(-1);
        if (top === undefined || !mayLieOn(layer, top)) return false;
        if (stackHeight(stack) + layer.heightNm > truck.stackHeightNm) return false;
        return kept(rows, stack, layer);
      }),
    ) ||
    (layer.heightNm <= truck.stackHeightNm && putBeside(layer, truck, rows))
  );
}

function putBeside(layer: LoadLayer, truck: Deck, rows: LoadLayer[][][]): boolean {
  const used = rows.reduce((sum, row) => sum + rowLength(row), 0);
  const beside = rows.some((row) => {
    const longer = Math.max(0, layer.lengthNm - rowLength(row));
    if (rowWidth(row) + layer.widthNm > truck.deckWidthNm || used + longer > truck.deckLengthNm) return false;
    return kept(rows, row, [layer]);
  });
  if (beside) return true;
  if (used + layer.lengthNm > truck.deckLengthNm || layer.widthNm > truck.deckWidthNm) return false;
  rows.push([[layer]]);
  return true;
}

/** Adds it where the stops allow it; else leaves everything as it was. */
function kept<T>(rows: readonly LoadLayer[][][], into: T[], added: T): boolean {
  into.push(added);
  if (byStops(rows) !== undefined) return true;
  into.pop();
  return false;
}
