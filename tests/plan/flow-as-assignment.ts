// A flow of least cost said as an assignment. Every unit of an arc's capacity is a row that either flows, and is counted at
// the arc's end at its cost, or does not, and is counted at its beginning for nothing; a node takes as many rows as its
// outgoing capacity less its supply. (Flow as transportation: H. M. Wagner, On a class of capacitated transportation problems,
// Management Science 5 (1959) 304-318, from memory.)
import { bestMatching } from '../../core/plan/matching.ts';

interface Flow {
  readonly nodes: number;
  readonly supply: readonly number[];
  /** From, to, least, most, cost of a unit. */
  readonly arcs: readonly (readonly [number, number, number, number, number])[];
}

export interface Assigned {
  /** Paid whatever flows besides: the least of every arc. */
  readonly always: number;
  /** Of every row its columns with their costs. */
  readonly rows: readonly (readonly (readonly [column: number, cost: number])[])[];
}

/** null where a node would have to send more than its arcs take. */
export function flowAsAssignment({ nodes, supply, arcs }: Flow): Assigned | null {
  const rest = [...supply];
  let always = 0;
  for (const [from, to, least, , cost] of arcs) {
    rest[from] = (rest[from] ?? 0) - least;
    rest[to] = (rest[to] ?? 0) + least;
    always += least * cost;
  }
  const sent = rest.reduce((sum, each) => sum + Math.max(0, each), 0);
  // No arc need carry more than all that is sent, since none has a cost below nothing.
  const open = arcs.map(([from, to, least, most, cost]) => ({
    from,
    to,
    cost,
    units: Math.min(most - least, sent),
  }));
  const places: number[][] = [];
  let columns = 0;
  for (let node = 0; node < nodes; node += 1) {
    const out = open.reduce((sum, arc) => sum + (arc.from === node ? arc.units : 0), 0);
    const wanted = out - (rest[node] ?? 0);
    if (wanted < 0) return null;
    places.push(Array.from({ length: wanted }, (_, index) => columns + index));
    columns += wanted;
  }
  const rows = open.flatMap(({ from, to, cost, units }) => {
    const row = [
      ...(places[from] ?? []).map((column) => [column, 0] as const),
      ...(places[to] ?? []).map((column) => [column, cost] as const),
    ].sort(([one], [other]) => one - other);
    return Array.from({ length: units }, () => row);
  });
  return { always, rows };
}

/** The least sum in which every row has a column of its own; null where not every row can have one. */
export function leastSum({ always, rows }: Assigned): number | null {
  // More than all costs together: no pair is left out to save on another.
  const pair = 1 + rows.reduce((sum, row) => sum + Math.max(0, ...row.map(([, cost]) => cost)), 0);
  const start = [0];
  const to: number[] = [];
  const gain: number[] = [];
  for (const row of rows) {
    for (const [column, cost] of row) {
      to.push(column);
      gain.push(pair - cost);
    }
    start.push(to.length);
  }
  const graph = {
    turns: rows.length,
    start: Int32Array.from(start),
    to: Int32Array.from(to),
    gain: Float64Array.from(gain),
  };
  const { follower } = bestMatching(graph);
  let sum = always;
  for (const [index, row] of rows.entries()) {
    const found = row.find(([column]) => column === follower[index]);
    if (found === undefined) return null;
    sum += found[1];
  }
  return sum;
}
