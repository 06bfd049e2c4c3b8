// A plan to begin from: of runs known before the follows that are still allowed. Turns that are gone are left out, so
// that what stood before and after one of them may follow each other; new turns stand alone.
import { edgeBetween, type Edges } from './edges.ts';
import type { Model } from './model.ts';

export function startOf(
  model: Model,
  edges: Edges,
  runs: readonly { readonly turns: readonly string[] }[] | undefined,
): Int32Array | undefined {
  if (runs === undefined) return undefined;
  const place = new Map(model.turnIds.map((id, index) => [id, index]));
  const followers = new Int32Array(edges.turns).fill(-1);
  const followed = new Uint8Array(edges.turns);
  const use = (earlier: number, later: number): void => {
    if (followers[earlier] !== -1 || followed[later] === 1) return;
    followers[earlier] = later;
    followed[later] = 1;
  };
  for (const [edge, isFixed] of edges.fixed.entries())
    if (isFixed === 1) use(edges.earlier[edge] ?? 0, edges.to[edge] ?? 0);
  for (const { turns } of runs) {
    const there = turns.flatMap((id) => place.get(id) ?? []);
    for (const [index, later] of there.entries()) {
      const earlier = there[index - 1];
      if (earlier !== undefined && edgeBetween(edges, earlier, later) >= 0) use(earlier, later);
    }
  }
  return followers;
}
