// Everything of the book that the plan of a job rests on, read at once and as it was entered. What follows from it
// stands in job-facts.ts, so that a what-if can change the one and ask for the other.
import { z } from 'zod';
import { answer, type Answer } from '../answer.ts';
import type { BookComponent, BookReader } from '../book/book.ts';
import type { Crane } from '../pick/setup.ts';
import { questionKey } from '../plan/proved-bound.ts';
import { planInput } from '../plan/contract.ts';
import { shiftsWith } from '../plan/exceptions.ts';
import type { Job, Pour } from '../plan/pours.ts';
import type { GangStep } from '../yard/gang.ts';
import { type MadeUpGang, madeUpGangs } from '../yard/made-up-gangs.ts';
import { found } from './by-code.ts';
import { readDesignFacts, type DesignFacts } from './design-facts.ts';
import { type JobPlanning, readJobPlanning } from './job-planning.ts';
import { unknownJob } from './unknown.ts';
import { type JobYard, readJobYard } from './yard-facts.ts';

export interface JobSource {
  /** Its shifts as entered, without the exceptions of the calendar. */
  readonly job: Job;
  /** Those without a date too. */
  readonly pours: readonly Pour[];
  readonly designs: ReadonlyMap<string, DesignFacts>;
  readonly components: readonly BookComponent[];
  /** What the yard has and expects. */
  readonly yard: JobYard;
  readonly planning: JobPlanning;
  /** With their charts. */
  readonly cranes: readonly Crane[];
  /** Gangs that were built: the turns with which they begin start with a gang that is there. */
  readonly madeUp: readonly MadeUpGang[];
  /** The runs of the job's latest stored plan, from which a new one begins. */
  readonly kept: readonly { readonly turns: readonly string[] }[] | null;
  /** What was proved of the question that plan answers; null where nothing was. */
  readonly keptBound: { readonly question: string; readonly boundCents: number } | null;
  readonly changeNumber: number;
}

/** @param now what the question takes for now; absent: when something was last booked, but not before the plan begins */
export async function readJobSource(
  book: BookReader,
  code: string,
  now?: string,
): Promise<Answer<JobSource>> {
  const job = await book.job(code);
  if (job === null) return unknownJob(code);
  const planning = await readJobPlanning(book, code);
  const [pours, designs, components, yard, madeUp, { kept, keptBound }, cranes, changeNumber] =
    await Promise.all([
      book.pours(code),
      readDesignFacts(book),
      book.components(),
      readJobYard(book, workingJob(job, planning), now),
      readMadeUp(book, code),
      readKept(book, code),
      book.cranes(),
      book.changeNumber(),
    ]);
  return designs.ok
    ? answer({
        job,
        pours,
        designs: designs.value,
        components,
        yard,
        planning,
        cranes,
        madeUp,
        kept,
        keptBound,
        changeNumber,
      })
    : designs;
}

/** The job with the exceptions of its calendar in its shifts. */
export function workingJob(job: Job, { exceptions }: Pick<JobPlanning, 'exceptions'>): Job {
  return exceptions.length === 0 ? job : { ...job, shifts: shiftsWith(job.shifts, exceptions) };
}

async function readMadeUp(book: BookReader, job: string): Promise<readonly MadeUpGang[]> {
  const gangs = (await book.gangs()).filter(({ last }) => last.job === null || last.job === job);
  const steps = new Map<string, readonly GangStep[]>();
  const inForce = new Map<string, number | null>();
  for (const { code, last } of gangs) {
    steps.set(code, await book.gangSteps(code));
    if (!inForce.has(last.design))
      inForce.set(last.design, (await book.designRevisions(last.design)).at(-1)?.number ?? null);
  }
  return madeUpGangs(
    gangs,
    job,
    (gang) => found(steps, gang),
    (design) => found(inForce, design),
  );
}

const keptPlan = z.object({
  runs: z.array(z.object({ turns: z.array(z.string()) })),
  bound: z.int(),
});

async function readKept(book: BookReader, job: string): Promise<Pick<JobSource, 'kept' | 'keptBound'>> {
  const plan = await book.latestPlan(job);
  const read = keptPlan.safeParse(plan?.answer);
  const asked = planInput.safeParse(plan?.input);
  return {
    kept: read.success ? read.data.runs : null,
    keptBound:
      read.success && asked.success
        ? { question: questionKey(asked.data), boundCents: read.data.bound }
        : null,
  };
}
