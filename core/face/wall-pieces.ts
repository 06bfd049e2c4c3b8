// What may stand in a face of a wall from joint to joint: a stack, which in every row of the form is one panel of the
// stack's width or two that make it up; or a gang already on paper as a whole. Gangs can be parted at the edges of
// stacks only, since a joint runs through all rows there. Pieces that are as wide and have their tie holes at the same
// places behave alike in the wall and form one class; which of a class is taken is a matter of the stock alone.
import { atCorner } from '../gang/at-corner.ts';
import { takeOff } from '../gang/take-off.ts';
import type { Panel } from '../catalogue/component.ts';
import type { DesignGeometry } from '../gang/design.ts';
import type { KnownDesign, SideName, WallTask } from './wall.ts';

/** A tie hole along the wall from the piece's edge nearer to the start; `level` is the place of its height in `levelsNm`. */
export interface Hole {
  readonly alongNm: number;
  readonly level: number;
}

/** Panels of one row of a stack, along the wall; the same on both sides. */
export interface StackRow {
  readonly bottomNm: number;
  readonly panels: readonly { readonly panel: Panel; readonly alongNm: number }[];
}

export interface WallPiece {
  readonly widthNm: number;
  /** Panels by code. */
  readonly uses: ReadonlyMap<string, number>;
  readonly panelCount: number;
  /** A text that is equal for equal pieces. */
  readonly key: string;
  readonly made:
    | { readonly kind: 'stack'; readonly rows: readonly StackRow[] }
    | { readonly kind: 'design'; readonly design: KnownDesign; readonly geometry: DesignGeometry };
}

export interface PieceClass {
  readonly widthNm: number;
  readonly holes: Readonly<Record<SideName, readonly Hole[]>>;
  readonly isDesign: boolean;
  /** The one of fewest panels first. */
  readonly pieces: readonly WallPiece[];
}

export interface Pieces {
  readonly classes: readonly PieceClass[];
  /** Heights of tie holes, rising; a hole names its height by its place in this list. */
  readonly levelsNm: readonly number[];
  /** False where two heights are within the tolerance of each other: pieces are paired by equal heights only. */
  readonly areLevelsClear: boolean;
}

interface RawPiece extends WallPiece {
  readonly holesNm: Readonly<Record<SideName, readonly (readonly [along: number, height: number])[]>>;
}

export function wallPieces(task: WallTask, rowsNm: readonly number[], designs: boolean): Pieces {
  const raw: RawPiece[] = stacks(task.system.panels, rowsNm);
  const formNm = rowsNm.reduce((sum, each) => sum + each, 0);
  if (designs) {
    for (const design of task.designs) {
      const piece = designPiece(task, design, formNm);
      if (piece !== undefined) raw.push(piece);
    }
  }
  const heights = [
    ...new Set(raw.flatMap(({ holesNm }) => [...holesNm.A, ...holesNm.B].map(([, height]) => height))),
  ].sort((one, other) => one - other);
  return {
    classes: classesOf(raw, new Map(heights.map((height, level) => [height, level]))),
    levelsNm: heights,
    areLevelsClear: heights.every(
      (height, level) => level === 0 || height - (heights[level - 1] ?? 0) > task.tieToleranceNm,
    ),
  };
}

function classesOf(raw: readonly RawPiece[], levels: ReadonlyMap<number, number>): readonly PieceClass[] {
  const groups = new Map<string, { first: RawPiece; holes: PieceClass['holes']; pieces: RawPiece[] }>();
  for (const piece of raw) {
    const holesOf = (side: SideName): Hole[] =>
      piece.holesNm[side]
        .map(([alongNm, height]) => ({ alongNm, level: levels.get(height) ?? -1 }))
        .sort((one, other) => one.alongNm - other.alongNm || one.level - other.level);
    const holes = { A: holesOf('A'), B: holesOf('B') };
    const isDesign = piece.made.kind === 'design';
    const key = JSON.stringify([isDesign, piece.widthNm, holes]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { first: piece, holes, pieces: [piece] });
    else group.pieces.push(piece);
  }
  return [...groups.values()].map(({ first, holes, pieces }) => ({
    widthNm: first.widthNm,
    holes,
    isDesign: first.made.kind === 'design',
    pieces: pieces.toSorted((one, other) => one.panelCount - other.panelCount),
  }));
}

/** Every stack of the widths that any row has panels of. */
function stacks(panels: readonly Panel[], rowsNm: readonly number[]): RawPiece[] {
  const byRow = rowsNm.map((heightNm) => panels.filter((panel) => panel.heightNm === heightNm));
  const widths = [...new Set(panels.filter((p) => rowsNm.includes(p.heightNm)).map((p) => p.widthNm))];
  return widths.flatMap((widthNm) => {
    const ways = byRow.map((row) => rowWays(row, widthNm));
    return ways
      .reduce<readonly (readonly Panel[])[][]>(
        (before, way) => before.flatMap((rows) => way.map((row) => [...rows, row])),
        [[]],
      )
      .map((rows) => stackOf(widthNm, rows, rowsNm));
  });
}

function rowWays(panels: readonly Panel[], widthNm: number): readonly (readonly Panel[])[] {
  const alone = panels.filter((panel) => panel.widthNm === widthNm).map((panel) => [panel]);
  const pairs = panels.flatMap((one) =>
    panels.filter((other) => one.widthNm + other.widthNm === widthNm).map((other) => [one, other]),
  );
  return [...alone, ...pairs];
}

function stackOf(widthNm: number, rows: readonly (readonly Panel[])[], rowsNm: readonly number[]): RawPiece {
  let bottomNm = 0;
  const uses = new Map<string, number>();
  const holesNm: Record<SideName, [number, number][]> = { A: [], B: [] };
  const placed = rows.map((row, index): StackRow => {
    let alongNm = 0;
    const standing = row.map((panel) => {
      uses.set(panel.code, (uses.get(panel.code) ?? 0) + 1);
      for (const [x, y] of panel.tieHolesNm ?? []) {
        holesNm.A.push([alongNm + x, bottomNm + y]);
        // side B is drawn from its own back: what is left on the drawing lies farther along the wall
        holesNm.B.push([alongNm + panel.widthNm - x, bottomNm + y]);
      }
      const at = alongNm;
      alongNm += panel.widthNm;
      return { panel, alongNm: at };
    });
    const at = bottomNm;
    bottomNm += rowsNm[index] ?? 0;
    return { bottomNm: at, panels: standing };
  });
  return {
    widthNm,
    uses,
    panelCount: rows.flat().length,
    key: rows.map((row) => row.map(({ code }) => code).join('+')).join('/'),
    made: { kind: 'stack', rows: placed },
    holesNm: { A: eachOnce(holesNm.A), B: eachOnce(holesNm.B) },
  };
}

/** Fits where it is as high as the form and stands without a stop of its own geometry. */
function designPiece(task: WallTask, design: KnownDesign, formNm: number): RawPiece | undefined {
  const taken = takeOff(
    { ...task.system, rules: { ...task.system.rules, ties: { holes: true } } },
    design.geometry,
  );
  if (!taken.ok || taken.value.heightNm !== formNm) return undefined;
  const { widthNm, origin, findings, holes = [] } = taken.value;
  if (findings.some(({ rule, severity }) => severity === 'stop' && geometryRules.has(rule))) return undefined;
  const uses = new Map<string, number>();
  for (const { panel } of design.geometry.panels) uses.set(panel, (uses.get(panel) ?? 0) + 1);
  const { face: _, ...bare } = design.geometry;
  const from = holes.map(({ xNm, yNm }): [number, number] => [xNm - origin.xNm, yNm - origin.yNm]);
  return {
    widthNm,
    uses,
    panelCount: design.geometry.panels.length,
    key: `gang ${design.code}`,
    made: { kind: 'design', design, geometry: atCorner(bare, origin) },
    holesNm: { A: from, B: from.map(([x, y]) => [widthNm - x, y]) },
  };
}

const geometryRules: ReadonlySet<string> = new Set(['overlap', 'gap', 'outside-face']);

function eachOnce(places: readonly [number, number][]): [number, number][] {
  return [...new Map(places.map((place) => [place.join(' '), place])).values()];
}
