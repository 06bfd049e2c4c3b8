// The linear relaxation of the whole plan, solved by HiGHS: every follow may be used in part, held pieces are
// a running sum over instants, and a day's hire is at least every excess of the day. Instants are midnights
// and all beginnings of turns, loose turns and assemblies, not those of re-gangs: the relaxation is a little
// weaker for it, so a cost over it is, if anything, printed too high.
import loader, { type Highs } from 'highs';
import type { Edges } from '../../core/plan/edges.ts';
import type { Model } from '../../core/plan/model.ts';
import { sampleFrom, samplesOf, type Samples } from '../../core/plan/samples.ts';

export interface Relaxation {
  /** Least cost of the relaxation, in the money of the search. */
  readonly least: number;
  readonly rows: number;
  readonly columns: number;
  readonly seconds: number;
}

/** The package's types are those of CommonJS, where the default export is a member; as a module it is the function. */
const load = loader as unknown as typeof loader.default;

export function loadHighs(): Promise<Highs> {
  return load();
}

/** Throws where HiGHS does not end with an optimal solution of the model it was given. */
export function solveRelaxation(
  highs: Highs,
  model: Model,
  edges: Edges,
  solver: 'ipm' | 'simplex' = 'ipm',
): Relaxation {
  const started = performance.now();
  const lp = layOut(highs.infinity, model, edges);
  return highs.withModel(lp.data, (solved) => {
    solved.options.set({ output_flag: false, solver, run_crossover: 'off', random_seed: 0 });
    solved.run();
    const status = solved.getModelStatus();
    if (status !== highs.constants.modelStatus.optimal)
      throw new Error(`HiGHS ended with status ${status}, not optimal`);
    const { rowDual, colValue } = solved.getSolution();
    if (rowDual.length !== lp.data.numRows || colValue.length !== lp.data.numCols) {
      throw new Error('HiGHS solved another number of rows or columns than it was given');
    }
    const seconds = (performance.now() - started) / 1000;
    return { least: solved.getObjectiveValue(), rows: lp.data.numRows, columns: lp.data.numCols, seconds };
  });
}

export interface PlainSolve {
  readonly seconds: number;
  /** How far the best plan may be from the best possible, in percent; null where no plan was found. */
  readonly gapPercent: number | null;
}

/** The same model with whole follows, until its gap is no more than the one given or the time is up. */
export function solvePlain(
  highs: Highs,
  model: Model,
  edges: Edges,
  { gap, seconds }: { readonly gap: number; readonly seconds: number },
): PlainSolve {
  const started = performance.now();
  const { data } = layOut(highs.infinity, model, edges);
  const { integer, continuous } = highs.constants.variableType;
  const integrality = data.colCost.map((_, column) => (column < edges.to.length ? integer : continuous));
  return highs.withModel({ ...data, integrality }, (solved) => {
    solved.options.set({ output_flag: false, mip_rel_gap: gap, time_limit: seconds, random_seed: 0 });
    solved.run();
    const reached = Number(solved.info.get('mip_gap'));
    return {
      seconds: (performance.now() - started) / 1000,
      gapPercent: Number.isFinite(reached) ? reached * 100 : null,
    };
  });
}

class Columns {
  readonly starts: number[] = [0];
  readonly indices: number[] = [];
  readonly values: number[] = [];
  readonly cost: number[] = [];
  readonly lower: number[] = [];
  readonly upper: number[] = [];

  add(
    cost: number,
    lower: number,
    upper: number,
    entries: Iterable<readonly [row: number, value: number]>,
  ): void {
    for (const [row, value] of [...entries].sort((left, right) => left[0] - right[0])) {
      if (value === 0) continue;
      this.indices.push(row);
      this.values.push(value);
    }
    this.starts.push(this.indices.length);
    this.cost.push(cost);
    this.lower.push(lower);
    this.upper.push(upper);
  }
}

/** Rows: one for every turn as earlier, one as later, then the running sums, then the days' hire. */
function layOut(infinity: number, model: Model, edges: Edges) {
  const samples = samplesOf(model, edges);
  const count = samples.components.length;
  const cells = samples.times.length * count;
  const firstSum = 2 * edges.turns;
  const rowLower = new Float64Array(firstSum + 2 * cells).fill(-infinity);
  const rowUpper = new Float64Array(firstSum + 2 * cells).fill(0);
  const parts = new Parts(model, edges, samples, firstSum);
  let offset = 0;
  for (let turn = 0; turn < edges.turns; turn += 1) {
    rowUpper[turn] = 1;
    rowUpper[edges.turns + turn] = 1;
    offset += (edges.assembleLabour[turn] ?? 0) + (edges.breakDownLabour[turn] ?? 0);
    parts.begin(turn, 1);
    parts.end(turn, 1);
  }
  // The running sum of a plan without follows; follows change it by their columns.
  for (let cell = 0; cell < cells; cell += 1) {
    const before = cell >= count ? (samples.standing[cell - count] ?? 0) : 0;
    const change = (samples.standing[cell] ?? 0) - before;
    rowLower[firstSum + cell] = change;
    rowUpper[firstSum + cell] = change;
  }
  for (const [row, value] of parts.take()) {
    rowLower[row] = (rowLower[row] ?? 0) + value;
    rowUpper[row] = (rowUpper[row] ?? 0) + value;
  }
  const columns = new Columns();
  for (let edge = 0; edge < edges.to.length; edge += 1) {
    const [earlier, later] = [edges.earlier[edge] ?? 0, edges.to[edge] ?? 0];
    parts.follow(edge);
    parts.end(earlier, -1);
    parts.begin(later, -1);
    const changes = [...parts.take()].map(([row, value]) => [row, -value] as const);
    const cost =
      (edges.labour[edge] ?? 0) - (edges.breakDownLabour[earlier] ?? 0) - (edges.assembleLabour[later] ?? 0);
    columns.add(cost, 0, infinity, [[earlier, 1], [edges.turns + later, 1], ...changes]);
  }
  for (let cell = 0; cell < cells; cell += 1) {
    const entries: [number, number][] = [
      [firstSum + cell, 1],
      [firstSum + cells + cell, 1],
    ];
    if (cell + count < cells) entries.push([firstSum + cell + count, -1]);
    columns.add(0, -infinity, infinity, entries);
  }
  for (let day = 0; day < samples.days; day += 1) {
    for (const [index, component] of samples.components.entries()) {
      const entries: [number, number][] = [];
      for (const [sample, own] of samples.day.entries()) {
        if (own === day) entries.push([firstSum + cells + sample * count + index, -1]);
      }
      if (entries.length > 0) columns.add(edges.hire[component] ?? 0, 0, infinity, entries);
    }
  }
  const [numRows, numCols] = [rowLower.length, columns.cost.length];
  const { starts, indices, values } = columns;
  return {
    data: {
      numRows,
      numCols,
      offset,
      colCost: columns.cost,
      colLower: columns.lower,
      colUpper: columns.upper,
      rowLower,
      rowUpper,
      matrix: { format: 'csc' as const, numRows, numCols, starts, indices, values },
    },
  };
}

/** Gathers by how much the running sums change where parts of a plan begin and end to hold pieces. */
class Parts {
  private readonly model: Model;
  private readonly edges: Edges;
  private readonly samples: Samples;
  private readonly firstRow: number;
  private changes = new Map<number, number>();

  constructor(model: Model, edges: Edges, samples: Samples, firstRow: number) {
    this.model = model;
    this.edges = edges;
    this.samples = samples;
    this.firstRow = firstRow;
  }

  begin(turn: number, times: number): void {
    this.hold(
      (index) => times * this.pieces(turn, index),
      this.edges.assemblyFrom[turn] ?? 0,
      this.model.from[turn] ?? 0,
    );
  }

  end(turn: number, times: number): void {
    this.hold(
      (index) => times * this.pieces(turn, index),
      this.model.to[turn] ?? 0,
      this.edges.brokenDownAt[turn] ?? 0,
    );
  }

  follow(edge: number): void {
    const [earlier, later] = [this.edges.earlier[edge] ?? 0, this.edges.to[edge] ?? 0];
    const strip = this.model.to[earlier] ?? 0;
    const set = this.model.from[later] ?? 0;
    const more = (index: number): number => this.pieces(later, index) - this.pieces(earlier, index);
    this.hold((index) => Math.min(this.pieces(earlier, index), this.pieces(later, index)), strip, set);
    this.hold((index) => Math.max(0, more(index)), this.edges.builtFrom[edge] ?? 0, set);
    this.hold((index) => Math.max(0, -more(index)), strip, this.edges.takenOutAt[edge] ?? 0);
  }

  take(): Map<number, number> {
    const taken = this.changes;
    this.changes = new Map();
    return taken;
  }

  private pieces(turn: number, index: number): number {
    return this.samples.pieces[(this.model.design[turn] ?? 0) * this.samples.components.length + index] ?? 0;
  }

  private hold(quantityOf: (index: number) => number, from: number, to: number): void {
    const { times, components } = this.samples;
    const [first, last] = [sampleFrom(times, from), sampleFrom(times, to)];
    if (first === last) return;
    for (const index of components.keys()) {
      const quantity = quantityOf(index);
      if (quantity === 0) continue;
      this.add(first * components.length + index, quantity);
      if (last < times.length) this.add(last * components.length + index, -quantity);
    }
  }

  private add(cell: number, quantity: number): void {
    this.changes.set(this.firstRow + cell, (this.changes.get(this.firstRow + cell) ?? 0) + quantity);
  }
}
