// What may lie on what, and what may stand behind what, on the deck of a truck. Four rules, by which a load is made
// and checked: nothing is longer or wider than what it lies on; nothing heavier than what it lies on; nothing lies on
// a thing that carries nothing; and nothing of a later stop lies on or stands behind anything of an earlier one, so
// that every stop finds its things on top and at the rear: last on, first off. Common practice, no source.
import type { LoadLayer, LoadStack, Truck } from './truck.ts';

export type Deck = Pick<Truck, 'payloadGrams' | 'deckLengthNm' | 'deckWidthNm' | 'stackHeightNm'>;

export function mayLieOn(upper: LoadLayer, lower: LoadLayer): boolean {
  return (
    lower.carries &&
    upper.stop <= lower.stop &&
    upper.weightGrams <= lower.weightGrams &&
    upper.lengthNm <= lower.lengthNm &&
    upper.widthNm <= lower.widthNm
  );
}

/** In this order things lie on one another wherever they may at all: what comes later lies higher. */
export function lowestFirst(one: LoadLayer, other: LoadLayer): number {
  return (
    other.stop - one.stop ||
    other.weightGrams - one.weightGrams ||
    other.lengthNm - one.lengthNm ||
    other.widthNm - one.widthNm ||
    Number(other.carries) - Number(one.carries)
  );
}

/** The limits that a thing passes on this deck by itself; empty where it may be loaded. */
export function passedAlone(layer: LoadLayer, deck: Deck): ('weight' | 'length' | 'width' | 'height')[] {
  return [
    ...(layer.weightGrams > deck.payloadGrams ? (['weight'] as const) : []),
    ...(layer.lengthNm > deck.deckLengthNm ? (['length'] as const) : []),
    ...(layer.widthNm > deck.deckWidthNm ? (['width'] as const) : []),
    ...(layer.heightNm > deck.stackHeightNm ? (['height'] as const) : []),
  ];
}

/** Stacks side by side across the deck. */
export type Row = readonly (readonly LoadLayer[])[];

export function stackHeight(layers: readonly LoadLayer[]): number {
  return layers.reduce((sum, layer) => sum + layer.heightNm, 0);
}

export function weightOf(layers: readonly LoadLayer[]): number {
  return layers.reduce((sum, layer) => sum + layer.weightGrams, 0);
}

export function rowLength(row: Row): number {
  return Math.max(0, ...row.flat().map((layer) => layer.lengthNm));
}

export function rowWidth(row: Row): number {
  return row.reduce((sum, layers) => sum + Math.max(0, ...layers.map((layer) => layer.widthNm)), 0);
}

/** The rows from the cab backwards, the first stop's at the rear; undefined where the stops forbid every order. */
export function byStops(rows: readonly Row[]): readonly Row[] | undefined {
  const stopsOf = (row: Row): { least: number; most: number } => {
    const stops = row.flat().map(({ stop }) => stop);
    return { least: Math.min(...stops), most: Math.max(...stops) };
  };
  const sorted = rows
    .map((row) => ({ row, ...stopsOf(row) }))
    .sort((one, other) => other.most - one.most || other.least - one.least);
  const isBlocked = sorted.some(({ most }, index) => {
    const ahead = sorted[index - 1];
    return ahead !== undefined && most > ahead.least;
  });
  return isBlocked ? undefined : sorted.map(({ row }) => row);
}

/** Where the stacks of the rows stand: each row behind the one before, its stacks from the left. */
export function placed(rows: readonly Row[]): LoadStack[] {
  let fromCabNm = 0;
  return rows.flatMap((row) => {
    let fromLeftNm = 0;
    const stacks = row.map((layers) => {
      const stack = { fromCabNm, fromLeftNm, layers: [...layers] };
      fromLeftNm += rowWidth([layers]);
      return stack;
    });
    fromCabNm += rowLength(row);
    return stacks;
  });
}
