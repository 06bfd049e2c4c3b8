// Where a calendar day begins on the clock of a time zone. The browser's own zone tables do the work.

const formatters = new Map<string, Intl.DateTimeFormat>();

function formatter(timeZone: string): Intl.DateTimeFormat {
  const kept = formatters.get(timeZone);
  if (kept !== undefined) return kept;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formatters.set(timeZone, made);
  return made;
}

/** Milliseconds that the zone's clock is ahead of UTC at an instant. */
function offsetMs(atMs: number, timeZone: string): number {
  const found: Record<string, number> = {};
  for (const part of formatter(timeZone).formatToParts(new Date(atMs))) found[part.type] = Number(part.value);
  const shown = Date.UTC(
    found['year'] ?? 0,
    (found['month'] ?? 1) - 1,
    found['day'] ?? 1,
    found['hour'] ?? 0,
    found['minute'] ?? 0,
    found['second'] ?? 0,
  );
  return shown - Math.floor(atMs / 1000) * 1000;
}

/** Epoch milliseconds at which a date such as "2026-03-08" begins in a zone. */
export function dayStartMs(date: string, timeZone: string): number {
  const wall = Date.parse(`${date}T00:00:00Z`);
  const first = wall - offsetMs(wall, timeZone);
  // Around a clock change the offset of the guess may not be that of the day's beginning.
  return wall - offsetMs(first, timeZone);
}

/** The date some days after another; both are plain calendar dates. */
export function addDays(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
}

/** The Monday of a date's week. */
export function mondayOf(date: string): string {
  const weekday = new Date(`${date}T00:00:00Z`).getUTCDay();
  return addDays(date, -((weekday + 6) % 7));
}

/** ISO 8601 week number. */
export function weekNumber(date: string): number {
  const thursday = addDays(mondayOf(date), 3);
  const yearStart = Date.parse(`${thursday.slice(0, 4)}-01-01T00:00:00Z`);
  return 1 + Math.floor((Date.parse(`${thursday}T00:00:00Z`) - yearStart) / (7 * 86_400_000));
}
