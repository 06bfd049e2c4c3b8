// Stiffening rails and their bolts: on every line, one rail over each joint it passes, or rails end to end over
// the whole gang.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import type { Component } from '../catalogue/component.ts';
import { type Finding, nothingTaken, type PointNm, type RuleResult, shown, type Taken } from './findings.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang, StandingPanel } from './placed.ts';
import { allowedRails, fewestRails, type Rail, shortestRail } from './rail-lengths.ts';
import { lineCount, mostLines, type RailLine, railLines } from './rail-lines.ts';

/** A rail on the elevation; (x, y) is its left or lower end, to the nearest nanometre. */
export interface PlacedRail extends PointNm {
  readonly component: string;
  readonly direction: 'level' | 'upright';
  readonly lengthNm: number;
  readonly bolts: number;
  readonly line: number;
}

export interface TakenRails extends RuleResult {
  readonly rails: readonly PlacedRail[];
}

type RailTable = NonNullable<RuleTables['rails']>;

export function takeRails(
  gang: Gang,
  joints: readonly PanelJoint[],
  components: readonly Component[],
  rules: RuleTables,
): TakenRails {
  const table = rules.rails;
  if (table === undefined) return { ...nothingTaken, rails: [] };
  const stop = (place: string, message: string): TakenRails => {
    const finding: Finding = {
      rule: place,
      severity: 'stop',
      message,
      where: 'rails',
      source: ruleSource(rules, place),
    };
    return { taken: [], rails: [], findings: [finding] };
  };
  const row = table.lengths.find(({ gangUpToNm }) => gang.heightNm <= gangUpToNm);
  if (row === undefined) {
    return stop(
      'rails.lengths',
      `The gang is ${shown(gang.heightNm)} high, over every row of the rails' table: no rails are taken.`,
    );
  }
  const rails = allowedRails(components, row.minimumNm);
  if (rails.length === 0) {
    return stop(
      'rails.lengths',
      `No rail of the catalogue is ${shown(row.minimumNm)} or longer: no rails are taken.`,
    );
  }
  const upright = table.across === 'horizontal-joints';
  const [spreadNm, spanNm] = upright ? [gang.widthNm, gang.heightNm] : [gang.heightNm, gang.widthNm];
  const count = lineCount(spreadNm, table.maximumAverageSpacingNm);
  if (count > mostLines) {
    return stop(
      'rails.maximumAverageSpacing',
      `Rails ${shown(table.maximumAverageSpacingNm)} apart would stand on ${count} lines: no rails are taken.`,
    );
  }
  const lines = railLines(gang, upright, count);
  const layout =
    table.cover === 'each-joint' ? eachJoint(lines, rails) : fullLength(lines, rails, spanNm, gang, upright);
  if (layout === 'too-many-rails') {
    return stop(
      'rails.lengths',
      `Rails end to end over ${shown(spanNm)} would be more than 200 in one line: no rails are taken.`,
    );
  }
  if (layout === 'too-many-sets') {
    return stop(
      'rails.lengths',
      `The catalogue's ${rails.length} lengths of rails cover ${shown(spanNm)} in too many ways to compare: no rails are taken.`,
    );
  }
  const placed = layout.map((laid) => placeRail(laid, table, upright));
  return {
    taken: placed.flatMap((rail) => takenBy(rail, table)),
    rails: placed,
    findings: [...tooShort(placed, table, rules), ...uncrossed(joints, lines, upright)],
  };
}

interface LaidRail {
  readonly rail: Rail;
  readonly line: RailLine;
  /** Its start along the rail's own direction. */
  readonly startNm: number;
  readonly panels: ReadonlySet<StandingPanel>;
}

function eachJoint(lines: readonly RailLine[], rails: readonly Rail[]): readonly LaidRail[] {
  const rail = shortestRail(rails);
  if (rail === undefined) return [];
  return lines.flatMap((line) =>
    line.passings.map(({ first, second, fromNm, toNm }): LaidRail => ({
      rail,
      line,
      startNm: Math.round((fromNm + toNm - rail.lengthNm) / 2),
      panels: new Set([first, second]),
    })),
  );
}

function fullLength(
  lines: readonly RailLine[],
  rails: readonly Rail[],
  spanNm: number,
  gang: Gang,
  upright: boolean,
): readonly LaidRail[] | 'too-many-rails' | 'too-many-sets' {
  const set = fewestRails(rails, spanNm);
  if (typeof set === 'string') return set;
  return lines
    .filter((line) => line.passings.length > 0)
    .flatMap((line) => {
      let endNm = upright ? gang.extent.bottomNm : gang.extent.leftNm;
      return set.map((rail): LaidRail => {
        const startNm = endNm;
        endNm += rail.lengthNm;
        const over = line.segments.filter(({ fromNm, toNm }) => fromNm < endNm && toNm > startNm);
        return { rail, line, startNm, panels: new Set(over.map((segment) => segment.panel)) };
      });
    });
}

function placeRail(
  { rail, line, startNm, panels }: LaidRail,
  table: RailTable,
  upright: boolean,
): PlacedRail {
  return {
    component: rail.code,
    direction: upright ? 'upright' : 'level',
    ...(upright ? { xNm: line.atNm, yNm: startNm } : { xNm: startNm, yNm: line.atNm }),
    lengthNm: rail.lengthNm,
    bolts: table.bolt === undefined ? 0 : panels.size * (table.boltsPerPanelCrossed ?? 0),
    line: line.index,
  };
}

function takenBy({ component, xNm, yNm, bolts }: PlacedRail, { bolt }: RailTable): readonly Taken[] {
  const where = { xNm, yNm };
  const rail: Taken = { component, rule: 'rails', count: 1, where };
  return bolt === undefined ? [rail] : [rail, { component: bolt, rule: 'rails.bolt', count: bolts, where }];
}

/** Bolts keep clear of the joint on both sides, so a rail over one joint has room for both clearances. */
function tooShort(placed: readonly PlacedRail[], table: RailTable, rules: RuleTables): readonly Finding[] {
  const clearanceNm = table.boltClearanceNm ?? 0;
  const [rail] = placed;
  if (table.cover !== 'each-joint' || rail === undefined || rail.lengthNm >= 2 * clearanceNm) return [];
  const message = `Rail ${rail.component} is ${shown(rail.lengthNm)} long, shorter than twice the ${shown(clearanceNm)} that its bolts keep from a joint.`;
  const rule = 'rails.boltClearance';
  return [
    {
      rule,
      severity: 'stop',
      message,
      where: { xNm: rail.xNm, yNm: rail.yNm },
      source: ruleSource(rules, rule),
    },
  ];
}

/** Joints of the kind that rails lie across, which no line passes. */
function uncrossed(
  joints: readonly PanelJoint[],
  lines: readonly RailLine[],
  upright: boolean,
): readonly Finding[] {
  const crossed = new Map<StandingPanel, Set<StandingPanel>>();
  for (const { first, second } of lines.flatMap((line) => line.passings)) {
    crossed.set(first, (crossed.get(first) ?? new Set()).add(second));
  }
  return joints
    .filter(
      ({ kind, first, second }) =>
        kind === (upright ? 'horizontal' : 'vertical') && !crossed.get(first)?.has(second),
    )
    .map(({ kind, lengthNm, xNm, yNm }) => ({
      rule: 'rails.uncrossed',
      severity: 'note' as const,
      message: `No rail crosses this ${kind} joint of ${shown(lengthNm)}.`,
      where: { xNm, yNm },
    }));
}
