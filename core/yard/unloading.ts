// In which order a load comes off: stop by stop, at each stop from the rear, each stack from its top. Loaded the
// other way round.
import type { LoadLayer, LoadStack } from './truck.ts';

export interface StandingLayer {
  readonly layer: LoadLayer;
  readonly stack: LoadStack;
  /** From the deck upwards, from 0. */
  readonly level: number;
}

export function unloadingOrder(stacks: readonly LoadStack[]): StandingLayer[] {
  const standing = stacks.flatMap((stack) =>
    stack.layers.map((layer, level): StandingLayer => ({ layer, stack, level })),
  );
  return standing.sort(
    (one, other) =>
      one.layer.stop - other.layer.stop ||
      other.stack.fromCabNm - one.stack.fromCabNm ||
      other.stack.fromLeftNm - one.stack.fromLeftNm ||
      other.level - one.level,
  );
}

export function loadingOrder(stacks: readonly LoadStack[]): StandingLayer[] {
  return unloadingOrder(stacks).reverse();
}
