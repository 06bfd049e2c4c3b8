// Makes a plan that takes its time in a thread beside, before the command that stores it begins: nothing
// waits inside the transaction, and other calls go on. The command then finds the plan made.
import { Worker } from 'node:worker_threads';
import type { Answer } from '../answer.ts';
import type { OpenBook } from '../book/open.ts';
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import { readJobFacts } from '../procedures/job-facts.ts';
import { planInputOfJob } from '../procedures/job-plan.ts';
import { planMake } from '../procedures/plan-make.ts';
import { rememberPlan } from '../procedures/remembered-plans.ts';

export interface PlanWatch {
  /** Every better plan, or better proof, as it is found. */
  readonly report?: (plan: PlanAnswer) => void;
  /** Ends the search; its best so far is the plan. */
  readonly stop?: AbortSignal;
}

/**
 * Does nothing for any other call, or where the input is not right: the command itself says what is wrong. Where the
 * book changes meanwhile the plan is of no use, and the command makes its own.
 */
export async function planAhead(
  book: OpenBook | null,
  name: string,
  input: unknown,
  watch: PlanWatch = {},
): Promise<void> {
  if (name !== planMake.name || book === null || book.readOnly) return;
  const asked = planMake.input.safeParse(input);
  if (!asked.success || asked.data.improveSeconds === undefined) return;
  const { job, improveSeconds, now } = asked.data;
  const facts = await book.read((reader) => readJobFacts(reader, job, now));
  if (!facts.ok) return;
  const planInput = planInputOfJob(facts.value, improveSeconds);
  rememberPlan(planInput, await planBeside(planInput, watch));
}

/** The same file in the sources and, under its other ending, in what was built. */
const program = new URL(
  import.meta.url.endsWith('.ts') ? 'improve-worker.ts' : 'improve-worker.mjs',
  import.meta.url,
);

export function planBeside(input: PlanInput, { report, stop }: PlanWatch = {}): Promise<Answer<PlanAnswer>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(program, { workerData: { input, seconds: input.improveSeconds ?? 0 } });
    let best: Answer<PlanAnswer> | undefined;
    const end = (): void => {
      // Before its first plan there is nothing to keep.
      if (best !== undefined) void worker.terminate();
    };
    stop?.addEventListener('abort', end);
    worker.on('message', (plan: Answer<PlanAnswer>) => {
      best = plan;
      if (plan.ok) report?.(plan.value);
      if (stop?.aborted === true) end();
    });
    worker.once('error', reject);
    worker.once('exit', (code) => {
      stop?.removeEventListener('abort', end);
      if (best === undefined) reject(new Error(`The planning thread ended with ${code} and no plan.`));
      else resolve(best);
    });
  });
}
