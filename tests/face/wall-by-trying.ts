// The best score of a small wall found by trying every way to fill both faces of every leg: every order of panels and
// gangs, with a filler at every place. Knows only what the score means; shares nothing with what fills walls.
import type { PanelSystem } from '../../core/catalogue/system.ts';
import type { Wall, WallEnd, WallTask } from '../../core/face/wall.ts';
import { legsInPlan } from './wall-by-places.ts';

/** What stands from joint to joint, holes as [along, up] as they lie on each side, from the start of the wall. */
export interface TriedPiece {
  readonly widthNm: number;
  readonly codes: readonly string[];
  readonly isGang: boolean;
  readonly holes: Readonly<Record<'A' | 'B', readonly (readonly [number, number])[]>>;
}

/** newFaceNm, holesAlone, shortage, fillerNm, panelCount. */
export type TriedScore = readonly [number, number, number, number, number];

interface Face {
  /** Where panels begin and end, and the other side's form. */
  readonly fromNm: number;
  readonly toNm: number;
  readonly facedFromNm: number;
  readonly facedToNm: number;
  readonly cornerHoles: readonly (readonly [number, number])[];
}

interface Filling {
  readonly codes: readonly string[];
  readonly coveredNm: number;
  readonly fillerNm: number;
  readonly fillerAt: readonly [number, number] | undefined;
  /** Of holes that face the other side's form, as texts. */
  readonly holes: ReadonlySet<string>;
}

/** How panels and filler of a leg may be used; of both sides together. */
interface Way {
  readonly codes: readonly string[];
  readonly fillerNm: number;
}

export function scoreByTrying(
  { system, wall, stock, maximumFillerNm }: WallTask,
  pieces: readonly TriedPiece[],
  insideLegNm: number,
): TriedScore {
  let [newFaceNm, alone] = [0, 0];
  let ways: readonly Way[] = [{ codes: [], fillerNm: 0 }];
  for (const leg of wall.legs.keys()) {
    const faces = facesOf(system, wall, leg, insideLegNm);
    const overhang = overhangOf(wall, leg);
    const [a, b] = (['A', 'B'] as const).map((side) =>
      fillingsOf(pieces, faces[side], side, overhang, maximumFillerNm),
    );
    const best = bestWays(a!, b!);
    const lengthNm = faces.A.toNm - faces.A.fromNm + faces.B.toNm - faces.B.fromNm;
    newFaceNm += lengthNm - best.coveredNm;
    alone += best.alone;
    ways = distinct(
      ways.flatMap((one) =>
        best.ways.map((other) => ({
          codes: [...one.codes, ...other.codes].sort(),
          fillerNm: one.fillerNm + other.fillerNm,
        })),
      ),
    );
  }
  const scores = ways.map(({ codes, fillerNm }): TriedScore => [
    newFaceNm,
    alone,
    shortage(codes, stock),
    fillerNm,
    codes.length,
  ]);
  return scores.reduce((one, other) => (isLess(one, other) ? one : other));
}

function isLess(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((part, index) => part !== other[index]);
  return at < 0 || one[at]! < other[at]!;
}

function shortage(codes: readonly string[], stock: WallTask['stock']): number {
  if (stock === null) return 0;
  const counts = new Map<string, number>();
  for (const code of codes) counts.set(code, (counts.get(code) ?? 0) + 1);
  return [...counts].reduce((sum, [code, count]) => sum + Math.max(0, count - (stock[code] ?? 0)), 0);
}

function distinct(ways: readonly Way[]): Way[] {
  const least = new Map<string, Way>();
  for (const way of ways) {
    const key = way.codes.join(' ');
    if ((least.get(key)?.fillerNm ?? Infinity) > way.fillerNm) least.set(key, way);
  }
  return [...least.values()];
}

/** Fillers that face each other wherever any way has them so; then the most covered, then the fewest holes alone. */
function bestWays(
  a: readonly Filling[],
  b: readonly Filling[],
): { coveredNm: number; alone: number; ways: readonly Way[] } {
  let best: { facing: boolean; coveredNm: number; alone: number; ways: Way[] } | undefined;
  for (const one of a)
    for (const other of b) {
      const facing = isFacing(one.fillerAt, other.fillerAt);
      const coveredNm = one.coveredNm + other.coveredNm;
      if (
        best !== undefined &&
        (Number(facing) < Number(best.facing) || (facing === best.facing && coveredNm < best.coveredNm))
      )
        continue;
      const common = [...one.holes].filter((hole) => other.holes.has(hole)).length;
      const alone = one.holes.size + other.holes.size - 2 * common;
      const rank = [-Number(facing), -coveredNm, alone];
      const known = best && [-Number(best.facing), -best.coveredNm, best.alone];
      if (known === undefined || !isLess(known, rank)) best = { facing, coveredNm, alone, ways: [] };
      else if (rank.some((part, index) => part !== known[index])) continue;
      best!.ways.push({
        codes: [...one.codes, ...other.codes].sort(),
        fillerNm: one.fillerNm + other.fillerNm,
      });
    }
  if (best === undefined) throw new Error('A leg that cannot be filled.');
  return { ...best, ways: distinct(best.ways) };
}

function isFacing(one: Filling['fillerAt'], other: Filling['fillerAt']): boolean {
  if (one === undefined || other === undefined) return true;
  return within(one, other) || within(other, one);
}

function within(inner: readonly [number, number], outer: readonly [number, number]): boolean {
  return inner[0] >= outer[0] && inner[1] <= outer[1];
}

function lapOf(end: WallEnd): number {
  return end.kind === 'old-concrete' ? end.lapNm : 0;
}

function facesOf(
  system: PanelSystem,
  wall: Wall,
  leg: number,
  insideLegNm: number,
): Readonly<Record<'A' | 'B', Face>> {
  const plan = legsInPlan(wall)[leg]!;
  const last = leg === wall.legs.length - 1;
  const startLap = leg === 0 && !wall.closed ? lapOf(wall.start) : 0;
  const endLap = last && !wall.closed ? lapOf(wall.end) : 0;
  const form = {
    A: [0 - startLap, plan.lengthNm + endLap],
    B: [plan.bFromNm - startLap, plan.bToNm + endLap],
  } as const;
  const before = leg > 0 ? wall.turns[leg - 1] : wall.closed ? wall.turns.at(-1) : undefined;
  const after = wall.turns[leg];
  const faceOf = (side: 'A' | 'B', other: 'A' | 'B'): Face => {
    const inner = side === 'A' ? 'right' : 'left';
    const [fromNm, toNm] = form[side];
    const holes = system.components
      .filter(({ kind }) => kind === 'inside-corner')
      .flatMap(({ tieHolesNm = [] }) => tieHolesNm);
    return {
      fromNm: fromNm + (before === inner ? insideLegNm : 0),
      toNm: toNm - (after === inner ? insideLegNm : 0),
      facedFromNm: form[other][0],
      facedToNm: form[other][1],
      cornerHoles: [
        ...(before === inner ? holes.map(([x, y]): [number, number] => [fromNm + x, y]) : []),
        ...(after === inner ? holes.map(([x, y]): [number, number] => [toNm - x, y]) : []),
      ],
    };
  };
  return { A: faceOf('A', 'B'), B: faceOf('B', 'A') };
}

/** At the far end where it is free, else at the near one. */
function overhangOf(wall: Wall, leg: number): { atStart: boolean; mostNm: number } {
  const { start, end, closed } = wall;
  if (!closed && leg === wall.legs.length - 1 && end.kind === 'free')
    return { atStart: false, mostNm: end.overhangNm };
  if (!closed && leg === 0 && start.kind === 'free') return { atStart: true, mostNm: start.overhangNm };
  return { atStart: false, mostNm: 0 };
}

function fillingsOf(
  pieces: readonly TriedPiece[],
  face: Face,
  side: 'A' | 'B',
  overhang: { atStart: boolean; mostNm: number },
  maximumFillerNm: number,
): readonly Filling[] {
  const lengthNm = face.toNm - face.fromNm;
  const rows: (readonly TriedPiece[])[] = [];
  const search = (row: readonly TriedPiece[], sumNm: number): void => {
    rows.push(row);
    for (const piece of pieces)
      if (sumNm + piece.widthNm <= lengthNm + overhang.mostNm) search([...row, piece], sumNm + piece.widthNm);
  };
  search([], 0);
  const gapOf = (row: readonly TriedPiece[]): number =>
    lengthNm - row.reduce((sum, { widthNm }) => sum + widthNm, 0);
  const gaps = rows.map(gapOf);
  const isClosed = gaps.some((gap) => gap <= maximumFillerNm);
  // Where nothing comes out with a filler, the narrowest closure.
  const mostNm = isClosed ? maximumFillerNm : Math.min(...gaps);
  return rows.flatMap((row, index) => {
    const gap = gaps[index]!;
    if (gap > mostNm) return [];
    if (gap <= 0) return [placed(row, undefined, 0, face, side, overhang)];
    return [...row, undefined].map((_, at) => placed(row, at, gap, face, side, overhang));
  });
}

function placed(
  row: readonly TriedPiece[],
  fillerBefore: number | undefined,
  fillerNm: number,
  face: Face,
  side: 'A' | 'B',
  overhang: { atStart: boolean },
): Filling {
  const totalNm = row.reduce((sum, { widthNm }) => sum + widthNm, fillerNm);
  let at = overhang.atStart ? face.toNm - totalNm : face.fromNm;
  let coveredNm = 0;
  let fillerAt: readonly [number, number] | undefined;
  const places: (readonly [number, number])[] = [...face.cornerHoles];
  for (const [index, piece] of [...row, undefined].entries()) {
    if (index === fillerBefore) {
      fillerAt = [at, at + fillerNm];
      at += fillerNm;
    }
    if (piece === undefined) continue;
    for (const [x, y] of piece.holes[side]) places.push([at + x, y]);
    if (piece.isGang) coveredNm += Math.min(at + piece.widthNm, face.toNm) - Math.max(at, face.fromNm);
    at += piece.widthNm;
  }
  return {
    codes: row.flatMap(({ codes }) => codes),
    coveredNm,
    fillerNm,
    fillerAt,
    holes: new Set(
      places.filter(([x]) => x >= face.facedFromNm && x <= face.facedToNm).map(([x, y]) => `${x} ${y}`),
    ),
  };
}
