// Kind by kind why there is no way out, or what was tried and how many were short even so.
import type { WaysAnswer } from './ways-shapes.ts';
import type { Tried } from './ways-out.ts';
import { type WayKind, wayKinds, type WaysQuestion } from './ways-trial.ts';

export function whyNone(question: WaysQuestion, { helped, failed, byKind }: Tried): WaysAnswer['tried'] {
  return wayKinds.map((kind) => {
    const ways = helped.filter(({ candidate }) => candidate.kind === kind).length;
    const tried = byKind.get(kind) ?? 0;
    return {
      kind,
      tried,
      ways,
      why: ways > 0 ? null : why(question, kind, tried, failed, helped.length > 0),
    };
  });
}

function why(
  question: WaysQuestion,
  kind: WayKind,
  tried: number,
  failed: Tried['failed'],
  isSolved: boolean,
): string {
  if (tried === 0) return nothingToTry(question, kind, isSolved);
  const own = failed.filter(({ candidate }) => candidate.kind === kind);
  const [stopped] = own.filter(({ left, stops }) => left === 0 && stops.length > 0);
  if (stopped !== undefined) return `${stopped.candidate.text}: ${stopped.stops[0] ?? ''}`;
  const best = own.toSorted((one, other) => one.left - other.left)[0];
  return best === undefined
    ? 'The planner refused what was tried.'
    : `${best.candidate.text}: still ${best.left} short.`;
}

function nothingToTry({ shortfall, others, plan }: WaysQuestion, kind: WayKind, isSolved: boolean): string {
  const { component } = shortfall;
  switch (kind) {
    case 'hire':
      return `${component} cannot be hired: the catalogue has no rate for it.`;
    case 'slip':
      return 'No pour that holds the pieces frees enough of them within 10 working days, or it is set already.';
    case 'gang':
      return 'No gang with enough of the pieces stands by over the shortfall.';
    case 'strip':
      return 'No pour that holds the pieces has hours to spare above 12 h, or none of them frees enough.';
    case 'transfer':
      return others.length === 0
        ? `The book has one job only, ${plan.facts.job.code}.`
        : 'No other job of the book has as many planned to come and to spare.';
    case 'design':
      return `No other design of the same size, edges and hand takes fewer ${component}.`;
    case 'two-together':
      return isSolved
        ? 'Not looked for: something helps alone.'
        : 'Nothing helps in part, so that two could do.';
    default:
      throw new Error(`A case was forgotten: ${String(kind)}`);
  }
}
