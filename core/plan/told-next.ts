// What a plan has the crew do with its gangs, instruction by instruction with the stretch of its work, and which of them
// fall to the shifts that count as told.
import { nextShiftStart, shiftsBetween, type Shifts } from './calendar.ts';
import type { Instruction } from './choices.ts';
import type { FollowDescription, RunDescription } from './describe-runs.ts';
import { msOf } from './local-time.ts';
import { placesOf } from './told-now.ts';

export interface PlannedInstruction {
  readonly instruction: Instruction;
  /** Epoch milliseconds between which it is worked on. */
  readonly from: number;
  readonly to: number;
}

export function plannedInstructions(runs: readonly RunDescription[]): PlannedInstruction[] {
  return runs.flatMap(({ turns, assembly, follows, breakDown }) => {
    const [first, last] = [turns[0], turns.at(-1)];
    if (first === undefined || last === undefined) return [];
    // One that begins made up is set and nothing else: what is told is which gang comes.
    const begun = assembly ?? { from: first.from, to: first.from };
    return [
      {
        instruction: { kind: 'assemble' as const, turn: first.id },
        from: msOf(begun.from),
        to: msOf(begun.to),
      },
      ...follows.map(followed),
      {
        instruction: { kind: 'break-down' as const, turn: last.id },
        from: msOf(breakDown.from),
        to: msOf(breakDown.to),
      },
    ];
  });
}

/** From the strip on, since the gang has to go somewhere then, until it is flown on or re-ganged. */
function followed({ from, to, flyOnH, gap, regang }: FollowDescription): PlannedInstruction {
  const stripped = msOf(gap.from);
  const until = regang === undefined ? stripped + flyOnH * 3_600_000 : msOf(regang.to);
  return { instruction: { kind: 'follow', from, to }, from: stripped, to: until };
}

/** The end of the last of so many shifts from now on, the one at work among them; now itself where there are none. */
export function toldUntil(nowMs: number, count: number, shifts: Shifts): number {
  let until = nowMs;
  for (let told = 0; told < count; told += 1) {
    const [here] = shiftsBetween(until, until + 1, shifts);
    const from = here === undefined ? nextShiftStart(until, shifts) : until;
    const [shift] = here === undefined ? shiftsBetween(from, from + 1, shifts) : [here];
    if (shift === undefined) return until;
    until = shift.to;
  }
  return until;
}

/** Of the plan, what is worked on between the two moments and does not stand told already. */
export function toTell(
  planned: readonly PlannedInstruction[],
  told: readonly Instruction[],
  nowMs: number,
  untilMs: number,
): PlannedInstruction[] {
  const standing = new Set(told.map((each) => JSON.stringify(placesOf(each))));
  return planned.filter(
    ({ instruction, from, to }) =>
      from < untilMs &&
      Math.max(to, from + 1) > nowMs &&
      !standing.has(JSON.stringify(placesOf(instruction))),
  );
}
