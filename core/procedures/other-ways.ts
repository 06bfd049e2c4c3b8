// Gangs that go another way in one plan than in the other, and those that stand longer.
import { never } from '../answer.ts';
import { msOf } from '../plan/local-time.ts';
import type { shownPlan } from './shown-plan.ts';

type ShownTurn = ReturnType<typeof shownPlan>['turns'][number];

export function rerouted(before: readonly ShownTurn[], after: readonly ShownTurn[]) {
  const pourOf = new Map(after.map((turn) => [turn.id, turn.pour]));
  const pourWas = new Map(before.map((turn) => [turn.id, turn.pour]));
  const was = new Map(before.map((turn) => [turn.id, words(turn, pourWas)]));
  return after
    .map((turn) => ({
      turn: turn.id,
      pour: turn.pour,
      before: was.get(turn.id) ?? 'not there',
      after: words(turn, pourOf),
    }))
    .filter((each) => each.before !== each.after);
}

/** Where a gang goes after a turn. To which of a pour's like gangs it goes changes nothing on site. */
function words({ after }: ShownTurn, pourOf: ReadonlyMap<string, string>): string {
  switch (after.how) {
    case 'break-down':
      return 'broken down';
    case 'fly-on':
      return `flies on to ${pourOf.get(after.turn) ?? ''}`;
    case 'regang':
      return `re-ganged for ${pourOf.get(after.turn) ?? ''}`;
    default:
      return never(after);
  }
}

export function heldLonger(before: readonly ShownTurn[], after: readonly ShownTurn[]) {
  const was = new Map(before.map((turn) => [turn.id, msOf(turn.to)]));
  return after
    .filter((turn) => msOf(turn.to) > (was.get(turn.id) ?? Infinity))
    .map(({ id, pour, design, to }) => ({ turn: id, pour, design, until: to }));
}
