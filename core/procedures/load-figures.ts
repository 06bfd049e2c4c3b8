// The figures of a load beside its stacks, and the names of what lies on it, for screens and sheets.
import type { BookComponent, BookReader } from '../book/book.ts';
import { stackHeight, weightOf } from '../yard/deck.ts';
import type { LoadStack, Truck } from '../yard/truck.ts';
import { unloadingOrder } from '../yard/unloading.ts';
import { byCode } from './by-code.ts';

export function figuresOf(stacks: readonly LoadStack[], truck: Truck) {
  const order = new Map(stacks.map((stack, index) => [stack, index + 1]));
  return {
    truck: { ...truck },
    stacks: stacks.map((stack) => ({ ...stack, layers: [...stack.layers] })),
    weightGrams: weightOf(stacks.flatMap(({ layers }) => layers)),
    usedLengthNm: most(stacks.map((s) => s.fromCabNm + most(s.layers.map((layer) => layer.lengthNm)))),
    usedWidthNm: most(stacks.map((s) => s.fromLeftNm + most(s.layers.map((layer) => layer.widthNm)))),
    highestNm: most(stacks.map(({ layers }) => stackHeight(layers))),
    unloading: unloadingOrder(stacks).map(({ layer, stack, level }) => ({
      stop: layer.stop,
      stack: order.get(stack) ?? 0,
      level: level + 1,
    })),
  };
}

function most(figures: readonly number[]): number {
  return Math.max(0, ...figures);
}

/** Names of what lies on loads, for screens and sheets. */
export async function loadNames(
  book: BookReader,
  stacks: readonly LoadStack[],
  components: readonly BookComponent[],
): Promise<Record<string, string>> {
  const known = byCode(components);
  const [containers, gangs] = await Promise.all([book.containers(), book.gangs()]);
  const pieceOf = new Map(containers.map((each) => [each.code, each.component]));
  const designOf = new Map(gangs.map((each) => [each.code, each.last.design]));
  const names: Record<string, string> = {};
  for (const { what } of stacks.flatMap(({ layers }) => layers)) {
    if ('component' in what) names[what.component] = known.get(what.component)?.name ?? '';
    else if ('container' in what)
      names[what.container] = known.get(pieceOf.get(what.container) ?? '')?.name ?? '';
    else names[what.gang] = designOf.get(what.gang) ?? '';
  }
  return names;
}
