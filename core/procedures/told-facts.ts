// What stands told on a job and what would be told next, out of its plan at this moment.
import type { BookReader } from '../book/book.ts';
import { type Answer, answer, never } from '../answer.ts';
import type { Instruction } from '../plan/choices.ts';
import { instantText } from '../plan/local-time.ts';
import { plannedInstructions, type PlannedInstruction, toldUntil, toTell } from '../plan/told-next.ts';
import { readJobFacts } from './job-facts.ts';
import { type JobPlan, planJob } from './job-plan.ts';

export interface ToldFacts {
  readonly plan: JobPlan;
  readonly planned: readonly PlannedInstruction[];
  /** The end of the last shift that counts as told. */
  readonly until: string;
  readonly next: readonly PlannedInstruction[];
}

export async function readToldFacts(
  book: BookReader,
  job: string,
  now: string | undefined,
): Promise<Answer<ToldFacts>> {
  const facts = await readJobFacts(book, job, now);
  if (!facts.ok) return facts;
  const plan = planJob(facts.value);
  if (!plan.ok) return plan;
  const { planning, yard, job: working } = facts.value;
  const planned = plannedInstructions(plan.value.runs);
  const untilMs = toldUntil(yard.nowMs, planning.settings.toldShifts, working.shifts);
  return answer({
    plan: plan.value,
    planned,
    until: instantText(untilMs, working.timeZone),
    next: toTell(planned, planning.told, yard.nowMs, untilMs),
  });
}

export interface Telling {
  readonly at: string;
  readonly who: string;
}

/** When each instruction was last told and by whom, by its text. */
export async function readTellings(book: BookReader, job: string): Promise<ReadonlyMap<string, Telling>> {
  const tellings = await book.jobEntries(job, 'telling');
  return new Map(
    tellings.flatMap(({ entry: { at, who, instructions } }) =>
      instructions.map((each) => [textOf(each), { at, who }] as const),
    ),
  );
}

export function textOf(instruction: Instruction): string {
  switch (instruction.kind) {
    case 'follow':
      return JSON.stringify(['follow', instruction.from, instruction.to]);
    case 'assemble':
    case 'break-down':
      return JSON.stringify([instruction.kind, instruction.turn]);
    default:
      return never(instruction);
  }
}
