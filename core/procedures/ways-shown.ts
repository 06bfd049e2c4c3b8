// Trials that helped, with cost and side effects over the whole plan, in their order: those that only move the clash after
// those that do not, pieces that cannot be hired before money, then the cheapest.
import { moreShort } from '../plan/ways/short-in.ts';
import type { JobFacts } from './job-facts.ts';
import type { PlanAnswer } from '../plan/contract.ts';
import { loadsOf } from './changed-days.ts';
import { compareShortfalls } from './compare-shortfalls.ts';
import { changedTold, shownCost, shownShortfalls } from './shown-plan.ts';
import { planJob } from './job-plan.ts';
import { plannedCentsOf } from './planned-cents.ts';
import { orderBy } from './ways-hire.ts';
import { overDays } from './ways-over.ts';
import { rememberPlan } from './remembered-plans.ts';
import type { Way } from './ways-shapes.ts';
import type { Trial, WaysQuestion } from './ways-trial.ts';

export function rankedWays(question: WaysQuestion, trials: readonly Trial[]): Way[] {
  const { plan } = question;
  const before = { shortfalls: shownShortfalls(plan), loads: loadsOf(plan) };
  const figures = figuresOf(plan.facts, plan.answer, changedTold(plan).length);
  const known = new Set<string>();
  return trials
    .flatMap((trial) => {
      const key = JSON.stringify(trial.candidate.changes);
      if (known.has(key)) return [];
      known.add(key);
      return [shownWay(question, trial, before, figures)];
    })
    .toSorted(
      (one, other) =>
        Number(one.movesClash) - Number(other.movesClash) ||
        one.after.cost.unmet - other.after.cost.unmet ||
        one.costCents - other.costCents,
    )
    .map((way, place) => ({ ...way, id: String(place + 1) }));
}

interface Before {
  readonly shortfalls: ReturnType<typeof shownShortfalls>;
  readonly loads: ReturnType<typeof loadsOf>;
}

function shownWay(question: WaysQuestion, trial: Trial, was: Before, before: Way['before']): Way {
  const { candidate, facts, input, answer } = trial;
  // Planned already: in full it is described, and at hand where the way is applied.
  rememberPlan(input, { ok: true, value: answer });
  const planned = planJob(facts);
  if (!planned.ok) throw new Error(planned.error.message);
  const shortfalls = shownShortfalls(planned.value);
  const after = figuresOf(facts, answer, changedTold(planned.value).length);
  return {
    id: '',
    kind: candidate.kind,
    changes: [...candidate.changes],
    text: candidate.text,
    costCents: after.allCents - before.allCents + (question.shortfall.hireCents ?? 0),
    before,
    after,
    ...compareShortfalls(was.shortfalls, shortfalls),
    movesClash: moreShort(was.shortfalls, shortfalls).length > 0,
    changedTold: after.changedTold - before.changedTold,
    overDays: overDays(was.loads, planned.value),
    approval: candidate.changes.flatMap((change) =>
      change.kind === 'strip'
        ? [
            {
              pour: change.pour,
              hours: change.stripMinimumH,
              hoursBefore: hoursOf(question.plan.facts, change.pour),
            },
          ]
        : [],
    ),
    order: candidate.changes.some((each) => each.kind === 'stock' && each.entry.kind === 'hire')
      ? orderBy(question)
      : null,
    uncertain: uncertain(trial, before, after),
  };
}

function figuresOf(facts: JobFacts, { cost, shortfalls, runs }: PlanAnswer, told: number): Way['before'] {
  const planned = plannedCentsOf(facts);
  return {
    cost: shownCost(cost),
    plannedCents: planned,
    allCents: cost.total + planned,
    shortfalls: shortfalls.length,
    changedTold: told,
    gangs: runs.length,
  };
}

function hoursOf({ pours }: JobFacts, code: string): number {
  return pours.find((pour) => pour.code === code)?.stripMinimumH ?? 0;
}

function uncertain({ candidate }: Trial, before: Way['before'], after: Way['after']): string[] {
  const kinds = new Set(
    candidate.changes.map((change) => (change.kind === 'stock' ? change.entry.kind : change.kind)),
  );
  const words: readonly (readonly [boolean, string])[] = [
    [kinds.has('hire'), 'Trucks, least periods and other charges of the agreement are not counted.'],
    [kinds.has('transfer'), 'Trucks are not counted, and the other job has yet to agree.'],
    [
      kinds.has('move'),
      'What a later pour costs the job is not counted; others who work there have to be told.',
    ],
    [
      kinds.has('strip'),
      'Whether the concrete is strong enough by then is a forecast: a named person clears each strip.',
    ],
    [kinds.has('design'), 'The designer has to look at the wall with the other design.'],
    [
      before.cost.labourCents !== after.cost.labourCents,
      'Labour follows the hours and the rate entered with the job.',
    ],
  ];
  return words.flatMap(([is, text]) => (is ? [text] : []));
}
