// The parts a plan is made of: where runs begin and end, and the follows between. Changes of a plan are lists
// of parts put in and taken out.
import { edgeBetween, type Edges } from './edges.ts';
import type { Followers } from './holding.ts';

/** A part of a plan: a run's beginning, its end, or a follow, put in (`sign` 1) or taken out (-1). */
export interface Part {
  readonly kind: 'begin' | 'end' | 'follow';
  /** The turn, or the edge of a follow. */
  readonly which: number;
  readonly sign: 1 | -1;
}

/** All parts of a plan. */
export function partsOf(edges: Edges, followers: Followers): Part[] {
  const followed = new Set(followers);
  const parts: Part[] = [];
  for (const [turn, later] of followers.entries()) {
    if (!followed.has(turn)) parts.push({ kind: 'begin', which: turn, sign: 1 });
    if (later < 0) parts.push({ kind: 'end', which: turn, sign: 1 });
    else parts.push({ kind: 'follow', which: edgeBetween(edges, turn, later), sign: 1 });
  }
  return parts;
}
