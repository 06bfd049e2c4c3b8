// Adjustable locks over fillers: where a filler stands exactly between the edges of two panels, upright or
// level neighbours alike, and is no wider than such a lock spans.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { locksOfJoint } from './bands.ts';
import { type Finding, type RuleResult, shown, type Taken } from './findings.ts';
import type { FillerJoint } from './joints.ts';
import { type Gang, type Rectangle } from './placed.ts';

export interface LockedFillers extends RuleResult {
  /** Locks on each filler joint, in the order of the joints. */
  readonly locks: readonly number[];
}

/**
 * A filler wider than the maximum is a stop and takes none. One that two panels hold within the maximum in one
 * direction is not too wide because panels also touch its far ends: there it is only long. One without a panel
 * at both of two opposite sides is a note.
 */
export function takeFillerLocks(
  gang: Gang,
  joints: readonly FillerJoint[],
  rules: RuleTables,
): LockedFillers {
  const notes = gang.fillers
    .filter((filler) => !joints.some((joint) => joint.filler === filler))
    .map(heldOnOneSide);
  const table = rules.fillerLocks;
  const bands = table?.bands ?? rules.locks?.bands;
  if (table === undefined || bands === undefined)
    return { locks: joints.map(() => 0), taken: [], findings: notes };
  const minimumStretchNm = rules.locks?.minimumStretchNm ?? 0;
  const source = (place: string): string => ruleSource(rules, place);
  const held = new Set(
    joints.filter((joint) => joint.acrossNm <= table.maximumWidthNm).map((joint) => joint.filler),
  );
  const taken: Taken[] = [];
  const findings: Finding[] = [];
  const locks = joints.map((joint) => {
    const { xNm, yNm, acrossNm, filler } = joint;
    if (acrossNm > table.maximumWidthNm) {
      if (!held.has(filler))
        findings.push(tooWide(joint, table.maximumWidthNm, source('fillerLocks.maximumWidth')));
      return 0;
    }
    const found = locksOfJoint(joint, { rule: 'fillerLocks', bands, minimumStretchNm }, source);
    findings.push(...found.findings);
    taken.push({ component: table.component, rule: 'fillerLocks', count: found.count, where: { xNm, yNm } });
    return found.count;
  });
  for (const filler of gang.fillers) {
    const widthNm = Math.min(filler.rightNm - filler.leftNm, filler.topNm - filler.bottomNm);
    if (widthNm <= table.maximumWidthNm || joints.some((joint) => joint.filler === filler)) continue;
    const place = { xNm: filler.leftNm, yNm: filler.bottomNm, acrossNm: widthNm };
    findings.push(tooWide(place, table.maximumWidthNm, source('fillerLocks.maximumWidth')));
  }
  return { locks, taken, findings: [...findings, ...notes] };
}

function tooWide(
  { xNm, yNm, acrossNm }: Pick<FillerJoint, 'xNm' | 'yNm' | 'acrossNm'>,
  maximumNm: number,
  source: string,
): Finding {
  const message = `This filler is ${shown(acrossNm)} wide; ${shown(maximumNm)} is the most that an adjustable lock spans: it takes none.`;
  return { rule: 'fillerLocks.maximumWidth', severity: 'stop', message, where: { xNm, yNm }, source };
}

function heldOnOneSide(filler: Rectangle): Finding {
  const message = 'This filler does not stand exactly between two panels: it takes no adjustable locks here.';
  const where = { xNm: filler.leftNm, yNm: filler.bottomNm };
  return { rule: 'filler', severity: 'note', message, where };
}
