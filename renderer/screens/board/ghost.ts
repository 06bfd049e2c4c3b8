// A pour where a move would put it, for drawing before anything is stored. Set times go by working days as
// the move says; finish and strip come from the core's answer as soon as it is there.
import { calendarDays } from '../../parts/calendar-days.ts';
import type { BoardDay, Move, Whatif } from './board-types.ts';
import type { Bar, PourBars } from './pour-bars.ts';
import type { PourRow } from './board-rows.ts';

const dayMs = 86_400_000;

export function ghostRow(
  row: PourRow,
  move: Move,
  days: readonly BoardDay[],
  answer: Whatif | undefined,
  dateOf: (instant: string) => string,
): PourRow {
  const told = answer?.moves.find((one) => one.pour === move.pour && one.workingDays === move.workingDays);
  const calendar = (ms: number): number =>
    calendarDays(dateOf(new Date(ms).toISOString()), move.workingDays, days) * dayMs;
  const { bars } = row;
  const finishMs =
    told === undefined ? bars.finishMs + calendar(bars.finishMs) : Date.parse(told.finishAfter);
  const readyMs = bars.readyMs + finishMs - bars.finishMs;
  const stripFromMs =
    told === undefined ? bars.stripFromMs + calendar(bars.finishMs) : Date.parse(told.stripAfter);
  const toMs = stripFromMs + bars.toMs - bars.stripFromMs;
  const shifted = (track: readonly Bar[]): readonly Bar[] =>
    track.map((bar) => {
      if (bar.kind === 'cure') return { ...bar, fromMs: finishMs, toMs: Math.min(readyMs, stripFromMs) };
      if (bar.kind === 'stand') return { ...bar, fromMs: readyMs, toMs: stripFromMs };
      if (bar.kind === 'strip') return { ...bar, fromMs: stripFromMs, toMs };
      const fromMs = bar.fromMs + calendar(bar.fromMs);
      const until = bar.toMs === bars.finishMs ? finishMs : bar.toMs + calendar(bar.toMs);
      return { ...bar, fromMs, toMs: until };
    });
  const moved: PourBars = {
    a: shifted(bars.a),
    b: shifted(bars.b),
    fromMs: bars.fromMs + calendar(bars.fromMs),
    finishMs,
    readyMs,
    stripFromMs,
    toMs,
  };
  return { ...row, bars: moved };
}
