// The resource-constrained core: when each activity begins so that all is done soon, with a time that none can beat.
import { answer, type Answer } from '../../answer.ts';
import { boundOf, type LevelBound } from './bound.ts';
import { checkLevel } from './check-level.ts';
import type { LevelAnswer, LevelInput } from './contract.ts';
import { networkOf } from './network.ts';
import { searchLevel } from './search.ts';

export interface Levelled {
  readonly answer: LevelAnswer;
  readonly bound: LevelBound;
  /** Schedules generated. */
  readonly schedules: number;
}

export function levelProject(input: LevelInput): Answer<Levelled> {
  const refusal = checkLevel(input);
  if (refusal !== undefined) return { ok: false, error: refusal };
  const network = networkOf(input);
  const bound = boundOf(network);
  const { makespan, starts, schedules } = searchLevel(network, { ...input, bound: bound.least });
  return answer({
    answer: {
      makespan,
      starts: Object.fromEntries(input.activities.map(({ id }, index) => [id, starts[index] ?? 0])),
      lowerBound: bound.least,
    },
    bound,
    schedules,
  });
}
