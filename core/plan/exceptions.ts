// The exceptions of a calendar put into its shifts: days off, and work besides the usual shift. A day that is both is
// off but for the extra work.
import type { CalendarException } from './plan-changes.ts';
import type { Shifts } from './shifts.ts';

export function shiftsWith(shifts: Shifts, exceptions: readonly CalendarException[]): Shifts {
  if (exceptions.length === 0) return shifts;
  const off = exceptions.flatMap((each) => (each.kind === 'off' ? [each.date] : []));
  const extra = exceptions.flatMap(({ kind, ...each }) =>
    kind === 'extra' && 'start' in each ? [{ date: each.date, start: each.start, end: each.end }] : [],
  );
  return {
    ...shifts,
    off: [...new Set([...(shifts.off ?? []), ...off])].sort(),
    extra: [...(shifts.extra ?? []), ...extra],
  };
}
