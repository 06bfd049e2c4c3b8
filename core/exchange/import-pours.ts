// Pours against the book: the jobs they belong to, the designs and components they name, and the pours that
// are there already.
import type { BookReader } from '../book/book.ts';
import { shiftsWith } from '../plan/exceptions.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { readPours } from './pours-csv.ts';
import { counted, type ImportInput, type Prepared } from './prepared.ts';

export async function importPours(
  book: BookReader,
  { text, job, columns = {} }: ImportInput,
): Promise<Prepared> {
  const [jobs, designs, components] = await Promise.all([
    workingJobs(book),
    book.designs(),
    book.components(),
  ]);
  const poursOf = new Map<string, readonly Pour[]>();
  for (const one of jobs) poursOf.set(one.code, await book.pours(one.code));
  const parsed = readPours(text, columns, {
    jobs,
    job,
    designs: new Set(designs.map((design) => design.code)),
    components: new Set(components.map((component) => component.code)),
    poursOf,
  });
  const known = new Set([...poursOf].flatMap(([code, pours]) => pours.map((pour) => key(code, pour))));
  return {
    parsed,
    ...counted(
      parsed.values.map((one) => key(one.job, one.pour)),
      known,
    ),
    store: async (writer) => {
      for (const one of parsed.values) await writer.putPour(one.job, one.pour);
    },
  };
}

/** With the exceptions of their calendars: a pour may be set on a Saturday that is worked. */
async function workingJobs(book: BookReader): Promise<readonly Job[]> {
  return Promise.all(
    (await book.jobs()).map(async (job) => {
      const exceptions = await book.jobEntries(job.code, 'calendar-exception');
      return {
        ...job,
        shifts: shiftsWith(
          job.shifts,
          exceptions.map(({ entry }) => entry),
        ),
      };
    }),
  );
}

function key(job: string, pour: Pour): string {
  return JSON.stringify([job, pour.code]);
}
