// Explanations that speak of two lines of one count: a piece stacked with its look-alike is one too few here and one
// too many there, pieces moved between two counted places likewise, and owners mixed up. Both lines must say so, and
// of as many: a difference is never netted against another one in silence.
import type { Refusal } from '../answer.ts';
import type { CountLine, Explanation, ExplanationLine } from './stock-count.ts';

interface PairLine {
  readonly line: CountLine & { readonly difference: number };
  readonly explained: readonly ExplanationLine[];
}

/** Codes: no-look-alike, pair-unequal. */
export function pairRefusal(
  lines: readonly PairLine[],
  partners: ReadonlyMap<string, readonly string[]>,
): Refusal | null {
  for (const each of lines) {
    const refusal =
      stackedRefusal(each, lines, partners) ?? mixedRefusal(each, lines) ?? movedRefusal(each, lines);
    if (refusal !== null) return refusal;
  }
  return null;
}

function stackedRefusal(
  each: PairLine,
  lines: readonly PairLine[],
  partners: ReadonlyMap<string, readonly string[]>,
): Refusal | null {
  const how = 'stacked-with-look-alike';
  const mine = sumOf(each, how);
  if (mine === 0) return null;
  const alike = partners.get(each.line.component) ?? [];
  const others = lines.filter(
    ({ line }) =>
      line.location === each.line.location && alike.includes(line.component) && isOpposite(line, each.line),
  );
  const theirs = others.reduce((sum, other) => sum + sumOf(other, how), 0);
  const { component, location } = each.line;
  if (others.length === 0)
    return {
      code: 'no-look-alike',
      message: `No look-alike of ${component} was counted at ${location} with a difference the other way.`,
      field: 'explained',
      hint: 'Maybe enter the two as look-alikes, or count the other one too.',
    };
  if (theirs === mine) return null;
  const names = others.map(({ line }) => line.component).join(', ');
  return unequal(`${mine} of ${component} would be stacked with ${names}, and ${theirs} the other way.`);
}

function mixedRefusal(each: PairLine, lines: readonly PairLine[]): Refusal | null {
  const mine = sumOf(each, 'owner-mixed');
  if (mine === 0) return null;
  const { component, location, owner } = each.line;
  const theirs = lines
    .filter(({ line }) => line.component === component && line.location === location)
    .filter(({ line }) => line.owner !== owner && isOpposite(line, each.line))
    .reduce((sum, other) => sum + sumOf(other, 'owner-mixed'), 0);
  if (theirs === mine) return null;
  return unequal(
    `${mine} of ${component} (${owner}) at ${location} would be mixed up with another owner’s, and ${theirs} the other way.`,
  );
}

/** Where the place that is named was counted too, its line says the same. */
function movedRefusal(each: PairLine, lines: readonly PairLine[]): Refusal | null {
  const places = new Set(each.explained.flatMap(({ place }) => place ?? []));
  for (const place of places) {
    const other = lineAt(lines, each.line, place);
    if (other === undefined) continue;
    const [mine, theirs] = [movedBetween(each, place), movedBetween(other, each.line.location)];
    if (mine === theirs) continue;
    const { component, location } = each.line;
    return unequal(
      `${mine} of ${component} would have moved between ${location} and ${place}, and by the line of ${place} ${theirs}.`,
    );
  }
  return null;
}

/** The counted line of the same pieces at another place. */
export function lineAt<T extends PairLine>(
  lines: readonly T[],
  line: CountLine,
  place: string,
): T | undefined {
  return lines.find(
    (other) =>
      other.line.location === place &&
      other.line.component === line.component &&
      other.line.owner === line.owner,
  );
}

function movedBetween({ explained }: PairLine, place: string): number {
  return explained.reduce((sum, each) => sum + (each.place === place ? each.quantity : 0), 0);
}

function sumOf({ explained }: PairLine, how: Explanation): number {
  return explained.reduce((sum, each) => sum + (each.how === how ? each.quantity : 0), 0);
}

function isOpposite(one: { readonly difference: number }, other: { readonly difference: number }): boolean {
  return Math.sign(one.difference) === -Math.sign(other.difference);
}

function unequal(message: string): Refusal {
  return {
    code: 'pair-unequal',
    message,
    field: 'explained',
    hint: 'Maybe the other line has to say the same, of as many pieces.',
  };
}
