// A design's take-off in the shape in which it is shown: drawn from its lower left corner.
import type { Finding, Place } from '../gang/findings.ts';
import type { PlacedRail } from '../gang/rails.ts';
import { asData } from './as-data.ts';
import type { DesignFacts } from './design-facts.ts';
import { summaryOf, type DesignTurn } from './design-turns.ts';

export function detailOf(facts: DesignFacts, turns: readonly DesignTurn[]) {
  const { design, takeOff, ruleVersion } = facts;
  const { xNm: left, yNm: bottom } = takeOff.origin;
  const moved = <T extends { readonly xNm: number; readonly yNm: number }>(thing: T): T => ({
    ...thing,
    xNm: thing.xNm - left,
    yNm: thing.yNm - bottom,
  });
  const movedPlace = (place: Place): Place => (typeof place === 'string' ? place : moved(place));
  const movedFinding = ({ where, ...finding }: Finding): Finding =>
    where === undefined ? finding : { ...finding, where: movedPlace(where) };
  return asData({
    summary: summaryOf(facts, turns),
    ruleVersion,
    assembleH: design.assembleH,
    breakDownH: design.breakDownH,
    edges: design.geometry.edges,
    panels: takeOff.panels.map(moved),
    fillers: takeOff.fillers.map(moved),
    joints: takeOff.joints.map(moved),
    rails: takeOff.rails.map((rail) => shownRail(moved(rail))),
    hooks: takeOff.hooks.map(moved).map(({ xNm, yNm, loadGrams }) => ({ xNm, yNm, loadGrams })),
    holes: (takeOff.holes ?? []).map(moved),
    centreOfGravity: moved(takeOff.centreOfGravity),
    lines: takeOff.lines.map((line) => ({
      ...line,
      because: line.because.map((reason) => ({ ...reason, where: movedPlace(reason.where) })),
    })),
    findings: takeOff.findings.map(movedFinding),
    turns: [...turns],
  });
}

function shownRail(rail: PlacedRail) {
  const { component, direction, xNm, yNm, lengthNm, bolts } = rail;
  return { component, direction, xNm, yNm, lengthNm, bolts };
}
