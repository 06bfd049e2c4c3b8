// Heights that stand over each other: the rows of panels of a form, and the pieces that make up a corner or a
// stop-end of its height.
import { type Answer, answer, refuse } from '../answer.ts';
import { shown } from '../gang/findings.ts';
import type { Panel } from '../catalogue/component.ts';

/** Rows of a form at most: more would not be one storey of a wall. */
const mostRows = 6;

/**
 * Rows from the bottom, highest first: the least height that reaches, then the fewest rows, then the highest row.
 * Given rows are kept as they are. Refuses 'rows-too-low', 'row-without-panels' and 'no-rows'.
 */
export function wallRows(
  panels: readonly Panel[],
  neededNm: number,
  given: readonly number[] | undefined,
): Answer<readonly number[]> {
  const heights = [...new Set(panels.map(({ heightNm }) => heightNm))].sort((one, other) => other - one);
  if (given !== undefined) {
    const bare = given.findIndex((height) => !heights.includes(height));
    if (bare >= 0)
      return refuse(
        'row-without-panels',
        `No panel is ${shown(given[bare] ?? 0)} high, as row ${bare + 1} is.`,
        {
          field: `rows[${bare}]`,
          hint: `Maybe one of ${heights.slice(0, 5).map(shown).join(', ')}.`,
        },
      );
    const sum = given.reduce((all, each) => all + each, 0);
    if (sum < neededNm)
      return refuse(
        'rows-too-low',
        `The rows are ${shown(sum)} high together; pour and freeboard need ${shown(neededNm)}.`,
        { field: 'rows' },
      );
    return answer(given);
  }
  let best: readonly number[] | undefined;
  let bestNm = Infinity;
  const search = (rows: readonly number[], sumNm: number, from: number): void => {
    if (sumNm >= neededNm) {
      const isBetter = sumNm < bestNm || (sumNm === bestNm && rows.length < (best?.length ?? Infinity));
      if (isBetter) [best, bestNm] = [rows, sumNm];
      return;
    }
    if (rows.length === mostRows) return;
    for (const [index, height] of heights.entries())
      if (index >= from) search([...rows, height], sumNm + height, index);
  };
  search([], 0, 0);
  if (best === undefined)
    return refuse('no-rows', `No ${mostRows} rows of panels reach ${shown(neededNm)}.`, {
      field: 'height',
      hint: 'Maybe the wall is poured in two storeys.',
    });
  return answer(best);
}

/** The fewest pieces whose heights add up exactly, highest first, each with its index; undefined where none do. */
export function piecesOfHeight(heightsNm: readonly number[], sumNm: number): readonly number[] | undefined {
  const order = heightsNm
    .map((height, index) => ({ height, index }))
    .filter(({ height }) => height > 0)
    .sort((one, other) => other.height - one.height);
  let best: readonly number[] | undefined;
  const search = (found: readonly number[], leftNm: number, from: number): void => {
    if (leftNm === 0 && found.length < (best?.length ?? Infinity)) best = found;
    if (leftNm <= 0 || found.length >= Math.min(mostRows * 2, (best?.length ?? Infinity) - 1)) return;
    for (const [place, { height, index }] of order.entries())
      if (place >= from && height <= leftNm) search([...found, index], leftNm - height, place);
  };
  search([], sumNm, 0);
  return best;
}
