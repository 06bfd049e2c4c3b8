// Gangs that the yard has built: the turn with which each began, or is to begin, starts with a gang that is there, so that
// nothing is assembled for it. Later turns of the same gang are follows of the plan and no beginnings.
import type { Gang, GangState, GangStep } from './gang.ts';
import { momentMs } from './moment.ts';

export interface MadeUpGang {
  /** Its tag. */
  readonly gang: string;
  readonly design: string;
  /** The turn at which it stood first, or that it was built for; null where that is open. */
  readonly turn: string | null;
  /** It has stood at that turn, and is not for any other. */
  readonly hasStood: boolean;
  readonly since: string;
}

const madeUp: readonly GangState[] = ['assembled', 'standing-by'];

/**
 * @param job gangs of other jobs are left out
 * @param stepsOf its steps, oldest first
 * @param inForce the state of a design in force: a gang built to an older one is not what a plan asks for
 */
export function madeUpGangs(
  gangs: readonly Gang[],
  job: string,
  stepsOf: (gang: string) => readonly GangStep[],
  inForce: (design: string) => number | null,
): MadeUpGang[] {
  return gangs
    .filter(({ last }) => last.job === null || last.job === job)
    .flatMap(({ code, last }) => {
      const begun = livesOf(stepsOf(code)).flatMap((life) => begunBy(life, job));
      const isReady = madeUp.includes(last.state) && inForce(last.design) === last.designState;
      if (!isReady || hasStood(livesOf(stepsOf(code)).at(-1) ?? [])) return begun;
      const { design, nextTurn: turn, at: since } = last;
      return [...begun, { gang: code, design, turn, hasStood: false, since }];
    });
}

/** From built to broken down, as often as the tag was used. */
function livesOf(steps: readonly GangStep[]): readonly (readonly GangStep[])[] {
  const lives: GangStep[][] = [[]];
  for (const step of steps) {
    lives.at(-1)?.push(step);
    if (step.state === 'broken-down') lives.push([]);
  }
  return lives;
}

function hasStood(life: readonly GangStep[]): boolean {
  return life.some(({ state }) => state === 'standing');
}

/** The turn at which it stood first. */
function begunBy(life: readonly GangStep[], ofJob: string): MadeUpGang[] {
  const first = life.find(({ state }) => state === 'standing');
  if (first === undefined || first.job !== ofJob) return [];
  const { gang, design, turn, at: since } = first;
  return [{ gang, design, turn, hasStood: true, since }];
}

interface WantedTurn {
  readonly id: string;
  readonly design: string;
  /** Epoch milliseconds. */
  readonly from: number;
}

/** The turns that begin made up, no more than there are gangs: those that gangs were built for, then the first ones. */
export function turnsMadeUp(gangs: readonly MadeUpGang[], turns: readonly WantedTurn[]): Set<string> {
  const taken = new Set<string>();
  const open: MadeUpGang[] = [];
  for (const gang of gangs) {
    const named = turns.find(({ id, design }) => id === gang.turn && design === gang.design);
    if (named !== undefined && !taken.has(named.id)) taken.add(named.id);
    else if (!gang.hasStood) open.push(gang);
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
