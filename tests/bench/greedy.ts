// A plain plan to compare with: turns in order of time, each following the turn that stripped last before it
// among those for which following costs less labour than breaking down and assembling anew.
import type { Edges } from '../../core/plan/edges.ts';
import type { Model } from '../../core/plan/model.ts';

export function greedyPlan(model: Model, edges: Edges): Int32Array {
  const followers = new Int32Array(edges.turns).fill(-1);
  const into: number[][] = Array.from({ length: edges.turns }, () => []);
  for (const [edge, later] of edges.to.entries()) into[later]?.push(edge);
  const order = Array.from(model.from.keys()).sort(
    (left, right) => (model.from[left] ?? 0) - (model.from[right] ?? 0),
  );
  for (const later of order) {
    let [best, latest] = [-1, -Infinity];
    for (const edge of into[later] ?? []) {
      const earlier = edges.earlier[edge] ?? 0;
      const saved =
        (edges.breakDownLabour[earlier] ?? 0) +
        (edges.assembleLabour[later] ?? 0) -
        (edges.labour[edge] ?? 0);
      const strip = model.to[earlier] ?? 0;
      if (followers[earlier] === -1 && saved > 0 && strip > latest) [best, latest] = [earlier, strip];
    }
    if (best >= 0) followers[best] = later;
  }
  return followers;
}
