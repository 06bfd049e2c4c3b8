// The rails and bolts that one table of stiffening rails takes: lines by the greatest average spacing, lengths by
// the gang's height, one rail over each joint or rails end to end.
import type { Component } from '../catalogue/component.ts';
import { type RailTable, type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { type Finding, type PointNm, shown } from './findings.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang, StandingPanel } from './placed.ts';
import { boltsOf } from './rail-bolts.ts';
import { eachJoint, fullLength, type LaidRail, type RailLayout } from './rail-layout.ts';
import { lacksMembers, membersBeside } from './rail-members.ts';
import { allowedLengths } from './rail-lengths.ts';
import { lineCount, mostLines, type RailLine, railLines } from './rail-lines.ts';

/** A rail on the elevation; (x, y) is its left or lower end, to the nearest nanometre. */
export interface PlacedRail extends PointNm {
  readonly component: string;
  readonly direction: 'level' | 'upright';
  readonly lengthNm: number;
  /** As many as its table takes; fewer places where a panel has no room for one (a finding says so). */
  readonly bolts: number;
  readonly boltPlaces: readonly PointNm[];
  readonly line: number;
  /** Rails that both need, or of a table that does not say what for, serve both. */
  readonly neededFor: 'picking' | 'placing' | 'both';
}

export interface RailsOfTable {
  readonly rails: readonly PlacedRail[];
  readonly findings: readonly Finding[];
}

/** Which table: its place in the rules names findings, its sense the rails. */
export interface NamedRailTable {
  readonly name: 'rails' | 'placingRails';
  readonly table: RailTable;
  readonly neededFor: PlacedRail['neededFor'];
}

export function railsOfTable(
  gang: Gang,
  joints: readonly PanelJoint[],
  components: readonly Component[],
  rules: RuleTables,
  { name, table, neededFor }: NamedRailTable,
): RailsOfTable {
  const stop = (key: string, message: string): RailsOfTable => {
    const rule = `${name}.${key}`;
    return {
      rails: [],
      findings: [{ rule, severity: 'stop', message, where: name, source: ruleSource(rules, rule) }],
    };
  };
  const row = table.lengths.find(({ gangUpToNm }) => gang.heightNm <= gangUpToNm);
  if (row === undefined) {
    return stop(
      'lengths',
      `The gang is ${shown(gang.heightNm)} high, over every row of the rails' table: no rails are taken.`,
    );
  }
  const rails = allowedLengths(components, 'stiffening-rail', row.minimumNm);
  if (rails.length === 0) {
    return stop(
      'lengths',
      `No rail of the catalogue is ${shown(row.minimumNm)} or longer: no rails are taken.`,
    );
  }
  const upright = table.across === 'horizontal-joints';
  const [spreadNm, spanNm] = upright ? [gang.widthNm, gang.heightNm] : [gang.heightNm, gang.widthNm];
  const count = lineCount(spreadNm, table.maximumAverageSpacingNm);
  if (count > mostLines) {
    return stop(
      'maximumAverageSpacing',
      `Rails ${shown(table.maximumAverageSpacingNm)} apart would stand on ${count} lines: no rails are taken.`,
    );
  }
  const lines = railLines(gang, upright, count);
  const rising = rails.toSorted((one, other) => one.lengthNm - other.lengthNm);
  const layout =
    table.cover === 'each-joint'
      ? eachJoint(lines, rising, table, gang, upright)
      : fullLength(lines, rails, spanNm, gang, upright);
  if (layout === 'too-many-rails') {
    return stop(
      'lengths',
      `Rails end to end over ${shown(spanNm)} would be more than 200 in one line: no rails are taken.`,
    );
  }
  if (layout === 'too-many-sets') {
    return stop(
      'lengths',
      `The catalogue's ${rails.length} lengths of rails cover ${shown(spanNm)} in too many ways to compare: no rails are taken.`,
    );
  }
  const at: At = { name, table, rules, upright };
  const placed = layout.laid.map((laid) => placeRail(laid, at, neededFor));
  return {
    rails: placed.map(({ rail }) => rail),
    findings: [
      ...tooShort(
        placed.map(({ rail }) => rail),
        at,
      ),
      ...placed.flatMap(({ findings }) => findings),
      ...unmerged(layout, at),
      ...notReaching(layout, lines, at),
      ...uncrossed(joints, lines, at),
    ],
  };
}

interface At {
  readonly name: 'rails' | 'placingRails';
  readonly table: RailTable;
  readonly rules: RuleTables;
  readonly upright: boolean;
}

function point({ atNm }: RailLine, alongNm: number, upright: boolean): PointNm {
  return upright ? { xNm: atNm, yNm: alongNm } : { xNm: alongNm, yNm: atNm };
}

function finding(
  { name, rules }: At,
  key: string,
  severity: Finding['severity'],
  message: string,
  where: PointNm,
  number = key,
): Finding {
  const source = ruleSource(rules, `${name}.${number}`);
  return { rule: `${name}.${key}`, severity, message, where, source };
}

function placeRail(
  laid: LaidRail,
  at: At,
  neededFor: PlacedRail['neededFor'],
): { readonly rail: PlacedRail; readonly findings: readonly Finding[] } {
  const { rail, line, startNm, panels } = laid;
  const { table, upright } = at;
  const bolts = boltsOf(laid, table, upright);
  const tooShortForAny = table.cover === 'each-joint' && isTooShort(rail.lengthNm, table);
  return {
    rail: {
      component: rail.code,
      direction: upright ? 'upright' : 'level',
      ...point(line, startNm, upright),
      lengthNm: rail.lengthNm,
      bolts: table.bolt === undefined ? 0 : panels.size * (table.boltsPerPanelCrossed ?? 0),
      boltPlaces: bolts.atNm.map((alongNm) => point(line, alongNm, upright)),
      line: line.index,
      neededFor,
    },
    findings: tooShortForAny
      ? []
      : bolts.without.map(({ panel, atNm }) =>
          finding(
            at,
            'boltPlaces',
            // Whoever makes the gang may find a place that the table's clearance does not know of.
            'caution',
            `Rail ${rail.code} has no room for a bolt on panel ${panel.panel.code} that stays ${shown(table.boltClearanceNm ?? 0)} clear of the joints it crosses.`,
            point(line, atNm, upright),
            'boltClearance',
          ),
        ),
  };
}

function isTooShort(lengthNm: number, { boltClearanceNm = 0 }: RailTable): boolean {
  return lengthNm < 2 * boltClearanceNm;
}

/** Bolts keep clear of the joint on both sides, so a rail over one joint has room for both clearances. */
function tooShort(placed: readonly PlacedRail[], at: At): readonly Finding[] {
  const { table } = at;
  const rail = placed.find(({ lengthNm }) => isTooShort(lengthNm, table));
  if (table.cover !== 'each-joint' || rail === undefined) return [];
  const message = `Rail ${rail.component} is ${shown(rail.lengthNm)} long, shorter than twice the ${shown(table.boltClearanceNm ?? 0)} that its bolts keep from a joint.`;
  return [finding(at, 'boltClearance', 'stop', message, { xNm: rail.xNm, yNm: rail.yNm })];
}

function unmerged({ unmerged: places }: RailLayout, at: At): readonly Finding[] {
  const message =
    'The rails over these joints meet on one line, and no rails of the catalogue take their place without a seam at a joint: they are counted one a joint.';
  return places.map(({ line, atNm }) =>
    finding(at, 'mergeMeeting', 'stop', message, point(line, atNm, at.upright)),
  );
}

/** Joints over which no one rail reaches the next cross member of both panels. */
function notReaching({ laid }: RailLayout, lines: readonly RailLine[], at: At): readonly Finding[] {
  const { table, upright } = at;
  if (table.reachCrossMember !== true) return [];
  const onLine = new Map<RailLine, LaidRail[]>();
  for (const one of laid) onLine.set(one.line, [...(onLine.get(one.line) ?? []), one]);
  const findings: Finding[] = [];
  const unknown = new Set<string>();
  for (const line of lines) {
    for (const passing of line.passings) {
      const where = point(line, passing.fromNm, upright);
      const { lowNm, highNm } = membersBeside(passing, upright);
      const reaches = (onLine.get(line) ?? []).some(
        ({ startNm, rail }) => startNm <= lowNm && startNm + rail.lengthNm >= highNm,
      );
      if (!reaches) {
        const message = `No rail over this joint reaches the next cross members, ${shown(highNm - lowNm)} apart.`;
        findings.push(finding(at, 'reachCrossMember', 'stop', message, where));
      }
      for (const standing of [passing.first, passing.second]) {
        const { code } = standing.panel;
        if (!lacksMembers(standing, upright) || unknown.has(code)) continue;
        unknown.add(code);
        const message = `The catalogue tells no cross members of panel ${code}: whether rails reach them is not checked.`;
        findings.push(finding(at, 'reachCrossMember', 'note', message, where));
      }
    }
  }
  return findings;
}

/** Joints of the kind that rails lie across, which no line passes. */
function uncrossed(joints: readonly PanelJoint[], lines: readonly RailLine[], at: At): readonly Finding[] {
  const crossed = new Map<StandingPanel, Set<StandingPanel>>();
  for (const { first, second } of lines.flatMap((line) => line.passings)) {
    crossed.set(first, (crossed.get(first) ?? new Set()).add(second));
  }
  return joints
    .filter(
      ({ kind, first, second }) =>
        kind === (at.upright ? 'horizontal' : 'vertical') && !crossed.get(first)?.has(second),
    )
    .map(({ kind, lengthNm, xNm, yNm }) => ({
      rule: `${at.name}.uncrossed`,
      severity: 'note' as const,
      message: `No rail crosses this ${kind} joint of ${shown(lengthNm)}.`,
      where: { xNm, yNm },
    }));
}
