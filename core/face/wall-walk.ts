// The best way to fill both faces of one leg where every panel is there as often as it is wanted: dynamic programming
// over places along the leg and states. It also tells every step that some best way takes, from which the stock then
// decides (wall-stock-model.ts).
import { never } from '../answer.ts';
import { LegSteps, type LegToFill, type Spot, type Step, type WalkLimits } from './wall-steps.ts';
import { StateNumbers } from './wall-states.ts';
import type { SideName } from './wall.ts';

/** A step between states, wherever along the leg they come. */
export interface StateStep {
  readonly from: number;
  readonly to: number;
  readonly step: Step;
  readonly alone: number;
}

export interface Walk {
  readonly way: readonly StateStep[];
  /** Face that gangs on paper cover, less what reaches beyond the leg. */
  readonly coveredNm: number;
  readonly alone: number;
  readonly fillerNm: number;
  readonly panelCount: number;
  /** Holes alone before the first step: those of corner pieces. */
  readonly aloneAtStart: number;
  readonly start: number;
  readonly end: number;
  /** Every step of every way that covers as much and leaves as many holes alone. */
  readonly steps: readonly StateStep[];
  /** For each state: are both sides level there, with nothing waiting? */
  readonly isLevel: readonly boolean[];
}

export type WalkOutcome = Walk | 'no-way' | 'too-many';

/** Beyond any number of holes or panels of a leg: two parts of a cost in one number, the first above the second. */
const many = 4096;

interface Node {
  readonly state: number;
  /** Holes alone less what gangs on paper cover, of the best way on; Infinity where there is none. */
  first: number;
  /** Filler, then panels. */
  second: number;
  overhangNm: number;
  best: Edge | undefined;
  edges: Edge[];
}

interface Edge {
  readonly step: Step;
  readonly alone: number;
  readonly first: number;
  readonly to: Node;
}

class TooMany extends Error {}

export function walkLeg(leg: LegToFill, limits: WalkLimits): WalkOutcome {
  const steps = new LegSteps(leg, limits);
  const start = steps.start();
  if (start.alone > 0 && limits.noneAlone) return 'no-way';
  try {
    const walk = new Walking(leg, steps, limits.effort);
    const first = walk.node(start);
    return first.first === Infinity ? 'no-way' : walkFrom(walk, first, start.alone);
  } catch (error) {
    if (error instanceof TooMany) return 'too-many';
    throw error;
  }
}

function walkFrom(walk: Walking, first: Node, aloneAtStart: number): Walk {
  const way: StateStep[] = [];
  let end = first;
  for (; end.best !== undefined; end = end.best.to) {
    const { step, alone, to } = end.best;
    way.push({ from: end.state, to: to.state, step, alone });
  }
  const covered = 0 - Math.floor(first.first / many);
  return {
    way,
    coveredNm: covered,
    alone: first.first + covered * many + aloneAtStart,
    fillerNm: Math.floor(first.second / many),
    panelCount: first.second % many,
    aloneAtStart,
    start: first.state,
    end: end.state,
    steps: bestSteps(first),
    isLevel: walk.numbers.states.map(
      ({ aheadNm, waiting, edge, finished }) =>
        aheadNm === 0 &&
        !finished.A &&
        !finished.B &&
        [waiting.A, waiting.B, edge.A, edge.B].every((list) => list.length === 0),
    ),
  };
}

function bestSteps(first: Node): readonly StateStep[] {
  const found = new Map<string, StateStep>();
  const seen = new Set<Node>();
  const open = [first];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (seen.has(node)) continue;
    seen.add(node);
    for (const { step, alone, first: cost, to } of node.edges) {
      if (cost + to.first !== node.first) continue;
      const key = `${node.state} ${to.state} ${JSON.stringify(step)}`;
      if (!found.has(key)) found.set(key, { from: node.state, to: to.state, step, alone });
      open.push(to);
    }
  }
  return [...found.values()];
}

class Walking {
  readonly numbers = new StateNumbers();
  private readonly leg: LegToFill;
  private readonly steps: LegSteps;
  private readonly effort: number;
  private readonly nodes = new Map<number, Map<number, Node>>();
  private met = 0;

  constructor(leg: LegToFill, steps: LegSteps, effort: number) {
    this.leg = leg;
    this.steps = steps;
    this.effort = effort;
  }

  node(spot: Spot): Node {
    const state = this.numbers.of(spot.state);
    let places = this.nodes.get(spot.alongNm);
    if (places === undefined) {
      places = new Map();
      this.nodes.set(spot.alongNm, places);
    }
    const known = places.get(state);
    if (known !== undefined) return known;
    this.met += 1;
    if (this.met > this.effort) throw new TooMany();
    const { A, B } = spot.state.finished;
    const from = A && B ? 0 : Infinity;
    const node: Node = { state, first: from, second: from, overhangNm: from, best: undefined, edges: [] };
    places.set(state, node);
    if (A && B) return node;
    // equal states are one object, so that what was found of one is known of all
    const here = { ...spot, state: this.numbers.states[state] ?? spot.state };
    for (const next of this.steps.from(here)) {
      const to = this.node(next);
      if (to.first === Infinity) continue;
      const cost = this.costOf(next.step, spot);
      const edge: Edge = { step: next.step, alone: next.alone, first: next.alone - cost.covered, to };
      node.edges.push(edge);
      const [first, second] = [edge.first + to.first, cost.second + to.second];
      const overhangNm = cost.overhangNm + to.overhangNm;
      const isBetter =
        first < node.first ||
        (first === node.first &&
          (second < node.second || (second === node.second && overhangNm < node.overhangNm)));
      if (isBetter) Object.assign(node, { first, second, overhangNm, best: edge });
    }
    return node;
  }

  private costOf(step: Step, spot: Spot): { covered: number; second: number; overhangNm: number } {
    switch (step.kind) {
      case 'piece':
      case 'both': {
        const found = this.leg.classes[step.class];
        if (found === undefined) throw new Error(`There is no class ${step.class}.`);
        const sides: readonly SideName[] = step.kind === 'both' ? ['A', 'B'] : [step.side];
        const covered = sides.reduce(
          (sum, side) => sum + found.widthNm - this.steps.beyondNm(spot, side, found.widthNm),
          0,
        );
        return {
          covered: found.isDesign ? covered * many : 0,
          second: found.panelCount * sides.length,
          overhangNm: 0,
        };
      }
      case 'filler':
        return {
          covered: 0,
          second: ((step.widthsNm.A ?? 0) + (step.widthsNm.B ?? 0)) * many,
          overhangNm: 0,
        };
      case 'finish':
        return { covered: 0, second: 0, overhangNm: step.overhangNm };
      default:
        return never(step);
    }
  }
}
