// Two changes together, where none helps alone: pours that are poured later or stripped earlier, the fewest working days first, and
// what was planned already and helped in part.
import { msOf } from '../plan/local-time.ts';
import type { PlanChange } from '../plan/plan-changes.ts';
import { partOptions, type PourOption, shortThen } from './ways-pours.ts';
import type { Candidate, Trial, WaysQuestion } from './ways-trial.ts';

/** So many pairs are planned, and so many looked at quickly before. */
const pairsAtMost = 6;
const looksAtMost = 60;

export function pairsOf(question: WaysQuestion, failed: readonly Trial[]): readonly Candidate[] {
  return [...planned(question, failed).slice(0, pairsAtMost / 2), ...ofPours(question)].slice(0, pairsAtMost);
}

function ofPours(question: WaysQuestion): readonly Candidate[] {
  const options = partOptions(question);
  const pairs = options
    .flatMap((one, place) => options.slice(place + 1).map((other) => [one, other] as const))
    .filter(([one, other]) => !shareAPour(one, other))
    .toSorted(([a, b], [c, d]) => a.days + b.days - c.days - d.days);
  const found: (typeof pairs)[number][] = [];
  for (const pair of pairs.slice(0, looksAtMost)) {
    if (found.length >= pairsAtMost) break;
    if (found.some((known) => isWithin(known, pair))) continue;
    if (shortThen(question, [...pair[0].changed, ...pair[1].changed]) === 0) found.push(pair);
  }
  return found.map(([one, other]) => together(one.candidate, other.candidate));
}

/** The same pours, neither of them poured later than in the other pair. */
function isWithin(
  [a, b]: readonly [PourOption, PourOption],
  [c, d]: readonly [PourOption, PourOption],
): boolean {
  return isNoLater(a, c) && isNoLater(b, d);
}

function isNoLater(one: PourOption, other: PourOption): boolean {
  return (
    one.candidate.kind === other.candidate.kind &&
    one.changed[0]?.code === other.changed[0]?.code &&
    one.days <= other.days
  );
}

function shareAPour(one: PourOption, other: PourOption): boolean {
  const codes = new Set(one.changed.map(({ code }) => code));
  return other.changed.some(({ code }) => codes.has(code));
}

/** Of those that helped in part, the ones that left least short, two and two. */
function planned({ shortfall }: WaysQuestion, failed: readonly Trial[]): readonly Candidate[] {
  const partial = failed
    .filter(({ left, stops }) => left < shortfall.quantity && stops.length === 0)
    .toSorted((one, other) => one.left - other.left || one.answer.cost.total - other.answer.cost.total);
  return partial.flatMap((one, place) =>
    partial.slice(place + 1).flatMap((other): Candidate[] => {
      const [first, second] = [one.candidate, other.candidate];
      const touched = new Set(touch(first.changes));
      return touch(second.changes).some((each) => touched.has(each)) ? [] : [together(first, second)];
    }),
  );
}

function together(first: Candidate, second: Candidate): Candidate {
  return {
    kind: 'two-together',
    changes: [...first.changes, ...second.changes],
    text: `${first.text}; and ${second.text.slice(0, 1).toLowerCase()}${second.text.slice(1)}`,
  };
}

function touch(changes: readonly PlanChange[]): readonly string[] {
  return changes.map((change) => {
    if ('pour' in change) return `pour ${change.pour}`;
    if (change.kind === 'fix') return `fix ${JSON.stringify(change.choice)}`;
    return change.kind === 'stock'
      ? `stock ${change.entry.component} ${msOf(change.entry.from)}`
      : change.kind;
  });
}
