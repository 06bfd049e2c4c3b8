// Small changes of a plan: give a turn another follower and mend what that breaks, put a turn into another
// run, or cut a run in two. Each is a list of parts taken out and put in.
import { edgeBetween, type Edges } from './edges.ts';
import type { Grid } from './grid.ts';
import type { Part } from './parts.ts';

/** A plan with both directions of its follows; -1 where there is none. */
export interface Chains {
  readonly follower: Int32Array;
  readonly leader: Int32Array;
}

export interface Move {
  readonly parts: Part[];
  /** The new follower of every turn that changes it. */
  readonly followers: readonly (readonly [turn: number, follower: number])[];
}

export function chainsOf(followers: Int32Array): Chains {
  const leader = new Int32Array(followers.length).fill(-1);
  for (const [turn, later] of followers.entries()) if (later >= 0) leader[later] = turn;
  return { follower: Int32Array.from(followers), leader };
}

export function carryOut({ follower, leader }: Chains, move: Move): void {
  for (const [turn] of move.followers) {
    const old = follower[turn] ?? -1;
    if (old >= 0 && leader[old] === turn) leader[old] = -1;
  }
  for (const [turn, later] of move.followers) {
    follower[turn] = later;
    if (later >= 0) leader[later] = turn;
  }
}

/** Uses the edge and joins the two loose ends, where there are two that fit. */
export function swapTails(grid: Grid, chains: Chains, edge: number): Move | undefined {
  const { earlier, later, after, before } = endsOf(grid.edges, chains, edge);
  if (after === later || after < 0 || before < 0) return undefined;
  const mend = allowedEdge(grid, before, after);
  if (mend < 0) return undefined;
  return {
    parts: [
      out('follow', edgeBetween(grid.edges, earlier, after)),
      out('follow', edgeBetween(grid.edges, before, later)),
      put('follow', edge),
      put('follow', mend),
    ],
    followers: [
      [earlier, later],
      [before, after],
    ],
  };
}

/** Uses the edge; the run that lost its tail ends, the tail that lost its run begins one. */
export function joinAndCut(grid: Grid, chains: Chains, edge: number): Move | undefined {
  const { earlier, later, after, before } = endsOf(grid.edges, chains, edge);
  if (after === later) return undefined;
  const parts: Part[] = [put('follow', edge)];
  const followers: [number, number][] = [[earlier, later]];
  if (after < 0) parts.push(out('end', earlier));
  else parts.push(out('follow', edgeBetween(grid.edges, earlier, after)), put('begin', after));
  if (before < 0) parts.push(out('begin', later));
  else {
    parts.push(out('follow', edgeBetween(grid.edges, before, later)), put('end', before));
    followers.push([before, -1]);
  }
  return { parts, followers };
}

/** Puts the later turn of the edge between the earlier one and its present follower. */
export function insertBetween(grid: Grid, chains: Chains, edge: number): Move | undefined {
  const { earlier, later, after, before } = endsOf(grid.edges, chains, edge);
  if (after < 0 || after === later) return undefined;
  const onward = allowedEdge(grid, later, after);
  if (onward < 0) return undefined;
  const rest = chains.follower[later] ?? -1;
  const parts: Part[] = [
    out('follow', edgeBetween(grid.edges, earlier, after)),
    put('follow', edge),
    put('follow', onward),
    before < 0 ? out('begin', later) : out('follow', edgeBetween(grid.edges, before, later)),
    rest < 0 ? out('end', later) : out('follow', edgeBetween(grid.edges, later, rest)),
  ];
  const followers: [number, number][] = [
    [earlier, later],
    [later, after],
  ];
  const mend = before >= 0 && rest >= 0 ? allowedEdge(grid, before, rest) : -1;
  if (mend >= 0) parts.push(put('follow', mend));
  else {
    if (before >= 0) parts.push(put('end', before));
    if (rest >= 0) parts.push(put('begin', rest));
  }
  if (before >= 0) followers.push([before, mend >= 0 ? rest : -1]);
  return { parts, followers };
}

/** Ends a run after the turn, unless what follows is fixed. The other moves use an edge of a turn in place of another, and a fixed one has no other. */
export function cutAfter(grid: Grid, chains: Chains, turn: number): Move | undefined {
  const after = chains.follower[turn] ?? -1;
  const edge = after < 0 ? -1 : edgeBetween(grid.edges, turn, after);
  if (edge < 0 || grid.edges.fixed[edge] === 1) return undefined;
  return {
    parts: [out('follow', edge), put('end', turn), put('begin', after)],
    followers: [[turn, -1]],
  };
}

/** By how much the number of runs changes. */
export function runsChange(move: Move): number {
  let change = 0;
  for (const { kind, sign } of move.parts) if (kind === 'begin') change += sign;
  return change;
}

function endsOf(
  edges: Edges,
  chains: Chains,
  edge: number,
): { earlier: number; later: number; after: number; before: number } {
  const earlier = edges.earlier[edge] ?? 0;
  const later = edges.to[edge] ?? 0;
  return { earlier, later, after: chains.follower[earlier] ?? -1, before: chains.leader[later] ?? -1 };
}

function allowedEdge(grid: Grid, earlier: number, later: number): number {
  const edge = edgeBetween(grid.edges, earlier, later);
  return edge >= 0 && grid.allowed[edge] === 1 ? edge : -1;
}

function put(kind: Part['kind'], which: number): Part {
  return { kind, which, sign: 1 };
}

function out(kind: Part['kind'], which: number): Part {
  return { kind, which, sign: -1 };
}
