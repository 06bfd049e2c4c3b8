// Betters a plan and proves how far it is from the best one. The prices are moved until their bound rests; what they rule out
// is left out; what is left is asked of the solver, as a whole where it is small enough, else window by window. The
// bound of the whole stays that of the prices, or rises to what the solver proved of all that was left.
import type { Edges } from '../edges.ts';
import { exactCost, grainsOfCost } from '../cost.ts';
import { standingUnmet, type Proved } from '../bound.ts';
import { improve } from '../improve.ts';
import type { Sketch } from '../instant-plan.ts';
import { polish } from '../instant-plan.ts';
import type { Model } from '../model.ts';
import { randomFrom } from '../random.ts';
import { keepAll, keptUnder, type Kept } from './kept.ts';
import { solveModel, type ModelAnswer } from './solve-model.ts';
import type { PlanSolver } from './solver.ts';
import { keptInWindow } from './window.ts';

export interface WholeEffort {
  readonly seed: number;
  /** The search ends after so many steps; a step is one change tried or (counted a hundredfold) one node of the solver. */
  readonly steps: number;
  /** How much of the time given is used up, from 0 to 1. */
  readonly used: () => number;
  /** Infinity where no clock ends the search. */
  readonly secondsLeft: () => number;
  /** The plan and what is proved of it, each time one of them gets better. */
  readonly onBetter?: (sketch: Sketch, proved: Proved) => void;
}

export interface Improved {
  readonly sketch: Sketch;
  readonly proved: Proved;
}

/** Models with no more follows than this are solved as a whole at once; found by trial: half a minute of solving. */
const easyEdges = 6000;
/** Those with no more than this when windows help no longer: what time is left raises the bound. */
const mostEdges = 40_000;
/** Turns in a window. */
const firstWindow = 60;
const lastWindow = 140;
const priceRounds = 400;
const mostNodes = 200_000;
/** Until this part of the time is used, the fewest pieces wanting may be looked for. */
const unmetShare = 0.5;
const stepsPerNode = 100;

export function improveWhole(
  model: Model,
  edges: Edges,
  sketch: Sketch,
  effort: WholeEffort,
  solver: PlanSolver,
): Improved {
  const search = new Search(model, edges, sketch, effort, solver);
  search.run();
  return { sketch: search.sketch, proved: search.proved };
}

class Search {
  sketch: Sketch;
  proved: Proved;
  private readonly model: Model;
  private readonly edges: Edges;
  private readonly effort: WholeEffort;
  private readonly solver: PlanSolver;
  private nodesLeft: number;

  constructor(model: Model, edges: Edges, sketch: Sketch, effort: WholeEffort, solver: PlanSolver) {
    this.model = model;
    this.edges = edges;
    this.sketch = sketch;
    this.effort = effort;
    this.solver = solver;
    this.nodesLeft = Number.isFinite(effort.steps) ? Math.ceil(effort.steps / stepsPerNode) : Infinity;
    this.proved = { least: -Infinity, unmetIsLeast: this.unmetIsLeast() };
  }

  run(): void {
    const { edges, effort } = this;
    // Where nothing can follow anything there is one plan.
    if (edges.to.length === 0) this.proved = { least: this.safely(this.cost()), unmetIsLeast: true };
    if (this.isDone() || edges.to.length === 0 || effort.steps === 0) return;
    this.restPrices();
    this.tell();
    this.sketch = improve(this.model, edges, this.sketch, {
      seed: effort.seed,
      steps: Number.isFinite(effort.steps) ? Math.ceil(effort.steps / 4) : 60_000,
      used: () => Math.min(1, effort.used() / 0.15),
    });
    this.tell();
    if (!this.proved.unmetIsLeast) this.proveUnmet();
    let size = firstWindow;
    while (!this.isDone() && !this.isOver()) {
      const kept = this.kept();
      const few = kept.edges.length <= (size <= lastWindow ? easyEdges : mostEdges);
      if (few && this.proved.unmetIsLeast) {
        this.solveAll(kept);
        return;
      }
      if (size >= 2 * edges.turns) return;
      if (!this.passOverWindows(kept, size)) size = Math.ceil(size * 1.5);
    }
  }

  /** Moves the prices until a hundred steps no longer raise the bound by a millionth. */
  private restPrices(): void {
    const { prices, standing } = this.sketch;
    let proof = this.sketch.proof;
    let last = prices.bound;
    for (let step = 1; step <= priceRounds && !this.isOver(); step += 1) {
      const next = prices.step(standing.cost.cost + standing.cost.unmet * prices.unmetPrice);
      if (next.bound > proof.bound) proof = next;
      if (step % 100 !== 0) continue;
      if (prices.bound - last <= Math.abs(last) * 1e-6) break;
      last = prices.bound;
    }
    this.sketch = { ...this.sketch, proof };
  }

  /** Where pieces that cannot be hired are wanting: the fewest there can be, before any cost. */
  private proveUnmet(): void {
    if (this.edges.to.length > mostEdges) return;
    const isOver = (): boolean => this.isOver() || this.effort.used() > unmetShare;
    const answer = this.ask(keepAll(this.edges), { kind: 'unmet', mostUnmet: Infinity }, mostNodes, isOver);
    if (answer.complete || Math.ceil(answer.bound - 1e-4) >= this.sketch.standing.cost.unmet)
      this.proved = { ...this.proved, unmetIsLeast: true };
    this.tell();
  }

  private solveAll(kept: Kept): void {
    const before = this.cost();
    const answer = this.ask(kept, { kind: 'cost', mostUnmet: this.sketch.standing.cost.unmet });
    // A plan with a part that was left out costs no less than the plan known when it was left out.
    const proved = Math.min(this.safely(answer.bound), before);
    this.proved = { ...this.proved, least: Math.max(this.proved.least, proved) };
    this.tell();
  }

  /** Windows overlap by half. Answers whether the plan got better. */
  private passOverWindows(kept: Kept, size: number): boolean {
    const { model, edges } = this;
    const order = Array.from({ length: edges.turns }, (_, turn) => turn);
    order.sort((one, other) => (model.from[one] ?? 0) - (model.from[other] ?? 0) || one - other);
    const random = randomFrom(this.effort.seed + Math.round(this.cost()));
    const before = this.cost();
    let left = kept;
    for (let first = -Math.floor(random() * size); first < edges.turns; first += size / 2) {
      if (this.isOver() || this.isDone()) break;
      const inside = new Set(order.slice(Math.max(0, first), first + size));
      const followers = this.sketch.standing.chains.follower;
      const cost = this.cost();
      const part = keptInWindow(edges, left, followers, (turn) => inside.has(turn));
      this.ask(part, { kind: 'cost', mostUnmet: this.sketch.standing.cost.unmet }, 300);
      if (this.cost() < cost) left = this.kept();
    }
    return this.cost() < before - edges.money.tolerance;
  }

  private ask(
    kept: Kept,
    aim: { readonly kind: 'unmet' | 'cost'; readonly mostUnmet: number },
    nodes = mostNodes,
    isOver = (): boolean => this.isOver(),
  ): ModelAnswer {
    const most = Math.min(nodes, this.nodesLeft);
    this.nodesLeft -= Number.isFinite(this.nodesLeft) ? Math.ceil(most / 10) : 0;
    const { model, edges } = this;
    const known = this.sketch.standing.chains.follower;
    return solveModel({ model, edges, kept, aim, known }, this.solver, {
      nodes: Math.max(1, most),
      isOver,
      secondsLeft: this.effort.secondsLeft,
      onPlan: (followers) => this.take(followers),
    });
  }

  /** A plan of the solver is costed exactly and, where it is better, bettered by small changes. */
  private take(followers: Int32Array): void {
    const { cost } = this.sketch.standing;
    const exact = exactCost(this.model, followers);
    const money = Number(grainsOfCost(exact)) * this.edges.money.perGrain;
    const dearer = money - cost.cost >= -this.edges.money.tolerance;
    if (exact.unmet > cost.unmet || (exact.unmet === cost.unmet && dearer)) return;
    const perTurn = this.edges.turns <= 80 ? this.edges.turns : 16;
    this.sketch = {
      ...polish(this.model, this.edges, this.sketch.prices, followers, this.sketch.proof, perTurn),
      complete: false,
    };
    this.tell();
  }

  private kept(): Kept {
    const { prices, proof } = this.sketch;
    const { cost } = this.sketch.standing;
    return keptUnder(this.edges, proof, cost.cost + cost.unmet * prices.unmetPrice);
  }

  private cost(): number {
    return this.sketch.standing.cost.cost;
  }

  private unmetIsLeast(): boolean {
    const { unmet } = this.sketch.standing.cost;
    return unmet === 0 || unmet <= standingUnmet(this.model);
  }

  /** With room for the tolerance of the solver, a hundred-millionth of the sum and of a part of it. */
  private safely(bound: number): number {
    return bound - Math.abs(bound) * 1e-8 - this.edges.money.tolerance / 100;
  }

  private isOver(): boolean {
    return this.effort.used() >= 1 || this.nodesLeft <= 0;
  }

  private isDone(): boolean {
    if (this.sketch.complete) return true;
    const { prices } = this.sketch;
    const { cost, unmet } = this.sketch.standing.cost;
    const least = Math.max(this.proved.least, unmet === 0 ? prices.bound : -Infinity);
    return this.proved.unmetIsLeast && cost - least <= this.edges.money.tolerance;
  }

  private tell(): void {
    if (this.unmetIsLeast()) this.proved = { ...this.proved, unmetIsLeast: true };
    this.effort.onBetter?.(this.sketch, this.proved);
  }
}
