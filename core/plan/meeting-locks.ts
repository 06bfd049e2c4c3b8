// The locks where the gangs of a pour stand side by side: they are loose pieces of the pour, counted once, and
// follow from the rule tables of the gangs.
import type { EdgeKind } from '../catalogue/edges.ts';
import type { RuleTables } from '../catalogue/rules.ts';
import type { MadeUp } from '../gang/made-up.ts';
import { type Meeting, type MeetingGang, meetingJoints } from '../gang/meeting-joints.ts';
import type { HoledDesign } from './opposite-holes.ts';
import type { PlacedGang, Pour, SideName } from './pours.ts';

/** What a pour needs of its designs; without a take-off nothing is said of meeting edges and braces. */
export interface PourDesign extends HoledDesign {
  readonly takeOff?: MeetingGang;
  readonly rules?: RuleTables;
  readonly edges?: { readonly left: EdgeKind; readonly right: EdgeKind };
  readonly braced?: boolean;
  /** Components of its catalogue that can be drawn in: stripping corners, pull-out strips. */
  readonly shrinking?: ReadonlySet<string>;
}

export interface MeetingAtPour extends Meeting {
  readonly side: SideName;
  /** In the order along the wall as seen from side A. */
  readonly between: readonly [string, string];
  /** Where the first gang ends, along the wall from the pour's start. */
  readonly atNm: number;
}

export interface MeetingLocks {
  readonly meetings: readonly MeetingAtPour[];
  /** Locks of all meeting edges, by component. */
  readonly locks: Readonly<Record<string, number>>;
  readonly closures: readonly MadeUp[];
}

/** Corners, stop-ends, columns and old concrete have joints of their own: here gangs meet. */
const meetingKinds: ReadonlySet<EdgeKind> = new Set(['open', 'next-gang']);

/** Gangs that stand in each other's place have no meeting edge; that is a finding of its own. */
export function meetingLocks(pour: Pour, designs: ReadonlyMap<string, PourDesign>): MeetingLocks {
  const sideBySide = pour.sides.flatMap(({ side, gangs }) => {
    const along = inOrder(gangs);
    return along.flatMap((gang, index) => {
      const next = along[index + 1];
      return next === undefined ? [] : meetingOf(side, gang, next, designs);
    });
  });
  const meetings = [...sideBySide, ...openingJoints(pour, designs)];
  const locks: Record<string, number> = {};
  for (const { component, count } of meetings.flatMap(({ taken }) => taken)) {
    if (count > 0) locks[component] = (locks[component] ?? 0) + count;
  }
  return { meetings, locks, closures: meetings.flatMap(({ closure }) => closure ?? []) };
}

function meetingOf(
  side: SideName,
  gang: PlacedGang,
  next: PlacedGang,
  designs: ReadonlyMap<string, PourDesign>,
): readonly MeetingAtPour[] {
  const [one, other] = [designs.get(gang.design), designs.get(next.design)];
  if (one?.takeOff === undefined || one.rules === undefined || other?.takeOff === undefined) return [];
  const atNm = gang.atNm + one.widthNm;
  const gapNm = next.atNm - atNm;
  // Seen from its back, side B runs the other way along the wall.
  const [left, right] = side === 'A' ? [one, other] : [other, one];
  if (gapNm < 0 || !meets(left.edges?.right) || !meets(right.edges?.left)) return [];
  if (left.takeOff === undefined || right.takeOff === undefined) return [];
  const meeting = meetingJoints(left.takeOff, right.takeOff, gapNm, one.rules);
  return [{ ...meeting, side, between: [gang.design, next.design], atNm }];
}

/**
 * A column as two L-halves, drawn unfolded, one on each side of the pour with the edge kind `column` at both ends:
 * they open and close at two joints. Halves belong together in their order along the sides.
 */
function openingJoints(pour: Pour, designs: ReadonlyMap<string, PourDesign>): readonly MeetingAtPour[] {
  const [a = [], b = []] = (['A', 'B'] as const).map((name) =>
    inOrder(pour.sides.flatMap((each) => (each.side === name ? each.gangs : []))).filter(({ design }) =>
      isHalf(designs.get(design)),
    ),
  );
  return a.flatMap((half, index): readonly MeetingAtPour[] => {
    const opposite = b[index];
    const [one, other] = [designs.get(half.design), designs.get(opposite?.design ?? '')];
    if (opposite === undefined || one?.takeOff === undefined || other?.takeOff === undefined) return [];
    const at = { side: 'A' as const, between: [half.design, opposite.design] as const };
    const rules = one.rules ?? {};
    return [
      { ...meetingJoints(one.takeOff, other.takeOff, 0, rules), ...at, atNm: half.atNm + one.widthNm },
      { ...meetingJoints(other.takeOff, one.takeOff, 0, rules), ...at, atNm: half.atNm },
    ];
  });
}

function isHalf(design: PourDesign | undefined): boolean {
  return design?.edges?.left === 'column' && design.edges.right === 'column';
}

function inOrder(gangs: readonly PlacedGang[]): readonly PlacedGang[] {
  return [...gangs].sort((one, other) => one.atNm - other.atNm);
}

function meets(kind: EdgeKind | undefined): boolean {
  return kind !== undefined && meetingKinds.has(kind);
}
