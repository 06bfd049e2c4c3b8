// Ways out by what is done with gangs that wait: broken down instead of standing by over the shortfall, or re-ganged into
// one of those for which the pieces are short.
import type { FixedChoice } from '../plan/choices.ts';
import { msOf } from '../plan/local-time.ts';
import type { FollowDescription } from '../plan/describe-runs.ts';
import type { Candidate, Group, WaysQuestion } from './ways-trial.ts';

interface Waiting {
  readonly turn: string;
  readonly pour: string;
  readonly design: string;
  readonly nextPour: string;
  /** Of the component that is short. */
  readonly pieces: number;
}

/** At most so many gangs are re-ganged into one that needs the pieces, each tried alone. */
const mostRegangs = 3;

export function gangWays(question: WaysQuestion): readonly Group[] {
  const waiting = waitingGangs(question);
  return [...breakDowns(question, waiting), ...regangs(question, waiting)];
}

function breakDowns({ shortfall }: WaysQuestion, waiting: readonly Waiting[]): readonly Group[] {
  const alike = [
    ...Map.groupBy(waiting, ({ pour, design, nextPour }) => `${pour} ${design} ${nextPour}`).values(),
  ];
  const single = alike.flatMap((gangs) => {
    const some = enough(gangs, shortfall.quantity);
    return some === null ? [] : [some];
  });
  // Where no like gangs hold enough by themselves, several unlike ones.
  const several = single.length > 0 ? null : enough(waiting, shortfall.quantity);
  const lists = several === null ? single : [several];
  return lists.map((gangs): Group => ({ kind: 'gang', tries: [breakDown(gangs)] }));
}

/** So many of them, those with most pieces first, that what they hold is enough; null where it never is. */
function enough(gangs: readonly Waiting[], quantity: number): readonly Waiting[] | null {
  const taken: Waiting[] = [];
  let pieces = 0;
  for (const gang of gangs.toSorted((one, other) => other.pieces - one.pieces)) {
    if (pieces >= quantity) break;
    taken.push(gang);
    pieces += gang.pieces;
  }
  return pieces >= quantity ? taken : null;
}

function breakDown(gangs: readonly Waiting[]): Candidate {
  const byPlace = Map.groupBy(
    gangs,
    ({ pour, design, nextPour }) => `${design} after ${pour}, waiting for ${nextPour}`,
  );
  const words = [...byPlace].map(([place, own]) => `${own.length} ${place}`).join('; ');
  return {
    kind: 'gang',
    changes: gangs.map(({ turn }) => ({ kind: 'fix', choice: { kind: 'break-down', turn } })),
    text: `Break down ${words}`,
  };
}

function regangs({ plan, shortfall }: WaysQuestion, waiting: readonly Waiting[]): readonly Group[] {
  const turns = new Map(plan.turnsOf.turns.map((turn) => [turn.id, turn]));
  const firsts = new Set(plan.answer.runs.map((run) => run.turns[0]));
  const start = msOf(shortfall.from);
  // A gang that is assembled out of the yard while the pieces are short could come from one that waits.
  const needs = shortfall.turns
    .flatMap(({ id }) => turns.get(id) ?? [])
    .filter((turn) => firsts.has(turn.id) && turn.from >= start);
  const all = needs.flatMap((need) =>
    waiting.map((gang): Candidate => {
      const choice: FixedChoice = { kind: 'follow', from: gang.turn, to: need.id };
      return {
        kind: 'gang',
        changes: [{ kind: 'fix', choice }],
        text: `${gang.design} of ${gang.pour} goes on to ${need.pour} as ${need.design} instead of waiting for ${gang.nextPour}`,
      };
    }),
  );
  // Like gangs of one pour say the same: one of them is enough.
  return [...new Map(all.map((each) => [each.text, each])).values()]
    .slice(0, mostRegangs)
    .map((candidate) => ({ kind: 'gang', tries: [candidate] }));
}

/** Gangs with the pieces that stand by when the shortfall begins and whose strip is still to come. */
function waitingGangs({ plan, shortfall, nowMs }: WaysQuestion): readonly Waiting[] {
  const turns = new Map(plan.turnsOf.turns.map((turn) => [turn.id, turn]));
  const start = msOf(shortfall.from);
  const waits = ({ gap }: FollowDescription): boolean => msOf(gap.from) <= start && start < msOf(gap.to);
  return plan.runs
    .flatMap(({ follows }) => follows)
    .filter((follow) => waits(follow) && msOf(follow.gap.from) > nowMs)
    .flatMap((follow): Waiting[] => {
      const [own, next] = [turns.get(follow.from), turns.get(follow.to)];
      const pieces = follow.kept.find(({ component }) => component === shortfall.component)?.quantity ?? 0;
      if (own === undefined || next === undefined || pieces === 0) return [];
      return [{ turn: own.id, pour: own.pour, design: own.design, nextPour: next.pour, pieces }];
    });
}
