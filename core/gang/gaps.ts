// Facing edges of two panels a little apart with nothing between: concrete would run out there.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { type Finding, type PointNm, shown } from './findings.ts';
import { commonStretch, type Gang, type Rectangle, type StandingPanel } from './placed.ts';

/** A piece seen across a gap: from its near to its far edge, and from low to high along the gap. */
interface Across {
  readonly near: number;
  readonly far: number;
  readonly low: number;
  readonly high: number;
}

function level({ leftNm, rightNm, bottomNm, topNm }: Rectangle): Across {
  return { near: leftNm, far: rightNm, low: bottomNm, high: topNm };
}

function upright({ leftNm, rightNm, bottomNm, topNm }: Rectangle): Across {
  return { near: bottomNm, far: topNm, low: leftNm, high: rightNm };
}

/**
 * Facing edges apart by less than `fillerLocks.maximumWidth`, over every stretch on which neither a filler nor
 * another panel stands between them; at the lower left of the stretch.
 */
export function findGaps(gang: Gang, rules: RuleTables): readonly Finding[] {
  const maximumNm = rules.fillerLocks?.maximumWidthNm;
  if (maximumNm === undefined) return [];
  const source = ruleSource(rules, 'fillerLocks.maximumWidth');
  return panelGaps(gang, maximumNm).map(({ first, second, widthNm, where }) => ({
    rule: 'gap',
    severity: 'stop',
    message: `Panels ${first.panel.code} and ${second.panel.code} stand ${shown(widthNm)} apart with no filler between.`,
    where,
    source,
  }));
}

export interface PanelGap {
  readonly first: StandingPanel;
  readonly second: StandingPanel;
  readonly widthNm: number;
  readonly where: PointNm;
}

/** Facing edges nearer than a width with nothing between, left and right, then below and above. */
export function panelGaps(gang: Gang, nearerNm: number): readonly PanelGap[] {
  return [
    ...gapsAlong(gang, nearerNm, level).map(({ at, from, ...gap }) => ({
      ...gap,
      where: { xNm: at, yNm: from },
    })),
    ...gapsAlong(gang, nearerNm, upright).map(({ at, from, ...gap }) => ({
      ...gap,
      where: { xNm: from, yNm: at },
    })),
  ];
}

interface Gap {
  readonly first: StandingPanel;
  readonly second: StandingPanel;
  readonly widthNm: number;
  readonly at: number;
  readonly from: number;
}

function gapsAlong(gang: Gang, maximumNm: number, across: (piece: Rectangle) => Across): readonly Gap[] {
  const panels = gang.panels
    .map((panel) => ({ panel, ...across(panel) }))
    .sort((one, other) => one.near - other.near);
  const pieces: readonly Across[] = [...panels, ...gang.fillers.map(across)];
  const gaps: Gap[] = [];
  for (const one of panels) {
    for (let at = firstBeyond(panels, one.far); at < panels.length; at++) {
      const other = panels[at];
      if (other === undefined || other.near - one.far >= maximumNm) break;
      const stretch = commonStretch(one.low, one.high, other.low, other.high);
      if (stretch === undefined) continue;
      const between = pieces.filter(({ near, far }) => near < other.near && far > one.far);
      for (const from of uncovered(stretch, between)) {
        const widthNm = other.near - one.far;
        gaps.push({ first: one.panel, second: other.panel, widthNm, at: one.far, from });
      }
    }
  }
  return gaps;
}

/** The place of the first piece that begins beyond a position, in pieces sorted by where they begin. */
function firstBeyond(sorted: readonly Across[], position: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle]?.near ?? 0) > position) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** Where each part of a stretch begins that no piece covers. */
function uncovered(stretch: readonly [number, number], pieces: readonly Across[]): readonly number[] {
  const starts: number[] = [];
  let [from] = stretch;
  const [, end] = stretch;
  for (const { low, high } of pieces.toSorted((one, other) => one.low - other.low)) {
    if (low > from && from < end) starts.push(from);
    from = Math.max(from, high);
  }
  if (from < end) starts.push(from);
  return starts;
}
