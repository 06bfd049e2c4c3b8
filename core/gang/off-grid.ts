// Panels that nearly meet, or meet nearly flush: a panel placed a hair off by mouse or by a rounded number. Where
// it leaves a gap or overlaps, that is a stop of its own (gaps.ts, overlaps.ts); here is what those let pass.
import type { RuleTables } from '../catalogue/rules.ts';
import { type Finding, shown } from './findings.ts';
import { panelGaps } from './gaps.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang } from './placed.ts';

/** Nearer than this nobody puts two edges apart on purpose. Common practice, no source. */
const nearNm = 3_000_000;

export function findOffGrid(
  gang: Gang,
  joints: readonly PanelJoint[],
  { fillerLocks }: RuleTables,
): readonly Finding[] {
  const apart =
    fillerLocks === undefined
      ? panelGaps(gang, nearNm).map(({ first, second, widthNm, where }): Finding => ({
          rule: 'off-grid',
          severity: 'caution',
          message: `Panels ${first.panel.code} and ${second.panel.code} stand ${shown(widthNm)} apart and do not touch.`,
          where,
        }))
      : [];
  return [...apart, ...joints.flatMap(notFlush)];
}

/** Neighbours over a joint whose ends differ by a hair. */
function notFlush({ kind, first, second, xNm, yNm }: PanelJoint): readonly Finding[] {
  const [starts, ends] =
    kind === 'vertical'
      ? [first.bottomNm - second.bottomNm, first.topNm - second.topNm]
      : [first.leftNm - second.leftNm, first.rightNm - second.rightNm];
  const off = [starts, ends].map(Math.abs).find((each) => each > 0 && each < nearNm);
  if (off === undefined) return [];
  const message = `Panels ${first.panel.code} and ${second.panel.code} meet ${shown(off)} off flush: one may stand off the grid.`;
  return [{ rule: 'off-grid', severity: 'note', message, where: { xNm, yNm } }];
}
