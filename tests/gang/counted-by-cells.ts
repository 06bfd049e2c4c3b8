// A second count of a gang by a different way, sharing no code with the take-off: the elevation is cut into cells at
// every edge of every piece, each cell knows what covers it, and joints and rails are read off neighbouring cells.
import type { DesignGeometry } from '../../core/gang/design.ts';
import type { PanelSystem } from '../../core/catalogue/system.ts';

type Cell = { readonly panel: number } | { readonly filler: number } | undefined;

export interface CountedJoint {
  readonly kind: 'vertical' | 'horizontal' | 'filler';
  readonly xNm: number;
  readonly yNm: number;
  readonly lengthNm: number;
  readonly locks: number;
}

/** Cut positions and cells; cells[column][row], from the lower left. */
export interface Cells {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly cells: readonly (readonly Cell[])[];
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

export function boxesOf(system: PanelSystem, design: DesignGeometry): { panels: Box[]; fillers: Box[] } {
  const panels = design.panels.map((placed) => {
    const { widthNm = 0, heightNm = 0 } = system.panels.find(({ code }) => code === placed.panel) ?? {};
    const [w, h] = placed.onSide ? [heightNm, widthNm] : [widthNm, heightNm];
    return { x: placed.xNm, y: placed.yNm, w, h };
  });
  const fillers = design.fillers.map((filler) => ({
    x: filler.xNm,
    y: filler.yNm,
    w: filler.widthNm,
    h: filler.heightNm,
  }));
  return { panels, fillers };
}

function sorted(values: number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

function covers(box: Box, x: number, y: number): boolean {
  return box.x <= x && x < box.x + box.w && box.y <= y && y < box.y + box.h;
}

export function cut(system: PanelSystem, design: DesignGeometry): Cells {
  const { panels, fillers } = boxesOf(system, design);
  const all = [...panels, ...fillers];
  const xs = sorted(all.flatMap((box) => [box.x, box.x + box.w]));
  const ys = sorted(all.flatMap((box) => [box.y, box.y + box.h]));
  const cells = xs.slice(0, -1).map((x) =>
    ys.slice(0, -1).map((y): Cell => {
      const panel = panels.findIndex((box) => covers(box, x, y));
      if (panel >= 0) return { panel };
      const filler = fillers.findIndex((box) => covers(box, x, y));
      return filler >= 0 ? { filler } : undefined;
    }),
  );
  return { xs, ys, cells };
}

/** The elevation turned over its diagonal, so that level and upright are counted by one loop. */
export function turned({ xs, ys, cells }: Cells): Cells {
  return { xs: ys, ys: xs, cells: ys.slice(0, -1).map((_, row) => cells.map((column) => column[row])) };
}

interface Stretch {
  readonly key: string;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** Stretches over which two panels meet across a cut, or over one filler with nothing else between. */
function meetings({ xs, ys, cells }: Cells): { panel: Stretch[]; filler: (Stretch & { across: number })[] } {
  const panel = new Map<string, Stretch>();
  const filler = new Map<string, Stretch & { across: number }>();
  for (let row = 0; row + 1 < ys.length; row++) {
    const [low = 0, high = 0] = [ys[row], ys[row + 1]];
    for (let column = 0; column + 2 < xs.length; column++) {
      const [one, next] = [cells[column]?.[row], cells[column + 1]?.[row]];
      if (one === undefined || !('panel' in one) || next === undefined) continue;
      const at = xs[column + 1] ?? 0;
      if ('panel' in next) {
        if (next.panel === one.panel) continue;
        const key = `${one.panel}|${next.panel}|${at}`;
        panel.set(key, { key, at, from: panel.get(key)?.from ?? low, to: high });
        continue;
      }
      let end = column + 1;
      const inFiller = (cell: Cell): boolean =>
        cell !== undefined && 'filler' in cell && cell.filler === next.filler;
      while (inFiller(cells[end]?.[row])) end++;
      const other = cells[end]?.[row];
      if (other === undefined || !('panel' in other)) continue;
      const key = `${one.panel}|${next.filler}|${other.panel}`;
      filler.set(key, { key, at, from: filler.get(key)?.from ?? low, to: high, across: (xs[end] ?? 0) - at });
    }
  }
  return { panel: [...panel.values()], filler: [...filler.values()] };
}

/** Locks of a length: the rows of the table are walked, whole last rows taken off first. */
function locksFor(length: number, bands: readonly { upToNm: number; count: number }[]): number {
  const last = bands[bands.length - 1] ?? { upToNm: 1, count: 0 };
  let [rest, locks] = [length, 0];
  while (rest > last.upToNm) {
    rest -= last.upToNm;
    locks += last.count;
  }
  for (const band of bands) if (rest <= band.upToNm) return locks + band.count;
  return locks;
}

/** Every joint with its locks, and the locks of edges where no level joint ends. */
export function countJoints(
  system: PanelSystem,
  design: DesignGeometry,
): { joints: CountedJoint[]; edgeLocks: number } {
  const { locks, fillerLocks } = system.rules;
  if (locks === undefined || fillerLocks === undefined) throw new Error('these tests need both lock tables');
  const grid = cut(system, design);
  const upright = meetings(grid);
  const level = meetings(turned(grid));
  const least = locks.minimumStretchNm ?? 0;
  const [left, right] = [grid.xs[0] ?? 0, grid.xs[grid.xs.length - 1] ?? 0];
  const extras = {
    left: locks.extra?.[design.edges.left] ?? 0,
    right: locks.extra?.[design.edges.right] ?? 0,
  };
  const joints: CountedJoint[] = [];
  for (const { at, from, to } of upright.panel) {
    const count = to - from < least ? 0 : locksFor(to - from, locks.bands);
    joints.push({ kind: 'vertical', xNm: at, yNm: from, lengthNm: to - from, locks: count });
  }
  for (const { at, from, to } of level.panel) {
    let count = to - from < least ? 0 : locksFor(to - from, locks.bands);
    if (count > 0 && from === left) count += extras.left;
    if (count > 0 && to === right) count += extras.right;
    joints.push({ kind: 'horizontal', xNm: from, yNm: at, lengthNm: to - from, locks: count });
  }
  const fillers = [
    ...upright.filler.map((found) => ({ ...found, x: found.at, y: found.from })),
    ...level.filler.map((found) => ({ ...found, x: found.from, y: found.at })),
  ];
  for (const { x, y, from, to, across } of fillers) {
    const takes = across <= fillerLocks.maximumWidthNm && to - from >= least;
    const count = takes ? locksFor(to - from, fillerLocks.bands ?? locks.bands) : 0;
    joints.push({ kind: 'filler', xNm: x, yNm: y, lengthNm: to - from, locks: count });
  }
  const edgeLocks =
    (level.panel.some(({ from }) => from === left) ? 0 : extras.left) +
    (level.panel.some(({ to }) => to === right) ? 0 : extras.right);
  return { joints, edgeLocks };
}

/** Places of stretches over which two panels face each other over empty cells only, less than the maximum apart. */
export function countGaps(system: PanelSystem, design: DesignGeometry): string[] {
  const maximum = system.rules.fillerLocks?.maximumWidthNm ?? 0;
  const plain = cut(system, design);
  const found: string[] = [];
  for (const { grid, isTurned } of [
    { grid: plain, isTurned: false },
    { grid: turned(plain), isTurned: true },
  ]) {
    const { xs, ys, cells } = grid;
    let open = new Set<string>();
    for (let row = 0; row + 1 < ys.length; row++) {
      const here = new Set<string>();
      for (let column = 0; column + 2 < xs.length; column++) {
        const one = cells[column]?.[row];
        if (one === undefined || !('panel' in one)) continue;
        let end = column + 1;
        while (end + 1 < xs.length && cells[end]?.[row] === undefined) end++;
        const other = cells[end]?.[row];
        const wide = (xs[end] ?? 0) - (xs[column + 1] ?? 0);
        if (end === column + 1 || wide >= maximum || other === undefined || !('panel' in other)) continue;
        const key = `${one.panel} ${other.panel}`;
        here.add(key);
        const [at, from] = [xs[column + 1], ys[row]];
        if (!open.has(key)) found.push(isTurned ? `${from} ${at}` : `${at} ${from}`);
      }
      open = here;
    }
  }
  return found;
}
