// The runs of a plan as a mixed-integer model: a column for every beginning, end and follow that is left, so that every turn has
// one arrival and one departure; for every component and day of hire a column for its greatest excess, with rows only at
// instants at which a solution was seen to break one. Least cost, or (`aim` unmet) least piece-days that cannot be hired.
import type { Edges } from '../edges.ts';
import type { Model } from '../model.ts';
import type { Part } from '../parts.ts';
import { Holdings } from './holdings.ts';
import type { Kept } from './kept.ts';
import type { NewColumn, NewRow, OpenModel } from './solver.ts';

export interface Aim {
  readonly kind: 'unmet' | 'cost';
  /** Of `cost`: no more piece-days wanting than this. */
  readonly mostUnmet: number;
}

type Column = Pick<Part, 'kind' | 'which'>;

/** What one column holds of a component; a column's holds of it stand together. */
interface ColumnHold {
  readonly column: number;
  readonly quantity: number;
  readonly from: number;
  readonly to: number;
}

const isUsed = 1e-7;
const isBroken = 1e-6;

export class PlanModel {
  private readonly edges: Edges;
  private readonly open: OpenModel;
  private readonly aim: Aim;
  private readonly columns: readonly Column[];
  private readonly holdings: Holdings;
  /** The column of a component's excess on a day. */
  private readonly excessOf = new Map<number, number>();
  private readonly rowsAt = new Set<number>();
  private readonly turnOf: readonly [arrivals: number[][], departures: number[][]];
  private readonly holds: readonly ColumnHold[][];
  private all: number;
  /** What one of the model's objective is worth; a power of two, so that nothing is rounded by it. */
  readonly unit: number;
  /** The column that is no less than all excesses that cannot be hired together; -1 where none is needed. */
  private unmetSum = -1;
  private readonly unmetColumns: number[] = [];

  constructor(open: OpenModel, model: Model, edges: Edges, kept: Kept, aim: Aim) {
    this.open = open;
    this.edges = edges;
    this.aim = aim;
    this.holdings = new Holdings(model, edges, kept);
    this.columns = columnsOf(edges, kept);
    this.all = this.columns.length;
    this.unit = aim.kind === 'unmet' ? 1 : unitOf(edges);
    const holds: ColumnHold[][] = Array.from(this.holdings.components, () => []);
    for (const [column, part] of this.columns.entries())
      this.holdings.of(part, (index, quantity, from, to) =>
        holds[index]?.push({ column, quantity, from, to }),
      );
    this.holds = holds;
    const arrivals: number[][] = Array.from({ length: edges.turns }, () => []);
    const departures: number[][] = Array.from({ length: edges.turns }, () => []);
    for (const [place, { kind, which }] of this.columns.entries()) {
      if (kind !== 'end') arrivals[kind === 'begin' ? which : (edges.to[which] ?? 0)]?.push(place);
      if (kind !== 'begin') departures[kind === 'end' ? which : (edges.earlier[which] ?? 0)]?.push(place);
    }
    this.turnOf = [arrivals, departures];
    open.addColumns(this.columns.map((column) => this.columnOf(column)));
    open.addRows(
      [...arrivals, ...departures].map((columns): NewRow => ({
        least: 1,
        most: 1,
        columns,
        times: columns.map(() => 1),
      })),
    );
    this.addUnmetRow();
  }

  /** The follower of every turn in a solution of whole numbers; null where it is none. */
  followersIn(values: Float64Array): Int32Array | null {
    const followers = new Int32Array(this.edges.turns).fill(-1);
    for (const list of this.turnOf) {
      for (const columns of list) {
        const used = columns.filter((column) => (values[column] ?? 0) > 0.5);
        const [one] = used;
        if (one === undefined || used.length !== 1) return null;
        const { kind, which } = this.columns[one] ?? { kind: 'end', which: 0 };
        if (kind === 'follow') followers[this.edges.earlier[which] ?? 0] = this.edges.to[which] ?? -1;
      }
    }
    return followers;
  }

  /** The values of a plan; null where it has a part that was left out, or leaves too much wanting. */
  valuesOf(parts: readonly Part[]): Float64Array | null {
    const place = new Map(this.columns.map(({ kind, which }, index) => [`${kind} ${which}`, index]));
    const values = new Float64Array(this.all);
    for (const { kind, which } of parts) {
      const column = place.get(`${kind} ${which}`);
      if (column === undefined) return null;
      values[column] = 1;
    }
    const excess = this.excessIn(values);
    for (const [key, column] of this.excessOf) values[column] = Math.max(0, this.mostOf(excess, key).over);
    if (this.unmetSum >= 0) {
      const unmet = this.unmetColumns.reduce((sum, column) => sum + (values[column] ?? 0), 0);
      if (unmet > this.aim.mostUnmet) return null;
      values[this.unmetSum] = unmet;
    }
    return values;
  }

  /** Adds for every component and day the row that the solution breaks most; answers how many. */
  addBroken(values: Float64Array): number {
    const excess = this.excessIn(values);
    const rows: NewRow[] = [];
    const { dayFirst, components } = this.holdings;
    for (let index = 0; index < components.length; index += 1) {
      if (this.aim.kind === 'unmet' && this.edges.cannotHire[components[index] ?? 0] !== 1) continue;
      for (let day = 0; day < dayFirst.length; day += 1) {
        const key = index * dayFirst.length + day;
        const { at, over } = this.mostOf(excess, key);
        const known = this.excessOf.get(key);
        if (over <= (known === undefined ? 0 : (values[known] ?? 0)) + isBroken) continue;
        const row = index * this.holdings.times.length + at;
        if (this.rowsAt.has(row)) continue;
        this.rowsAt.add(row);
        rows.push(this.rowOf(index, at, known ?? this.addExcess(index, key)));
      }
    }
    if (rows.length > 0) this.open.addRows(rows);
    return rows.length;
  }

  private columnOf({ kind, which }: Column): NewColumn {
    const { edges } = this;
    const labour =
      kind === 'begin'
        ? edges.assembleLabour[which]
        : kind === 'end'
          ? edges.breakDownLabour[which]
          : edges.labour[which];
    const cost = this.aim.kind === 'unmet' ? 0 : (labour ?? 0) / this.unit;
    return { cost, least: 0, most: 1, whole: true };
  }

  private addUnmetRow(): void {
    if (this.aim.kind === 'unmet') return;
    // Its columns come as they are needed: each names the row by a column that sums them up.
    this.unmetSum = this.open.addColumns([{ cost: 0, least: 0, most: this.aim.mostUnmet, whole: false }]);
    this.all += 1;
  }

  private addExcess(index: number, key: number): number {
    const component = this.holdings.components[index] ?? 0;
    const cannot = this.edges.cannotHire[component] === 1;
    const cost = this.aim.kind === 'unmet' ? 1 : cannot ? 0 : (this.edges.hire[component] ?? 0) / this.unit;
    const column = this.open.addColumns([{ cost, least: 0, most: Infinity, whole: false }]);
    this.all += 1;
    this.excessOf.set(key, column);
    if (cannot && this.aim.kind === 'cost') {
      this.unmetColumns.push(column);
      // All of them together are under the sum: the latest row is the one that counts.
      this.open.addRows([
        {
          least: 0,
          most: Infinity,
          columns: [this.unmetSum, ...this.unmetColumns],
          times: [1, ...this.unmetColumns.map(() => -1)],
        },
      ]);
    }
    return column;
  }

  private rowOf(index: number, at: number, excess: number): NewRow {
    const columns: number[] = [excess];
    const times: number[] = [-1];
    for (const { column, quantity, from, to } of this.holds[index] ?? []) {
      if (at < from || at >= to) continue;
      if (columns.at(-1) === column) times.push((times.pop() ?? 0) + quantity);
      else {
        columns.push(column);
        times.push(quantity);
      }
    }
    const { standing, times: instants } = this.holdings;
    return { least: -Infinity, most: -(standing[index * instants.length + at] ?? 0), columns, times };
  }

  private excessIn(values: Float64Array): Float64Array {
    const { standing, times } = this.holdings;
    const change = new Float64Array(standing.length + 1);
    for (const [index, holds] of this.holds.entries()) {
      const row = index * times.length;
      for (const { column, quantity, from, to } of holds) {
        const value = values[column] ?? 0;
        if (value < isUsed) continue;
        change[row + from] = (change[row + from] ?? 0) + quantity * value;
        if (to < times.length) change[row + to] = (change[row + to] ?? 0) - quantity * value;
      }
    }
    const excess = new Float64Array(standing.length);
    for (let row = 0; row < standing.length; row += times.length) {
      let held = 0;
      for (let at = row; at < row + times.length; at += 1) {
        held += change[at] ?? 0;
        excess[at] = held + (standing[at] ?? 0);
      }
    }
    return excess;
  }

  private mostOf(excess: Float64Array, key: number): { at: number; over: number } {
    const { dayFirst, times } = this.holdings;
    const day = key % dayFirst.length;
    const row = ((key - day) / dayFirst.length) * times.length;
    let [at, over] = [dayFirst[day] ?? 0, -Infinity];
    const end = dayFirst[day + 1] ?? times.length;
    for (let cell = dayFirst[day] ?? 0; cell < end; cell += 1) {
      const here = excess[row + cell] ?? 0;
      if (here > over + 1e-9) [at, over] = [cell, here];
    }
    return { at, over };
  }
}

function columnsOf(edges: Edges, kept: Kept): Column[] {
  const columns: Column[] = [];
  for (let turn = 0; turn < edges.turns; turn += 1) {
    if (kept.begins[turn] === 1) columns.push({ kind: 'begin', which: turn });
    if (kept.ends[turn] === 1) columns.push({ kind: 'end', which: turn });
  }
  for (const edge of kept.edges) columns.push({ kind: 'follow', which: edge });
  return columns;
}

/** Amounts of about a thousand at most suit the tolerances of solvers. */
function unitOf(edges: Edges): number {
  let most = 0;
  for (const list of [edges.labour, edges.assembleLabour, edges.breakDownLabour, edges.hire])
    for (const amount of list) most = Math.max(most, amount);
  return most > 0 ? 2 ** Math.ceil(Math.log2(most) - 10) : 1;
}
