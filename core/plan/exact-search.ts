// The best plan of a small input by looking at every way to choose, turn by turn in order of time, what it
// follows. Pieces once held stay held, so a beginning that is already dearer than a known plan is left.
import { edgeBetween } from './edges.ts';
import type { Grid, SearchCost } from './grid.ts';
import type { Model } from './model.ts';
import type { Part } from './parts.ts';

export interface ExactResult {
  readonly followers: Int32Array;
  readonly cost: SearchCost;
  /** Whether every way was looked at or ruled out, so that no plan is better. */
  readonly complete: boolean;
}

/** What the prices prove: a plan costs at least `bound` and, for every choice, its loss besides. */
export interface PriceProof {
  readonly bound: number;
  readonly earlier: Float64Array;
  readonly later: Float64Array;
  readonly gain: Float64Array;
}

/** Searches from a known plan on; gives up after so many choices. The grid must allow every edge. */
export function exactSearch(
  model: Model,
  grid: Grid,
  known: { readonly followers: Int32Array; readonly cost: SearchCost },
  proof: PriceProof,
  mostChoices: number,
): ExactResult {
  const search = new Search(model, grid, known, proof, mostChoices);
  search.run();
  return { followers: search.best, cost: search.bestCost, complete: search.choices < mostChoices };
}

class Search {
  best: Int32Array;
  bestCost: SearchCost;
  choices = 0;
  private readonly grid: Grid;
  private readonly proof: PriceProof;
  private readonly most: number;
  private readonly order: number[];
  private readonly followers: Int32Array;
  /** The least labour of giving all turns from this place of the order on a beginning or a leader. */
  private readonly labourLeft: Float64Array;
  /** 1: a fixed follow leads to the turn, so that it begins no run. */
  private readonly isFixedLater: Uint8Array;

  constructor(
    model: Model,
    grid: Grid,
    known: { readonly followers: Int32Array; readonly cost: SearchCost },
    proof: PriceProof,
    most: number,
  ) {
    this.grid = grid;
    this.proof = proof;
    this.most = most;
    this.best = Int32Array.from(known.followers);
    this.bestCost = known.cost;
    const turns = known.followers.length;
    this.followers = new Int32Array(turns).fill(-1);
    this.order = Array.from(known.followers.keys());
    this.order.sort((left, right) => (model.from[left] ?? 0) - (model.from[right] ?? 0) || left - right);
    this.isFixedLater = new Uint8Array(turns);
    for (const [edge, later] of grid.edges.to.entries())
      if (grid.edges.fixed[edge] === 1) this.isFixedLater[later] = 1;
    const least = Float64Array.from(grid.edges.assembleLabour);
    for (const [edge, later] of grid.edges.to.entries()) {
      least[later] = Math.min(least[later] ?? 0, grid.edges.labour[edge] ?? 0);
    }
    this.labourLeft = new Float64Array(turns + 1);
    for (let place = turns - 1; place >= 0; place -= 1) {
      this.labourLeft[place] = (this.labourLeft[place + 1] ?? 0) + (least[this.order[place] ?? 0] ?? 0);
    }
  }

  run(): void {
    this.choose(0, this.grid.layNothing(), 0);
  }

  private choose(place: number, spent: SearchCost, loss: number): void {
    if (this.choices >= this.most || this.tooDear(spent, this.labourLeft[place] ?? 0, loss)) return;
    const turn = this.order[place];
    if (turn === undefined) {
      this.finish(spent);
      return;
    }
    for (const leader of this.order.slice(0, place)) {
      const edge = (this.followers[leader] ?? -1) < 0 ? edgeBetween(this.grid.edges, leader, turn) : -1;
      if (edge < 0) continue;
      const { earlier, later, gain } = this.proof;
      const lost = (earlier[leader] ?? 0) + (later[turn] ?? 0) - (gain[edge] ?? 0);
      this.followers[leader] = turn;
      this.under({ kind: 'follow', which: edge, sign: 1 }, place, spent, loss + Math.max(0, lost));
      this.followers[leader] = -1;
    }
    if (this.isFixedLater[turn] === 1) return;
    this.under({ kind: 'begin', which: turn, sign: 1 }, place, spent, loss + (this.proof.later[turn] ?? 0));
  }

  private under(part: Part, place: number, spent: SearchCost, loss: number): void {
    this.choices += 1;
    const change = this.grid.change([part]);
    const now = { unmet: spent.unmet + change.unmet, cost: spent.cost + change.cost };
    if (this.tooDear(now, this.labourLeft[place + 1] ?? 0, loss)) return;
    this.grid.apply([part]);
    this.choose(place + 1, now, loss);
    this.grid.apply([{ ...part, sign: -1 }]);
  }

  private tooDear(spent: SearchCost, labourLeft: number, loss: number): boolean {
    const { tolerance } = this.grid.edges.money;
    if (spent.unmet !== this.bestCost.unmet) return spent.unmet > this.bestCost.unmet;
    const limit = this.bestCost.cost + tolerance;
    if (spent.cost + labourLeft > limit) return true;
    // The prices speak of cost alone, so they rule out only where no piece can be wanting.
    return this.bestCost.unmet === 0 && this.proof.bound + loss > limit + Math.abs(limit) * 1e-9;
  }

  /** All turns have their place: what has no follower is broken down. */
  private finish(spent: SearchCost): void {
    let { unmet, cost } = spent;
    const ends: Part[] = [];
    for (const [turn, later] of this.followers.entries()) {
      if (later >= 0) continue;
      const part: Part = { kind: 'end', which: turn, sign: 1 };
      const change = this.grid.change([part]);
      this.grid.apply([part]);
      ends.push(part);
      unmet += change.unmet;
      cost += change.cost;
    }
    for (const part of ends) this.grid.apply([{ ...part, sign: -1 }]);
    if (this.isBetter({ unmet, cost })) {
      this.best = Int32Array.from(this.followers);
      this.bestCost = { unmet, cost };
    }
  }

  private isBetter({ unmet, cost }: SearchCost): boolean {
    if (unmet !== this.bestCost.unmet) return unmet < this.bestCost.unmet;
    const difference = cost - this.bestCost.cost;
    if (Math.abs(difference) > this.grid.edges.money.tolerance) return difference < 0;
    return isSooner(this.followers, this.best);
  }
}

/** Of two plans of one cost: fewer runs, then the order of the input, each turn in it followed by the first. */
function isSooner(left: Int32Array, right: Int32Array): boolean {
  const difference = runCount(left) - runCount(right);
  if (difference !== 0) return difference < 0;
  for (const [turn, later] of left.entries()) {
    const other = right[turn] ?? -1;
    if (later !== other) return later >= 0 && (other < 0 || later < other);
  }
  return false;
}

function runCount(plan: Int32Array): number {
  return plan.reduce((count, later) => count + (later < 0 ? 1 : 0), 0);
}
