// Which pieces a plan holds, from when to when, and who holds them. Between two turns the common pieces
// count for the earlier one, the pieces built in for the later.
import type { Model } from './model.ts';

/** One stretch during which a turn or a loose turn holds pieces of a component, up to but not including `to`. */
export interface Hold {
  readonly component: number;
  readonly quantity: number;
  readonly from: number;
  readonly to: number;
  readonly turn: number | undefined;
  readonly loose: number | undefined;
}

/** A plan: for every turn, by place, the place of the turn that follows it, or -1. */
export type Followers = Int32Array;

/** The turns that begin a run, in the order of the input. */
export function firstTurns(followers: Followers): number[] {
  const followed = new Set(followers);
  return Array.from(followers.keys()).filter((turn) => !followed.has(turn));
}

/** The runs of a plan, in the order of the input of their first turns. */
export function runsOf(followers: Followers): number[][] {
  return firstTurns(followers).map((first) => {
    const run: number[] = [];
    for (let turn = first; turn >= 0; turn = followers[turn] ?? -1) run.push(turn);
    return run;
  });
}

/** When the gang of a run's first turn begins to be assembled. */
export function assemblyFrom(model: Model, turn: number): number {
  const from = model.from[turn] ?? 0;
  if (model.built[turn] === true) return from;
  return model.calendar.workBefore(from, model.assembleUnits[model.design[turn] ?? 0] ?? 0);
}

/** When the pieces of a run's last turn are broken down and clean. */
export function brokenDownAt(model: Model, turn: number): number {
  const work = model.breakDownUnits[model.design[turn] ?? 0] ?? 0;
  return model.calendar.workAfter(model.to[turn] ?? 0, work) + model.cleanUnits;
}

/** Between two turns: from when the new pieces are held, and until when those taken out. */
export function regangTimes(
  model: Model,
  earlier: number,
  later: number,
): { builtFrom: number; takenOutAt: number } {
  const work = model.regang.units(model.design[earlier] ?? 0, model.design[later] ?? 0);
  return {
    builtFrom: model.calendar.workBefore(model.from[later] ?? 0, work),
    takenOutAt: model.calendar.workAfter(model.to[earlier] ?? 0, work) + model.cleanUnits,
  };
}

/** Everything the turns hold while they stand, and the loose turns: until they are clean, or only until the strip. */
export function standingHolds(
  model: Model,
  loosePieces: 'until-clean' | 'until-strip' = 'until-clean',
): Hold[] {
  const holds: Hold[] = [];
  for (const [turn, from] of model.from.entries()) pushTurn(model, holds, turn, from, model.to[turn] ?? from);
  for (const [loose, { from, to, strippedAt, pieces }] of model.loose.entries()) {
    const until = loosePieces === 'until-clean' ? to : strippedAt;
    for (const [component, quantity] of pieces)
      push(holds, component, quantity, from, until, undefined, loose);
  }
  return holds;
}

/** Everything the plan holds. */
export function holdsOf(model: Model, followers: Followers): Hold[] {
  const holds = standingHolds(model);
  for (const first of firstTurns(followers)) {
    pushTurn(model, holds, first, assemblyFrom(model, first), model.from[first] ?? 0);
  }
  for (const [earlier, later] of followers.entries()) {
    if (later < 0) pushTurn(model, holds, earlier, model.to[earlier] ?? 0, brokenDownAt(model, earlier));
    else pushFollow(model, holds, earlier, later);
  }
  return holds;
}

function pushFollow(model: Model, holds: Hold[], earlier: number, later: number): void {
  const count = model.codes.length;
  const left = (model.design[earlier] ?? 0) * count;
  const right = (model.design[later] ?? 0) * count;
  const strip = model.to[earlier] ?? 0;
  const set = model.from[later] ?? 0;
  const { builtFrom, takenOutAt } = regangTimes(model, earlier, later);
  for (let component = 0; component < count; component += 1) {
    const before = model.pieces[left + component] ?? 0;
    const after = model.pieces[right + component] ?? 0;
    const common = Math.min(before, after);
    push(holds, component, common, strip, set, earlier, undefined);
    push(holds, component, after - common, builtFrom, set, later, undefined);
    push(holds, component, before - common, strip, takenOutAt, earlier, undefined);
  }
}

function pushTurn(model: Model, holds: Hold[], turn: number, from: number, to: number): void {
  const count = model.codes.length;
  const start = (model.design[turn] ?? 0) * count;
  for (let component = 0; component < count; component += 1) {
    push(holds, component, model.pieces[start + component] ?? 0, from, to, turn, undefined);
  }
}

function push(
  holds: Hold[],
  component: number,
  quantity: number,
  from: number,
  to: number,
  turn: number | undefined,
  loose: number | undefined,
): void {
  if (quantity > 0 && from < to) holds.push({ component, quantity, from, to, turn, loose });
}
