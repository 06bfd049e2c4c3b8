// Stiffening rails and their bolts, of the table that picking needs and of the one that placing needs: what lies
// in one place counts once, and what cannot stay on beside the other is moved and counted once.
import type { Component } from '../catalogue/component.ts';
import { type RailTable, type RuleTables, ruleSource } from '../catalogue/rules.ts';
import type { RuleResult, Taken } from './findings.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang } from './placed.ts';
import { clashingRails, type RailMove } from './rail-clash.ts';
import { type PlacedRail, type RailsOfTable, railsOfTable } from './rails-of-table.ts';

export interface TakenRails extends RuleResult {
  /** Those of both tables; of rails that clash, all are drawn and the greater number is counted. */
  readonly rails: readonly PlacedRail[];
  readonly moves: readonly RailMove[];
}

const none: RailsOfTable = { rails: [], findings: [] };

/**
 * A table `rails` that does not say what for serves both where it is the only one, and picking where
 * `placingRails` stands beside it.
 */
export function takeRails(
  gang: Gang,
  joints: readonly PanelJoint[],
  components: readonly Component[],
  rules: RuleTables,
): TakenRails {
  const { rails: table, placingRails } = rules;
  const of = (
    name: 'rails' | 'placingRails',
    one: RailTable | undefined,
    neededFor: PlacedRail['neededFor'],
  ): RailsOfTable =>
    one === undefined ? none : railsOfTable(gang, joints, components, rules, { name, table: one, neededFor });
  const sense = table?.neededFor ?? (placingRails === undefined ? 'both' : 'picking');
  const first = of('rails', table, sense);
  const second = of('placingRails', placingRails, 'placing');
  const findings = [...first.findings, ...second.findings];
  if (second.rails.length === 0) {
    const taken = first.rails.flatMap((rail) => takenBy(rail, 'rails', table?.bolt));
    return { taken, findings, rails: first.rails, moves: [] };
  }
  const { both, picking, placing } = together(first.rails, second.rails);
  const clash = clashingRails(picking, placing, components, ruleSource(rules, 'placingRails'));
  const free = [
    ...[...both, ...picking.filter((rail) => !clash.picking.has(rail))].flatMap((rail) =>
      takenBy(rail, 'rails', table?.bolt),
    ),
    ...placing
      .filter((rail) => !clash.placing.has(rail))
      .flatMap((rail) => takenBy(rail, 'placingRails', placingRails?.bolt)),
  ];
  const moved = greater(
    [...clash.picking].flatMap((rail) => takenBy(rail, 'rails', table?.bolt)),
    [...clash.placing].flatMap((rail) => takenBy(rail, 'placingRails', placingRails?.bolt)),
  );
  return {
    taken: [...free, ...moved],
    findings: [...findings, ...clash.findings],
    rails: [...both, ...picking, ...placing],
    moves: clash.moves,
  };
}

function takenBy(
  { component, xNm, yNm, bolts }: PlacedRail,
  rule: string,
  bolt: string | undefined,
): readonly Taken[] {
  const where = { xNm, yNm };
  const rail: Taken = { component, rule, count: 1, where };
  return bolt === undefined ? [rail] : [rail, { component: bolt, rule: `${rule}.bolt`, count: bolts, where }];
}

function placeOf({ component, direction, xNm, yNm }: PlacedRail): string {
  return `${component} ${direction} ${xNm} ${yNm}`;
}

/** Rails of both tables in one place are one rail, with the bolts of the table that asks for more. */
function together(
  first: readonly PlacedRail[],
  second: readonly PlacedRail[],
): {
  readonly both: readonly PlacedRail[];
  readonly picking: readonly PlacedRail[];
  readonly placing: readonly PlacedRail[];
} {
  const placed = new Map(second.map((rail) => [placeOf(rail), rail]));
  const both: PlacedRail[] = [];
  const picking: PlacedRail[] = [];
  for (const rail of first) {
    const same = placed.get(placeOf(rail));
    if (same === undefined) {
      picking.push(rail);
      continue;
    }
    placed.delete(placeOf(rail));
    const bolted = rail.bolts >= same.bolts ? rail : same;
    const neededFor = rail.neededFor === 'placing' ? 'placing' : 'both';
    both.push({ ...rail, bolts: bolted.bolts, boltPlaces: bolted.boltPlaces, neededFor });
  }
  return { both, picking, placing: [...placed.values()] };
}

/** Of each component, the pieces of whichever takes more: the same ones serve both, one after the other. */
function greater(picking: readonly Taken[], placing: readonly Taken[]): readonly Taken[] {
  const [picked, placed] = [sums(picking), sums(placing)];
  const byPicking = (component: string): boolean =>
    (picked.get(component) ?? 0) >= (placed.get(component) ?? 0);
  return [
    ...picking.filter(({ component }) => byPicking(component)),
    ...placing.filter(({ component }) => !byPicking(component)),
  ];
}

function sums(taken: readonly Taken[]): ReadonlyMap<string, number> {
  const by = new Map<string, number>();
  for (const { component, count } of taken) by.set(component, (by.get(component) ?? 0) + count);
  return by;
}
