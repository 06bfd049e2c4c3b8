// Cross members of the panels that a rail lies over. A panel's cross members lie level where it stands upright,
// so only an upright rail meets them; on its side they stand, and only a level rail does.
import type { StandingPanel } from './placed.ts';
import type { Passing } from './rail-lines.ts';

/** Places of a panel's cross members along a rail, rising; none where they run along it. */
export function membersAlong(
  { panel, onSide, leftNm, bottomNm }: StandingPanel,
  upright: boolean,
): readonly number[] {
  if (onSide === upright) return [];
  const members = panel.crossMembersNm ?? [];
  const places = onSide
    ? members.map((heightNm) => leftNm + panel.heightNm - heightNm)
    : members.map((heightNm) => bottomNm + heightNm);
  return places.sort((one, other) => one - other);
}

/** How far a rail over a joint must reach both ways: the next cross member of each panel, else the joint itself. */
export function membersBeside(
  { first, second, fromNm, toNm }: Passing,
  upright: boolean,
): { readonly lowNm: number; readonly highNm: number } {
  return {
    lowNm: membersAlong(first, upright).findLast((at) => at < fromNm) ?? fromNm,
    highNm: membersAlong(second, upright).find((at) => at > toNm) ?? toNm,
  };
}

/** Would cross members of this panel lie across the rail, and does the catalogue tell none? */
export function lacksMembers({ panel, onSide }: StandingPanel, upright: boolean): boolean {
  return onSide !== upright && (panel.crossMembersNm ?? []).length === 0;
}
