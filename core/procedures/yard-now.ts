// What a question of the yard takes for now: the moment it names; else that of the last movement booked that is not
// of a day to come, else the first day of the first job's plan. The core reads no clock of its own.
import type { BookReader } from '../book/book.ts';
import { momentMs } from '../yard/moment.ts';

export async function yardNow(book: BookReader, now: string | undefined): Promise<string> {
  if (now !== undefined) return now;
  const newest = await book.movements({ limit: 200 });
  const past = newest.find((each) => (momentMs(each.at) ?? 0) <= (momentMs(each.recordedAt) ?? 0));
  if (past !== undefined) return past.at;
  const [job] = await book.jobs();
  return `${job?.planFrom ?? '1970-01-01'}T00:00:00Z`;
}
