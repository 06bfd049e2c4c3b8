// What refuses a part, or every part, without taking it off: so that the search for a split spends its time on
// parts that may be lifted. Only what is certain is said here.
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from '../gang/design.ts';
import { capacityAt } from './crane-chart.ts';
import type { PickCheck } from './pick-check.ts';
import type { Crane, PickSetup } from './setup.ts';

/** Stops that every part has as well: the wind, a radius outside the chart, no table of hooks, a typed angle. */
export function refusesEveryPart({ findings }: PickCheck, { rigging }: PickSetup): boolean {
  const rules = ['wind.limit', 'crane.chart', 'hooks'];
  if (rigging.by === 'angle') rules.push('sling.angle', 'hooks.minimumAngleDeg');
  return findings.some(({ rule, severity }) => severity === 'stop' && rules.includes(rule));
}

/**
 * The panels of a part weigh at least this much: are they alone too heavy? Two hooks carry no more than twice
 * the capacity of one, however they stand, and the crane no more than its chart at the worse radius.
 */
export function panelsAreTooHeavy(
  system: PanelSystem,
  setup: PickSetup,
  crane: Crane | null,
): (geometry: DesignGeometry) => boolean {
  const weights = new Map(system.panels.map((panel) => [panel.code, panel.weightGrams]));
  const rigging = setup.slingsGrams + (setup.equalisingGear?.weightGrams ?? 0) + (crane?.deductGrams ?? 0);
  const radii = [setup.pickUpRadiusNm, setup.setRadiusNm].flatMap((radius) => radius ?? []);
  const capacities = radii.flatMap((radius) => (crane && capacityAt(crane.chart, radius)) ?? []);
  const { hooks } = system.rules;
  const onHooks = hooks === undefined || setup.equalisingGear !== null ? Infinity : 2 * hooks.capacityGrams;
  const most = Math.min(onHooks, ...capacities.map((capacity) => capacity - rigging));
  return ({ panels }) => panels.reduce((sum, { panel }) => sum + (weights.get(panel) ?? 0), 0) > most;
}
