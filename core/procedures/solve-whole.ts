// Whole-number models given to HiGHS (MIT), which is loaded when it is first asked. Its answers are only proposals:
// whoever asked holds them against every row again in whole numbers. Ends by nodes and not by the clock, so that the same
// question has the same answer everywhere.
import loader from 'highs';
import type { ModelRow, WholeModel } from '../face/wall-stock-model.ts';
import type { Solved, SolveWhole } from '../face/wall-stock.ts';

/** The package's types are those of CommonJS, where the default export is a member; as a module it is the function. */
const load = loader as unknown as typeof loader.default;

const mostNodes = 20_000;

/** Blocks its thread while it solves. */
export async function wholeSolver(): Promise<SolveWhole> {
  const highs = await load();
  const { optimal, infeasible } = highs.constants.modelStatus;
  return ({ columns, rows }, cost): Solved => {
    const model = {
      numRows: rows.length,
      numCols: columns.length,
      offset: 0,
      colCost: [...cost],
      rowLower: rows.map((row) => row.least),
      rowUpper: rows.map((row) => row.most),
      colLower: columns.map(() => 0),
      colUpper: columns.map((column) => column.most),
      integrality: columns.map(() => highs.constants.variableType.integer),
      matrix: byColumn({ columns, rows }),
    };
    return highs.withModel(model, (made): Solved => {
      made.options.set({
        output_flag: false,
        mip_rel_gap: 0,
        mip_abs_gap: 0,
        mip_max_nodes: mostNodes,
        random_seed: 0,
      });
      made.run();
      const status = made.getModelStatus();
      if (status === infeasible) return { status: 'none' };
      const values = [...made.getSolution().colValue];
      if (values.length !== columns.length) return { status: 'none' };
      return { status: status === optimal ? 'best' : 'some', values };
    });
  };
}

function byColumn({ columns, rows }: WholeModel) {
  const entries = columns.map((): [row: number, times: number][] => []);
  for (const [at, row] of rows.entries()) addRow(entries, at, row);
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const column of entries) {
    for (const [row, times] of column) {
      indices.push(row);
      values.push(times);
    }
    starts.push(indices.length);
  }
  return {
    format: 'csc' as const,
    numRows: rows.length,
    numCols: columns.length,
    starts,
    indices,
    values,
  };
}

/** A column that stands in a row twice counts once with both. */
function addRow(entries: [row: number, times: number][][], at: number, row: ModelRow): void {
  const sums = new Map<number, number>();
  for (const [column, times] of row.entries) sums.set(column, (sums.get(column) ?? 0) + times);
  for (const [column, times] of sums) if (times !== 0) entries[column]?.push([at, times]);
}
