// A second opinion on loads, sharing nothing with the program's: whether a load can be taken off stop by stop, found
// by taking it off; whether it keeps its truck's limits; and the fewest loads, by putting things on in every order
// and in every place.
import type { LoadLayer, LoadStack, Truck } from '../../core/yard/truck.ts';

const sum = (figures: readonly number[]): number => figures.reduce((total, each) => total + each, 0);
const ends = (stack: LoadStack): number => stack.fromCabNm + Math.max(...stack.layers.map((l) => l.lengthNm));
const widest = (stack: LoadStack): number => Math.max(...stack.layers.map((l) => l.widthNm));

/** What is wrong with a load, in words; empty where nothing is. */
export function wrongWith(stacks: readonly LoadStack[], truck: Truck): string[] {
  const wrong: string[] = [];
  const layers = stacks.flatMap((stack) => stack.layers);
  if (sum(layers.map((layer) => layer.weightGrams)) > truck.payloadGrams) wrong.push('payload');
  for (const stack of stacks) {
    if (ends(stack) > truck.deckLengthNm) wrong.push('deck length');
    if (stack.fromLeftNm + Math.max(...stack.layers.map((l) => l.widthNm)) > truck.deckWidthNm)
      wrong.push('deck width');
    if (sum(stack.layers.map((layer) => layer.heightNm)) > truck.stackHeightNm) wrong.push('stack height');
    for (const [level, layer] of stack.layers.entries()) {
      const under = stack.layers.slice(0, level);
      if (under.some((lower) => !lower.carries)) wrong.push('lies on what carries nothing');
      if (under.some((lower) => lower.weightGrams < layer.weightGrams)) wrong.push('heavier on lighter');
      if (under.some((lower) => lower.lengthNm < layer.lengthNm || lower.widthNm < layer.widthNm))
        wrong.push('overhangs');
    }
  }
  for (const [index, one] of stacks.entries())
    for (const other of stacks.slice(index + 1)) {
      const along = one.fromCabNm < ends(other) && other.fromCabNm < ends(one);
      const across =
        one.fromLeftNm < other.fromLeftNm + widest(other) && other.fromLeftNm < one.fromLeftNm + widest(one);
      if (along && across) wrong.push('two in one place');
    }
  return canBeTakenOff(stacks) ? wrong : [...wrong, 'a stop cannot reach its things'];
}

/** Stop by stop, takes off whatever is on top of its stack with nothing left on the deck behind it but this stop's. */
function canBeTakenOff(stacks: readonly LoadStack[]): boolean {
  let left = stacks.map((stack) => ({ stack, layers: [...stack.layers] }));
  const stops = [...new Set(stacks.flatMap(({ layers }) => layers.map(({ stop }) => stop)))].sort(
    (a, b) => a - b,
  );
  for (const stop of stops) {
    for (let moved = true; moved;) {
      moved = false;
      for (const each of left) {
        const isFree = left.every(
          (other) => other.layers.length === 0 || other.stack.fromCabNm < ends(each.stack) || other === each,
        );
        if (each.layers.at(-1)?.stop === stop && isFree) {
          each.layers.pop();
          moved = true;
        }
      }
    }
    if (left.some(({ layers }) => layers.some((layer) => layer.stop === stop))) return false;
    left = left.filter(({ layers }) => layers.length > 0);
  }
  return true;
}

interface Deck {
  readonly truck: Truck;
  readonly rows: readonly (readonly (readonly LoadLayer[])[])[];
}

/** Infinity where they cannot all be loaded. Only for very few things. */
export function fewestByHand(layers: readonly LoadLayer[], trucks: readonly Truck[]): number {
  let fewest = Number.POSITIVE_INFINITY;
  const seen = new Set<string>();
  const put = (rest: readonly LoadLayer[], decks: readonly Deck[]): void => {
    if (decks.length >= fewest) return;
    const key = JSON.stringify([
      rest.map((each) => layers.indexOf(each)),
      decks.map(({ truck, rows }) => [
        truck.code,
        rows.map((row) => row.map((stack) => stack.map((each) => layers.indexOf(each)))),
      ]),
    ]);
    if (seen.has(key)) return;
    seen.add(key);
    if (decks.some((deck) => wrongWith(standing(deck.rows), deck.truck).length > 0)) return;
    if (rest.length === 0) {
      fewest = decks.length;
      return;
    }
    for (const layer of rest) {
      const others = rest.filter((each) => each !== layer);
      for (const truck of trucks) put(others, [...decks, { truck, rows: [[[layer]]] }]);
      for (const [at, deck] of decks.entries())
        for (const rows of everyPlace(layer, deck.rows)) put(others, decks.with(at, { ...deck, rows }));
    }
  };
  put(layers, []);
  return fewest;
}

function everyPlace(layer: LoadLayer, rows: Deck['rows']): Deck['rows'][] {
  const places: Deck['rows'][] = [];
  for (let at = 0; at <= rows.length; at += 1) places.push(rows.toSpliced(at, 0, [[layer]]));
  for (const [at, row] of rows.entries()) {
    places.push(rows.with(at, [...row, [layer]]));
    for (const [index, stack] of row.entries())
      places.push(rows.with(at, row.with(index, [...stack, layer])));
  }
  return places;
}

function standing(rows: Deck['rows']): LoadStack[] {
  let fromCabNm = 0;
  return rows.flatMap((row) => {
    let fromLeftNm = 0;
    const stacks = row.map((layers) => {
      const stack = { fromCabNm, fromLeftNm, layers: [...layers] };
      fromLeftNm += Math.max(...layers.map((layer) => layer.widthNm));
      return stack;
    });
    fromCabNm += Math.max(...row.flat().map((layer) => layer.lengthNm));
    return stacks;
  });
}
