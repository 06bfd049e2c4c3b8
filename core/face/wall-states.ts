// The two faces of a leg, filled together from its start: always the side that is behind goes on, so that what can
// still happen depends only on how far one front is ahead of the other and on which tie holes still wait for a partner
// opposite. Such a state does not know how far along the leg it is: the same state comes again and again, and what
// lies between two of them can be put elsewhere in the leg.
import type { Hole, PieceClass } from './wall-pieces.ts';
import type { SideName } from './wall.ts';

/** Holes of a side that wait, measured from the other side's front; sorted. */
type Waiting = readonly Hole[];

export interface WallState {
  /** Front of side B less that of side A. */
  readonly aheadNm: number;
  readonly waiting: Readonly<Record<SideName, Waiting>>;
  /** Levels of the holes exactly at each front: the same place counts once where two pieces share it. */
  readonly edge: Readonly<Record<SideName, readonly number[]>>;
  readonly finished: Readonly<Record<SideName, boolean>>;
  /** Has the side its filler? */
  readonly filled: Readonly<Record<SideName, boolean>>;
}

export interface Placed {
  readonly state: WallState;
  /** Holes that now will never have a partner. */
  readonly alone: number;
}

export const emptyState = (aheadNm: number): WallState => ({
  aheadNm,
  waiting: { A: [], B: [] },
  edge: { A: [], B: [] },
  finished: { A: false, B: false },
  filled: { A: false, B: false },
});

/** Both sides finished: one state, whatever of either reaches beyond the leg, so that the stock may choose the end too. */
export const endState: WallState = { ...emptyState(0), finished: { A: true, B: true } };

export function otherSide(side: SideName): SideName {
  return side === 'A' ? 'B' : 'A';
}

/** The side that goes on: the one behind, side A where both are level, until it is finished. */
export function mover({ finished, aheadNm }: WallState): SideName {
  if (finished.A) return 'B';
  if (finished.B) return 'A';
  return aheadNm >= 0 ? 'A' : 'B';
}

/**
 * A piece of a width with its holes placed at the front of a side. Holes of one level are paired in the order in
 * which they lie along the wall: no other pairing leaves fewer alone.
 */
export function place(
  state: WallState,
  side: SideName,
  widthNm: number,
  holes: readonly Hole[],
  toleranceNm: number,
): Placed {
  const other = otherSide(side);
  const own = holes.filter(({ alongNm, level }) => alongNm !== 0 || !state.edge[side].includes(level));
  const theirs = [...state.waiting[other]];
  // from the front of this side to that of the other
  const gapNm = side === 'A' ? state.aheadNm : -state.aheadNm;
  let alone = 0;
  const toWait: Hole[] = [];
  for (const { alongNm, level } of own) {
    const partner = theirs.findIndex(
      (hole) => hole.level === level && Math.abs(hole.alongNm - alongNm) <= toleranceNm,
    );
    const fromOther = alongNm - gapNm;
    if (partner >= 0) theirs.splice(partner, 1);
    else if (state.finished[other] || fromOther < -toleranceNm) alone += 1;
    else toWait.push({ alongNm: fromOther, level });
  }
  const left = theirs
    .map(({ alongNm, level }) => ({ alongNm: alongNm - widthNm, level }))
    .filter(({ alongNm }) => alongNm >= -toleranceNm);
  alone += theirs.length - left.length;
  const mine = [...state.waiting[side], ...toWait].sort(
    (one, another) => one.alongNm - another.alongNm || one.level - another.level,
  );
  const edge = holes.filter(({ alongNm }) => alongNm === widthNm).map(({ level }) => level);
  return {
    state: {
      ...state,
      aheadNm: state.aheadNm + (side === 'A' ? -widthNm : widthNm),
      waiting: side === 'A' ? { A: mine, B: left } : { A: left, B: mine },
      edge: { ...state.edge, [side]: edge },
    },
    alone,
  };
}

/** The side goes no further, after the corner piece at its end where there is one. */
export function finish(
  state: WallState,
  side: SideName,
  corner: { readonly legNm: number; readonly holes: readonly Hole[] },
  toleranceNm: number,
): Placed {
  const placed = place(state, side, corner.legNm, corner.holes, toleranceNm);
  const other = otherSide(side);
  return {
    state: {
      ...placed.state,
      waiting: { ...placed.state.waiting, [other]: [] },
      edge: { ...placed.state.edge, [side]: [] },
      finished: { ...placed.state.finished, [side]: true },
    },
    alone: placed.alone + placed.state.waiting[other].length,
  };
}

/** Numbers for states, each once, and texts for them. */
export class StateNumbers {
  readonly states: WallState[] = [];
  private readonly numbers = new Map<string, number>();
  /** Of those that were asked for before, without making their text again. */
  private readonly met = new Map<WallState, number>();

  of(state: WallState): number {
    const again = this.met.get(state);
    if (again !== undefined) return again;
    const key = stateKey(state);
    const number = this.numbers.get(key) ?? this.states.push(state) - 1;
    this.numbers.set(key, number);
    this.met.set(state, number);
    return number;
  }
}

function waitingKey(holes: Waiting): string {
  return holes.map(({ alongNm, level }) => `${alongNm}/${level}`).join(',');
}

function stateKey({ aheadNm, waiting, edge, finished, filled }: WallState): string {
  const flags = [finished.A, finished.B, filled.A, filled.B].map(Number).join('');
  return `${flags} ${aheadNm} ${waitingKey(waiting.A)} ${waitingKey(waiting.B)} ${edge.A.join()} ${edge.B.join()}`;
}

/** Only pieces with a hole at their very edge make it matter what is at the front. */
export function holesMeetAtEdges(classes: readonly PieceClass[]): boolean {
  return classes.some(({ holes }) => [...holes.A, ...holes.B].some(({ alongNm }) => alongNm === 0));
}
