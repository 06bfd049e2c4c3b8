// The fewest loads by trying everything: every way to share few things out over trucks, every way to stack those of a
// truck, every way to set the stacks side by side. Only for as many things as that takes no time.
import {
  byStops,
  type Deck,
  lowestFirst,
  mayLieOn,
  type Row,
  rowLength,
  rowWidth,
  stackHeight,
  weightOf,
} from './deck.ts';
import type { LoadLayer } from './truck.ts';

export const mostTriedExactly = 7;

export interface ExactLoad<D extends Deck> {
  readonly truck: D;
  readonly rows: readonly Row[];
}

/**
 * Fewer loads than `atMost`, as few as can be; undefined where there are none.
 * @param layers at most `mostTriedExactly`
 */
export function fewestLoads<D extends Deck>(
  layers: readonly LoadLayer[],
  trucks: readonly D[],
  atMost: number,
): readonly ExactLoad<D>[] | undefined {
  if (layers.length > mostTriedExactly) throw new Error(`Too many things to try all: ${layers.length}`);
  const sorted = [...layers].sort(lowestFirst);
  const remembered = new Map<string, readonly Row[] | undefined>();
  const arranged = (mask: number, truck: number): readonly Row[] | undefined => {
    const key = `${mask} ${truck}`;
    const deck = trucks[truck];
    if (deck === undefined) return undefined;
    if (!remembered.has(key))
      remembered.set(
        key,
        arrange(
          sorted.filter((_, index) => (mask & (1 << index)) !== 0),
          deck,
        ),
      );
    return remembered.get(key);
  };
  let best: { readonly masks: readonly Opened[] } | undefined;
  const share = (index: number, opened: readonly Opened[]): void => {
    if (opened.length >= (best?.masks.length ?? atMost)) return;
    if (index === sorted.length) {
      best = { masks: opened };
      return;
    }
    for (const [place, load] of opened.entries()) {
      const mask = load.mask | (1 << index);
      if (arranged(mask, load.truck) === undefined) continue;
      share(index + 1, opened.with(place, { ...load, mask }));
    }
    for (const truck of trucks.keys())
      if (arranged(1 << index, truck) !== undefined)
        share(index + 1, [...opened, { mask: 1 << index, truck }]);
  };
  share(0, []);
  return best?.masks.map(({ mask, truck }) => {
    const [deck, rows] = [trucks[truck], arranged(mask, truck)];
    if (deck === undefined || rows === undefined) throw new Error('A load that was arranged is gone.');
    return { truck: deck, rows };
  });
}

interface Opened {
  readonly mask: number;
  readonly truck: number;
}

/** Rows from the cab backwards on which all of them lie; undefined where they do not go on this deck. */
export function arrange(layers: readonly LoadLayer[], deck: Deck): readonly Row[] | undefined {
  if (weightOf(layers) > deck.payloadGrams) return undefined;
  const sorted = [...layers].sort(lowestFirst);
  const stack = (index: number, stacks: readonly (readonly LoadLayer[])[]): readonly Row[] | undefined => {
    const layer = sorted[index];
    if (layer === undefined) return sideBySide(stacks, deck);
    for (const [place, under] of stacks.entries()) {
      const top = under.at(-1);
      if (top === undefined || !mayLieOn(layer, top)) continue;
      if (stackHeight(under) + layer.heightNm > deck.stackHeightNm) continue;
      const found = stack(index + 1, stacks.with(place, [...under, layer]));
      if (found !== undefined) return found;
    }
    return layer.heightNm > deck.stackHeightNm ? undefined : stack(index + 1, [...stacks, [layer]]);
  };
  return stack(0, []);
}

function sideBySide(stacks: readonly (readonly LoadLayer[])[], deck: Deck): readonly Row[] | undefined {
  const set = (index: number, rows: readonly Row[]): readonly Row[] | undefined => {
    const stack = stacks[index];
    if (stack === undefined) {
      const used = rows.reduce((sum, row) => sum + rowLength(row), 0);
      return used > deck.deckLengthNm ? undefined : byStops(rows);
    }
    for (const [place, row] of rows.entries()) {
      const wider = [...row, stack];
      if (rowWidth(wider) > deck.deckWidthNm) continue;
      const found = set(index + 1, rows.with(place, wider));
      if (found !== undefined) return found;
    }
    return rowWidth([stack]) > deck.deckWidthNm ? undefined : set(index + 1, [...rows, [stack]]);
  };
  return set(0, []);
}
