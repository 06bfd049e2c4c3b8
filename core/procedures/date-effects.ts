// What a plan with other dates does that the plan before it did not: pieces short, money, told instructions, days on which the
// crew has more work than hours, findings. All as the difference of two whole plans.
import { msOf } from '../plan/local-time.ts';
import { compareShortfalls } from './compare-shortfalls.ts';
import { findingsOfPour, foundFrom } from './findings-of-pour.ts';
import type { JobPlan } from './job-plan.ts';
import { jobWork } from './job-work.ts';
import { changedTold, shownCost, shownShortfalls } from './shown-plan.ts';

/** One plan as far as it is compared; made once for the plan before. */
export function comparedPlan(plan: JobPlan) {
  const from = foundFrom(plan.facts);
  return {
    shortfalls: shownShortfalls(plan),
    cost: shownCost(plan.answer.cost),
    changedTold: changedTold(plan).length,
    overfull: overfullDays(plan),
    findings: [...plan.findings, ...from.pours.flatMap((pour) => findingsOfPour(from, pour))],
  };
}
export type ComparedPlan = ReturnType<typeof comparedPlan>;

export function dateEffects(before: ComparedPlan, after: ComparedPlan) {
  const { newShortfalls, changedShortfalls, goneShortfalls } = compareShortfalls(
    before.shortfalls,
    after.shortfalls,
  );
  const known = new Set(before.findings.map(({ rule, message }) => `${rule} ${message}`));
  const findings = after.findings.filter(
    ({ rule, message, severity }) => severity !== 'note' && !known.has(`${rule} ${message}`),
  );
  const hoursBefore = new Map(before.overfull.map(({ date, hoursNeeded }) => [date, hoursNeeded]));
  const overfull = after.overfull.filter(
    ({ date, hoursNeeded }) => hoursNeeded > (hoursBefore.get(date) ?? 0) + 1e-6,
  );
  const worse = changedShortfalls.filter(
    ({ before: was, after: is }) =>
      is.quantity > was.quantity || msOf(is.from) < msOf(was.from) || msOf(is.to) > msOf(was.to),
  );
  const toldChange = after.changedTold - before.changedTold;
  return {
    newShortfalls,
    changedShortfalls,
    goneShortfalls,
    costChangeCents: after.cost.totalCents - before.cost.totalCents,
    unmetChange: after.cost.unmet - before.cost.unmet,
    toldChange,
    overfullDays: overfull,
    findings: [...findings],
    breaks: newShortfalls.length + worse.length + overfull.length + findings.length + Math.max(0, toldChange),
  };
}

/** Days on which the steps need more hours of the crew than their shifts have. */
function overfullDays(plan: JobPlan) {
  return jobWork(plan)
    .overloads.filter(({ kind }) => kind === 'crew')
    .map(({ date, needed, there }) => ({ date, hoursNeeded: needed, hoursThere: there }));
}
