// What the levelling core reaches on a set of open instances, each schedule checked.
import { levelProject } from '../../../core/plan/level/level-project.ts';
import { problemsOf } from './check-schedule.ts';
import { knownOf, type OpenInstance, questionOf } from './open-sets.ts';

export interface Measured {
  readonly instances: number;
  /** Average deviations in per cent: from the best known makespan, from the critical path. */
  readonly overBest: number;
  readonly overPath: number;
  /** The best known makespans themselves from the critical path. */
  readonly bestOverPath: number;
  /** Instances whose makespan equals the lower bound. */
  readonly proved: number;
  /** What cannot be: a broken schedule, a makespan under the known bound, a bound over the known makespan. */
  readonly problems: readonly string[];
}

export function measureSet(instances: readonly OpenInstance[], schedules: number): Measured {
  let [overBest, overPath, bestOverPath, proved] = [0, 0, 0, 0];
  const problems: string[] = [];
  for (const instance of instances) {
    const input = questionOf(instance, schedules);
    const levelled = levelProject(input);
    if (!levelled.ok) throw new Error(levelled.error.message);
    const { answer, bound, schedules: generated } = levelled.value;
    const { lower, upper } = knownOf(instance);
    const note = (what: string): number => problems.push(`${instance.name}: ${what}`);
    problemsOf(input, answer).forEach(note);
    if (answer.makespan < lower) note(`${answer.makespan} is under the known bound ${lower}`);
    if (answer.lowerBound > upper) note(`the bound ${answer.lowerBound} is over the known ${upper}`);
    if (bound.criticalPath !== instance.criticalPath) note(`critical path ${bound.criticalPath}`);
    if (generated > schedules) note(`${generated} schedules`);
    if (answer.makespan === answer.lowerBound) proved += 1;
    overBest += answer.makespan / upper - 1;
    overPath += answer.makespan / instance.criticalPath - 1;
    bestOverPath += upper / instance.criticalPath - 1;
  }
  const average = (sum: number): number => (100 * sum) / instances.length;
  return {
    instances: instances.length,
    overBest: average(overBest),
    overPath: average(overPath),
    bestOverPath: average(bestOverPath),
    proved,
    problems,
  };
}
