// What follows from how a day ended: what did not happen goes on to the next shift with what hangs on it of the same
// pour, a strip waits for it, and a finish that was written down takes the place of the planned one.
import { nextShiftStart, shiftsBetween } from '../calendar.ts';
import { instantText } from '../local-time.ts';
import type { PlanChange } from '../plan-changes.ts';
import type { PourTimes } from '../pour-times.ts';
import { closingSide } from '../pour-times.ts';
import type { Job, Pour, SideName } from '../pours.ts';
import type { DayLine } from './day-lines.ts';
import { oneShiftOn } from './one-shift-on.ts';
import { type MissReason, missWords } from './reasons.ts';

/** A line as it ended. */
export interface EndedLine extends DayLine {
  readonly done: boolean;
  readonly reason: MissReason | null;
  /** When it really ended, epoch milliseconds. */
  readonly endedAt: number | null;
}

export interface DayMove {
  readonly pour: string;
  readonly what: 'set' | 'close' | 'pour' | 'strip';
  readonly side: SideName | null;
  /** Epoch milliseconds. */
  readonly from: number;
  readonly to: number;
  /** It was not done itself, it comes after what was not done, or it was done at another time. */
  readonly because: 'not-done' | 'comes-after' | 'really';
}

export interface DayMoves {
  readonly moves: readonly DayMove[];
  readonly changes: readonly PlanChange[];
}

/** @param who reports, and so keeps a set standing whose strip did not happen */
export function dayMoves(
  lines: readonly EndedLine[],
  plan: {
    readonly job: Job;
    readonly pours: readonly Pour[];
    readonly times: ReadonlyMap<string, PourTimes>;
  },
  who: string,
): DayMoves {
  const found = plan.pours.map((pour) => {
    const own = lines.filter((line) => line.pour === pour.code);
    const times = plan.times.get(pour.code);
    if (own.length === 0 || times === undefined) return { moves: [], changes: [] };
    const timed = pourMoves(own, pour, times, plan.job);
    const waits = stripWaits(own, pour, times, plan.job, who);
    return { moves: [...timed.moves, ...waits.moves], changes: [...timed.changes, ...waits.changes] };
  });
  return {
    moves: found.flatMap(({ moves }) => moves),
    changes: found.flatMap(({ changes }) => changes),
  };
}

function pourMoves(lines: readonly EndedLine[], pour: Pour, times: PourTimes, job: Job): DayMoves {
  const missed = lines.filter(({ kind, done }) => !done && ['set', 'close', 'pour'].includes(kind));
  const poured = lines.find(({ kind, done, endedAt }) => kind === 'pour' && done && endedAt !== null);
  const since = Math.min(...missed.map(({ from }) => from));
  const sides = times.sides.flatMap((side) => {
    const moved = sideMove(side, { pour, times, missed, since, job });
    return moved === undefined ? [] : [moved];
  });
  const finish = missed.length > 0 ? oneShiftOn(times.finish, job) : (poured?.endedAt ?? times.finish);
  const moves: DayMove[] = sides.map(({ move }) => move);
  if (finish !== times.finish) {
    const because =
      missed.length === 0
        ? 'really'
        : missed.some(({ kind }) => kind === 'pour')
          ? 'not-done'
          : 'comes-after';
    moves.push({ pour: pour.code, what: 'pour', side: null, from: times.finish, to: finish, because });
  }
  if (moves.length === 0) return { moves, changes: [] };
  const text = (ms: number): string => instantText(ms, job.timeZone);
  const change: PlanChange = {
    kind: 'pour-times',
    pour: pour.code,
    sides: sides.map(({ side, setAt, setH }) => ({ side, setAt: text(setAt), setH })),
    finishAt: text(finish),
  };
  return { moves, changes: [change] };
}

interface OfPour {
  readonly pour: Pour;
  readonly times: PourTimes;
  readonly missed: readonly EndedLine[];
  /** When the first step began that did not happen. */
  readonly since: number;
  readonly job: Job;
}

function sideMove(timed: PourTimes['sides'][number], { pour, times, missed, since, job }: OfPour) {
  const { side, setFrom, setTo } = timed;
  const closes = pour.order === 'face-first' && side === closingSide(times);
  const what = closes ? 'close' : 'set';
  const setH = pour.sides.find((each) => each.side === side)?.setH ?? 0;
  const own = missed.find(({ kind, from, to }) => kind === what && setFrom <= to && setTo >= from);
  if (own !== undefined && setFrom < own.from) {
    // Begun on an earlier day and not gone on with: what was to be done on this day is still to come.
    const lostMs = shiftsBetween(own.from, own.to, job.shifts).reduce(
      (sum, shift) => sum + Math.min(shift.to, own.to, setTo) - Math.max(shift.from, own.from),
      0,
    );
    const to = oneShiftOn(setTo, job);
    const move: DayMove = { pour: pour.code, what, side, from: setTo, to, because: 'not-done' };
    return { side, setAt: setFrom, setH: setH + lostMs / 3_600_000, move };
  }
  if (own === undefined && setFrom <= since) return undefined;
  const to = oneShiftOn(setFrom, job);
  const because = own === undefined ? ('comes-after' as const) : ('not-done' as const);
  const move: DayMove = { pour: pour.code, what, side, from: setFrom, to, because };
  return { side, setAt: to, setH, move };
}

/** A strip that did not happen: the set stands until the next shift begins. */
function stripWaits(
  lines: readonly EndedLine[],
  pour: Pour,
  times: PourTimes,
  job: Job,
  who: string,
): DayMoves {
  const missed = lines.find(({ kind, done }) => kind === 'strip' && !done);
  if (missed === undefined) return { moves: [], changes: [] };
  const until = nextShiftStart(missed.to, job.shifts);
  const why = missed.reason === null ? '' : `: ${missWords[missed.reason]}`;
  return {
    moves: [
      {
        pour: pour.code,
        what: 'strip',
        side: null,
        from: Math.max(times.stripFrom, missed.from),
        to: until,
        because: 'not-done',
      },
    ],
    changes: [
      {
        kind: 'hold',
        pour: pour.code,
        hold: { reason: `strip not done${why}`, who, until: instantText(until, job.timeZone) },
      },
    ],
  };
}
