// A load as it was put together, by the program or by hand, against its truck: every limit and every rule of the
// deck, each with the figures by which it is passed.
import { mayLieOn, stackHeight, weightOf } from './deck.ts';
import type { LoadLayer, LoadStack, Truck } from './truck.ts';

export type LoadRule =
  | 'payload'
  | 'deck-length'
  | 'deck-width'
  | 'stack-height'
  | 'lies-on'
  | 'stops'
  | 'overlap';

export interface LoadBreach {
  readonly rule: LoadRule;
  /** Of the stack in the list, from 0; null where it is of the whole load. */
  readonly stack: number | null;
  readonly other: number | null;
  /** How much there is, and how much there may be; null where it is no amount. */
  readonly is: number | null;
  readonly most: number | null;
}

export function checkLoad(stacks: readonly LoadStack[], truck: Truck): LoadBreach[] {
  const weight = weightOf(stacks.flatMap(({ layers }) => layers));
  return [
    ...over('payload', null, weight, truck.payloadGrams),
    ...stacks.flatMap((stack, index) => [
      ...over('deck-length', index, stack.fromCabNm + extent(stack, 'lengthNm'), truck.deckLengthNm),
      ...over('deck-width', index, stack.fromLeftNm + extent(stack, 'widthNm'), truck.deckWidthNm),
      ...over('stack-height', index, stackHeight(stack.layers), truck.stackHeightNm),
      ...liesOn(stack, index),
    ]),
    ...between(stacks),
  ];
}

function over(rule: LoadRule, stack: number | null, is: number, most: number): LoadBreach[] {
  return is > most ? [{ rule, stack, other: null, is, most }] : [];
}

function extent({ layers }: LoadStack, side: 'lengthNm' | 'widthNm'): number {
  return Math.max(0, ...layers.map((layer) => layer[side]));
}

function liesOn({ layers }: LoadStack, stack: number): LoadBreach[] {
  const isBad = (layer: LoadLayer, level: number): boolean => {
    const under = layers[level - 1];
    return under !== undefined && !mayLieOn(layer, under);
  };
  return layers.some(isBad) ? [{ rule: 'lies-on', stack, other: null, is: null, most: null }] : [];
}

/** No two in the same place; nothing of a later stop behind anything of an earlier one. */
function between(stacks: readonly LoadStack[]): LoadBreach[] {
  const breaches: LoadBreach[] = [];
  for (const [index, stack] of stacks.entries())
    for (const [other, behind] of stacks.entries()) {
      if (other > index && overlap(stack, behind))
        breaches.push({ rule: 'overlap', stack: index, other, is: null, most: null });
      const isBehind = behind.fromCabNm >= stack.fromCabNm + extent(stack, 'lengthNm');
      if (isBehind && latest(behind) > earliest(stack))
        breaches.push({ rule: 'stops', stack: index, other, is: latest(behind), most: earliest(stack) });
    }
  return breaches;
}

function overlap(one: LoadStack, other: LoadStack): boolean {
  return (
    one.fromCabNm < other.fromCabNm + extent(other, 'lengthNm') &&
    other.fromCabNm < one.fromCabNm + extent(one, 'lengthNm') &&
    one.fromLeftNm < other.fromLeftNm + extent(other, 'widthNm') &&
    other.fromLeftNm < one.fromLeftNm + extent(one, 'widthNm')
  );
}

function latest({ layers }: LoadStack): number {
  return Math.max(...layers.map(({ stop }) => stop));
}

function earliest({ layers }: LoadStack): number {
  return Math.min(...layers.map(({ stop }) => stop));
}
