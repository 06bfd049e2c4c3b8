// What can be done next in a leg that is being filled (wall-states.ts): a piece, a filler or a pair of them facing each
// other, or the end of a side; only what can still come out at the leg's end.
import type { Hole } from './wall-pieces.ts';
import {
  emptyState,
  endState,
  finish,
  mover,
  otherSide,
  place,
  type Placed,
  type WallState,
} from './wall-states.ts';
import type { SideName } from './wall.ts';

type BySide<T> = Readonly<Record<SideName, T>>;

export interface ClassToFill {
  readonly widthNm: number;
  readonly holes: BySide<readonly Hole[]>;
  readonly isDesign: boolean;
  /** Of its piece with the fewest. */
  readonly panelCount: number;
}

export interface CornerToFill {
  readonly legNm: number;
  readonly holes: readonly Hole[];
}

/** A leg, turned so that what may reach beyond it is at its end. */
export interface LegToFill {
  readonly classes: readonly ClassToFill[];
  readonly startNm: BySide<number>;
  readonly startCorner: BySide<CornerToFill>;
  readonly endCorner: BySide<CornerToFill>;
  /** Of the panels, between the corner pieces. */
  readonly lengthNm: BySide<number>;
  readonly overhangNm: number;
  /** Where the other side's face faces this side's: a hole beyond faces no form, and waits for no partner. */
  readonly facedNm: BySide<{ readonly fromNm: number; readonly toNm: number }>;
  readonly toleranceNm: number;
  /** Widths that a filler of the side can have. A side with a filler does not reach beyond the leg. */
  readonly fillersNm: BySide<readonly number[]>;
  /** Lengths that panels alone can fill, up to the greatest length and overhang. */
  readonly reachableNm: ReadonlySet<number>;
  readonly edgesMatter: boolean;
}

export interface WalkLimits {
  /** Without a tie hole that stays alone. */
  readonly noneAlone: boolean;
  /** Must fillers of the two sides face each other? */
  readonly facing: boolean;
  /** Only ways whose pieces face pieces of the same class: a way out where all ways are too many. */
  readonly sameOnBoth: boolean;
  /** Places met at most. */
  readonly effort: number;
}

export type Step =
  | { readonly kind: 'piece'; readonly side: SideName; readonly class: number }
  | { readonly kind: 'both'; readonly class: number }
  | { readonly kind: 'filler'; readonly widthsNm: Readonly<Partial<Record<SideName, number>>> }
  | {
      readonly kind: 'finish';
      readonly side: SideName;
      readonly overhangNm: number;
      /** Has the side a filler? */
      readonly isFilled: boolean;
    };

/** Where a leg is: the place of side A's front from where the leg's face of side A begins, and the state. */
export interface Spot {
  readonly alongNm: number;
  readonly state: WallState;
  /** Holes that the step to here leaves alone. */
  readonly alone: number;
}

export interface Next extends Spot {
  readonly step: Step;
}

export class LegSteps {
  private readonly leg: LegToFill;
  private readonly limits: WalkLimits;
  private readonly sums: readonly number[];
  /** What canEnd found, by what is left: of side A without and with a filler, of side B alike. */
  private readonly ends: readonly Map<number, boolean>[] = [new Map(), new Map(), new Map(), new Map()];
  /** Where pieces lead from a state: the same state comes at many places along the leg. */
  private readonly led = new Map<WallState, Map<number, Placed>>();

  constructor(leg: LegToFill, limits: WalkLimits) {
    this.leg = leg;
    this.limits = limits;
    this.sums = [...leg.reachableNm].sort((one, other) => one - other);
  }

  start(): Spot {
    const { leg } = this;
    let spot: Spot = { alongNm: leg.startNm.A, state: emptyState(leg.startNm.B - leg.startNm.A), alone: 0 };
    for (const side of ['A', 'B'] as const) {
      const { legNm, holes } = leg.startCorner[side];
      const moved = this.moved(spot, side, legNm, this.faced(spot, side, holes));
      spot = { ...moved, alone: spot.alone + moved.alone };
    }
    return spot;
  }

  *from(spot: Spot): Generator<Next> {
    const { state } = spot;
    const side = mover(state);
    const isLevel = state.aheadNm === 0 && !state.finished.A && !state.finished.B;
    const pairsOnly = this.limits.sameOnBoth && isLevel;
    for (const next of pairsOnly ? this.pairs(spot) : this.pieces(spot, side)) yield next;
    for (const each of pairsOnly ? (['A', 'B'] as const) : [side]) {
      yield* this.fillers(spot, each);
      yield* this.finish(spot, each);
    }
  }

  private *pieces(spot: Spot, side: SideName): Generator<Next> {
    const { state } = spot;
    const mostNm =
      this.limits.sameOnBoth && !state.finished[otherSide(side)] ? Math.abs(state.aheadNm) : Infinity;
    for (const [number, { widthNm }] of this.leg.classes.entries()) {
      if (widthNm > mostNm || !this.canEnd(spot, side, widthNm, state.filled[side])) continue;
      const moved = this.withPiece(spot, side, number);
      if (this.allows(moved)) yield { ...moved, step: { kind: 'piece', side, class: number } };
    }
  }

  private *pairs(spot: Spot): Generator<Next> {
    const { filled } = spot.state;
    for (const [number, { widthNm }] of this.leg.classes.entries()) {
      if (!this.canEnd(spot, 'A', widthNm, filled.A) || !this.canEnd(spot, 'B', widthNm, filled.B)) continue;
      const one = this.withPiece(spot, 'A', number);
      const both = this.withPiece(one, 'B', number);
      const moved = { ...both, alone: one.alone + both.alone };
      if (this.allows(moved)) yield { ...moved, step: { kind: 'both', class: number } };
    }
  }

  private *fillers(spot: Spot, side: SideName): Generator<Next> {
    const { leg, limits } = this;
    const { filled, finished, aheadNm } = spot.state;
    const other = otherSide(side);
    if (filled[side] || finished[side] || (limits.facing && filled[other])) return;
    const betweenNm = Math.abs(aheadNm);
    for (const widthNm of leg.fillersNm[side]) {
      if (!this.canEnd(spot, side, widthNm, true)) continue;
      const one = this.filled(spot, side, widthNm);
      if (!this.allows(one)) continue;
      yield { ...one, step: { kind: 'filler', widthsNm: { [side]: widthNm } } };
      if (!limits.facing || finished[other]) continue;
      for (const otherNm of leg.fillersNm[other]) {
        const isFacing = betweenNm + otherNm <= widthNm || (betweenNm === 0 && widthNm <= otherNm);
        if (!isFacing || !this.canEnd(spot, other, otherNm, true)) continue;
        const both = this.filled(one, other, otherNm);
        const moved = { ...both, alone: one.alone + both.alone };
        if (this.allows(moved))
          yield { ...moved, step: { kind: 'filler', widthsNm: { [side]: widthNm, [other]: otherNm } } };
      }
    }
  }

  private *finish(spot: Spot, side: SideName): Generator<Next> {
    const { leg } = this;
    const { state } = spot;
    if (state.finished[side]) return;
    const overhangNm = -this.leftNm(spot, side);
    if (overhangNm < 0 || overhangNm > (state.filled[side] ? 0 : leg.overhangNm)) return;
    const { legNm, holes } = leg.endCorner[side];
    const corner = { legNm, holes: this.faced(spot, side, holes) };
    const done = finish(state, side, corner, leg.toleranceNm);
    const alongNm = spot.alongNm + (side === 'A' ? leg.endCorner.A.legNm : 0);
    const isEnd = done.state.finished[otherSide(side)];
    const moved = { alongNm, state: isEnd ? endState : this.plain(done.state), alone: done.alone };
    if (this.allows(moved))
      yield { ...moved, step: { kind: 'finish', side, overhangNm, isFilled: state.filled[side] } };
  }

  private allows({ alone }: Spot): boolean {
    return alone === 0 || !this.limits.noneAlone;
  }

  private withPiece(spot: Spot, side: SideName, number: number): Spot {
    const { widthNm, holes } = this.leg.classes[number] ?? { widthNm: 0, holes: { A: [], B: [] } };
    const faced = this.faced(spot, side, holes[side]);
    if (faced.length < holes[side].length) return this.moved(spot, side, widthNm, faced);
    const ways = this.led.get(spot.state) ?? new Map<number, Placed>();
    this.led.set(spot.state, ways);
    const way = number * 2 + (side === 'A' ? 0 : 1);
    const known = ways.get(way);
    if (known === undefined) {
      const moved = this.moved(spot, side, widthNm, holes[side]);
      ways.set(way, moved);
      return moved;
    }
    return { ...known, alongNm: spot.alongNm + (side === 'A' ? widthNm : 0) };
  }

  /** Those of a piece placed next that face the other side's form. */
  private faced({ alongNm, state }: Spot, side: SideName, holes: readonly Hole[]): readonly Hole[] {
    const frontNm = side === 'A' ? alongNm : alongNm + state.aheadNm;
    const { fromNm, toNm } = this.leg.facedNm[side];
    const isFaced = ({ alongNm: at }: Hole): boolean => frontNm + at >= fromNm && frontNm + at <= toNm;
    return holes.every(isFaced) ? holes : holes.filter(isFaced);
  }

  private moved(spot: Spot, side: SideName, widthNm: number, holes: readonly Hole[]): Spot {
    const { state, alone } = place(spot.state, side, widthNm, holes, this.leg.toleranceNm);
    return { alongNm: spot.alongNm + (side === 'A' ? widthNm : 0), state: this.plain(state), alone };
  }

  private filled(spot: Spot, side: SideName, widthNm: number): Spot {
    const moved = this.moved(spot, side, widthNm, []);
    return { ...moved, state: { ...moved.state, filled: { ...moved.state.filled, [side]: true } } };
  }

  /** How far a piece placed next reaches beyond the leg. */
  beyondNm(spot: Spot, side: SideName, widthNm: number): number {
    return Math.max(0, widthNm - this.leftNm(spot, side));
  }

  /** What panels of a side that is not finished have still to fill; under zero where it reaches beyond. */
  private leftNm({ alongNm, state }: Spot, side: SideName): number {
    const { leg } = this;
    // a side that is finished stands at the end of its corner piece
    const frontNm = side === 'A' ? alongNm : alongNm + state.aheadNm;
    return leg.startNm[side] + leg.startCorner[side].legNm + leg.lengthNm[side] - frontNm;
  }

  /** After one more piece: can panels, and a filler or an overhang where allowed, still come out at the end? */
  private canEnd(spot: Spot, side: SideName, widthNm: number, isFilled: boolean): boolean {
    const { leg } = this;
    const leftNm = this.leftNm(spot, side) - widthNm;
    const ends = this.ends[(side === 'A' ? 0 : 2) + (isFilled ? 1 : 0)] ?? new Map<number, boolean>();
    const known = ends.get(leftNm);
    if (known !== undefined) return known;
    const can =
      leg.reachableNm.has(leftNm) ||
      (!isFilled &&
        (leg.fillersNm[side].some((fillerNm) => leg.reachableNm.has(leftNm - fillerNm)) ||
          (leg.overhangNm > 0 && firstFrom(this.sums, leftNm) <= leftNm + leg.overhangNm)));
    ends.set(leftNm, can);
    return can;
  }

  private plain(state: WallState): WallState {
    return this.leg.edgesMatter ? state : { ...state, edge: { A: [], B: [] } };
  }
}

/** The least of rising sums that is not under a length; Infinity where all are. */
function firstFrom(sums: readonly number[], leastNm: number): number {
  let [low, high] = [0, sums.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sums[middle] ?? 0) < leastNm) low = middle + 1;
    else high = middle;
  }
  return sums[low] ?? Infinity;
}
