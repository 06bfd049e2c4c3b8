// Everything that stands in the faces of a wall, by one order: each leg filled for itself, the stock shared out among
// them where panels would be short, and the parts of every leg put in their places.
import type { StandingUnit } from './wall-gangs.ts';
import { type FilledLeg, fillLeg, legToFill, panelsUsed, shortOf } from './wall-fill-leg.ts';
import type { Leg } from './wall-legs.ts';
import { orderWay, type Sequence, type Unit, unitWidthNm } from './wall-order.ts';
import type { PieceClass, Pieces, WallPiece } from './wall-pieces.ts';
import { chooseByStock, type SolveWhole } from './wall-stock.ts';
import { stockModel } from './wall-stock-model.ts';
import type { StateStep } from './wall-walk.ts';
import type { ProposalOrder, SideName, WallTask } from './wall.ts';

export interface ArrangedLeg {
  readonly leg: Leg;
  readonly units: Readonly<Record<SideName, readonly StandingUnit[]>>;
}

export interface Arrangement {
  readonly legs: readonly ArrangedLeg[];
  readonly short: Readonly<Record<string, number>>;
  readonly coveredNm: number;
  readonly fillerNm: number;
  readonly panelCount: number;
  /** Tie holes alone, as the search counted them. */
  readonly alone: number;
  readonly proven: boolean;
}

/** Undefined where a leg cannot be filled in this order. Without a solver nothing is proven where panels are short. */
export function arrangeWall(
  task: WallTask,
  pieces: Pieces,
  legs: readonly Leg[],
  order: ProposalOrder,
  solve: SolveWhole | null,
): Arrangement | undefined {
  const { classes } = pieces;
  const filled: FilledLeg[] = [];
  for (const leg of legs) {
    const found = fillLeg(legToFill(task, pieces, leg), leg, order);
    if (found === undefined) return undefined;
    filled.push(found);
  }
  let ways: readonly (readonly StateStep[])[] = filled.map(({ walk }) => walk.way);
  let counts = firstPieces(classes, ways);
  let proven = pieces.areLevelsClear && filled.every(({ whole }) => whole);
  if (Object.keys(shortOf(panelsUsed(classes, counts), task.stock)).length > 0) {
    const walks = filled.map(({ walk }) => walk);
    const model = stockModel(
      filled.map(({ walk, toFill }) => ({ walk, leg: toFill })),
      classes,
      task.stock ?? {},
    );
    const chosen = solve === null ? undefined : chooseByStock(walks, model, solve);
    proven &&= chosen?.proven === true;
    if (chosen !== undefined) [ways, counts] = [chosen.ways, chosen.pieces];
  }
  const pool = poolOf(classes, counts);
  const used = panelsUsed(classes, counts);
  const arranged = filled.map(({ leg, walk }, index) => ({
    leg,
    units: placeUnits(task, classes, leg, orderWay(ways[index] ?? [], walk.isLevel, classes), pool),
  }));
  const coveredNm = arranged.reduce((sum, each) => sum + coveredBy(each), 0);
  proven &&= coveredNm === filled.reduce((sum, { walk }) => sum + walk.coveredNm, 0);
  return {
    legs: arranged,
    short: shortOf(used, task.stock),
    coveredNm,
    fillerNm: ways.flat().reduce((sum, { step }) => sum + fillerOf(step), 0),
    panelCount: [...used.values()].reduce((sum, count) => sum + count, 0),
    alone: filled.reduce((sum, { walk }) => sum + walk.alone, 0),
    proven,
  };
}

/** Face of both sides that gangs on paper cover, less what of them reaches beyond the leg. */
function coveredBy({ leg, units }: ArrangedLeg): number {
  return (['A', 'B'] as const).reduce((sum, side) => {
    const [from, to] = [leg.from[side], leg.to[side]];
    const [leastNm, mostNm] = [from.atNm + from.cornerLegNm, to.atNm - to.cornerLegNm];
    return units[side]
      .filter(({ unit }) => unit.kind === 'piece' && unit.piece.made.kind === 'design')
      .reduce((all, { fromNm, widthNm }) => {
        const insideNm = Math.min(fromNm + widthNm, mostNm) - Math.max(fromNm, leastNm);
        return all + insideNm;
      }, sum);
  }, 0);
}

function fillerOf(step: StateStep['step']): number {
  return step.kind === 'filler' ? (step.widthsNm.A ?? 0) + (step.widthsNm.B ?? 0) : 0;
}

/** As often as each class is used, its piece with the fewest panels. */
function firstPieces(
  classes: readonly PieceClass[],
  ways: readonly (readonly StateStep[])[],
): readonly (readonly number[])[] {
  const counts = classes.map(({ pieces }) => pieces.map(() => 0));
  for (const { step } of ways.flat()) {
    if (step.kind !== 'piece' && step.kind !== 'both') continue;
    const row = counts[step.class];
    if (row !== undefined) row[0] = (row[0] ?? 0) + (step.kind === 'both' ? 2 : 1);
  }
  return counts;
}

/** Hands out pieces of a class: as often as they are used, the same one after another, so that like faces like. */
function poolOf(
  classes: readonly PieceClass[],
  counts: readonly (readonly number[])[],
): (number: number) => WallPiece {
  const left = counts.map((row) => [...row]);
  return (number) => {
    const row = left[number] ?? [];
    const index = row.findIndex((count) => count > 0);
    const piece = classes[number]?.pieces[index];
    if (piece === undefined) throw new Error(`More pieces of class ${number} stand than are used.`);
    row[index] = (row[index] ?? 0) - 1;
    return piece;
  };
}

function placeUnits(
  task: WallTask,
  classes: readonly PieceClass[],
  leg: Leg,
  sequence: Sequence,
  pool: (number: number) => WallPiece,
): ArrangedLeg['units'] {
  const units: Record<SideName, StandingUnit[]> = { A: [], B: [] };
  const front = { A: 0, B: 0 };
  const isTurned = leg.overhang.at === 'from' && leg.overhang.mostNm > 0;
  const put = (side: SideName, unit: Unit): void => {
    const widthNm = unitWidthNm(unit, classes);
    const end = isTurned ? leg.to[side] : leg.from[side];
    const fromNm = isTurned
      ? end.atNm - end.cornerLegNm - front[side] - widthNm
      : end.atNm + end.cornerLegNm + front[side];
    front[side] += widthNm;
    units[side].push({
      fromNm,
      widthNm,
      unit:
        unit.kind === 'piece'
          ? { kind: 'piece', piece: pool(unit.class) }
          : { kind: widthNm > task.maximumFillerNm ? 'closure' : 'filler' },
    });
  };
  // in turn, so that of two pieces alike one faces the other
  for (let at = 0; at < Math.max(sequence.A.length, sequence.B.length); at += 1) {
    const [one, other] = [sequence.A[at], sequence.B[at]];
    if (one !== undefined) put('A', one);
    if (other !== undefined) put('B', other);
  }
  return isTurned ? { A: units.A.toReversed(), B: units.B.toReversed() } : units;
}
