// The sheets of a job's days: what they are asked by, and what was printed of them before.
import { z } from 'zod';
import { answer, type Answer, refuse } from '../answer.ts';
import type { KeptEntry } from '../plan/job-entries.ts';
import { dateOfDay, dayOfDate, weekdayOfDay } from '../plan/days.ts';
import { instantText, msOf } from '../plan/local-time.ts';
import type { PrintedBefore } from '../sheets/changes.ts';
import { instant } from './shapes.ts';
import { paperSheetInput } from './sheet-shape.ts';

/** The id is the job, or with the first day: TB26@2026-03-09. */
export const daysSheetInput = paperSheetInput.extend({
  /** Who gets this printing. */
  given: z.exactOptional(z.array(z.string().trim().min(1).max(80)).max(20)),
  now: z.exactOptional(instant),
});

export interface SheetOfDays {
  readonly job: string;
  readonly date: string | null;
}

export function readDaysId(id: string): Answer<SheetOfDays> {
  const at = id.lastIndexOf('@');
  if (at < 0) return answer({ job: id, date: null });
  const date = z.iso.date().safeParse(id.slice(at + 1));
  if (!date.success || at === 0)
    return refuse('sheet-id', `"${id}" names no job and day.`, {
      field: 'id',
      hint: 'Maybe the job alone was meant, or a day as in TB26@2026-03-09.',
    });
  return answer({ job: id.slice(0, at), date: date.data });
}

/** From Thursday on, when the next week is spoken of, the next Monday; else the Monday before. */
export function weekFrom(today: string): string {
  const day = dayOfDate(today);
  const monday = day - (weekdayOfDay(day) - 1);
  return dateOfDay(weekdayOfDay(day) >= 4 ? monday + 7 : monday);
}

/** Oldest first. A week plan is held against the last one of any week, a day sheet against the last of its day. */
export function printsOf(
  prints: readonly KeptEntry<'sheet-print'>[],
  of: { readonly kind: 'week' | 'day'; readonly date: string },
  timeZone: string,
): readonly PrintedBefore[] {
  return prints
    .filter(({ entry }) => entry.kind === of.kind && (of.kind === 'week' || entry.of === of.date))
    .map(({ entry: { revision, at, given, lines } }) => ({
      revision,
      at: instantText(msOf(at), timeZone),
      given,
      lines,
    }));
}
