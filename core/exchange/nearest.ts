// "Maybe P836 is meant": the known name nearest to what was typed. It only ever proposes; nothing is
// merged by likeness, since look-alikes are exactly what people mix up.

/** Two codes with the same sign differ only by case, spaces and marks: `P 836`, `p-836`, `P836`. */
export function codeSign(code: string): string {
  return code.toUpperCase().replaceAll(/[^\p{L}\p{N}]/gu, '');
}

/** The known name that differs least, or undefined where none is near. The first of equals. */
export function nearest(typed: string, known: Iterable<string>): string | undefined {
  const sign = codeSign(typed);
  const allowed = Math.max(1, Math.floor(sign.length / 3));
  let best: string | undefined;
  let least = allowed + 1;
  for (const name of known) {
    const steps = edits(sign, codeSign(name), least);
    if (steps < least) [best, least] = [name, steps];
    if (least === 0) break;
  }
  return best;
}

/** ` Maybe X is meant` for the end of a sentence, or nothing. */
export function maybe(typed: string, known: Iterable<string>): string {
  const near = nearest(typed, known);
  return near === undefined ? '' : `. Maybe ${near} is meant`;
}

/** Letters put in, left out, changed or swapped with their neighbour; `limit` where there are as many or more. */
function edits(one: string, other: string, limit: number): number {
  if (Math.abs(one.length - other.length) >= limit) return limit;
  let twoAbove: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const line = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1] ? 0 : 1;
      const change = (above[column - 1] ?? limit) + same;
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const swap = swapped ? (twoAbove[column - 2] ?? limit) + 1 : limit;
      line.push(Math.min(change, swap, (above[column] ?? limit) + 1, (line[column - 1] ?? limit) + 1));
    }
    [twoAbove, above] = [above, line];
  }
  return Math.min(above[other.length] ?? limit, limit);
}
