// Where rails lie on their lines: one over each joint that a line passes, rails of joints that meet become one
// where the table says so, or rails end to end over the whole gang.
import type { RailTable } from '../catalogue/rules.ts';
import type { Gang, StandingPanel } from './placed.ts';
import { membersBeside } from './rail-members.ts';
import { fewestRails, type Rail } from './rail-lengths.ts';
import type { Passing, RailLine } from './rail-lines.ts';
import { type JointRail, meetingRails } from './rail-merge.ts';

/** A rail on a line; its panels are those that it is bolted to. */
export interface LaidRail {
  readonly rail: Rail;
  readonly line: RailLine;
  /** Its start along the rail's own direction. */
  readonly startNm: number;
  readonly panels: ReadonlySet<StandingPanel>;
}

export interface RailLayout {
  readonly laid: readonly LaidRail[];
  /** Joints whose rails meet and cannot become one or several without a seam at a joint. */
  readonly unmerged: readonly { readonly line: RailLine; readonly atNm: number }[];
}

/** `rails` are those that the gang's height allows, shortest first. */
export function eachJoint(
  lines: readonly RailLine[],
  rails: readonly Rail[],
  table: RailTable,
  gang: Gang,
  upright: boolean,
): RailLayout {
  const laid: LaidRail[] = [];
  const unmerged: RailLayout['unmerged'][number][] = [];
  for (const line of lines) {
    const single = line.passings.flatMap((passing): readonly JointRail[] => {
      const rail = railOver(passing, rails, table, upright);
      return rail === undefined ? [] : [{ rail, passing, startNm: centred(passing, rail.lengthNm) }];
    });
    if (table.mergeMeeting !== true) {
      laid.push(...single.map((one) => alone(one, line)));
      continue;
    }
    for (const group of meetingRails(single, rails, table, gang, upright)) {
      if (group.joints.length === 1 || group.cover === undefined) {
        laid.push(...group.joints.map((one) => alone(one, line)));
        const atNm = group.joints[0]?.startNm;
        if (group.joints.length > 1 && atNm !== undefined) unmerged.push({ line, atNm });
        continue;
      }
      laid.push(...group.cover.map(({ rail, startNm }) => overlapping(rail, startNm, line)));
    }
  }
  return { laid, unmerged };
}

/** The shortest that serves; where it must reach cross members, the shortest that does, if there is one. */
function railOver(
  passing: Passing,
  rails: readonly Rail[],
  table: RailTable,
  upright: boolean,
): Rail | undefined {
  const [shortest] = rails;
  if (table.reachCrossMember !== true) return shortest;
  const { lowNm, highNm } = membersBeside(passing, upright);
  const reaching = rails.find(({ lengthNm }) => {
    const startNm = centred(passing, lengthNm);
    return startNm <= lowNm && startNm + lengthNm >= highNm;
  });
  return reaching ?? shortest;
}

function centred({ fromNm, toNm }: Passing, lengthNm: number): number {
  return Math.round((fromNm + toNm - lengthNm) / 2);
}

function alone({ rail, passing, startNm }: JointRail, line: RailLine): LaidRail {
  return { rail, line, startNm, panels: new Set([passing.first, passing.second]) };
}

/** A rail that crosses every panel of the line which it overlaps. */
function overlapping(rail: Rail, startNm: number, line: RailLine): LaidRail {
  const endNm = startNm + rail.lengthNm;
  const over = line.segments.filter(({ fromNm, toNm }) => fromNm < endNm && toNm > startNm);
  return { rail, line, startNm, panels: new Set(over.map((segment) => segment.panel)) };
}

/** On every line that passes a joint, the fewest rails over the whole dimension, longest first. */
export function fullLength(
  lines: readonly RailLine[],
  rails: readonly Rail[],
  spanNm: number,
  gang: Gang,
  upright: boolean,
): RailLayout | 'too-many-rails' | 'too-many-sets' {
  const set = fewestRails(rails, spanNm);
  if (typeof set === 'string') return set;
  const laid = lines
    .filter((line) => line.passings.length > 0)
    .flatMap((line) => {
      let endNm = upright ? gang.extent.bottomNm : gang.extent.leftNm;
      return set.map((rail) => {
        const startNm = endNm;
        endNm += rail.lengthNm;
        return overlapping(rail, startNm, line);
      });
    });
  return { laid, unmerged: [] };
}
