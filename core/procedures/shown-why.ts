// What was weighed for a gang, in the shapes in which doors show it.
import type { FixedChoice } from '../plan/choices.ts';
import { planReuse } from '../plan/plan-reuse.ts';
import { shortChanges } from '../plan/why/short-change.ts';
import type { Side } from '../plan/why/open-ways.ts';
import type { Alternative, Decision, WhyQuestion } from '../plan/why/why.ts';
import { asData } from './as-data.ts';
import type { JobPlan } from './job-plan.ts';

export function whyQuestion({ input, answer: plan, turnsOf }: JobPlan): WhyQuestion {
  const pours = new Map(turnsOf.turns.map(({ id, pour }) => [id, pour]));
  return {
    input,
    plan,
    // Not among the plans remembered: they would push out those that screens ask for again.
    planWith: (changed) => planReuse(changed, () => 0),
    placeOf: (turn) => pours.get(turn) ?? turn,
  };
}

export function shownDecision(
  plan: JobPlan,
  { side, chosen, fixed, alternatives, barred, others }: Decision,
) {
  return {
    side,
    chosen: {
      ...shownWay(plan, chosen.choice, side),
      regangH: chosen.regangH,
      gapH: chosen.gapH,
      costCents: 0,
      unmetMore: 0,
      shortfalls: [],
      toldChanged: toldOf(plan.answer),
    },
    fixed: asData(fixed),
    told: (plan.input.told ?? []).some((each) => JSON.stringify(each) === JSON.stringify(chosen.choice)),
    alternatives: alternatives.map((each) => shownAlternative(plan, each, side)),
    barred: barred.map(({ from, to, barrier }) => ({
      ...shownWay(plan, { kind: 'follow', from, to }, side),
      barrier,
    })),
    others,
  };
}

export function shownAlternative(plan: JobPlan, alternative: Alternative, side: Side) {
  const { choice, plan: other, costMore, unmetMore, regangH, gapH } = alternative;
  return {
    ...shownWay(plan, choice, side),
    regangH,
    gapH,
    costCents: costMore,
    unmetMore,
    shortfalls: shortChanges(plan.answer.shortfalls, other.shortfalls),
    toldChanged: toldOf(other),
  };
}

function toldOf({ changed }: JobPlan['answer']): number {
  return changed?.length ?? 0;
}

function shownWay(plan: JobPlan, choice: FixedChoice, side: Side) {
  const otherId = choice.kind !== 'follow' ? null : side === 'arrival' ? choice.from : choice.to;
  const other = plan.turnsOf.turns.find(({ id }) => id === otherId);
  return {
    choice: asData(choice),
    how: howOf(plan, choice),
    pour: other?.pour ?? null,
    side: other?.side ?? null,
    design: other?.design ?? null,
    otherHand: isOtherHand(plan, choice),
  };
}

/** Whether one design is the other's mirror image by name: the same pieces for the other hand. */
function isOtherHand({ facts: { designs }, input }: JobPlan, choice: FixedChoice): boolean {
  if (choice.kind !== 'follow') return false;
  const [from, to] = [choice.from, choice.to].map((id) =>
    designs.get(input.turns.find((turn) => turn.id === id)?.design ?? ''),
  );
  if (from === undefined || to === undefined || from === to) return false;
  const codes = new Set([...Object.keys(from.pieces), ...Object.keys(to.pieces)]);
  return (
    from.design.hand !== to.design.hand && [...codes].every((code) => from.pieces[code] === to.pieces[code])
  );
}

function howOf({ input }: JobPlan, choice: FixedChoice) {
  if (choice.kind !== 'follow') {
    const built = input.turns.some(
      (turn) => choice.kind === 'assemble' && turn.id === choice.turn && turn.built,
    );
    return built ? ('built' as const) : choice.kind;
  }
  const designOf = (id: string): string | undefined => input.turns.find((turn) => turn.id === id)?.design;
  return designOf(choice.from) === designOf(choice.to) ? ('fly-on' as const) : ('regang' as const);
}
