// Pours against the book: the jobs they belong to, the designs and components they name, and the pours that
// are there already.
import type { BookReader } from '../book/book.ts';
import type { Pour } from '../plan/pours.ts';
import { readPours } from './pours-csv.ts';
import { counted, type ImportInput, type Prepared } from './prepared.ts';

export async function importPours(
  book: BookReader,
  { text, job, columns = {} }: ImportInput,
): Promise<Prepared> {
  const [jobs, designs, components] = await Promise.all([book.jobs(), book.designs(), book.components()]);
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

function key(job: string, pour: Pour): string {
  return JSON.stringify([job, pour.code]);
}
