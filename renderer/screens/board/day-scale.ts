// From instants to pixels. Working days are wide and the hours of the shift take most of a day; nights and
// days off are narrow, since work happens in shifts while curing only has to be seen to go on.
import { scaleLinear } from 'd3-scale';
import { addDays, dayStartMs, mondayOf } from '../../parts/zoned.ts';
import type { BoardDay } from './board-types.ts';

export interface DayBox {
  readonly date: string;
  readonly working: boolean;
  readonly x: number;
  readonly width: number;
  /** What the board says of the day; absent outside the plan. */
  readonly day: BoardDay | undefined;
}

export interface DayScale {
  readonly days: readonly DayBox[];
  readonly width: number;
  readonly fromMs: number;
  readonly toMs: number;
  /** Pixels of an instant, kept inside the chart. */
  readonly x: (ms: number) => number;
  /** True where any part of a stretch of time is on the chart. */
  readonly shows: (fromMs: number, toMs: number) => boolean;
}

/** A working day is this many times as wide as one off. */
const offRatio = 0.3;
/** Shares of a working day's width: before the shift, the shift, after it. */
const beforeShift = 0.1;
const shiftEnd = 0.84;

export interface Span {
  readonly from: string;
  readonly days: number;
}

/** Two weeks from a Monday, or every week that the plan touches. */
export function spanOf(days: readonly BoardDay[], from: string, whole: boolean): Span {
  if (!whole) return { from: mondayOf(from), days: 14 };
  const first = mondayOf(days[0]?.date ?? from);
  const last = addDays(mondayOf(days.at(-1)?.date ?? from), 6);
  return { from: first, days: Math.round((Date.parse(last) - Date.parse(first)) / 86_400_000) + 1 };
}

export function makeDayScale(
  known: readonly BoardDay[],
  span: Span,
  timeZone: string,
  width: number,
): DayScale {
  const byDate = new Map(known.map((day) => [day.date, day]));
  const dates = Array.from({ length: span.days }, (_, index) => addDays(span.from, index));
  const isWorking = (date: string): boolean => byDate.get(date)?.working ?? isWeekday(date);
  const units = dates.reduce((sum, date) => sum + (isWorking(date) ? 1 : offRatio), 0);
  const unit = width / Math.max(units, 1);
  const domain: number[] = [];
  const range: number[] = [];
  const days: DayBox[] = [];
  let x = 0;
  for (const date of dates) {
    const day = byDate.get(date);
    const working = isWorking(date);
    const boxWidth = working ? unit : unit * offRatio;
    days.push({ date, working, x, width: boxWidth, day });
    domain.push(dayStartMs(date, timeZone));
    range.push(x);
    if (day?.shift !== null && day?.shift !== undefined) {
      domain.push(Date.parse(day.shift.from), Date.parse(day.shift.to));
      range.push(x + boxWidth * beforeShift, x + boxWidth * shiftEnd);
    }
    x += boxWidth;
  }
  const fromMs = domain[0] ?? 0;
  const toMs = dayStartMs(addDays(span.from, span.days), timeZone);
  domain.push(toMs);
  range.push(width);
  const scale = scaleLinear().domain(domain).range(range).clamp(true);
  return {
    days,
    width,
    fromMs,
    toMs,
    x: (ms) => Math.round(scale(ms) * 2) / 2,
    shows: (from, to) => to > fromMs && from < toMs,
  };
}

function isWeekday(date: string): boolean {
  const weekday = new Date(`${date}T00:00:00Z`).getUTCDay();
  return weekday >= 1 && weekday <= 5;
}

/** How many working days a pixel distance from an instant comes to, for dragging. */
export function workingDaysBetween(scale: DayScale, fromX: number, toX: number): number {
  const at = (x: number): number => {
    const before = scale.days.filter((day) => day.working && day.x + day.width <= x).length;
    const inside = scale.days.find((day) => day.working && day.x <= x && x < day.x + day.width);
    return before + (inside === undefined ? 0 : (x - inside.x) / inside.width);
  };
  return Math.round(at(toX) - at(fromX));
}
