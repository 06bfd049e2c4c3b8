// jobs.csv: one job a row, with the calendar, the crew and the rates by which it is planned.
import { checkShifts } from '../plan/calendar.ts';
import { knowsTimeZone } from '../plan/days.ts';
import type { Job } from '../plan/pours.ts';
import {
  type Read,
  readCode,
  readDate,
  readHours,
  readList,
  readMoney,
  readText,
  readWhole,
  readWord,
} from './cells.ts';
import type { Column } from './columns.ts';
import { gatherByCode, type Parsed } from './gather.ts';
import { readTable, type Row } from './table.ts';

export const jobColumns = [
  { name: 'code', needed: true, wanted: 'the code by which the job is known' },
  { name: 'name', needed: true, wanted: 'what people call it' },
  { name: 'time zone', needed: true, wanted: 'the time zone of the site, such as America/New_York' },
  { name: 'currency', needed: true, wanted: 'three letters, such as USD' },
  { name: 'units', needed: true, wanted: 'us or metric' },
  { name: 'plan from', needed: true, wanted: 'the first day that the plan may use, as YYYY-MM-DD' },
  { name: 'days', needed: true, wanted: 'working days, such as Mon-Fri or Mon; Tue; Thu' },
  { name: 'start', needed: true, wanted: 'when the shift starts, such as 07:00' },
  { name: 'end', needed: true, wanted: 'when the shift ends, such as 15:30' },
  { name: 'off days', needed: false, wanted: 'dates on which nobody works, parted by semicolons' },
  { name: 'crew', needed: true, wanted: 'how many people do one step together' },
  { name: 'labour per hour', needed: true, wanted: 'what an hour of one of them costs' },
  { name: 'fly on hours', needed: true, wanted: 'clock hours from a strip until the gang can stand again' },
  { name: 'regang base hours', needed: true, wanted: 'hours of any re-gang, before its pieces' },
  { name: 'clean hours', needed: true, wanted: 'clock hours until stripped pieces are ready' },
] as const satisfies readonly Column[];

type Name = (typeof jobColumns)[number]['name'];

export function readJobs(
  text: string,
  names: Readonly<Record<string, string>>,
  known: Iterable<string>,
): Parsed<Job> {
  const table = readTable<Name>(text, jobColumns, names);
  const { values } = gatherByCode(table.rows, 'code', known, readJob);
  return { values, rows: table.rows.length, skipped: table.skipped, bad: table.bad };
}

function readJob(row: Row<Name>): Job | undefined {
  const code = row.need('code', readCode);
  const name = row.need('name', readText(120));
  const timeZone = row.need('time zone', readZone);
  const currency = row.need('currency', readCurrency);
  const units = row.need('units', readWord(['us', 'metric']));
  const planFrom = row.need('plan from', readDate);
  const days = row.need('days', readDays);
  const start = row.need('start', readTime);
  const end = row.need('end', readTime);
  const off = row.maybe('off days', readList(readDate, 400)) ?? [];
  const crew = row.need('crew', readWhole(1, 500));
  const labourPerHCents = row.need('labour per hour', readMoney);
  const flyOnH = row.need('fly on hours', readHours);
  const regangBaseH = row.need('regang base hours', readHours);
  const cleanH = row.need('clean hours', readHours);
  if (code === undefined || name === undefined || timeZone === undefined || currency === undefined)
    return undefined;
  if (units === undefined || planFrom === undefined || crew === undefined) return undefined;
  if (days === undefined || start === undefined || end === undefined || labourPerHCents === undefined)
    return undefined;
  if (flyOnH === undefined || regangBaseH === undefined || cleanH === undefined) return undefined;
  const shifts = { timeZone, days: [...days], start, end, ...(off.length > 0 ? { off: [...off] } : {}) };
  const problem = checkShifts(shifts);
  if (problem !== undefined) row.refuse('end', problem.message);
  return {
    code,
    name,
    timeZone,
    currency,
    units,
    planFrom,
    shifts,
    crew,
    labourPerHCents,
    flyOnH,
    regangBaseH,
    cleanH,
  };
}

const readZone: Read<string> = (text) =>
  knowsTimeZone(text)
    ? { value: text }
    : { wanted: 'a known time zone, such as America/New_York or Europe/Paris' };

const readCurrency: Read<string> = (text) =>
  /^[A-Z]{3}$/u.test(text) ? { value: text } : { wanted: 'three capital letters, such as USD' };

const readTime: Read<string> = (text) => {
  const [, hour, minute] = /^(\d{1,2}):(\d{2})$/u.exec(text) ?? [];
  const time = `${hour?.padStart(2, '0')}:${minute}`;
  return /^([01]\d|2[0-3]):[0-5]\d$/u.test(time)
    ? { value: time }
    : { wanted: 'a time of day by 24 hours, such as 07:00 or 15:30' };
};

const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];

/** `Mon-Fri`, `Mon; Wed; Fri`, `Mon-Thu; Sat` as days of the week, 1 is Monday. */
const readDays: Read<readonly number[]> = (text) => {
  const wanted = 'working days, such as Mon-Fri or Mon; Tue; Thu';
  const days = new Set<number>();
  for (const part of text
    .toLowerCase()
    .split(/[;,\s]+/u)
    .filter((one) => one !== '')) {
    const ends = part.split(/[-\u2013]/u).map((day) => weekdays.indexOf(day.slice(0, 3)) + 1);
    const [first = 0, last = first] = ends;
    if (first === 0 || last < first || ends.length > 2) return { wanted };
    for (let day = first; day <= last; day += 1) days.add(day);
  }
  return days.size === 0 ? { wanted } : { value: [...days].sort((one, other) => one - other) };
};
