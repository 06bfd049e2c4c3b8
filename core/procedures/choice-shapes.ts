// Told instructions and fixed choices as doors show them: with the pours, sides and designs of the turns they speak of.
import { z } from 'zod';
import type { FixedChoice } from '../plan/choices.ts';
import { instantText } from '../plan/local-time.ts';
import type { JobPlan } from './job-plan.ts';
import { code, instant } from './shapes.ts';

const choiceTurn = z.strictObject({
  turn: z.string(),
  pour: code,
  side: z.enum(['A', 'B']),
  design: code,
  from: instant,
  to: instant,
});

/** The turn that a gang leaves and the one that it comes to; null where there is none, or where the turn is gone. */
export const choiceTurns = { from: choiceTurn.nullable(), to: choiceTurn.nullable() };

export function turnsOfChoice(plan: JobPlan, choice: FixedChoice) {
  const turns = new Map(plan.turnsOf.turns.map((turn) => [turn.id, turn]));
  const text = (ms: number): string => instantText(ms, plan.facts.job.timeZone);
  const shown = (id: string | null): z.input<typeof choiceTurn> | null => {
    const turn = id === null ? undefined : turns.get(id);
    if (turn === undefined) return null;
    const { pour, side, design } = turn;
    return { turn: turn.id, pour, side, design, from: text(turn.from), to: text(turn.to) };
  };
  if (choice.kind === 'follow') return { from: shown(choice.from), to: shown(choice.to) };
  return choice.kind === 'assemble'
    ? { from: null, to: shown(choice.turn) }
    : { from: shown(choice.turn), to: null };
}
