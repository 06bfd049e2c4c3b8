// The work that the runs of a plan bring: assembling, flying on, re-ganging, breaking down. Setting and
// stripping belong to the pours (pour-work.ts).
import { workAfter } from './calendar.ts';
import type { FollowDescription, RunDescription } from './describe-runs.ts';
import { msOf } from './local-time.ts';
import type { Job } from './pours.ts';
import type { Work } from './steps.ts';
import type { PourTurn } from './turns-from-pours.ts';

/** @param turns by id */
export function runWork(
  runs: readonly RunDescription[],
  turns: ReadonlyMap<string, PourTurn>,
  job: Job,
): Work[] {
  const at = (id: string): PourTurn => {
    const turn = turns.get(id);
    if (turn === undefined) throw new Error(`The plan names a turn ${id} that no pour has`);
    return turn;
  };
  return runs.flatMap((run) => {
    const [first, last] = [run.turns[0], run.turns.at(-1)];
    if (first === undefined || last === undefined) return [];
    const { assembly, breakDown } = run;
    return [
      ...(assembly === undefined ? [] : [workOf('assemble', assembly.from, assembly.to, at(first.id))]),
      ...run.follows.flatMap((follow) => followWork(follow, at(follow.from), at(follow.to), job)),
      workOf('break-down', breakDown.from, breakDown.to, at(last.id)),
    ];
  });
}

function followWork(follow: FollowDescription, earlier: PourTurn, later: PourTurn, job: Job): Work[] {
  // By the clock a gang may be flown on at night; as work it takes the first shift hours after the strip.
  const flown = Math.min(workAfter(earlier.to, follow.flyOnH, job.shifts), later.from);
  const ofBoth = { pour: earlier.pour, toPour: later.pour, turns: [earlier.id, later.id] };
  const flight: Work = {
    kind: 'fly-on',
    from: earlier.to,
    to: flown,
    designs: [earlier.design],
    ...ofBoth,
  };
  if (follow.regang === undefined) return [flight];
  const { from, to } = follow.regang;
  return [flight, { kind: 'regang', from: msOf(from), to: msOf(to), designs: [later.design], ...ofBoth }];
}

function workOf(kind: Work['kind'], from: string, to: string, turn: PourTurn): Work {
  return {
    kind,
    from: msOf(from),
    to: msOf(to),
    pour: turn.pour,
    toPour: null,
    designs: [turn.design],
    turns: [turn.id],
  };
}
