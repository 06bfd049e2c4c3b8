// The shifts of a stretch of days as instants: the usual one of every worked day and the extra work of a date, which may
// run past midnight. No hour counts twice: what meets on one day is one shift, what runs into the next day's shift ends there.
import { dayOfDate, zoneDays, type ZoneDays } from './days.ts';
import { minuteOfDay, type Shifts } from './shifts.ts';
import { usualDays } from './working-days.ts';

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** In order, epoch milliseconds, within the days from `firstDay` up to but not including `endDay`; the last may run on past them. */
export function dayShifts(shifts: Shifts, firstDay: number, endDay: number): readonly Stretch[] {
  const zone = zoneDays(shifts.timeZone);
  const isUsual = usualDays(shifts);
  const [start, end] = [minuteOfDay(shifts.start), minuteOfDay(shifts.end)];
  const usual: Stretch[] = [];
  for (let day = firstDay; day < endDay; day += 1) {
    if (isUsual(day)) usual.push({ from: zone.wallClockMs(day, start), to: zone.wallClockMs(day, end) });
  }
  // Extra work of the day before can run into the first.
  const floor = zone.startMs(firstDay);
  const extra = (shifts.extra ?? []).flatMap((each): readonly Stretch[] => {
    const day = dayOfDate(each.date);
    if (day < firstDay - 1 || day >= endDay) return [];
    const [begins, ends] = [minuteOfDay(each.start), minuteOfDay(each.end)];
    const from = zone.wallClockMs(day, begins);
    const to = zone.wallClockMs(ends > begins ? day : day + 1, ends);
    return to <= floor ? [] : [{ from: Math.max(from, floor), to }];
  });
  // A clock change can swallow a short shift whole.
  const all = [...usual, ...extra].filter(({ from, to }) => to > from);
  return extra.length === 0 ? all : withoutOverlaps(all, zone);
}

function withoutOverlaps(stretches: readonly Stretch[], zone: ZoneDays): readonly Stretch[] {
  const list: Stretch[] = [];
  for (const next of [...stretches].sort((one, other) => one.from - other.from)) {
    const last = list.at(-1);
    if (last === undefined || next.from > last.to) {
      list.push(next);
      continue;
    }
    const to = Math.max(last.to, next.to);
    if (zone.dayOf(last.from) === zone.dayOf(next.from)) list[list.length - 1] = { from: last.from, to };
    else {
      list[list.length - 1] = { from: last.from, to: next.from };
      list.push({ from: next.from, to });
    }
  }
  return list;
}
