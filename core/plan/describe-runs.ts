// What a plan says of each gang: when it is assembled, what it does after each strip, how long it stands by,
// which pieces are put in and taken out, when it is broken down. The board and the sheets read this.
import { answer, type Answer } from '../answer.ts';
import type { PlanInput } from './contract.ts';
import { assemblyFrom, brokenDownAt, regangTimes, runsOf, type Followers } from './holding.ts';
import type { Model } from './model.ts';
import { followersOf, readModel } from './plan-reuse.ts';

/** A stretch of time; instants as ISO text. */
interface TimeStretch {
  readonly from: string;
  readonly to: string;
}

export interface PieceCount {
  readonly component: string;
  readonly quantity: number;
}

/** How one turn follows another. Hours of work are those of the whole crew's clock, not man-hours. */
export interface FollowDescription {
  readonly from: string;
  readonly to: string;
  /** `fly-on`: the gang as it stands; `regang`: rebuilt into another design. */
  readonly kind: 'fly-on' | 'regang';
  /** Clock hours between the strip and the next setting. */
  readonly gapH: number;
  readonly flyOnH: number;
  /** Work of the re-gang; 0 where the gang flies on. */
  readonly regangH: number;
  readonly gap: TimeStretch;
  /** While the re-gang is worked on, by the latest time it can begin; absent where there is none. */
  readonly regang?: TimeStretch;
  /** Clock hours in which nothing is done with the gang: the gap less flying on and less the re-gang's stretch. */
  readonly standsByH: number;
  /** From flown on until the re-gang begins or the next setting does; absent where there is no time between. */
  readonly standsBy?: TimeStretch;
  readonly kept: readonly PieceCount[];
  readonly putIn: readonly PieceCount[];
  readonly takenOut: readonly PieceCount[];
  /** When the pieces taken out are clean and free again. */
  readonly takenOutFreeAt: string;
}

interface TurnDescription {
  readonly id: string;
  readonly design: string;
  readonly from: string;
  readonly to: string;
}

export interface RunDescription {
  readonly turns: readonly TurnDescription[];
  /** Absent where the run begins made up. */
  readonly assembly?: TimeStretch & { readonly hours: number };
  readonly follows: readonly FollowDescription[];
  readonly breakDown: TimeStretch & {
    readonly hours: number;
    /** When the pieces are clean and free again. */
    readonly freeAt: string;
  };
}

/** Describes runs, given by the ids of their turns; refused where they are no plan of the input. */
export function describeRuns(
  input: PlanInput,
  runs: readonly { readonly turns: readonly string[] }[],
): Answer<RunDescription[]> {
  const model = readModel(input);
  if (!model.ok) return model;
  const followers = followersOf(model.value, runs);
  return followers.ok ? answer(describe(input, model.value, followers.value)) : followers;
}

function describe(input: PlanInput, model: Model, followers: Followers): RunDescription[] {
  return runsOf(followers).map((run) => {
    const first = run[0] ?? 0;
    const last = run.at(-1) ?? first;
    const { textOf } = model.instants;
    const begin = input.designs[model.design[first] ?? 0];
    const end = input.designs[model.design[last] ?? 0];
    const freeAt = brokenDownAt(model, last);
    const assembly = { from: textOf(assemblyFrom(model, first)), to: textOf(model.from[first] ?? 0) };
    return {
      turns: run.map((turn) => ({
        id: model.turnIds[turn] ?? '',
        design: model.designCodes[model.design[turn] ?? 0] ?? '',
        from: textOf(model.from[turn] ?? 0),
        to: textOf(model.to[turn] ?? 0),
      })),
      ...(model.built[first] === true ? {} : { assembly: { ...assembly, hours: begin?.assembleH ?? 0 } }),
      follows: run.slice(1).map((turn, place) => describeFollow(input, model, run[place] ?? first, turn)),
      breakDown: {
        from: textOf(model.to[last] ?? 0),
        to: textOf(freeAt - model.cleanUnits),
        hours: end?.breakDownH ?? 0,
        freeAt: textOf(freeAt),
      },
    };
  });
}

function describeFollow(input: PlanInput, model: Model, earlier: number, later: number): FollowDescription {
  const { textOf, scale } = model.instants;
  const hourUnits = 3_600_000 * scale.unitsPerMs;
  const strip = model.to[earlier] ?? 0;
  const set = model.from[later] ?? 0;
  const { builtFrom, takenOutAt } = regangTimes(model, earlier, later);
  const [left, right] = [model.design[earlier] ?? 0, model.design[later] ?? 0];
  const flownAt = strip + model.flyOnUnits;
  const work = model.regang.digits(left, right);
  const standsBy = Math.max(0, builtFrom - flownAt);
  return {
    from: model.turnIds[earlier] ?? '',
    to: model.turnIds[later] ?? '',
    kind: left === right ? 'fly-on' : 'regang',
    gapH: (set - strip) / hourUnits,
    flyOnH: input.turnaround.flyOnH,
    regangH: Number(`${work}e-${model.regang.places}`),
    gap: { from: textOf(strip), to: textOf(set) },
    ...(builtFrom < set ? { regang: { from: textOf(builtFrom), to: textOf(set) } } : {}),
    standsByH: standsBy / hourUnits,
    ...(standsBy > 0 ? { standsBy: { from: textOf(flownAt), to: textOf(builtFrom) } } : {}),
    kept: pieceCounts(model, (component) =>
      Math.min(piecesOf(model, left, component), piecesOf(model, right, component)),
    ),
    putIn: pieceCounts(
      model,
      (component) => piecesOf(model, right, component) - piecesOf(model, left, component),
    ),
    takenOut: pieceCounts(
      model,
      (component) => piecesOf(model, left, component) - piecesOf(model, right, component),
    ),
    takenOutFreeAt: textOf(takenOutAt),
  };
}

function piecesOf(model: Model, design: number, component: number): number {
  return model.pieces[design * model.codes.length + component] ?? 0;
}

function pieceCounts(model: Model, quantityOf: (component: number) => number): PieceCount[] {
  return model.codes.flatMap((component, index) => {
    const quantity = quantityOf(index);
    return quantity > 0 ? [{ component, quantity }] : [];
  });
}
