// A leg made ready to be filled, and filled with the strictest wish first: every tie through and fillers that face each
// other, and only where that cannot be, less.
import { mostCoveredNm } from './wall-covered.ts';
import type { Leg } from './wall-legs.ts';
import { cornerHolesAlong, panelLengthNm } from './wall-legs.ts';
import type { Hole, PieceClass, Pieces } from './wall-pieces.ts';
import { holesMeetAtEdges } from './wall-states.ts';
import type { CornerToFill, LegToFill, WalkLimits } from './wall-steps.ts';
import { type Walk, walkLeg } from './wall-walk.ts';
import type { ProposalOrder, SideName, WallTask } from './wall.ts';

export interface FilledLeg {
  readonly leg: Leg;
  readonly toFill: LegToFill;
  readonly walk: Walk;
  /** False where not all ways were looked at. */
  readonly whole: boolean;
}

/** Sums of widths and places along a leg looked at, at most. */
const mostSums = 200_000;
const effort = 250_000;

export function legToFill(task: WallTask, pieces: Pieces, leg: Leg): LegToFill {
  const isTurned = leg.overhang.at === 'from' && leg.overhang.mostNm > 0;
  const [near, far] = isTurned ? [leg.to, leg.from] : [leg.from, leg.to];
  const levels = new Map(pieces.levelsNm.map((height, level) => [height, level]));
  // a corner's hole at a height where no piece has one finds no partner
  const levelOf = (heightNm: number): number => levels.get(heightNm) ?? -1 - heightNm;
  const corner = (side: SideName, which: 'near' | 'far'): CornerToFill => {
    const end = which === 'near' ? near[side] : far[side];
    const holes = cornerHolesAlong(end, which === 'near' ? 'corner' : 'panels', levelOf);
    return { legNm: end.cornerLegNm, holes };
  };
  const lengthNm = { A: panelLengthNm(leg, 'A'), B: panelLengthNm(leg, 'B') };
  const overhangNm = leg.overhang.mostNm;
  const widths = pieces.classes.map(({ widthNm }) => widthNm);
  const reachableNm = sumsOf(widths, Math.max(lengthNm.A, lengthNm.B) + overhangNm);
  const fillers = (side: SideName): readonly number[] =>
    fillersOf(lengthNm[side], overhangNm, reachableNm, task.maximumFillerNm);
  const facedBy = (fromNm: number, toNm: number): LegToFill['facedNm']['A'] =>
    isTurned ? { fromNm: -toNm, toNm: -fromNm } : { fromNm, toNm };
  const startNm = (side: SideName): number => (isTurned ? -near[side].atNm : near[side].atNm);
  return {
    classes: pieces.classes.map(({ widthNm, holes, isDesign, pieces: [first] }) => ({
      widthNm,
      isDesign,
      panelCount: first?.panelCount ?? 0,
      holes: isTurned ? { A: turned(holes.A, widthNm), B: turned(holes.B, widthNm) } : holes,
    })),
    startNm: { A: startNm('A'), B: startNm('B') },
    startCorner: { A: corner('A', 'near'), B: corner('B', 'near') },
    endCorner: { A: corner('A', 'far'), B: corner('B', 'far') },
    lengthNm,
    overhangNm,
    facedNm: { A: facedBy(leg.from.B.atNm, leg.to.B.atNm), B: facedBy(leg.from.A.atNm, leg.to.A.atNm) },
    toleranceNm: task.tieToleranceNm,
    fillersNm: { A: fillers('A'), B: fillers('B') },
    reachableNm,
    edgesMatter: holesMeetAtEdges(pieces.classes),
  };
}

/** By the whole order, or only without a tie hole alone; undefined where that cannot be. */
export function fillLeg(toFill: LegToFill, leg: Leg, order: ProposalOrder): FilledLeg | undefined {
  const hasDesigns = toFill.classes.some(({ isDesign }) => isDesign);
  const wishes: readonly Pick<WalkLimits, 'noneAlone' | 'facing'>[] =
    order === 'no-tie-stops'
      ? [
          { noneAlone: true, facing: true },
          { noneAlone: true, facing: false },
        ]
      : [
          { noneAlone: true, facing: true },
          { noneAlone: false, facing: true },
          { noneAlone: false, facing: false },
        ];
  const most = mostCoveredNm(toFill);
  let whole =
    toFill.reachableNm.size <= mostSums &&
    narrowestNm(toFill) > Math.max(0, ...toFill.fillersNm.A, ...toFill.fillersNm.B);
  for (const wish of wishes) {
    let walk = walkLeg(toFill, { ...wish, sameOnBoth: false, effort });
    if (walk === 'too-many') {
      whole = false;
      walk = walkLeg(toFill, { ...wish, sameOnBoth: true, effort });
    }
    if (typeof walk !== 'object') continue;
    // Gangs on paper come before ties: with every tie through this is the best only where no way covers more.
    if (order !== 'first' || !wish.noneAlone || !hasDesigns || walk.coveredNm === most) {
      return { leg, toFill, walk, whole };
    }
  }
  return undefined;
}

/**
 * A pair of fillers is tried where no joint of the other side lies between their beginnings: that is every pair only
 * where no panel is as narrow as a filler.
 */
function narrowestNm({ classes, fillersNm }: LegToFill): number {
  const mayPair = fillersNm.A.length > 0 && fillersNm.B.length > 0;
  return mayPair ? Math.min(...classes.map(({ widthNm }) => widthNm)) : Infinity;
}

function turned(holes: readonly Hole[], widthNm: number): readonly Hole[] {
  return holes
    .map(({ alongNm, level }) => ({ alongNm: widthNm - alongNm, level }))
    .sort((one, other) => one.alongNm - other.alongNm || one.level - other.level);
}

/** Every length up to the most that panels beside each other can have. */
function sumsOf(widths: readonly number[], mostNm: number): ReadonlySet<number> {
  const sums = new Set([0]);
  for (const sum of sums) {
    for (const width of widths) if (sum + width <= mostNm) sums.add(sum + width);
    if (sums.size > mostSums) break;
  }
  return sums;
}

/**
 * Widths of a filler, up to the greatest; where panels come out neither with one nor without, and not with an overhang
 * either, the least that is left: a made-up closure.
 */
function fillersOf(
  lengthNm: number,
  overhangNm: number,
  sums: ReadonlySet<number>,
  mostNm: number,
): readonly number[] {
  const gaps = [...sums].map((sum) => lengthNm - sum);
  const fillers = gaps.filter((gap) => gap > 0 && gap <= mostNm).sort((one, other) => one - other);
  if (fillers.length > 0 || gaps.some((gap) => gap <= 0 && gap >= -overhangNm)) return fillers;
  const wider = gaps.filter((gap) => gap > 0);
  return wider.length === 0 ? [] : [wider.reduce((least, gap) => Math.min(least, gap))];
}

/** Panels that pieces need beyond the stock, by code. */
export function shortOf(
  used: ReadonlyMap<string, number>,
  stock: Readonly<Record<string, number>> | null,
): Readonly<Record<string, number>> {
  if (stock === null) return {};
  return Object.fromEntries(
    [...used]
      .map(([code, count]): [string, number] => [code, count - (stock[code] ?? 0)])
      .filter(([, short]) => short > 0)
      .sort(([one], [other]) => (one < other ? -1 : 1)),
  );
}

/** Panels that a number of pieces of each class use, by code. */
export function panelsUsed(
  classes: readonly PieceClass[],
  counts: readonly (readonly number[])[],
): ReadonlyMap<string, number> {
  const used = new Map<string, number>();
  for (const [number, { pieces }] of classes.entries())
    for (const [index, { uses }] of pieces.entries())
      for (const [code, times] of uses)
        used.set(code, (used.get(code) ?? 0) + times * (counts[number]?.[index] ?? 0));
  return used;
}
