// The follows worth trying for each turn: those that save most at the prices of the bound. Small plans
// try all of them.
import type { Edges } from './edges.ts';

/** The places of edges to try, in rising order; `perTurn` of the best for every turn, before and after it. */
export function candidateEdges(
  edges: Edges,
  gain: Float64Array,
  perTurn: number,
  keep: Iterable<number>,
): Int32Array {
  const chosen = new Uint8Array(edges.to.length);
  for (const edge of keep) if (edge >= 0) chosen[edge] = 1;
  const into: number[][] = Array.from({ length: edges.turns }, () => []);
  for (let turn = 0; turn < edges.turns; turn += 1) {
    const out: number[] = [];
    for (let edge = edges.start[turn] ?? 0; edge < (edges.start[turn + 1] ?? 0); edge += 1) {
      if (perTurn < edges.turns && (gain[edge] ?? 0) <= 0) continue;
      out.push(edge);
      into[edges.to[edge] ?? 0]?.push(edge);
    }
    chooseBest(out, gain, perTurn, chosen);
  }
  for (const list of into) chooseBest(list, gain, perTurn, chosen);
  return Int32Array.from(chosen.keys()).filter((edge) => chosen[edge] === 1);
}

function chooseBest(list: number[], gain: Float64Array, most: number, chosen: Uint8Array): void {
  if (list.length > most) list.sort((left, right) => (gain[right] ?? 0) - (gain[left] ?? 0) || left - right);
  for (const edge of list.slice(0, most)) chosen[edge] = 1;
}
