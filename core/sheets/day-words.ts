// Days and times on paper as a crew says them: "Fri 6 Mar", "07:00". Instants are texts with the job's own offset, so
// that the words are read off them.
import { dayOfDate, weekdayOfDay } from '../plan/days.ts';

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** @param date YYYY-MM-DD, or an instant in the job's time zone */
export function dayWords(date: string): string {
  const day = date.slice(0, 10);
  const [, month, ofMonth] = day.split('-').map(Number);
  return `${weekdays[weekdayOfDay(dayOfDate(day)) - 1] ?? ''} ${ofMonth ?? ''} ${months[(month ?? 1) - 1] ?? ''}`;
}

export function timeOf(instant: string): string {
  return instant.slice(11, 16);
}

/** "Fri 6 Mar 07:00" */
export function momentWords(instant: string): string {
  return `${dayWords(instant)} ${timeOf(instant)}`;
}
