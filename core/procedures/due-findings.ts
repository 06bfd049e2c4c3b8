// Work on gangs that did not happen moves no pour. Where the gang is needed before that work can still be done, or the
// plan counts on its pieces, this is said.
import { never } from '../answer.ts';
import { nextShiftStart, shiftsBetween, workAfter } from '../plan/calendar.ts';
import type { EndedLine } from '../plan/day-end/day-moves.ts';
import { instantText } from '../plan/local-time.ts';
import type { Job } from '../plan/pours.ts';
import type { PourTurn } from '../plan/turns-from-pours.ts';
import { stepWords } from '../sheets/step-words.ts';

export interface EndFinding {
  readonly rule: string;
  readonly severity: 'caution' | 'note';
  readonly message: string;
  readonly where: string;
}

/** @param turns as they are after what is moved */
export function dueFindings(line: EndedLine, job: Job, turns: readonly PourTurn[]): readonly EndFinding[] {
  if (line.done) return [];
  const text = (ms: number): string => instantText(ms, job.timeZone);
  const words = stepWords(line);
  const next = nextShiftStart(line.to, job.shifts);
  switch (line.kind) {
    case 'assemble':
    case 'regang':
    case 'fly-on': {
      const needed = line.toPour ?? line.pour;
      const due = turns.filter(({ id, pour }) => line.turns.includes(id) && pour === needed);
      const from = Math.min(...due.map((turn) => turn.from));
      const there = workAfter(next, hoursOf(line, job), job.shifts);
      if (there <= from) return [];
      return [
        {
          rule: 'set-is-due',
          severity: 'caution',
          message: `"${words}" did not happen and can be done by ${text(there)}, but ${needed} is set from ${text(from)}. No pour is moved by it.`,
          where: needed,
        },
      ];
    }
    case 'break-down':
      return [
        {
          rule: 'pieces-counted-on',
          severity: 'note',
          message: `"${words}" did not happen; the plan takes its pieces to be free from ${text(line.to)} all the same.`,
          where: line.pour,
        },
      ];
    case 'set':
    case 'close':
    case 'pour':
    case 'strip':
      return [];
    default:
      return never(line.kind);
  }
}

function hoursOf({ from, to }: EndedLine, { shifts }: Job): number {
  return shiftsBetween(from, to, shifts).reduce(
    (sum, shift) => sum + (Math.min(shift.to, to) - Math.max(shift.from, from)) / 3_600_000,
    0,
  );
}
