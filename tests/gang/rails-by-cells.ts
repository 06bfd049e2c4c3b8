// A second count of rails and bolts, by walking the cells that each line runs through. Shares no code with the
// take-off; positions are compared as whole numbers by scaling everything by the number of spaces.
import type { DesignGeometry } from '../../core/gang/design.ts';
import type { PanelSystem } from '../../core/catalogue/system.ts';
import { type Cells, cut, turned } from './counted-by-cells.ts';

export interface CountedRails {
  readonly byCode: Record<string, number>;
  readonly bolts: number;
  /** Pairs of panels, by place in the design, that some rail's line passes between. */
  readonly passed: ReadonlySet<string>;
}

/** What a line runs through, cell by cell: panels, and fillers between two panels or with none at their right. */
export type Step = { readonly what: string; readonly from: number; readonly to: number };

function walk(grid: Cells, column: number): Step[] {
  const { ys, cells } = grid;
  return ys.slice(0, -1).map((from, row): Step => {
    const cell = cells[column]?.[row];
    const to = ys[row + 1] ?? from;
    if (cell === undefined) return { what: 'nothing', from, to };
    if ('panel' in cell) return { what: `panel ${cell.panel}`, from, to };
    if (betweenPanels(cells[column] ?? [], row)) return { what: 'filler', from, to };
    let beside = column;
    const same = (at: number): boolean => {
      const other = cells[at]?.[row];
      return other !== undefined && 'filler' in other && other.filler === cell.filler;
    };
    while (same(beside)) beside++;
    const right = cells[beside]?.[row];
    // only a panel whose own edge stands on the filler's edge is at its right
    return { what: right !== undefined && 'panel' in right ? `panel ${right.panel}` : 'filler', from, to };
  });
}

/** Is the first thing that is no filler a panel, both ways along the line? */
function betweenPanels(line: Cells['cells'][number], row: number): boolean {
  return [-1, 1].every((way) => {
    let at = row;
    for (let cell = line[at]; cell !== undefined && 'filler' in cell; cell = line[at]) at += way;
    const end = line[at];
    return end !== undefined && 'panel' in end;
  });
}

type RailTable = NonNullable<PanelSystem['rules']['placingRails']>;

/** What every line of a table runs through, and where along its joints the line is, as a fraction. */
export function linesByCells(
  system: PanelSystem,
  design: DesignGeometry,
  table: RailTable,
): readonly { readonly steps: readonly Step[]; readonly at: number }[] {
  const plain = cut(system, design);
  const grid = table.across === 'horizontal-joints' ? plain : turned(plain);
  const [start = 0, end = 0] = [grid.xs[0], grid.xs[grid.xs.length - 1]];
  let spaces = 1;
  while (spaces * table.maximumAverageSpacingNm < end - start) spaces++;
  return Array.from({ length: spaces + 1 }, (_, line) => {
    const column =
      line === spaces
        ? grid.xs.length - 2
        : grid.xs.findLastIndex((x) => (x - start) * spaces <= line * (end - start));
    return { steps: walk(grid, column), at: start + (line * (end - start)) / spaces };
  });
}

/** The catalogue's rails that a gang of this height may take. */
export function railsFor(
  system: PanelSystem,
  design: DesignGeometry,
  table: RailTable,
): readonly { readonly code: string; readonly lengthNm: number }[] {
  const { ys } = cut(system, design);
  const high = (ys[ys.length - 1] ?? 0) - (ys[0] ?? 0);
  const minimum = table.lengths.find((row) => high <= row.gangUpToNm)?.minimumNm ?? 0;
  return system.components.flatMap(({ kind, code, lengthNm = 0 }) =>
    kind === 'stiffening-rail' && lengthNm >= minimum ? [{ code, lengthNm }] : [],
  );
}

export function countRails(system: PanelSystem, design: DesignGeometry): CountedRails {
  const { rails: table } = system.rules;
  if (table === undefined) throw new Error('these tests need a table of rails');
  const plain = cut(system, design);
  const grid = table.across === 'horizontal-joints' ? plain : turned(plain);
  const usable = railsFor(system, design, table);
  const byCode: Record<string, number> = {};
  const passed = new Set<string>();
  let bolts = 0;
  if (usable.length === 0) return { byCode, bolts, passed };
  const perPanel = table.boltsPerPanelCrossed ?? 0;
  const add = (code: string): void => {
    byCode[code] = (byCode[code] ?? 0) + 1;
  };
  for (const { steps } of linesByCells(system, design, table)) {
    const pairs = passings(steps);
    for (const { pair } of pairs) passed.add(pair);
    if (table.cover === 'each-joint') {
      const [first] = usable.toSorted((a, b) => a.lengthNm - b.lengthNm);
      for (let rail = 0; rail < pairs.length; rail++) if (first !== undefined) add(first.code);
      bolts += pairs.length * 2 * perPanel;
    } else if (pairs.length > 0) {
      let at = grid.ys[0] ?? 0;
      for (const rail of smallestCover(usable, (grid.ys[grid.ys.length - 1] ?? 0) - at)) {
        add(rail.code);
        const [low, up] = [at, at + rail.lengthNm];
        const over = steps.filter(({ what, from, to }) => what.startsWith('panel') && from < up && to > low);
        bolts += new Set(over.map(({ what }) => what)).size * perPanel;
        at = up;
      }
    }
  }
  return { byCode, bolts, passed };
}

/** A place where a line passes from one panel to the next: at a joint, or over what fillers fill between them. */
export interface Crossing {
  readonly pair: string;
  /** The panels' places in the design. */
  readonly first: number;
  readonly second: number;
  readonly from: number;
  readonly to: number;
}

/** From one panel to the next, directly or over filler cells only. */
export function passings(steps: readonly Step[]): Crossing[] {
  const found: Crossing[] = [];
  let last: Step | undefined;
  for (const step of steps) {
    if (step.what === 'nothing') last = undefined;
    if (!step.what.startsWith('panel')) continue;
    if (last !== undefined && last.what !== step.what) {
      const [first, second] = [last, step].map(({ what }) => Number(what.slice('panel '.length)));
      found.push({
        pair: `${last.what} ${step.what}`,
        first: first ?? 0,
        second: second ?? 0,
        from: last.to,
        to: step.from,
      });
    }
    last = step;
  }
  return found;
}

function total(set: readonly { lengthNm: number }[]): number {
  return set.reduce((sum, rail) => sum + rail.lengthNm, 0);
}

/** Tries every set of rails of growing size; of those that cover, the least total, then the longest first. */
export function smallestCover(
  rails: readonly { code: string; lengthNm: number }[],
  span: number,
): readonly { code: string; lengthNm: number }[] {
  const order = rails
    .filter((rail, index) => rails.findIndex((other) => other.lengthNm === rail.lengthNm) === index)
    .toSorted((a, b) => b.lengthNm - a.lengthNm);
  let sets: { code: string; lengthNm: number }[][] = [[]];
  for (;;) {
    sets = sets.flatMap((set) =>
      order
        .filter((rail) => rail.lengthNm <= (set.at(-1)?.lengthNm ?? Infinity))
        .map((rail) => [...set, rail]),
    );
    const covering = sets.filter((set) => total(set) >= span);
    const least = Math.min(...covering.map(total));
    const best = covering
      .filter((set) => total(set) === least)
      .toSorted((a, b) => (b[0]?.lengthNm ?? 0) - (a[0]?.lengthNm ?? 0))[0];
    if (best !== undefined) return best;
  }
}
