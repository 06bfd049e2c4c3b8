// What is found in the whole of a plan: entries that clash, components that nobody has, weeks without a shift. The plan
// is made all the same, as far as it goes.
import { neverThere } from '../plan/conflicts/never-there.ts';
import { noWorkingTime } from '../plan/conflicts/no-working-time.ts';
import { windowConflicts } from '../plan/conflicts/window.ts';
import type { PourFinding } from '../plan/pour-findings.ts';
import type { TurnsOfPours } from '../plan/turns-from-pours.ts';
import { found } from './by-code.ts';
import type { JobFacts } from './job-facts.ts';
import { workFindings } from './work-findings.ts';

export function planFindings(facts: JobFacts, { times, turns, loose }: TurnsOfPours): PourFinding[] {
  const { job, pours, planning } = facts;
  const moments = [...times.values()].flatMap(({ sides, stripTo }) => [
    ...sides.map(({ setFrom }) => setFrom),
    stripTo,
  ]);
  return [
    ...pours.flatMap((pour) =>
      windowConflicts(job, pour, pours, planning.pourFacts.get(pour.code)?.standsOn ?? null),
    ),
    ...neverThere(
      turns,
      loose,
      (design) => found(facts.designs, design).pieces,
      (component) => ({
        most: Math.max(0, ...(facts.stock.get(component)?.levels ?? []).map(({ quantity }) => quantity)),
        canBeHired: (facts.components.get(component)?.hirePerDayCents ?? null) !== null,
      }),
    ),
    ...workFindings(facts),
    ...(moments.length === 0 ? [] : noWorkingTime(job, Math.min(...moments), Math.max(...moments))),
  ];
}
