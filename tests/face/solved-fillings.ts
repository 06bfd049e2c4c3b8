// The least score of a face by HiGHS, as three integer programs, each holding the optimum of the one before. What
// it answers is rounded and held against every constraint again in whole numbers.
import loader, { type Highs } from 'highs';
import type { RowsRequest } from '../../core/face/rows.ts';

/** The package's types are those of CommonJS, where the default export is a member; as a module it is the function. */
const load = loader as unknown as typeof loader.default;

export function loadHighs(): Promise<Highs> {
  return load();
}

type Score = readonly [shortage: number, fillerNm: number, panelCount: number];

/** Null where no filling exists. Throws where HiGHS ends otherwise than optimal or infeasible. */
export function solvedScore(highs: Highs, request: RowsRequest): Score | null {
  const held: number[] = [];
  let score: Score | null = null;
  for (let stage = 0; stage < 3; stage += 1) {
    const counts = solve(highs, request, stage, held);
    if (counts === null) {
      if (stage > 0) throw new Error('HiGHS lost the filling that it had found.');
      return null;
    }
    score = checked(request, counts);
    held.push(score[stage]!);
  }
  return score;
}

/** Columns: counts of row 0, row 1 ..., then panels of each code beyond the stock. */
function solve(highs: Highs, request: RowsRequest, stage: number, held: readonly number[]): number[] | null {
  const { widthsNm, lengthNm, maximumFillerNm, rows, stock } = request;
  const codes = widthsNm.length;
  const unit = widthsNm.reduce(common);
  // sums are whole multiples of the unit, so the limits can be whole multiples too
  const [least, most] = [
    Math.max(0, Math.ceil((lengthNm - maximumFillerNm) / unit)),
    Math.floor(lengthNm / unit),
  ];
  const widths = widthsNm.map((width) => width / unit);
  const numCols = codes * (rows + 1);
  const numRows = rows + codes + 2;
  const rowLower: number[] = [];
  const rowUpper: number[] = [];
  for (let row = 0; row < rows; row += 1) {
    rowLower.push(least);
    rowUpper.push(most);
  }
  for (let code = 0; code < codes; code += 1) {
    rowLower.push(-highs.infinity);
    rowUpper.push(stock?.[code] ?? highs.infinity);
  }
  rowLower.push(
    -highs.infinity,
    held[1] === undefined ? -highs.infinity : (lengthNm * rows - held[1]) / unit,
  );
  rowUpper.push(held[0] ?? highs.infinity, highs.infinity);
  const [starts, indices, values]: [number[], number[], number[]] = [[0], [], []];
  const cost: number[] = [];
  const column = (entries: readonly (readonly [row: number, value: number])[], price: number): void => {
    for (const [row, value] of entries) {
      indices.push(row);
      values.push(value);
    }
    starts.push(indices.length);
    cost.push(price);
  };
  for (let row = 0; row < rows; row += 1) {
    for (const [code, width] of widths.entries())
      column([[row, width], [rows + code, 1], [rows + codes + 1, width]], [0, -width, 1][stage]!); // prettier-ignore
  }
  for (let code = 0; code < codes; code += 1)
    column([[rows + code, -1], [rows + codes, 1]], stage === 0 ? 1 : 0); // prettier-ignore
  const data = {
    numRows,
    numCols,
    offset: 0,
    colCost: cost,
    rowLower,
    rowUpper,
    colLower: cost.map(() => 0),
    colUpper: cost.map(() => most * rows + 1),
    integrality: cost.map(() => highs.constants.variableType.integer),
    matrix: { format: 'csc' as const, numRows, numCols, starts, indices, values },
  };
  return highs.withModel(data, (model) => {
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0, random_seed: 0 });
    model.run();
    const status = model.getModelStatus();
    if (status === highs.constants.modelStatus.infeasible) return null;
    if (status !== highs.constants.modelStatus.optimal) throw new Error(`HiGHS ended with status ${status}.`);
    const { colValue } = model.getSolution();
    if (colValue.length !== numCols) throw new Error('HiGHS solved another model than it was given.');
    return [...colValue].map(Math.round).slice(0, codes * rows);
  });
}

function common(one: number, other: number): number {
  return other === 0 ? one : common(other, one % other);
}

function checked(
  { widthsNm, lengthNm, maximumFillerNm, rows, stock }: RowsRequest,
  counts: readonly number[],
): Score {
  const codes = widthsNm.length;
  const all = widthsNm.map(() => 0);
  let fillerNm = 0;
  for (let row = 0; row < rows; row += 1) {
    let leftNm = lengthNm;
    for (const [code, width] of widthsNm.entries()) {
      const count = counts[row * codes + code]!;
      if (count < 0) throw new Error('HiGHS answered a negative count.');
      all[code]! += count;
      leftNm -= count * width;
    }
    if (leftNm < 0 || leftNm > maximumFillerNm) throw new Error('HiGHS answered a row that does not fit.');
    fillerNm += leftNm;
  }
  const shortage = all.reduce(
    (sum, count, code) => sum + Math.max(0, count - (stock?.[code] ?? Infinity)),
    0,
  );
  return [shortage, fillerNm, all.reduce((sum, count) => sum + count, 0)];
}
