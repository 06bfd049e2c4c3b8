// The ways out that were found last, by everything that they follow from: the list, the pane and the sheet of shortfalls ask for
// the same ones.
import type { JobPlan } from './job-plan.ts';
import { waysOut } from './ways-out.ts';
import type { WaysAnswer } from './ways-shapes.ts';
import type { WaysQuestion } from './ways-trial.ts';

const most = 40;
const remembered = new Map<string, WaysAnswer>();

export function waysOf(question: WaysQuestion): WaysAnswer {
  const { plan, shortfall, others, nowMs } = question;
  const key = JSON.stringify([shortfall, nowMs, [plan, ...others].map(followsFrom)]);
  const ways = remembered.get(key) ?? waysOut(question);
  // Put last again: the one that was not asked for longest goes first.
  remembered.delete(key);
  remembered.set(key, ways);
  const [oldest] = remembered.keys();
  if (remembered.size > most && oldest !== undefined) remembered.delete(oldest);
  return ways;
}

/** Not the number of the last change: what is decided of a shortfall, say, leaves its ways out as they are. */
function followsFrom({ facts, input, answer }: JobPlan): unknown {
  const { job, pours, designs, stock, figures, planning } = facts;
  const { settings, exceptions, pourFacts, told, fixed, plannedStock, craneBookings } = planning;
  return [
    job,
    input,
    answer.runs,
    pours,
    [...designs.values()].map(({ design, ruleVersion, pieces }) => [design, ruleVersion, pieces]),
    [...facts.components.values()],
    [...stock],
    [...figures],
    [settings, exceptions, [...pourFacts], told, fixed, plannedStock, craneBookings],
  ];
}
