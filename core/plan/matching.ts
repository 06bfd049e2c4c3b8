// The assignment of followers that saves most: every turn has at most one follower and follows at most
// one. Shortest augmenting paths over reduced costs; the dual values prove that no assignment saves more.
// Method: the Hungarian method by successive shortest paths (Kuhn 1955, Edmonds and Karp 1972).

/** Savings of the edges that save anything, laid out as `Edges` are; `gain` must be over 0. */
export interface GainGraph {
  readonly turns: number;
  readonly start: Int32Array;
  readonly to: Int32Array;
  readonly gain: Float64Array;
}

export interface Matching {
  readonly follower: Int32Array;
  /** Dual values: for every edge `earlier + later >= gain`, so their sum is not under any saving. */
  readonly earlier: Float64Array;
  readonly later: Float64Array;
}

export function bestMatching(graph: GainGraph): Matching {
  const { turns, start, gain } = graph;
  const state: State = {
    graph,
    follower: new Int32Array(turns).fill(-1),
    leader: new Int32Array(turns).fill(-1),
    earlier: new Float64Array(turns),
    later: new Float64Array(turns),
    columnCost: new Float64Array(turns).fill(Infinity),
    columnFrom: new Int32Array(turns).fill(-1),
    columnDone: new Uint8Array(turns),
    rowCost: new Float64Array(turns),
  };
  for (let row = 0; row < turns; row += 1) {
    let most = 0;
    for (let edge = start[row] ?? 0; edge < (start[row + 1] ?? 0); edge += 1)
      most = Math.max(most, gain[edge] ?? 0);
    state.earlier[row] = most;
  }
  for (let row = 0; row < turns; row += 1) if ((state.earlier[row] ?? 0) > 0) augment(state, row);
  return { follower: state.follower, earlier: state.earlier, later: state.later };
}

interface State {
  readonly graph: GainGraph;
  readonly follower: Int32Array;
  readonly leader: Int32Array;
  readonly earlier: Float64Array;
  readonly later: Float64Array;
  readonly columnCost: Float64Array;
  readonly columnFrom: Int32Array;
  readonly columnDone: Uint8Array;
  readonly rowCost: Float64Array;
}

/** Finds the cheapest way to give `first` a follower, or to leave some turn of the chain without one. */
function augment(state: State, first: number): void {
  const { follower, leader, earlier, later, columnCost, columnFrom, columnDone, rowCost } = state;
  const seen: number[] = [];
  const rows = [first];
  rowCost[first] = 0;
  // Leaving a row without a follower costs its dual value on top of the way to it.
  let dropRow = first;
  let dropCost = earlier[first] ?? 0;
  let freeColumn = -1;
  let reached = Infinity;
  let row = first;
  for (;;) {
    scan(state, row, seen);
    let column = -1;
    let cost = dropCost;
    for (const candidate of seen) {
      if (columnDone[candidate] === 0 && (columnCost[candidate] ?? Infinity) < cost) {
        cost = columnCost[candidate] ?? Infinity;
        column = candidate;
      }
    }
    reached = cost;
    if (column < 0) break;
    columnDone[column] = 1;
    const next = leader[column] ?? -1;
    if (next < 0) {
      freeColumn = column;
      break;
    }
    rowCost[next] = cost;
    rows.push(next);
    if (cost + (earlier[next] ?? 0) < dropCost) {
      dropCost = cost + (earlier[next] ?? 0);
      dropRow = next;
    }
    row = next;
  }
  for (const scanned of rows)
    earlier[scanned] = (earlier[scanned] ?? 0) - Math.max(0, reached - (rowCost[scanned] ?? 0));
  for (const column of seen) {
    if (columnDone[column] === 1)
      later[column] = (later[column] ?? 0) + Math.max(0, reached - (columnCost[column] ?? 0));
  }
  let column = freeColumn >= 0 ? freeColumn : (follower[dropRow] ?? -1);
  if (freeColumn < 0) {
    // The dropped row gives its column back to the row by which the column was reached.
    follower[dropRow] = -1;
    if (dropRow === first) column = -1;
  }
  while (column >= 0) {
    const from = columnFrom[column] ?? -1;
    const before = from === first ? -1 : (follower[from] ?? -1);
    follower[from] = column;
    leader[column] = from;
    column = before;
  }
  for (const touched of seen) {
    columnCost[touched] = Infinity;
    columnDone[touched] = 0;
  }
}

function scan(
  { graph, earlier, later, columnCost, columnFrom, columnDone, rowCost }: State,
  row: number,
  seen: number[],
): void {
  const end = graph.start[row + 1] ?? 0;
  const base = (rowCost[row] ?? 0) + (earlier[row] ?? 0);
  for (let edge = graph.start[row] ?? 0; edge < end; edge += 1) {
    const column = graph.to[edge] ?? 0;
    const cost = base + (later[column] ?? 0) - (graph.gain[edge] ?? 0);
    const known = columnCost[column] ?? Infinity;
    if (cost >= known || columnDone[column] === 1) continue;
    if (known === Infinity) seen.push(column);
    columnCost[column] = cost;
    columnFrom[column] = row;
  }
}
