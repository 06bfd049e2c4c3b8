// Which pours a crane reaches, by its chart and the weights of their gangs; a pad that no crane reaches holds no gang, and
// a crane that reaches nothing is named. Slings and gear are weighed where each pick is checked, not here.
import { capacityAt } from '../../pick/crane-chart.ts';
import { shownWeight } from '../../pick/shown-weight.ts';
import type { Crane } from '../../pick/setup.ts';
import { shown } from '../../gang/findings.ts';
import type { Pad } from '../planning-settings.ts';
import type { PourFinding } from '../pour-findings.ts';

export interface Reach {
  readonly crane: string;
  readonly radiusNm: number;
}

export interface HeaviestGang {
  readonly design: string;
  readonly weightGrams: number;
}

/** @param heaviest of the pour's gangs; null where it has none */
export function reachFindings(
  pour: string,
  reach: Reach | null,
  heaviest: HeaviestGang | null,
  cranes: readonly Crane[],
): readonly PourFinding[] {
  if (reach === null) return [];
  const crane = cranes.find(({ code }) => code === reach.crane);
  const found = (rule: string, severity: 'stop' | 'caution', message: string): readonly PourFinding[] => [
    { rule, severity, message, where: pour },
  ];
  const at = shown(reach.radiusNm);
  if (crane === undefined)
    return found(
      'crane-reach',
      'caution',
      `${pour} is served by crane ${reach.crane}, of which there is no chart.`,
    );
  const capacity = capacityAt(crane.chart, reach.radiusNm);
  if (capacity === null)
    return found('crane-reach', 'stop', `${crane.code} does not reach ${pour}: ${at} is outside its chart.`);
  if (heaviest === null) return [];
  const load = heaviest.weightGrams + crane.deductGrams;
  const percent = Math.round((load / capacity) * 1000) / 10;
  const words = `${heaviest.design} and what always hangs on ${crane.code} weigh ${shownWeight(load)} without slings, ${percent} % of the ${shownWeight(capacity)} that its chart carries at ${at}`;
  if (load * 100 > capacity * crane.stopPercent)
    return found('crane-load', 'stop', `${words}; the site refuses from ${crane.stopPercent} %.`);
  if (load * 100 > capacity * crane.cautionPercent)
    return found(
      'crane-load',
      'caution',
      `${words}; from ${crane.cautionPercent} % the weight is to be proven.`,
    );
  return [];
}

/** Cranes of the job without a chart, or outside of whose chart all lies that they are to serve. */
export function uselessCranes(
  used: readonly string[],
  places: readonly Reach[],
  cranes: readonly Crane[],
): readonly PourFinding[] {
  return [...new Set(used)].flatMap((code): readonly PourFinding[] => {
    const crane = cranes.find((each) => each.code === code);
    if (crane === undefined)
      return [
        {
          rule: 'crane-unknown',
          severity: 'caution',
          message: `Hours are set for crane ${code}, of which there is no chart: what it reaches is not known.`,
          where: code,
        },
      ];
    const own = places.filter((each) => each.crane === code);
    if (own.length === 0 || own.some(({ radiusNm }) => capacityAt(crane.chart, radiusNm) !== null)) return [];
    const radii = [...new Set(own.map(({ radiusNm }) => shown(radiusNm)))];
    return [
      {
        rule: 'crane-reaches-nothing',
        severity: 'stop',
        message: `Crane ${code} reaches nothing it is to serve: ${radii.slice(0, 4).join(', ')} ${radii.length === 1 ? 'is' : 'are'} outside its chart.`,
        where: code,
      },
    ];
  });
}

/** A pad of which the radius is not entered counts as reached. */
export function reachedPads(pads: readonly Pad[], cranes: readonly Crane[]): readonly Pad[] {
  return pads.filter(({ reach }) => {
    const crane = cranes.find(({ code }) => code === reach?.crane);
    return reach === null || crane === undefined || capacityAt(crane.chart, reach.radiusNm) !== null;
  });
}

export function padFindings(pads: readonly Pad[], cranes: readonly Crane[]): readonly PourFinding[] {
  const reached = new Set(reachedPads(pads, cranes));
  return pads
    .filter((each) => !reached.has(each))
    .map(({ code, reach }) => ({
      rule: 'pad-out-of-reach',
      severity: 'caution',
      message: `Pad ${code} is not counted: ${shown(reach?.radiusNm ?? 0)} is outside the chart of ${reach?.crane ?? ''}.`,
      where: code,
    }));
}
