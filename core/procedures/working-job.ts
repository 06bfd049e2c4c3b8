// A job by its working calendar, with what is entered around its plan: for procedures that need times and no plan.
import type { BookReader } from '../book/book.ts';
import type { Job } from '../plan/pours.ts';
import { type JobPlanning, readJobPlanning } from './job-planning.ts';
import { workingJob } from './job-source.ts';

export interface WorkingJob {
  /** With the exceptions of its calendar in its shifts. */
  readonly job: Job;
  readonly planning: JobPlanning;
}

/** Null where there is no such job. */
export async function readWorkingJob(book: BookReader, code: string): Promise<WorkingJob | null> {
  const job = await book.job(code);
  if (job === null) return null;
  const planning = await readJobPlanning(book, code);
  return { job: workingJob(job, planning), planning };
}
