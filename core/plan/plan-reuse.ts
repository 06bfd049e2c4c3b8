// The reuse plan of `calc plan`: which turns one gang serves one after another, what is short when, what
// it costs, and how far from the best it can be at most.
import { answer, refuse, type Answer } from '../answer.ts';
import { boundOf, type Proved } from './bound.ts';
import { checkPlanInput } from './check-input.ts';
import type { PlanAnswer, PlanInput } from './contract.ts';
import { changedOf, exactCost, roundedCost } from './cost.ts';
import { edgesOf, type Edges } from './edges.ts';
import { mayFollow } from './follows.ts';
import { runsOf, type Followers } from './holding.ts';
import { instantPlan, type Sketch } from './instant-plan.ts';
import { instantsOf } from './instants.ts';
import { modelOf, type Model } from './model.ts';
import { fixedPlaces } from './model-choices.ts';
import { startOf } from './start-plan.ts';
import { shortfallsOf } from './shortfalls.ts';
import { splitFixed, type SplitChoices } from './split-fixed.ts';

/** At once, whatever time the input gives: that is for `improveReuse`. `nowMs` is the door's clock and only times the answer. */
export function planReuse(input: PlanInput, nowMs: () => number): Answer<PlanAnswer> {
  const startedMs = nowMs();
  const made = readModel(input);
  if (!made.ok) return made;
  const model = made.value;
  const edges = edgesOf(model);
  const sketch = instantPlan(model, edges, startOf(model, edges, input.start));
  return planAnswerOf(model, edges, sketch, Math.max(0, nowMs() - startedMs));
}

/** @param proved what is known besides the prices of the sketch */
export function planAnswerOf(
  model: Model,
  edges: Edges,
  sketch: Sketch,
  milliseconds: number,
  proved?: Proved,
): Answer<PlanAnswer> {
  const followers = sketch.standing.chains.follower;
  const exact = exactCost(model, followers);
  const cost = roundedCost(model, exact);
  if (!Number.isSafeInteger(cost.total))
    return refuse('cost-too-large', `The plan costs ${cost.total} minor units, too many to count singly.`, {
      hint: 'Maybe a rate or a number of hours is mistyped.',
    });
  const bound = boundOf(model, edges, sketch, exact, cost.total, proved);
  return answer({
    runs: runsOf(followers).map((run) => ({ turns: run.map((turn) => model.turnIds[turn] ?? '') })),
    shortfalls: shortfallsOf(model, followers),
    cost,
    ...(model.told === null ? {} : { changed: changedOf(model, followers) }),
    bound,
    gapPercent: cost.total > 0 ? Math.max(0, (100 * (cost.total - bound)) / cost.total) : 0,
    proven: cost.total - bound <= 1,
    milliseconds,
  });
}

/** Reads and checks the input. */
export function readModel(input: PlanInput): Answer<Model> {
  const instants = instantsOf(input);
  const refusal = checkPlanInput(input, instants);
  if (refusal !== undefined) return { ok: false, error: refusal };
  const model = modelOf(input, instants);
  const { fixed = [] } = input;
  if (fixed.length === 0) return answer(model);
  const { obeyed, impossible } = splitFixed(model, fixed);
  const [first] = impossible;
  if (first !== undefined)
    return refuse('fixed-impossible', first.message, {
      field: `fixed[${first.index}]`,
      hint: 'Maybe one of the fixed choices can be dropped, or a pour moved.',
    });
  return answer({ ...model, fixed: fixedPlaces(obeyed, model.turnIds) });
}

/** The fixed choices of an input that a plan can obey, and those that it cannot. */
export function splitFixedOf(input: PlanInput): Answer<SplitChoices> {
  const { fixed = [], ...rest } = input;
  const model = readModel(rest);
  return model.ok ? answer(splitFixed(model.value, fixed)) : model;
}

/** The followers of runs given by the ids of their turns, each turn in one run and in an order that is allowed. */
export function followersOf(
  model: Model,
  runs: readonly { readonly turns: readonly string[] }[],
): Answer<Followers> {
  const place = new Map(model.turnIds.map((id, index) => [id, index]));
  const followers = new Int32Array(model.turnIds.length).fill(-1);
  const seen = new Set<string>();
  for (const [index, { turns }] of runs.entries()) {
    for (const [position, id] of turns.entries()) {
      const turn = place.get(id);
      const field = `runs[${index}].turns[${position}]`;
      if (turn === undefined)
        return refuse('unknown-turn', `The turn "${id}" is not in the plan's input.`, { field });
      if (seen.has(id))
        return refuse('turn-in-two-runs', `The turn "${id}" stands in the runs twice.`, { field });
      seen.add(id);
      const before = place.get(turns[position - 1] ?? '');
      if (before === undefined || position === 0) continue;
      if (!mayFollow(model, before, turn)) {
        return refuse('cannot-follow', `The turn "${id}" cannot follow "${turns[position - 1] ?? ''}".`, {
          field,
        });
      }
      followers[before] = turn;
    }
  }
  const missing = model.turnIds.find((id) => !seen.has(id));
  if (missing !== undefined)
    return refuse('turn-without-run', `The turn "${missing}" stands in no run.`, { field: 'runs' });
  return answer(followers);
}
