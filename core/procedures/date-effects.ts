// What a plan with other dates does that the plan before it did not: pieces short, money, told instructions, days on which
// crew, crane or ground have more to do than they hold, findings. All as the difference of two whole plans.
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
    overloads: jobWork(plan).overloads,
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
  const missingBefore = new Map(before.overloads.map(({ id, missing }) => [id, missing]));
  const overloads = after.overloads.filter(
    ({ id, missing }) => missing > (missingBefore.get(id) ?? 0) + 1e-6,
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
    overfullDays: overloads
      .filter(({ kind }) => kind === 'crew')
      .map(({ date, needed, there }) => ({ date, hoursNeeded: needed, hoursThere: there })),
    fullCranesAndPads: overloads.flatMap(({ kind, date, crane, needed, there }) =>
      kind === 'crew' ? [] : [{ kind, date, crane, needed, there }],
    ),
    findings: [...findings],
    breaks:
      newShortfalls.length + worse.length + overloads.length + findings.length + Math.max(0, toldChange),
  };
}
