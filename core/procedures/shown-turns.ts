// Every turn of a plan with what comes before and after it, in the words of the runs.
import type { FollowDescription, PieceCount, RunDescription } from '../plan/describe-runs.ts';
import { instantText } from '../plan/local-time.ts';
import type { PourTurn } from '../plan/turns-from-pours.ts';

/** @param runs numbered from 1 in their order, which is that in which they begin */
export function shownTurns(runs: readonly RunDescription[], turns: readonly PourTurn[], timeZone: string) {
  const places = new Map(
    runs.flatMap((run, index) =>
      run.turns.map(({ id }, place) => [id, { run, number: index + 1, place }] as const),
    ),
  );
  return turns.map(({ id, pour, side, design, from, to }) => {
    const found = places.get(id);
    if (found === undefined) throw new Error(`Turn ${id} is in no run`);
    const { run, number, place } = found;
    return {
      id,
      pour,
      side,
      design,
      from: instantText(from, timeZone),
      to: instantText(to, timeZone),
      run: number,
      before: shownBefore(run, run.follows[place - 1]),
      after: shownAfter(run, run.follows[place]),
    };
  });
}

function shownBefore(run: RunDescription, follow: FollowDescription | undefined) {
  if (follow === undefined)
    return run.assembly === undefined
      ? { how: 'built' as const }
      : { how: 'assemble' as const, hours: run.assembly.hours, from: run.assembly.from };
  return follow.kind === 'fly-on'
    ? { how: 'fly-on' as const, turn: follow.from }
    : { how: 'regang' as const, turn: follow.from, hours: follow.regangH };
}

function shownAfter(run: RunDescription, follow: FollowDescription | undefined) {
  if (follow === undefined)
    return { how: 'break-down' as const, hours: run.breakDown.hours, until: run.breakDown.to };
  const { to: turn, standsByH, regangH: hours } = follow;
  if (follow.kind === 'fly-on') return { how: 'fly-on' as const, turn, standsByH };
  const takenOut = counts(follow.takenOut);
  return { how: 'regang' as const, turn, standsByH, hours, takenOut, putIn: counts(follow.putIn) };
}

function counts(pieces: readonly PieceCount[]): Record<string, number> {
  return Object.fromEntries(pieces.map(({ component, quantity }) => [component, quantity]));
}
