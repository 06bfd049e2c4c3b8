// Where a plan holds more of a component than there is: each stretch with one positive excess, and the
// turns and loose turns that hold the component in it.
import type { Shortfall } from './contract.ts';
import { holdsByComponent, stretchesOf } from './excess.ts';
import { holdsOf, type Followers, type Hold } from './holding.ts';
import type { Model } from './model.ts';

/** In the order of the components, then of time. */
export function shortfallsOf(model: Model, followers: Followers): Shortfall[] {
  return shortfallsOfHolds(model, holdsOf(model, followers));
}

function shortfallsOfHolds(model: Model, holds: readonly Hold[]): Shortfall[] {
  const found: Shortfall[] = [];
  const { textOf } = model.instants;
  const looseIds = model.loose.map(({ id }) => id);
  for (const [component, own] of holdsByComponent(model, holds).entries()) {
    for (const { from, to, quantity } of excessOf(model, component, own)) {
      const within = own.filter((hold) => hold.from < to && hold.to > from);
      found.push({
        component: model.codes[component] ?? '',
        from: textOf(from),
        to: textOf(to),
        quantity,
        turns: names(within, ({ turn }) => turn, model.turnIds),
        loose: names(within, ({ loose }) => loose, looseIds),
      });
    }
  }
  return found;
}

interface ShortStretch {
  readonly from: number;
  readonly to: number;
  readonly quantity: number;
}

/** Stretches of one positive excess; held and stock may both change within one by the same number. */
function excessOf(model: Model, component: number, holds: readonly Hold[]): ShortStretch[] {
  const found: ShortStretch[] = [];
  for (const { from, to, held, stock } of stretchesOf(model, component, holds)) {
    const quantity = held - stock;
    if (quantity <= 0) continue;
    const before = found.at(-1);
    if (before !== undefined && before.to === from && before.quantity === quantity) {
      found[found.length - 1] = { ...before, to };
    } else found.push({ from, to, quantity });
  }
  return found;
}

/** The names of those who hold, each once, in the order of the input. */
function names(
  holds: readonly Hold[],
  who: (hold: Hold) => number | undefined,
  ids: readonly string[],
): string[] {
  const places = new Set<number>();
  for (const hold of holds) {
    const place = who(hold);
    if (place !== undefined) places.add(place);
  }
  return Array.from(places)
    .sort((left, right) => left - right)
    .map((place) => ids[place] ?? '');
}
