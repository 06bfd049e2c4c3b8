// Whether a count may be booked as it is explained: every line counted, every counter of one mind, every piece of a
// difference explained or left open by name, and what explains two lines at once the same in both.
import { type Answer, answer, type Refusal, refuse } from '../answer.ts';
import type { CountDifference } from './count-differences.ts';
import { lineKey } from './count-figures.ts';
import { explainsDifference, explanationRules } from './explanation-rules.ts';
import { pairRefusal } from './explained-pairs.ts';
import type { LocationKind } from './movement.ts';
import type { CountLine, ExplanationLine } from './stock-count.ts';

export interface ExplainedLine extends CountLine {
  readonly explained: readonly ExplanationLine[];
  /** Pieces of the difference that nobody can explain yet. */
  readonly leftOpen: number;
}

/** A line with what it is explained by. */
export interface LineToBook {
  readonly line: CountDifference;
  readonly explained: readonly ExplanationLine[];
  readonly leftOpen: number;
}

export interface ExplainFacts {
  readonly differences: readonly CountDifference[];
  readonly locations: ReadonlyMap<string, LocationKind>;
  /** For each component those that are taken for it. */
  readonly partners: ReadonlyMap<string, readonly string[]>;
  /** Lines that nobody counted are left out of the count, and stay as they were. */
  readonly leaveOut: boolean;
}

/**
 * Codes: unknown-line, not-counted, counters-differ, nothing-counted, uncertain, not-an-explanation, place-needed,
 * wrong-place, scrap-needs-a-name, owner-not-named, unexplained, explained-too-much, and those of pairs.
 */
export function checkExplained(
  facts: ExplainFacts,
  explained: readonly ExplainedLine[],
): Answer<readonly LineToBook[]> {
  const given = new Map(explained.map((line) => [lineKey(line), line]));
  const known = new Set(facts.differences.map(lineKey));
  const stray = explained.find((line) => !known.has(lineKey(line)));
  if (stray !== undefined)
    return refuse('unknown-line', `${named(stray)} is not on this count.`, { field: 'explained' });
  const waiting = facts.differences.filter(({ state }) => state === 'waiting');
  if (waiting.length > 0 && !facts.leaveOut)
    return refuse('not-counted', `Nobody has counted ${listed(waiting)}.`, {
      field: 'count',
      hint: 'Maybe leave these lines out of the count.',
    });
  const differing = facts.differences.filter(({ state }) => state === 'differ');
  if (differing.length > 0)
    return refuse('counters-differ', `The two counters did not find the same of ${listed(differing)}.`, {
      field: 'count',
      hint: 'Maybe each counts these lines once more.',
    });
  const counted = facts.differences.filter(({ state }) => state === 'counted');
  if (counted.length === 0)
    return refuse('nothing-counted', 'Nothing has been counted yet.', { field: 'count' });
  const lines = counted.map((line) => {
    const { explained: by = [], leftOpen = 0 } = given.get(lineKey(line)) ?? {};
    return { line, explained: by, leftOpen };
  });
  for (const each of lines) {
    const refusal = lineRefusal(each, facts);
    if (refusal !== null) return { ok: false, error: refusal };
  }
  const pair = pairRefusal(lines, facts.partners);
  return pair === null ? answer(lines) : { ok: false, error: pair };
}

function lineRefusal(each: LineToBook, facts: ExplainFacts): Refusal | null {
  for (const one of each.explained) {
    const refusal = explanationRefusal(each, one, facts.locations);
    if (refusal !== null) return refusal;
  }
  return sumRefusal(each);
}

function explanationRefusal(
  { line }: LineToBook,
  { how, place, remark }: ExplanationLine,
  locations: ReadonlyMap<string, LocationKind>,
): Refusal | null {
  const rule = explanationRules[how];
  const field = 'explained';
  if (how === 'condition-changed') return null;
  if (!explainsDifference(how, line.difference))
    return {
      code: 'not-an-explanation',
      message: `"${rule.words}" explains no piece of ${named(line)}: ${differenceWords(line)}.`,
      field,
    };
  if (line.unclear)
    return {
      code: 'uncertain',
      message: `The figure of ${named(line)} may be off by ${line.stands?.uncertainty ?? 0}: nobody can say whether there is a difference.`,
      field,
      hint: 'Maybe open the bag and count again, or leave the difference open.',
    };
  if (rule.isPlaceNeeded && place === undefined)
    return {
      code: 'place-needed',
      message: `Where are the ${line.component} that were ${rule.words}?`,
      field,
    };
  const kind = place === undefined ? undefined : locations.get(place);
  if (place !== undefined && (kind === undefined || !rule.places.includes(kind) || place === line.location))
    return {
      code: 'wrong-place',
      message: `${place} cannot be the place of ${line.component} "${rule.words}" from ${line.location}.`,
      field,
      hint: 'Maybe another kind of location is meant.',
    };
  if (how === 'scrapped' && (remark === null || remark === ''))
    return {
      code: 'scrap-needs-a-name',
      message: `Who else says that ${line.component} of ${line.location} was scrapped?`,
      field,
      hint: 'Maybe write the name in the remark: scrap needs a second one.',
    };
  if (how === 'owner-mixed' && line.owner === null)
    return {
      code: 'owner-not-named',
      message: `${named(line)} was counted for every owner together: whose were taken for whose cannot be said.`,
      field,
      hint: 'Maybe count each owner by itself.',
    };
  return null;
}

function sumRefusal({ line, explained, leftOpen }: LineToBook): Refusal | null {
  const moves = line.changes.moves;
  const { pieces, inOtherCondition } = stillToExplain(
    { ...line, conditionMoves: moves },
    explained,
    leftOpen,
  );
  const way = line.difference < 0 ? 'short' : 'over';
  if (inOtherCondition > 0)
    return unexplained(line, `${inOtherCondition} found in another condition than booked`);
  if (pieces > 0) return unexplained(line, `${pieces} ${way}`);
  if (inOtherCondition < 0)
    return tooMuch(
      line,
      `${-inOtherCondition} more in another condition than the ${piecesOf(moves)} found so`,
    );
  return pieces < 0
    ? tooMuch(line, `${-pieces} more than the difference of ${Math.abs(line.difference)}`)
    : null;
}

/** What of a line nobody has explained yet; below zero where more is explained than there is. */
export function stillToExplain(
  line: {
    readonly difference: number;
    readonly conditionMoves: readonly { readonly quantity: number }[];
  },
  explained: readonly Pick<ExplanationLine, 'how' | 'quantity'>[],
  leftOpen: number,
): { readonly pieces: number; readonly inOtherCondition: number } {
  const changed = piecesOf(explained.filter(({ how }) => how === 'condition-changed'));
  const rest = piecesOf(explained.filter(({ how }) => how !== 'condition-changed'));
  return {
    pieces: Math.abs(line.difference) - rest - leftOpen,
    inOtherCondition: piecesOf(line.conditionMoves) - changed,
  };
}

function piecesOf(parts: readonly { readonly quantity: number }[]): number {
  return parts.reduce((sum, { quantity }) => sum + quantity, 0);
}

function unexplained(line: CountDifference, what: string): Refusal {
  return {
    code: 'unexplained',
    message: `${named(line)}: ${what}, not explained.`,
    field: 'explained',
    hint: 'Maybe leave the rest open, by name.',
  };
}

function tooMuch(line: CountDifference, what: string): Refusal {
  return {
    code: 'explained-too-much',
    message: `${named(line)}: explained are ${what}.`,
    field: 'explained',
  };
}

function differenceWords({ difference, booked, stands }: CountDifference): string {
  const by =
    difference === 0 ? 'no difference' : `${Math.abs(difference)} ${difference < 0 ? 'short' : 'over'}`;
  return `${by}, ${stands?.quantity ?? 0} counted of ${booked} booked`;
}

/** "LK at ENN", with the owner where the line names one. */
export function named({ location, component, owner }: CountLine): string {
  return `${component}${owner === null ? '' : ` of ${owner}`} at ${location}`;
}

function listed(lines: readonly CountLine[]): string {
  const shown = lines.slice(0, 5).map(named).join(', ');
  return lines.length > 5 ? `${shown} and ${lines.length - 5} more` : shown;
}
