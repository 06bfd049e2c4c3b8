// A second reading of what is told and what is fixed, from the runs alone: what a plan changes, and whether it obeys. And
// random choices for random inputs, each set of fixed ones taken from a plan that there is.
import { never } from '../../core/answer.ts';
import type { FixedChoice, Instruction } from '../../core/plan/choices.ts';
import type { PlanInput } from '../../core/plan/contract.ts';
import { numbersFrom } from '../bench/jobs.ts';
import { refMayFollow } from './reference.ts';

type Runs = readonly (readonly string[])[];

/** Whether the runs have the instruction in them. */
export function refFollows(runs: Runs, told: Instruction): boolean {
  switch (told.kind) {
    case 'follow':
      return runs.some((run) => run.some((id, place) => id === told.from && run[place + 1] === told.to));
    case 'assemble':
      return runs.some((run) => run[0] === told.turn);
    case 'break-down':
      return runs.some((run) => run.at(-1) === told.turn);
    default:
      return never(told);
  }
}

/** The instructions that the runs change, each once. */
export function refChanged(runs: Runs, told: readonly Instruction[]): Instruction[] {
  const seen = new Set<string>();
  return told.filter((each) => {
    const text = JSON.stringify(each);
    if (seen.has(text)) return false;
    seen.add(text);
    return !refFollows(runs, each);
  });
}

export function refObeys(input: PlanInput, runs: Runs): boolean {
  const designs = new Map(input.turns.map(({ id, design }) => [id, design]));
  return (input.fixed ?? []).every((choice) => {
    if (choice.kind !== 'no-regang') return refFollows(runs, choice);
    const run = runs.find((each) => each.includes(choice.turn)) ?? [];
    const next = run[run.indexOf(choice.turn) + 1];
    return next === undefined || designs.get(next) === designs.get(choice.turn);
  });
}

/** The input with random instructions told and random choices fixed. */
export function withChoices(input: PlanInput, seed: number): PlanInput {
  const next = numbersFrom(seed);
  const chance = (part: number): boolean => next() < part;
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  const told = instructionsOf(randomRuns(input, next)).filter(() => chance(0.5));
  const ids = input.turns.map(({ id }) => id);
  // Anything at all may have been told once, what is not possible any more as well.
  if (chance(0.3)) told.push({ kind: 'follow', from: pick(ids), to: pick(ids) });
  if (chance(0.2)) told.push(...told.slice(0, 1));
  const plan = randomRuns(input, next);
  const designs = new Map(input.turns.map(({ id, design }) => [id, design]));
  const kept = plan.flatMap((run) =>
    run.filter(
      (id, place) => run[place + 1] === undefined || designs.get(run[place + 1] ?? '') === designs.get(id),
    ),
  );
  const fixed: FixedChoice[] = [
    ...instructionsOf(plan).filter(() => chance(0.2)),
    ...kept.filter(() => chance(0.15)).map((turn) => ({ kind: 'no-regang', turn }) as const),
  ];
  return { ...input, told, changePerInstruction: pick([0, 75, 1200.5, 40_000]), fixed };
}

function instructionsOf(runs: Runs): Instruction[] {
  return runs.flatMap((run) => [
    { kind: 'assemble' as const, turn: run[0] ?? '' },
    ...run.slice(1).map((to, place) => ({ kind: 'follow' as const, from: run[place] ?? '', to })),
    { kind: 'break-down' as const, turn: run.at(-1) ?? '' },
  ]);
}

/** Some plan: turn by turn in order of time, joined to a run that it may follow more often than not. */
function randomRuns(input: PlanInput, next: () => number): string[][] {
  const runs: PlanInput['turns'][] = [];
  for (const turn of [...input.turns].sort((one, other) => Date.parse(one.from) - Date.parse(other.from))) {
    const open = runs.filter((run) => {
      const last = run.at(-1);
      return last !== undefined && refMayFollow(input, last, turn);
    });
    const chosen = next() < 0.75 ? open[Math.floor(next() * open.length)] : undefined;
    if (chosen === undefined) runs.push([turn]);
    else chosen.push(turn);
  }
  return runs.map((run) => run.map(({ id }) => id));
}
