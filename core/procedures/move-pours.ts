// Several pours of a job moved at once, for asking what it would change and for doing it.
import { answer, type Answer } from '../answer.ts';
import { movePour } from '../plan/move-pour.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { unknownPour } from './unknown.ts';

export interface MovedPours {
  /** All pours of the job, the moved ones in their place. */
  readonly pours: readonly Pour[];
  readonly changed: readonly Pour[];
}

export function movePours(
  job: Job,
  pours: readonly Pour[],
  moves: readonly { readonly pour: string; readonly workingDays: number }[],
): Answer<MovedPours> {
  const days = new Map<string, number>();
  for (const { pour, workingDays } of moves) {
    if (!pours.some((each) => each.code === pour)) return unknownPour(pour, job.code, 'moves');
    days.set(pour, (days.get(pour) ?? 0) + workingDays);
  }
  const after = pours.map((pour) => movePour(pour, days.get(pour.code) ?? 0, job));
  return answer({ pours: after, changed: after.filter((pour) => days.has(pour.code)) });
}
