// A window of turns whose runs are chosen anew while all other turns keep what they have: for plans too large to be
// chosen as a whole.
import type { Edges } from '../edges.ts';
import type { Kept } from './kept.ts';

/** Of what is left, what the turns of the window may change; the plan as it is stays possible. */
export function keptInWindow(
  edges: Edges,
  kept: Kept,
  followers: Int32Array,
  isInside: (turn: number) => boolean,
): Kept {
  const leader = new Int32Array(edges.turns).fill(-1);
  for (const [turn, later] of followers.entries()) if (later >= 0) leader[later] = turn;
  const inside = kept.edges.filter((edge) => {
    const [earlier, later] = [edges.earlier[edge] ?? 0, edges.to[edge] ?? 0];
    return followers[earlier] === later || (isInside(earlier) && isInside(later));
  });
  return {
    edges: inside,
    begins: kept.begins.map((may, turn) => (leader[turn] === -1 || (may === 1 && isInside(turn)) ? 1 : 0)),
    ends: kept.ends.map((may, turn) => (followers[turn] === -1 || (may === 1 && isInside(turn)) ? 1 : 0)),
  };
}
