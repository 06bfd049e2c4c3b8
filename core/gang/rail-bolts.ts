// Where the bolts of a rail go: on every panel that it crosses, clear of the joints it lies across.
import type { RailTable } from '../catalogue/rules.ts';
import type { StandingPanel } from './placed.ts';
import type { LaidRail } from './rail-layout.ts';
import { membersAlong } from './rail-members.ts';

/** Places along the rail, rising, and the panels on which a bolt has none, with where they begin under the rail. */
export interface BoltsOfRail {
  readonly atNm: readonly number[];
  readonly without: readonly { readonly panel: StandingPanel; readonly atNm: number }[];
}

/**
 * The room on a panel is what rail and panel have in common, less the clearance at each end where the rail goes
 * on over a joint. Bolts are spread evenly in it; where rails must reach cross members, they are put on those,
 * nearest to the rail's middle first, as far as there are some in the room.
 */
export function boltsOf(laid: LaidRail, table: RailTable, upright: boolean): BoltsOfRail {
  const count = table.bolt === undefined ? 0 : (table.boltsPerPanelCrossed ?? 0);
  if (count === 0) return { atNm: [], without: [] };
  const atNm: number[] = [];
  const without: BoltsOfRail['without'][number][] = [];
  for (const panel of laid.panels) {
    const room = roomOn(panel, laid, table.boltClearanceNm ?? 0);
    if (room === undefined) {
      without.push({ panel, atNm: laid.startNm });
      continue;
    }
    const [from, to] = room;
    if (from > to) without.push({ panel, atNm: Math.min(from, to) });
    else atNm.push(...spread(from, to, count, membersIn(panel, laid, table, upright, room)));
  }
  return { atNm: atNm.sort((one, other) => one - other), without };
}

function roomOn(
  panel: StandingPanel,
  { line, rail, startNm }: LaidRail,
  clearanceNm: number,
): readonly [number, number] | undefined {
  const endNm = startNm + rail.lengthNm;
  const segment = line.segments.find(
    (one) => one.panel === panel && one.fromNm < endNm && one.toNm > startNm,
  );
  if (segment === undefined) return undefined;
  const { fromNm, toNm } = segment;
  const before = line.passings.some((one) => one.second === panel && one.toNm === fromNm);
  const after = line.passings.some((one) => one.first === panel && one.fromNm === toNm);
  return [
    Math.max(startNm, before && startNm < fromNm ? fromNm + clearanceNm : fromNm),
    Math.min(endNm, after && endNm > toNm ? toNm - clearanceNm : toNm),
  ];
}

/** Cross members in the room, nearest to the middle of the rail first; none where rails need not reach them. */
function membersIn(
  panel: StandingPanel,
  { rail, startNm }: LaidRail,
  table: RailTable,
  upright: boolean,
  [from, to]: readonly [number, number],
): readonly number[] {
  if (table.reachCrossMember !== true) return [];
  const middle = startNm + rail.lengthNm / 2;
  return membersAlong(panel, upright)
    .filter((at) => from <= at && at <= to)
    .sort((one, other) => Math.abs(one - middle) - Math.abs(other - middle));
}

function spread(from: number, to: number, count: number, members: readonly number[]): readonly number[] {
  if (members.length >= count) return members.slice(0, count);
  return Array.from({ length: count }, (_, index) =>
    Math.round(from + ((to - from) * (2 * index + 1)) / (2 * count)),
  );
}
