// A design's take-off in the shape in which it is shown: drawn from its lower left corner.
import { asData } from './as-data.ts';
import type { DesignFacts } from './design-facts.ts';
import { summaryOf, type DesignTurn } from './design-turns.ts';
import { shownTakeOff } from './shown-takeoff.ts';

export function detailOf(facts: DesignFacts, turns: readonly DesignTurn[]) {
  const { design, takeOff, ruleVersion } = facts;
  return {
    summary: summaryOf(facts, turns),
    ruleVersion,
    assembleH: design.assembleH,
    breakDownH: design.breakDownH,
    ...shownTakeOff(takeOff, design.geometry.edges),
    turns: asData([...turns]),
  };
}
