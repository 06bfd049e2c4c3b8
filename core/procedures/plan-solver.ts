// The solver of the plan's models: HiGHS (MIT) behind the few calls that the improvement makes. It blocks its thread while it
// solves, so it belongs into a thread of its own; an interrupt asked now and then ends it.
import loader, { type Highs } from 'highs';
import type { OpenModel, PlanSolver, WholeAnswer, WholeLimits } from '../plan/mip/solver.ts';

/** The package says that its default export is a member or the function itself, by who asks; it is the function. */
const load = loader as unknown as () => Promise<Highs>;

type Model = ReturnType<Highs['createModel']>;

/** Tight, so that a proof needs little room; the defaults are a hundred times as wide. */
const tolerances = {
  primal_feasibility_tolerance: 1e-9,
  dual_feasibility_tolerance: 1e-9,
  mip_feasibility_tolerance: 1e-9,
};

/** The solver takes no limit that is not finite. */
const aYear = 31_536_000;

export async function planSolver(): Promise<PlanSolver> {
  const highs = await load();
  return {
    withModel: (work) =>
      highs.withModel((model) => {
        model.options.set({
          output_flag: false,
          random_seed: 0,
          mip_rel_gap: 0,
          mip_abs_gap: 0,
          ...tolerances,
        });
        return work(openModel(highs, model));
      }),
  };
}

/** A run that failed in its arithmetic has no answer: what was known before stands. */
function ran(run: () => unknown): boolean {
  try {
    run();
    return true;
  } catch (error) {
    if (error instanceof Error && error.message.startsWith('run failed')) return false;
    throw error;
  }
}

function openModel(highs: Highs, model: Model): OpenModel {
  const { modelStatus, callbackType, variableType } = highs.constants;
  const whole: number[] = [];
  let count = 0;
  const interrupts = (isOver: () => boolean) => {
    const ask = (event: { interrupt(): void }): undefined => {
      if (isOver()) event.interrupt();
    };
    return {
      [callbackType.simplexInterrupt]: ask,
      [callbackType.ipmInterrupt]: ask,
      [callbackType.mipInterrupt]: ask,
    };
  };
  /** The clocks of a model add up over its runs. */
  const allow = (seconds: number): void => {
    model.zeroAllClocks();
    model.options.set({ time_limit: Math.min(seconds, aYear) });
  };
  return {
    addColumns: (columns) => {
      const first = count;
      model.addCols({
        cost: Float64Array.from(columns, ({ cost }) => cost),
        lower: Float64Array.from(columns, ({ least }) => least),
        upper: Float64Array.from(columns, ({ most }) => most),
        matrix: {
          format: 'csc',
          numRows: model.getDimensions().numRows,
          numCols: columns.length,
          starts: new Int32Array(columns.length + 1),
          indices: new Int32Array(0),
          values: new Float64Array(0),
        },
      });
      for (const [index, column] of columns.entries()) if (column.whole) whole.push(first + index);
      count += columns.length;
      return first;
    },
    addRows: (rows) => {
      const starts = new Int32Array(rows.length + 1);
      for (const [index, { columns }] of rows.entries())
        starts[index + 1] = (starts[index] ?? 0) + columns.length;
      model.addRows({
        lower: Float64Array.from(rows, ({ least }) => least),
        upper: Float64Array.from(rows, ({ most }) => most),
        matrix: {
          format: 'csr',
          numRows: rows.length,
          numCols: count,
          starts,
          indices: Int32Array.from(rows.flatMap(({ columns }) => columns)),
          values: Float64Array.from(rows.flatMap(({ times }) => times)),
        },
      });
    },
    relaxed: (isOver, seconds = Infinity) => {
      model.clearIntegrality();
      allow(seconds);
      if (!ran(() => model.run(interrupts(isOver)))) return null;
      if (model.getModelStatus() !== modelStatus.optimal) return null;
      return { value: model.getObjectiveValue(), values: Float64Array.from(model.getSolution().colValue) };
    },
    whole: ({ nodes, isOver, seconds = Infinity, onFound, start }: WholeLimits): WholeAnswer => {
      allow(seconds);
      const types = Int32Array.from(whole, () => variableType.integer);
      const indices = Int32Array.from(whole).sort();
      model.changeColsIntegrality({ kind: 'set', indices }, types);
      model.options.set({ mip_max_nodes: Math.min(nodes, 2_000_000_000) });
      if (start !== undefined) model.setSolution({ indices: Int32Array.from(start.keys()), values: start });
      const callbacks = {
        ...interrupts(isOver),
        [callbackType.mipImprovingSolution]: (event: {
          readonly data: { readonly mip_solution?: Float64Array };
        }): undefined => {
          const found = event.data.mip_solution;
          if (found !== undefined) onFound?.(found);
        },
      };
      if (!ran(() => model.run(callbacks))) return { bound: -Infinity, values: null, complete: false };
      const status = model.getModelStatus();
      const complete = status === modelStatus.optimal;
      const values = Float64Array.from(model.getSolution().colValue);
      const bound = Number(model.info.get('mip_dual_bound'));
      const isThere = values.length === count && Number(model.info.get('primal_solution_status')) === 2;
      return { bound, values: isThere ? values : null, complete };
    },
  };
}
