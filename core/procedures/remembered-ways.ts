// The ways out that were found last, by everything that they follow from: the list, the pane and the sheet of shortfalls ask for
// the same ones.
import { waysOut } from './ways-out.ts';
import type { WaysAnswer } from './ways-shapes.ts';
import type { WaysQuestion } from './ways-trial.ts';

const most = 60;
const remembered = new Map<string, WaysAnswer>();

export function waysOf(question: WaysQuestion): WaysAnswer {
  const { plan, shortfall, others, nowMs } = question;
  const facts = [plan, ...others].map((each) => [each.facts.changeNumber, each.facts.job.code, each.input]);
  const key = JSON.stringify([shortfall.id, nowMs, facts]);
  const ways = remembered.get(key) ?? waysOut(question);
  // Put last again: the one that was not asked for longest goes first.
  remembered.delete(key);
  remembered.set(key, ways);
  const [oldest] = remembered.keys();
  if (remembered.size > most && oldest !== undefined) remembered.delete(oldest);
  return ways;
}
