// What is said beside the proposals that fill a face: why there are none, and fillers that no lock spans, which
// would else be found by the take-off only.
import { ruleSource } from '../catalogue/rules.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { type Finding, shown } from '../gang/findings.ts';
import type { FaceProposal, FaceRequest } from './fill-face.ts';
import { nearestLengths } from './nearest.ts';
import { fullEffort } from './rows.ts';

/** Rows of this height have no filling, or, where that is not proven, none was found. */
export function noWay(
  { panels }: PanelSystem,
  { lengthNm, rowsNm, maximumFillerNm }: FaceRequest,
  heightNm: number,
  proven: boolean,
): Finding {
  const where = `row ${rowsNm.indexOf(heightNm) + 1} from the bottom`;
  const finding = (message: string): Finding => ({ rule: 'fill.no-way', severity: 'stop', message, where });
  const ofHeight = panels.filter((panel) => panel.heightNm === heightNm);
  if (ofHeight.length === 0) {
    const heights = [...new Set(panels.map((panel) => panel.heightNm))].sort((one, other) => one - other);
    const nearest = heights.toSorted(
      (one, other) => Math.abs(one - heightNm) - Math.abs(other - heightNm),
    )[0];
    const others = nearest === undefined ? 'there are no panels' : `the nearest height is ${shown(nearest)}`;
    return finding(`No panel is ${shown(heightNm)} high: ${others}.`);
  }
  const asked = `${shown(lengthNm)} with a filler of at most ${shown(maximumFillerNm)}`;
  const widthsNm = ofHeight.map((panel) => panel.widthNm);
  const nearest = nearestLengths(lengthNm, widthsNm, fullEffort.remainders);
  if (!proven || nearest === undefined) {
    return finding(
      `No way was found to fill ${asked} with panels ${shown(heightNm)} high; there may be one: their widths make too many lengths to look at all.`,
    );
  }
  const { belowNm, aboveNm } = nearest;
  const lengths = [...(belowNm > 0 ? [belowNm] : []), ...(aboveNm === undefined ? [] : [aboveNm])];
  return finding(
    `No panels ${shown(heightNm)} high fill ${asked}: the nearest that they make is ${lengths.map(shown).join(' and ')}; the least filler that would do is ${shown(lengthNm - belowNm)}.`,
  );
}

/** The widest filler of each kind of trouble; proposals are numbered from 1. */
export function fillerFindings(
  { rules }: PanelSystem,
  proposals: readonly FaceProposal[],
): readonly Finding[] {
  const where = 'right end of the face';
  const widest = proposals.map(({ fillersNm }) => Math.max(0, ...fillersNm));
  const table = rules.fillerLocks;
  if (table === undefined) {
    if (widest.every((widthNm) => widthNm === 0)) return [];
    const message = 'There is no rule table of adjustable locks: nothing is said of what holds a filler.';
    return [{ rule: 'fillerLocks', severity: 'note', message, where }];
  }
  const wide = widest.flatMap((widthNm, index) => (widthNm > table.maximumWidthNm ? [index + 1] : []));
  if (wide.length === 0) return [];
  const rule = 'fillerLocks.maximumWidth';
  const [name, has] = wide.length === 1 ? ['Proposal', 'has'] : ['Proposals', 'have'];
  const message = `${name} ${wide.join(', ')} ${has} a filler of up to ${shown(Math.max(...widest))}; ${shown(table.maximumWidthNm)} is the most that an adjustable lock spans: it takes none and would be a made-up closure.`;
  return [{ rule, severity: 'stop', message, where, source: ruleSource(rules, rule) }];
}
