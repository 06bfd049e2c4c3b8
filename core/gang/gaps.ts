// Pieces that do not fit each other: panels that overlap, facing edges a little apart with nothing between,
// and pieces outside the wall face.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import type { DesignGeometry } from './design.ts';
import { type Finding, shown } from './findings.ts';
import { commonStretch, type Gang, type Rectangle, type StandingPanel } from './placed.ts';

/** Overlapping panels, and fillers that overlap panels or each other, at the lower left of what they share. */
export function findOverlaps({ panels, fillers }: Gang): readonly Finding[] {
  const findings: Finding[] = [];
  const pieces: readonly (Rectangle | StandingPanel)[] = [...panels, ...fillers];
  for (const [index, one] of pieces.entries()) {
    for (let at = index + 1; at < pieces.length; at++) {
      const other = pieces[at];
      if (other === undefined) continue;
      const level = commonStretch(one.leftNm, one.rightNm, other.leftNm, other.rightNm);
      const upright = commonStretch(one.bottomNm, one.topNm, other.bottomNm, other.topNm);
      if (level === undefined || upright === undefined) continue;
      const size = `${shown(level[1] - level[0])} by ${shown(upright[1] - upright[0])}`;
      const message = `${named(one)} and ${named(other)} overlap over ${size}.`;
      findings.push({
        rule: 'overlap',
        severity: 'stop',
        message,
        where: { xNm: level[0], yNm: upright[0] },
      });
    }
  }
  return findings;
}

function named(piece: Rectangle | StandingPanel): string {
  return 'panel' in piece ? `Panel ${piece.panel.code}` : 'a filler';
}

/**
 * Facing edges of two panels apart by less than `fillerLocks.maximumWidth`, over every stretch on which neither a
 * filler nor another panel stands between them.
 */
export function findGaps(gang: Gang, rules: RuleTables): readonly Finding[] {
  const maximumNm = rules.fillerLocks?.maximumWidthNm;
  if (maximumNm === undefined) return [];
  const source = ruleSource(rules, 'fillerLocks.maximumWidth');
  const pieces = [...gang.panels, ...gang.fillers];
  const findings: Finding[] = [];
  for (const one of gang.panels) {
    for (const other of gang.panels) {
      const level = other.leftNm - one.rightNm;
      if (level > 0 && level < maximumNm) {
        const stretch = commonStretch(one.bottomNm, one.topNm, other.bottomNm, other.topNm);
        const between = pieces
          .filter(
            (piece) => commonStretch(piece.leftNm, piece.rightNm, one.rightNm, other.leftNm) !== undefined,
          )
          .map((piece) => [piece.bottomNm, piece.topNm] as const);
        for (const [from] of stretch === undefined ? [] : uncovered(stretch, between)) {
          findings.push(gap(one, other, level, { xNm: one.rightNm, yNm: from }, source));
        }
      }
      const upright = other.bottomNm - one.topNm;
      if (upright > 0 && upright < maximumNm) {
        const stretch = commonStretch(one.leftNm, one.rightNm, other.leftNm, other.rightNm);
        const between = pieces
          .filter(
            (piece) => commonStretch(piece.bottomNm, piece.topNm, one.topNm, other.bottomNm) !== undefined,
          )
          .map((piece) => [piece.leftNm, piece.rightNm] as const);
        for (const [from] of stretch === undefined ? [] : uncovered(stretch, between)) {
          findings.push(gap(one, other, upright, { xNm: from, yNm: one.topNm }, source));
        }
      }
    }
  }
  return findings;
}

function gap(
  one: StandingPanel,
  other: StandingPanel,
  widthNm: number,
  where: { xNm: number; yNm: number },
  source: string,
): Finding {
  const message = `Panels ${one.panel.code} and ${other.panel.code} stand ${shown(widthNm)} apart with no filler between.`;
  return { rule: 'gap', severity: 'stop', message, where, source };
}

/** What is left of a stretch after taking the covered ranges out. */
function uncovered(
  stretch: readonly [number, number],
  covered: readonly (readonly [number, number])[],
): readonly (readonly [number, number])[] {
  const left: (readonly [number, number])[] = [];
  let [from] = stretch;
  const [, end] = stretch;
  for (const [start, stop] of covered.toSorted((one, other) => one[0] - other[0])) {
    if (start > from && from < end) left.push([from, Math.min(start, end)]);
    from = Math.max(from, stop);
  }
  if (from < end) left.push([from, end]);
  return left;
}

/** Pieces that reach outside the wall face, where the design states one; its lower left corner is the origin. */
export function findOutsideFace({ panels, fillers }: Gang, face: DesignGeometry['face']): readonly Finding[] {
  if (face === undefined) return [];
  const inside = (piece: Rectangle): boolean =>
    piece.leftNm >= 0 && piece.bottomNm >= 0 && piece.rightNm <= face.widthNm && piece.topNm <= face.heightNm;
  const size = `${shown(face.widthNm)} by ${shown(face.heightNm)}`;
  return [...panels, ...fillers]
    .filter((piece) => !inside(piece))
    .map((piece) => ({
      rule: 'outside-face',
      severity: 'stop' as const,
      message: `${named(piece)} reaches outside the face of ${size}.`,
      where: { xNm: piece.leftNm, yNm: piece.bottomNm },
    }));
}
