// Which follows, beginnings and ends a plan can still have that costs no more than a known one: the prices of the bound
// say for each what a plan with it costs at least. What is left out cannot be part of a better plan.
import type { Edges } from '../edges.ts';
import type { PricedPlan } from '../prices.ts';

export interface Kept {
  /** Places of edges, rising. */
  readonly edges: Int32Array;
  /** 1: a run may begin with the turn. */
  readonly begins: Uint8Array;
  readonly ends: Uint8Array;
}

/** @param limit what a plan may cost, in the money of the search, with what is wanting at the price of the proof */
export function keptUnder(edges: Edges, proof: PricedPlan, limit: number): Kept {
  // Sums of doubles: what is nearer to the limit than they can tell is kept.
  const room = limit - proof.bound + Math.abs(limit) * 1e-9 + edges.money.tolerance;
  const kept: number[] = [];
  for (const [edge, later] of edges.to.entries()) {
    const earlier = edges.earlier[edge] ?? 0;
    const loss = (proof.earlier[earlier] ?? 0) + (proof.later[later] ?? 0) - (proof.gain[edge] ?? 0);
    if (edges.fixed[edge] === 1 || loss <= room) kept.push(edge);
  }
  const begins = Uint8Array.from(proof.later, (loss) => (loss <= room ? 1 : 0));
  const ends = Uint8Array.from(proof.earlier, (loss) => (loss <= room ? 1 : 0));
  forbidBeside(edges, begins, ends);
  return { edges: Int32Array.from(kept), begins, ends };
}

export function keepAll(edges: Edges): Kept {
  const begins = new Uint8Array(edges.turns).fill(1);
  const ends = new Uint8Array(edges.turns).fill(1);
  forbidBeside(edges, begins, ends);
  return { edges: Int32Array.from(edges.to.keys()), begins, ends };
}

/** The earlier turn of a fixed follow ends no run, its later one begins none. */
function forbidBeside(edges: Edges, begins: Uint8Array, ends: Uint8Array): void {
  for (const [edge, isFixed] of edges.fixed.entries()) {
    if (isFixed !== 1) continue;
    ends[edges.earlier[edge] ?? 0] = 0;
    begins[edges.to[edge] ?? 0] = 0;
  }
}
