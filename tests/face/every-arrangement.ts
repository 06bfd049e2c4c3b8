// Every arrangement of both sides of a small straight wall of one row, looked at one after the other: the first parts of
// the score, least first, by the order of wall.ts. Knows only widths and holes; shares nothing with what fills walls.
import type { Panel } from '../../core/catalogue/component.ts';

export interface SmallWall {
  readonly panels: readonly Panel[];
  readonly lengthNm: number;
  readonly overhangNm: number;
  /** Is the overhang at the wall's start? Else at its end. */
  readonly isTurned: boolean;
  readonly maximumFillerNm: number;
  readonly toleranceNm: number;
  readonly stock: Readonly<Record<string, number>> | null;
}

export type LeastScore = readonly [alone: number, shortage: number, fillerNm: number, panels: number];

export interface Least {
  /** Undefined where nothing fills both sides. */
  readonly score: LeastScore | undefined;
  /** Has any arrangement its fillers opposite, or one at most? */
  readonly facing: boolean;
}

interface Side {
  readonly codes: readonly string[];
  readonly filler: readonly [fromNm: number, toNm: number] | undefined;
  /** By height, along the wall, rising. */
  readonly holes: ReadonlyMap<number, readonly number[]>;
}

export function leastOfAll(wall: SmallWall): Least {
  const [ofA, ofB] = [sidesOf(wall, false), sidesOf(wall, true)];
  let [best, bestFacing]: (LeastScore | undefined)[] = [undefined, undefined];
  for (const a of ofA)
    for (const b of ofB) {
      const score = scoreOf(wall, a, b);
      if (faces(a, b)) {
        if (bestFacing === undefined || isLess(score, bestFacing)) bestFacing = score;
      } else if (best === undefined || isLess(score, best)) best = score;
    }
  return { score: bestFacing ?? best, facing: bestFacing !== undefined };
}

function isLess(one: LeastScore, other: LeastScore): boolean {
  const part = one.findIndex((each, index) => each !== other[index]);
  return part >= 0 && one[part]! < other[part]!;
}

function faces({ filler: one }: Side, { filler: other }: Side): boolean {
  if (one === undefined || other === undefined) return true;
  const within = (inner: typeof one, outer: typeof one): boolean =>
    inner[0] >= outer[0] && inner[1] <= outer[1];
  return within(one, other) || within(other, one);
}

function scoreOf({ stock, lengthNm, toleranceNm }: SmallWall, a: Side, b: Side): LeastScore {
  const used = new Map<string, number>();
  for (const code of [...a.codes, ...b.codes]) used.set(code, (used.get(code) ?? 0) + 1);
  const short = [...used].map(([code, count]) =>
    stock === null ? 0 : Math.max(0, count - (stock[code] ?? 0)),
  );
  const width = ({ filler }: Side): number => (filler === undefined ? 0 : filler[1] - filler[0]);
  return [
    aloneOf(a, b, lengthNm, toleranceNm),
    short.reduce((sum, each) => sum + each, 0),
    width(a) + width(b),
    a.codes.length + b.codes.length,
  ];
}

/** Of one height, in the order along the wall: no other pairs leave fewer alone. */
function aloneOf(a: Side, b: Side, lengthNm: number, toleranceNm: number): number {
  const isFaced = (atNm: number): boolean => atNm >= 0 && atNm <= lengthNm;
  let alone = 0;
  for (const height of new Set([...a.holes.keys(), ...b.holes.keys()])) {
    const [one, other] = [a, b].map(({ holes }) => (holes.get(height) ?? []).filter(isFaced)) as [
      number[],
      number[],
    ];
    let [i, j] = [0, 0];
    while (i < one.length || j < other.length) {
      const apart = (one[i] ?? Infinity) - (other[j] ?? Infinity);
      if (Math.abs(apart) > toleranceNm) alone += 1;
      if (apart <= toleranceNm) i += 1;
      if (apart >= -toleranceNm) j += 1;
    }
  }
  return alone;
}

/** Panels in any order, with one filler anywhere or none. */
function sidesOf(wall: SmallWall, isB: boolean): readonly Side[] {
  const { lengthNm, overhangNm, maximumFillerNm } = wall;
  const rows: (readonly Panel[])[] = [];
  const add = (row: readonly Panel[], widthNm: number): void => {
    rows.push(row);
    for (const panel of wall.panels)
      if (widthNm + panel.widthNm <= lengthNm + overhangNm) add([...row, panel], widthNm + panel.widthNm);
  };
  add([], 0);
  const gapOf = (row: readonly Panel[]): number =>
    row.reduce((left, { widthNm }) => left - widthNm, lengthNm);
  const gaps = rows.map(gapOf);
  const within = gaps.some((gap) => gap <= maximumFillerNm);
  // where panels come out in no way at all, the least that is left is made up on the site
  const mostNm = within ? maximumFillerNm : Math.min(...gaps);
  return rows.flatMap((row, index) => {
    const gap = gaps[index]!;
    if (gap > mostNm) return [];
    if (gap <= 0) return [sideOf(wall, isB, row, gap, undefined)];
    return Array.from({ length: row.length + 1 }, (_, at) => sideOf(wall, isB, row, gap, at));
  });
}

function sideOf(
  { isTurned }: SmallWall,
  isB: boolean,
  row: readonly Panel[],
  gapNm: number,
  fillerAt: number | undefined,
): Side {
  // what reaches beyond does so at the one end that allows it
  let atNm = isTurned ? Math.min(0, gapNm) : 0;
  const holes = new Map<number, Set<number>>();
  let filler: Side['filler'];
  for (let index = 0; index <= row.length; index += 1) {
    if (fillerAt === index) {
      filler = [atNm, atNm + gapNm];
      atNm += gapNm;
    }
    const panel = row[index];
    if (panel === undefined) break;
    for (const [x, y] of panel.tieHolesNm ?? []) {
      const ofHeight = holes.get(y) ?? new Set<number>();
      holes.set(y, ofHeight.add(atNm + (isB ? panel.widthNm - x : x)));
    }
    atNm += panel.widthNm;
  }
  return {
    codes: row.map(({ code }) => code),
    filler,
    holes: new Map([...holes].map(([height, along]) => [height, [...along].toSorted((p, q) => p - q)])),
  };
}
