// Rails over single joints that meet or overlap on a line, as one: the shortest single rail that covers them all,
// else the fewest, laid so that no seam comes where a joint is to be crossed.
import type { RailTable } from '../catalogue/rules.ts';
import type { Gang } from './placed.ts';
import { membersBeside } from './rail-members.ts';
import { fewestRails, type Rail } from './rail-lengths.ts';
import type { Passing } from './rail-lines.ts';

/** A rail over one joint or filler, its middle on it. */
export interface JointRail {
  readonly rail: Rail;
  readonly passing: Passing;
  readonly startNm: number;
}

export interface LyingRail {
  readonly rail: Rail;
  readonly startNm: number;
}

/** Rails that meet, and what lies in their place; undefined where no rails of the catalogue do. */
export interface MeetingRails {
  readonly joints: readonly JointRail[];
  readonly cover: readonly LyingRail[] | undefined;
}

interface Stretch {
  readonly joints: readonly JointRail[];
  /** What the rails over the single joints reach, and what lies there now. */
  readonly fromNm: number;
  readonly toNm: number;
  readonly cover: readonly LyingRail[] | undefined;
}

/** A longer rail may meet the next, so it is repeated until none meet. `rails` are in rising order. */
export function meetingRails(
  single: readonly JointRail[],
  rails: readonly Rail[],
  table: RailTable,
  gang: Gang,
  upright: boolean,
): readonly MeetingRails[] {
  const span: readonly [number, number] = upright
    ? [gang.extent.bottomNm, gang.extent.topNm]
    : [gang.extent.leftNm, gang.extent.rightNm];
  let stretches: readonly Stretch[] = single
    .map((one): Stretch => ({
      joints: [one],
      fromNm: one.startNm,
      toNm: one.startNm + one.rail.lengthNm,
      cover: [one],
    }))
    .sort((one, other) => one.fromNm - other.fromNm);
  for (;;) {
    const next: Stretch[] = [];
    for (const stretch of stretches) {
      const before = next.at(-1);
      if (before !== undefined && endOf(before) >= startOf(stretch)) {
        next[next.length - 1] = joined(before, stretch);
      } else next.push(stretch);
    }
    if (next.length === stretches.length) return next;
    stretches = next.map((stretch) =>
      stretch.cover === undefined
        ? { ...stretch, cover: coverOf(stretch, rails, table, span, upright) }
        : stretch,
    );
  }
}

/** Two stretches as one, its rails still to be chosen. */
function joined(one: Stretch, other: Stretch): Stretch {
  return {
    joints: [...one.joints, ...other.joints],
    fromNm: Math.min(one.fromNm, other.fromNm),
    toNm: Math.max(one.toNm, other.toNm),
    cover: undefined,
  };
}

function startOf({ fromNm, cover }: Stretch): number {
  return Math.min(fromNm, cover?.[0]?.startNm ?? fromNm);
}

function endOf({ toNm, cover }: Stretch): number {
  const last = cover?.at(-1);
  return last === undefined ? toNm : Math.max(toNm, last.startNm + last.rail.lengthNm);
}

function coverOf(
  { joints, fromNm, toNm }: Stretch,
  rails: readonly Rail[],
  table: RailTable,
  span: readonly [number, number],
  upright: boolean,
): readonly LyingRail[] | undefined {
  const spanNm = toNm - fromNm;
  const one = rails.find(({ lengthNm }) => lengthNm >= spanNm);
  if (one !== undefined) return [{ rail: one, startNm: startIn(fromNm, toNm, one.lengthNm, span) }];
  const set = fewestRails(rails, spanNm);
  if (typeof set === 'string') return undefined;
  const total = set.reduce((sum, rail) => sum + rail.lengthNm, 0);
  const starts = [...new Set([startIn(fromNm, toNm, total, span), fromNm, toNm - total])];
  const needs = joints.map(({ passing }) => neededOver(passing, table, upright));
  for (const order of orders(set)) {
    for (const startNm of starts) {
      const laid = endToEnd(order, startNm);
      if (needs.every((need) => laid.some((rail) => covers(rail, need)))) return laid;
    }
  }
  return undefined;
}

/** In the middle of what it covers, or as near to it as keeps it within the gang where it has room there. */
function startIn(
  fromNm: number,
  toNm: number,
  lengthNm: number,
  [low, high]: readonly [number, number],
): number {
  const middle = Math.round((fromNm + toNm - lengthNm) / 2);
  const [least, most] = [Math.max(toNm - lengthNm, low), Math.min(fromNm, high - lengthNm)];
  return least <= most ? Math.min(Math.max(middle, least), most) : middle;
}

/** A joint is crossed by one rail that goes on at both sides, to bolts and cross members where they are asked for. */
function neededOver(
  passing: Passing,
  table: RailTable,
  upright: boolean,
): { readonly lowNm: number; readonly highNm: number } {
  const clearNm = Math.max(1, table.boltClearanceNm ?? 0);
  const beside =
    table.reachCrossMember === true
      ? membersBeside(passing, upright)
      : { lowNm: passing.fromNm, highNm: passing.toNm };
  return {
    lowNm: Math.min(passing.fromNm - clearNm, beside.lowNm),
    highNm: Math.max(passing.toNm + clearNm, beside.highNm),
  };
}

function covers({ rail, startNm }: LyingRail, need: { lowNm: number; highNm: number }): boolean {
  return startNm <= need.lowNm && startNm + rail.lengthNm >= need.highNm;
}

function endToEnd(order: readonly Rail[], startNm: number): readonly LyingRail[] {
  let endNm = startNm;
  return order.map((rail) => {
    const at = endNm;
    endNm += rail.lengthNm;
    return { rail, startNm: at };
  });
}

/** So many orders of one set are tried: more rails than six in one stretch are laid longest or shortest first. */
const mostInAnyOrder = 6;

function* orders(set: readonly Rail[]): Generator<readonly Rail[]> {
  if (set.length > mostInAnyOrder) {
    yield set;
    yield set.toReversed();
    return;
  }
  if (set.length === 0) yield [];
  const tried = new Set<Rail>();
  for (const [index, rail] of set.entries()) {
    if (tried.has(rail)) continue;
    tried.add(rail);
    for (const rest of orders(set.toSpliced(index, 1))) yield [rail, ...rest];
  }
}
