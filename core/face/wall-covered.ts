// How much of a leg gangs on paper can cover at most, each side by itself and whatever becomes of its ties: what is left
// must come out with panels, and with a filler or an overhang where one is allowed.
import type { LegToFill } from './wall-steps.ts';
import type { SideName } from './wall.ts';

/** Both sides together; never less than what any way of filling both covers. */
export function mostCoveredNm(leg: LegToFill): number {
  return mostOfSideNm(leg, 'A') + mostOfSideNm(leg, 'B');
}

function mostOfSideNm(leg: LegToFill, side: SideName): number {
  const { classes, overhangNm, fillersNm } = leg;
  const lengthNm = leg.lengthNm[side];
  const upToNm = lengthNm + overhangNm;
  const widths = (isDesign: boolean): readonly number[] =>
    classes.filter((one) => one.isDesign === isDesign).map(({ widthNm }) => widthNm);
  const panels = sums(widths(false), upToNm);
  let mostNm = Number.NEGATIVE_INFINITY;
  for (const coveredNm of sums(widths(true), upToNm)) {
    const leftNm = lengthNm - coveredNm;
    const fits = panels.has(leftNm) || fillersNm[side].some((fillerNm) => panels.has(leftNm - fillerNm));
    if (fits) mostNm = Math.max(mostNm, coveredNm);
    if (overhangNm === 0) continue;
    for (const panelNm of panels) {
      const beyondNm = coveredNm + panelNm - lengthNm;
      if (beyondNm > 0 && beyondNm <= overhangNm) mostNm = Math.max(mostNm, Math.min(coveredNm, lengthNm));
    }
  }
  return mostNm;
}

function sums(widths: readonly number[], mostNm: number): ReadonlySet<number> {
  const found = new Set([0]);
  for (const sum of found) for (const width of widths) if (sum + width <= mostNm) found.add(sum + width);
  return found;
}
