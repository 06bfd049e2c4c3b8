// Every way out of one shortfall: the kinds take turns, the most promising of each first, until all are tried or as many
// plans are made as one question may cost; where nothing helps alone, two together.
import { gangWays } from './ways-gangs.ts';
import { hireWays, transferWays } from './ways-hire.ts';
import { nearItems } from './ways-near.ts';
import { pairsOf } from './ways-pairs.ts';
import { designWays, slipWays, stripWays } from './ways-pours.ts';
import { rankedWays } from './ways-shown.ts';
import type { WaysAnswer } from './ways-shapes.ts';
import {
  type Candidate,
  type Group,
  mostTrials,
  type Trial,
  tryOut,
  type WayKind,
  type WaysQuestion,
} from './ways-trial.ts';
import { whyNone } from './ways-why-none.ts';

export interface Tried {
  readonly helped: readonly Trial[];
  /** Planned without the shortfall going away, or forbidden by a rule. */
  readonly failed: readonly Trial[];
  readonly byKind: ReadonlyMap<WayKind, number>;
}

export function waysOut(question: WaysQuestion): WaysAnswer {
  const tried = tryAll(question);
  return {
    shortfall: question.shortfall,
    currency: question.plan.facts.job.currency,
    ways: rankedWays(question, tried.helped),
    ask: nearItems(question),
    tried: whyNone(question, tried),
  };
}

function tryAll(question: WaysQuestion): Tried {
  const kinds: readonly (readonly Group[])[] = [
    hireWays(question),
    slipWays(question),
    stripWays(question),
    gangWays(question),
    designWays(question),
    transferWays(question),
  ];
  const helped: Trial[] = [];
  const failed: Trial[] = [];
  const byKind = new Map<WayKind, number>();
  let left = mostTrials(question.plan);
  const attempt = (candidate: Candidate): boolean => {
    left -= 1;
    byKind.set(candidate.kind, (byKind.get(candidate.kind) ?? 0) + 1);
    const trial = tryOut(question, candidate);
    if (trial === null) return false;
    const helps = trial.left === 0 && trial.stops.length === 0;
    (helps ? helped : failed).push(trial);
    return helps;
  };
  for (const group of inTurns(kinds))
    for (const candidate of group.tries) {
      if (left <= 0) break;
      if (attempt(candidate)) break;
    }
  if (helped.length === 0) for (const pair of pairsOf(question, failed)) attempt(pair);
  return { helped, failed, byKind };
}

/** The first of every list, then the second of every list, and so on. */
function inTurns(lists: readonly (readonly Group[])[]): readonly Group[] {
  const longest = Math.max(0, ...lists.map(({ length }) => length));
  return Array.from({ length: longest }, (_, place) => lists.flatMap((list) => list[place] ?? [])).flat();
}
