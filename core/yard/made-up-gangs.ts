// Gangs of the yard that are made up and have not stood anywhere yet: the turns that they are for can begin with them, so that
// nothing is assembled. One that has stood is where the plan's own follows have it, and is not counted again.
import type { Gang, GangState, GangStep } from './gang.ts';
import { momentMs } from './moment.ts';

export interface MadeUpGang {
  /** Its tag. */
  readonly gang: string;
  readonly design: string;
  /** The turn that it was built for; null where that is open. */
  readonly nextTurn: string | null;
  readonly since: string;
}

const madeUp: readonly GangState[] = ['assembled', 'standing-by'];

/**
 * @param job gangs of other jobs are left out
 * @param stepsOf its steps, oldest first
 * @param inForce the state of a design in force: a gang built to an older one is not what the plan asks for
 */
export function madeUpGangs(
  gangs: readonly Gang[],
  job: string,
  stepsOf: (gang: string) => readonly GangStep[],
  inForce: (design: string) => number | null,
): MadeUpGang[] {
  return gangs
    .filter(({ last }) => isMadeUp(last) && (last.job === null || last.job === job))
    .filter(({ last }) => inForce(last.design) === last.designState)
    .filter(({ code }) => !hasStood(stepsOf(code)))
    .map(({ code, last }) => ({
      gang: code,
      design: last.design,
      nextTurn: last.nextTurn,
      since: last.at,
    }));
}

export function isMadeUp({ state }: Pick<GangStep, 'state'>): boolean {
  return madeUp.includes(state);
}

/** Since it was last built from loose pieces. */
function hasStood(steps: readonly GangStep[]): boolean {
  const builtAt = steps.findLastIndex(({ state }) => state === 'broken-down') + 1;
  return steps.slice(builtAt).some(({ state }) => state === 'standing');
}

interface WantedTurn {
  readonly id: string;
  readonly design: string;
  /** Epoch milliseconds. */
  readonly from: number;
}

/** The turns that can begin made up, no more than there are gangs: those that gangs were built for, then the first ones. */
export function turnsMadeUp(gangs: readonly MadeUpGang[], turns: readonly WantedTurn[]): Set<string> {
  const taken = new Set<string>();
  const isFor = ({ design, nextTurn }: MadeUpGang, turn: WantedTurn): boolean =>
    turn.id === nextTurn && turn.design === design;
  const open: MadeUpGang[] = [];
  for (const gang of gangs) {
    const named = turns.find((turn) => isFor(gang, turn) && !taken.has(turn.id));
    if (named === undefined) open.push(gang);
    else taken.add(named.id);
  }
  const inOrder = [...turns].sort((one, other) => one.from - other.from);
  for (const { design, since } of open) {
    const sinceMs = momentMs(since) ?? 0;
    const first = inOrder.find(
      (turn) => turn.design === design && turn.from >= sinceMs && !taken.has(turn.id),
    );
    if (first !== undefined) taken.add(first.id);
  }
  return taken;
}
