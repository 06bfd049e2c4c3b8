// Stop-ends and closures that are made up on the site: their area, the backing across them and the hours they
// take, by their table.
import type { RuleTables } from '../catalogue/rules.ts';
import { areaM2, rectangleNm2 } from '../units/area.ts';

export interface MadeUp {
  readonly widthNm: number;
  readonly heightNm: number;
  readonly areaNm2: bigint;
  /** Level pieces across it, none farther apart than the table says, one at each end; null where none is named. */
  readonly backing: { readonly component: string; readonly count: number } | null;
  /** Work to make and fix it, by its area; null where there is no table. */
  readonly hours: number | null;
}

/** A made-up piece of a width over zero; of a stop-end that is the wall's thickness. */
export function madeUp(widthNm: number, heightNm: number, table: RuleTables['closures']): MadeUp {
  const areaNm2 = rectangleNm2(widthNm, heightNm);
  const { backing, backingSpacingNm } = table ?? {};
  return {
    widthNm,
    heightNm,
    areaNm2,
    backing:
      backing === undefined || backingSpacingNm === undefined
        ? null
        : { component: backing, count: Math.ceil(heightNm / backingSpacingNm) + 1 },
    hours: table === undefined ? null : table.hoursPerM2 * areaM2(areaNm2),
  };
}
