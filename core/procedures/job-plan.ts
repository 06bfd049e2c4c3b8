// The plan of a job out of its facts, by the same planner as `calc plan`: nothing here reads or writes.
import { answer, type Answer } from '../answer.ts';
import type { PlanAnswer, PlanInput } from '../plan/contract.ts';
import { questionKey, withBound } from '../plan/proved-bound.ts';
import type { RunDescription } from '../plan/describe-runs.ts';
import { msOf } from '../plan/local-time.ts';
import type { PourFinding } from '../plan/pour-findings.ts';
import { pourWork } from '../plan/pour-work.ts';
import { runWork } from '../plan/run-work.ts';
import type { ShortfallFacts } from '../plan/shortfall-facts.ts';
import { stepsOf, type Step, type Work } from '../plan/steps.ts';
import { turnsFromPours, type TurnsOfPours } from '../plan/turns-from-pours.ts';
import { found } from './by-code.ts';
import { describedPlan } from './described-plan.ts';
import type { JobFacts } from './job-facts.ts';
import { jobPlanInput } from './job-plan-input.ts';
import { planFindings } from './plan-findings.ts';
import { planOf } from './remembered-plans.ts';

export interface JobPlan {
  readonly facts: JobFacts;
  readonly turnsOf: TurnsOfPours;
  readonly input: PlanInput;
  readonly answer: PlanAnswer;
  /** In the order in which they begin. */
  readonly runs: readonly RunDescription[];
  readonly steps: readonly Step[];
  /** What the steps are parts of, whole. */
  readonly work: readonly Work[];
  readonly shortfalls: readonly ShortfallFacts[];
  /** Of the plan as a whole; those of a pour stand with the pour. */
  readonly findings: readonly PourFinding[];
}

/** @param improveSeconds how long to look for a better plan than the instant one; not at all where absent */
export function planJob(facts: JobFacts, improveSeconds?: number): Answer<JobPlan> {
  const { job, pours } = facts;
  const turnsOf = turnsOfJob(facts);
  const asked = jobPlanInput(facts, turnsOf);
  const input = searched(asked.input, improveSeconds);
  const planned = planOf(input);
  if (!planned.ok) return planned;
  const described = describedPlan(input, planned.value, job.timeZone);
  if (!described.ok) return described;
  const runs = inOrder(described.value.runs);
  const work = [
    ...runWork(runs, new Map(turnsOf.turns.map((turn) => [turn.id, turn])), job),
    ...pours.flatMap((pour) => pourWork(pour, found(turnsOf.times, pour.code), turnsOf.turns)),
  ];
  return answer({
    facts,
    turnsOf,
    input,
    answer: withKeptBound(planned.value, input, facts),
    runs,
    steps: stepsOf(work, job),
    work,
    shortfalls: described.value.shortfalls,
    findings: [...planFindings(facts, turnsOf), ...asked.findings],
  });
}

/** What was proved for a kept plan holds as long as the question is the same. */
function withKeptBound(plan: PlanAnswer, input: PlanInput, { source: { keptBound } }: JobFacts): PlanAnswer {
  return keptBound === null || keptBound.boundCents <= plan.bound || questionKey(input) !== keptBound.question
    ? plan
    : withBound(plan, keptBound.boundCents);
}

/** What the planner is asked for a job: a door that makes a long plan beside asks for just this. */
export function planInputOfJob(facts: JobFacts, improveSeconds?: number): PlanInput {
  const turnsOf = turnsOfJob(facts);
  return searched(jobPlanInput(facts, turnsOf).input, improveSeconds);
}

/** The turns of all dated pours by the working calendar, those on hold until their hold ends. */
export function turnsOfJob({ job, pours, designs, planning }: JobFacts): TurnsOfPours {
  return turnsFromPours(job, pours, designs, planning.pourFacts);
}

function searched(input: PlanInput, improveSeconds: number | undefined): PlanInput {
  return improveSeconds === undefined ? input : { ...input, improveSeconds };
}

function inOrder(runs: readonly RunDescription[]): readonly RunDescription[] {
  return [...runs].sort((one, other) => begins(one) - begins(other));
}

function begins(run: RunDescription): number {
  const [first] = run.turns;
  return first === undefined ? 0 : msOf(first.from);
}
