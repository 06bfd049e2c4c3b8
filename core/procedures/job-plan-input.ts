// What the planner is asked for a job out of its facts: turns, stock and rates, and around them what the crew was told,
// what is fixed, which gangs are made up already and the plan that was kept last.
import type { FixedChoice, Instruction } from '../plan/choices.ts';
import type { PlanInput } from '../plan/contract.ts';
import { splitFixedOf } from '../plan/plan-reuse.ts';
import type { PourFinding } from '../plan/pour-findings.ts';
import { turnsOf as turnsNamed } from '../plan/split-fixed.ts';
import { planInputOf, type PlanComponent, type TurnsOfPours } from '../plan/turns-from-pours.ts';
import { turnsMadeUp } from '../yard/made-up-gangs.ts';
import { byCode, found } from './by-code.ts';
import type { JobFacts } from './job-facts.ts';

export interface AskedPlan {
  readonly input: PlanInput;
  /** Fixed choices that no plan can obey and that are left out. */
  readonly findings: readonly PourFinding[];
}

export function jobPlanInput(facts: JobFacts, turnsOf: TurnsOfPours): AskedPlan {
  const input = { ...inputOf(facts, turnsOf), ...toldOf(facts, turnsOf), ...startOf(facts, turnsOf) };
  const { fixed } = facts.planning;
  if (fixed.length === 0) return { input, findings: [] };
  const split = splitFixedOf({ ...input, fixed: [...fixed] });
  // What is wrong with the rest of the input is said where the plan is made.
  if (!split.ok) return { input, findings: [] };
  const { obeyed, impossible } = split.value;
  return {
    input: obeyed.length === 0 ? input : { ...input, fixed: [...obeyed] },
    findings: impossible.map(({ choice, message }) => ({
      rule: 'fixed-choice',
      severity: 'caution',
      message: `${message} The plan is made without it.`,
      where: turnsNamed(choice)[0] ?? '',
    })),
  };
}

/** Whether the turns that a choice speaks of are there. */
export function isThere(choice: Instruction | FixedChoice, turns: ReadonlySet<string>): boolean {
  return turnsNamed(choice).every((id) => turns.has(id));
}

/** Only components and designs that the job uses: the others could not change its plan. */
function inputOf(facts: JobFacts, turnsOf: TurnsOfPours): PlanInput {
  const { job, designs } = facts;
  const usedDesigns = [...new Set(turnsOf.turns.map((turn) => turn.design))].map((code) => {
    const { design, pieces } = found(designs, code);
    return { code, pieces: { ...pieces }, assembleH: design.assembleH, breakDownH: design.breakDownH };
  });
  const usedCodes = new Set([
    ...usedDesigns.flatMap((design) => Object.keys(design.pieces)),
    ...turnsOf.loose.map((line) => line.component),
  ]);
  const used = [...facts.components.values()].filter((component) => usedCodes.has(component.code));
  const components = used.map(({ code, hirePerDayCents }): PlanComponent => {
    const levels = facts.stock.get(code)?.levels ?? [];
    return {
      code,
      stock: levels.map(({ from, quantity }) => ({ from: from ?? beforeAllPlans, quantity })),
      hirePerDay: hirePerDayCents,
    };
  });
  const perPiece = byCode(used);
  const regangPerPieceH = Object.fromEntries(
    [...perPiece].map(([code, component]) => [code, component.regangPerPieceH]),
  );
  const input = planInputOf(job, turnsOf, usedDesigns, components, regangPerPieceH);
  const madeUp = turnsMadeUp(facts.source.madeUp, turnsOf.turns);
  if (madeUp.size === 0) return input;
  return {
    ...input,
    turns: input.turns.map((turn) => (madeUp.has(turn.id) ? { ...turn, built: true } : turn)),
  };
}

/** What was told of turns that there still are. */
function toldOf({ planning }: JobFacts, turnsOf: TurnsOfPours): Partial<PlanInput> {
  const turns = new Set(turnsOf.turns.map(({ id }) => id));
  const told = planning.told.filter((each) => isThere(each, turns));
  return told.length === 0 ? {} : { told, changePerInstruction: planning.settings.changeCents };
}

/** The runs of the plan that was kept last, as far as their turns are there. */
function startOf({ source }: JobFacts, turnsOf: TurnsOfPours): Partial<PlanInput> {
  if (source.kept === null) return {};
  const there = new Set(turnsOf.turns.map(({ id }) => id));
  const runs = source.kept.map(({ turns }) => ({ turns: turns.filter((id) => there.has(id)) }));
  const start = runs.filter(({ turns }) => turns.length > 1);
  return start.length === 0 ? {} : { start };
}

/** What is there when a plan begins was there before: assembling may reach back beyond the first day. */
const beforeAllPlans = '1970-01-01T00:00:00Z';
