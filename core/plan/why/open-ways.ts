// The ways in which a gang could come to a turn, or go from it: made anew or taken apart, or one follow for each that the
// hours allow. Of several like gangs of one pour the one that is worth most stands for all. What each would cost at least
// is known from the prices of the bound, which says in which order they are worth planning.
import type { FixedChoice, Instruction } from '../choices.ts';
import type { PlanInput } from '../contract.ts';
import { type Edges, edgesOf } from '../edges.ts';
import type { Model } from '../model.ts';
import { Prices, type PricedPlan } from '../prices.ts';
import { placesOf } from '../told-now.ts';

export type Side = 'arrival' | 'departure';

/** What is asked about: how the gang comes to this turn, or where it goes from it. */
export interface Place {
  readonly turn: number;
  readonly side: Side;
}

export interface OpenWay {
  readonly choice: Instruction;
  /** How much dearer than the bound a plan is at least that does this, in the money of the search. */
  readonly leastMore: number;
}

/** Turns of one key are not told apart: of several like gangs of one pour nobody asks which. */
export type Alike = (turn: number) => string;

const priceSteps = 12;

/** Those worth most first. The input must leave the place open: see `leftOpenAt`. */
export function openWays(model: Model, place: Place, alike: Alike): readonly OpenWay[] {
  const edges = edgesOf(model);
  const proof = pricedAt(model, edges);
  const id = model.turnIds[place.turn] ?? '';
  const isArrival = place.side === 'arrival';
  const apart: OpenWay = {
    choice: isArrival ? { kind: 'assemble', turn: id } : { kind: 'break-down', turn: id },
    leastMore: (isArrival ? proof?.later[place.turn] : proof?.earlier[place.turn]) ?? 0,
  };
  const follows = new Map<string, OpenWay>();
  for (const edge of edgesAt(edges, place)) {
    const [earlier, later] = [edges.earlier[edge] ?? 0, edges.to[edge] ?? 0];
    const way: OpenWay = {
      choice: { kind: 'follow', from: model.turnIds[earlier] ?? '', to: model.turnIds[later] ?? '' },
      leastMore: (proof?.earlier[earlier] ?? 0) + (proof?.later[later] ?? 0) - (proof?.gain[edge] ?? 0),
    };
    const key = alike(isArrival ? earlier : later);
    const known = follows.get(key);
    if (known === undefined || way.leastMore < known.leastMore) follows.set(key, way);
  }
  return [apart, ...follows.values()].toSorted((one, other) => one.leastMore - other.leastMore);
}

/** The step of the prices with the best bound; none where there is nothing to choose. */
function pricedAt(model: Model, edges: Edges): PricedPlan | undefined {
  if (edges.to.length === 0) return undefined;
  const prices = new Prices(model, edges);
  let best = prices.step(Infinity);
  for (let step = 1; step < priceSteps; step += 1) {
    const next = prices.step(best.cost);
    if (next.bound > best.bound) best = next;
  }
  return best;
}

function edgesAt(edges: Edges, { turn, side }: Place): readonly number[] {
  const all = Array.from(edges.to.keys());
  return side === 'arrival'
    ? all.filter((edge) => edges.to[edge] === turn)
    : all.slice(edges.start[turn] ?? 0, edges.start[turn + 1] ?? 0);
}

/** The input without the fixed choices that speak of the place, and those: what is weighed must be open. */
export function leftOpenAt(
  input: PlanInput,
  turn: string,
  side: Side,
): { readonly input: PlanInput; readonly released: readonly FixedChoice[] } {
  const place = placeKey(turn, side);
  const speaks = (choice: FixedChoice): boolean =>
    choice.kind === 'no-regang'
      ? side === 'departure' && choice.turn === turn
      : placesOf(choice).includes(place);
  const fixed = input.fixed ?? [];
  const released = fixed.filter(speaks);
  return {
    input: withFixed(
      input,
      fixed.filter((each) => !speaks(each)),
    ),
    released,
  };
}

export function placeKey(turn: string, side: Side): string {
  return side === 'arrival' ? `before ${turn}` : `after ${turn}`;
}

export function withFixed(input: PlanInput, fixed: readonly FixedChoice[]): PlanInput {
  const { fixed: _before, ...rest } = input;
  return fixed.length === 0 ? rest : { ...rest, fixed: [...fixed] };
}

/** Turns are alike by their design and by what `placeOf` says of where they stand. */
export function alikeIn(model: Model, placeOf: (turn: string) => string): Alike {
  return (turn) =>
    `${placeOf(model.turnIds[turn] ?? '')} ${model.designCodes[model.design[turn] ?? 0] ?? ''}`;
}
