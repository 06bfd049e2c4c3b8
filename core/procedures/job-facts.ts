// Everything of the book that the plan of a job rests on, read at once; deciding comes after (job-plan.ts).
import { answer, type Answer } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import { instantText, startOfDate } from '../plan/local-time.ts';
import type { Job, Pour } from '../plan/pours.ts';
import { momentMs } from '../yard/moment.ts';
import { readyStock, type ReadyStock } from '../yard/ready-levels.ts';
import { byCode } from './by-code.ts';
import { readDesignFacts, type DesignFacts } from './design-facts.ts';
import { unknownJob } from './unknown.ts';

export interface JobFacts {
  readonly job: Job;
  readonly pours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly components: ReadonlyMap<string, BookComponent>;
  readonly stock: ReadonlyMap<string, ReadyStock>;
  readonly changeNumber: number;
}

export async function readJobFacts(book: BookReader, code: string): Promise<Answer<JobFacts>> {
  const job = await book.job(code);
  if (job === null) return unknownJob(code);
  const startOfPlan = instantText(startOfDate(job.planFrom, job.timeZone), job.timeZone);
  const [pours, designs, components, locations, start, later, changeNumber] = await Promise.all([
    book.pours(code),
    readDesignFacts(book),
    book.components(),
    book.locations(),
    book.stock(startOfPlan),
    book.movementsAfter(startOfPlan),
    book.changeNumber(),
  ]);
  if (!designs.ok) return designs;
  return answer({
    job,
    pours,
    designs: designs.value,
    components: byCode(components),
    stock: readyStock(start, later, locations, (movement) => momentMs(movement.at) ?? 0),
    changeNumber,
  });
}
