// A job's plan in the shapes in which doors show it: instants as text, turns with what comes before and
// after, shortfalls with who holds the pieces.
import { type MarkedChoices, turnMarks, unmarked } from '../plan/choice-marks.ts';
import type { Instruction } from '../plan/choices.ts';
import { instantText } from '../plan/local-time.ts';
import type { ShortfallFacts } from '../plan/shortfall-facts.ts';
import type { Step } from '../plan/steps.ts';
import { asData } from './as-data.ts';
import { found } from './by-code.ts';
import type { JobPlan } from './job-plan.ts';
import { plannedCentsOf } from './planned-cents.ts';
import { shownTurns } from './shown-turns.ts';

/** What a stored plan, the board and a what-if have in common. */
export function shownPlan(plan: JobPlan) {
  const { cost, bound, gapPercent, proven, milliseconds } = plan.answer;
  const text = (ms: number): string => instantText(ms, plan.facts.job.timeZone);
  const marks = turnMarks(markedOf(plan));
  return {
    turns: shownTurns(plan.runs, plan.turnsOf.turns, plan.facts.job.timeZone).map((turn) => ({
      ...turn,
      ...asData(marks.get(turn.id) ?? unmarked),
    })),
    steps: plan.steps.map((step) => shownStep(step, text)),
    shortfalls: shownShortfalls(plan),
    cost: shownCost(cost),
    plannedCents: plannedCentsOf(plan.facts),
    changedTold: changedTold(plan).length,
    boundCents: bound,
    gapPercent,
    proven,
    milliseconds,
  };
}

function markedOf({ input, answer }: JobPlan): MarkedChoices {
  return { told: input.told ?? [], changed: answer.changed ?? [], fixed: input.fixed ?? [] };
}

/** Told instructions that the plan does not follow: it does otherwise, or their turns are gone. */
export function changedTold({
  facts,
  input,
  answer,
}: Pick<JobPlan, 'facts' | 'input' | 'answer'>): readonly Instruction[] {
  const there = new Set((input.told ?? []).map((each) => JSON.stringify(each)));
  const gone = facts.planning.told.filter((each) => !there.has(JSON.stringify(each)));
  return [...(answer.changed ?? []), ...gone];
}

export function shownCost(cost: JobPlan['answer']['cost']) {
  return {
    labourCents: cost.labour,
    hireCents: cost.hire,
    changeCents: cost.changes ?? 0,
    totalCents: cost.total,
    unmet: cost.unmet,
  };
}

export function shownShortfalls(plan: Pick<JobPlan, 'facts' | 'turnsOf' | 'shortfalls'>) {
  const holders = {
    turns: new Map(plan.turnsOf.turns.map((turn) => [turn.id, turn])),
    loose: new Map(plan.turnsOf.loose.map((line) => [line.id, line])),
  };
  return plan.shortfalls
    .map((facts) => shownShortfall(facts, plan, holders))
    .sort((one, other) => Date.parse(one.from) - Date.parse(other.from));
}

export function shownStep(step: Step, text: (ms: number) => string) {
  return asData({ ...step, from: text(step.from), to: text(step.to) });
}

interface Holders {
  readonly turns: ReadonlyMap<string, JobPlan['turnsOf']['turns'][number]>;
  readonly loose: ReadonlyMap<string, JobPlan['turnsOf']['loose'][number]>;
}

function shownShortfall(facts: ShortfallFacts, plan: Pick<JobPlan, 'facts'>, holders: Holders) {
  const { shortfall, held, stock, hireCents } = facts;
  const { component, from, to, quantity } = shortfall;
  const catalogued = found(plan.facts.components, component);
  const figure = plan.facts.figures.get(component);
  return {
    id: `${component}@${from}`,
    component,
    name: catalogued.name,
    from,
    to,
    quantity,
    stock,
    held,
    canBeHired: catalogued.hirePerDayCents !== null,
    hireCents,
    turns: facts.turns.map(({ id, pieces }) => {
      const turn = found(holders.turns, id);
      return { id, pour: turn.pour, design: turn.design, pieces };
    }),
    loose: facts.loose.map(({ id, pieces }) => {
      const line = found(holders.loose, id);
      return { id, pour: line.pour, purpose: line.purpose, pieces };
    }),
    restsOn: figure?.basis ?? ('nothing' as const),
    restsOnDate: figure?.date ?? null,
    restsOnOld: figure?.isOld ?? false,
  };
}
