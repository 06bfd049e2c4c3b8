// Instants as a crew says them: "Wed 11 Mar 07:00", in the job's time zone. Formatters are made once a
// zone, since making one costs more than using it.

export interface TimeWords {
  /** "Wed 11 Mar 07:00" */
  readonly full: (instant: string) => string;
  /** "Wed 07:00" */
  readonly dayTime: (instant: string) => string;
  /** "Wed 11 Mar" */
  readonly day: (instant: string) => string;
  /** "07:00" */
  readonly time: (instant: string) => string;
  /** "2026-03-11": the calendar day of an instant in the job's zone. */
  readonly date: (instant: string) => string;
}

const made = new Map<string, TimeWords>();
const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

export function timeWords(timeZone: string): TimeWords {
  const kept = made.get(timeZone);
  if (kept !== undefined) return kept;
  const words = makeWords(timeZone);
  made.set(timeZone, words);
  return words;
}

function makeWords(timeZone: string): TimeWords {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
  const read = (instant: string): { readonly date: string; readonly time: string } => {
    const found: Record<string, string> = {};
    for (const part of parts.formatToParts(new Date(instant))) found[part.type] = part.value;
    return {
      date: `${found['year']}-${found['month']}-${found['day']}`,
      time: `${found['hour']}:${found['minute']}`,
    };
  };
  return {
    full: (instant) => {
      const at = read(instant);
      return `${dateWords(at.date)} ${at.time}`;
    },
    dayTime: (instant) => {
      const at = read(instant);
      return `${weekdayOf(at.date)} ${at.time}`;
    },
    day: (instant) => dateWords(read(instant).date),
    time: (instant) => read(instant).time,
    date: (instant) => read(instant).date,
  };
}

/** "2026-03-11" as "Wed 11 Mar". */
export function dateWords(date: string): string {
  return `${weekdayOf(date)} ${shortDate(date)}`;
}

/** "2026-03-11" as "11 Mar". */
export function shortDate(date: string): string {
  const [, month, day] = date.split('-').map(Number);
  return `${day} ${months[(month ?? 1) - 1] ?? ''}`;
}

/** "Wed" */
export function weekdayOf(date: string): string {
  return weekdays[new Date(`${date}T00:00:00Z`).getUTCDay()] ?? '';
}
