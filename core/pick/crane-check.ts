// The crane at the radius where it picks the gang up and at the one where it sets it: the worse governs, and
// the site's own percentages stand before the chart's end.
import type { Finding } from '../gang/findings.ts';
import { type Ratio, ratioNumber } from '../units/exact.ts';
import { craneAtRadii, craneFindings } from './crane-chart.ts';
import type { Crane, PickSetup } from './setup.ts';
import { typedRatio } from './sling.ts';

export interface CranePlace {
  readonly place: 'pick-up radius' | 'set radius';
  readonly radiusNm: number;
  /** Null outside the chart. */
  readonly capacityGrams: number | null;
  readonly percent: number | null;
}

export interface CraneCheck {
  readonly places: readonly CranePlace[];
  /** The place with the greatest percent; null where none is known. */
  readonly governs: CranePlace['place'] | null;
  readonly findings: readonly Finding[];
}

export function checkCrane(crane: Crane, setup: PickSetup, onCrane: Ratio): CraneCheck {
  const entered = [
    { name: 'pick-up radius' as const, radiusNm: setup.pickUpRadiusNm },
    { name: 'set radius' as const, radiusNm: setup.setRadiusNm },
  ];
  const radii = entered.flatMap(({ name, radiusNm }) => (radiusNm === null ? [] : [{ name, radiusNm }]));
  const at = craneAtRadii(crane.chart, onCrane, radii);
  const places = at.map(({ name, radiusNm, capacityGrams, share }): CranePlace => ({
    place: name === 'set radius' ? name : 'pick-up radius',
    radiusNm,
    capacityGrams,
    percent: share === null ? null : 100 * ratioNumber(share.over, share.under),
  }));
  const known = places.filter((place) => place.percent !== null);
  const worst = known.toSorted((one, other) => (other.percent ?? 0) - (one.percent ?? 0))[0];
  const missing = entered
    .filter(({ radiusNm }) => radiusNm === null)
    .map(({ name }): Finding => ({
      rule: 'crane.radius',
      severity: 'caution',
      message: `No ${name} is entered: the crane was not checked there.`,
      where: name,
    }));
  return {
    places,
    governs: worst?.place ?? null,
    findings: [
      ...craneFindings(crane.chart, at, onCrane),
      ...at.flatMap(({ name, share }) => (share === null ? [] : percentFindings(crane, name, share))),
      ...missing,
    ],
  };
}

/** From these percentages on, the value itself included; over the chart's value that alone is said. */
function percentFindings(crane: Crane, name: string, share: Ratio): readonly Finding[] {
  if (share.over > share.under) return [];
  const used = `${Number((100 * ratioNumber(share.over, share.under)).toFixed(1))} % of the chart's value is used at the ${name}`;
  const source = `${crane.name}, as entered`;
  if (reaches(share, crane.stopPercent)) {
    const message = `${used}: from ${crane.stopPercent} % on the site refuses.`;
    return [{ rule: 'crane.stopPercent', severity: 'stop', message, where: name, source }];
  }
  if (!reaches(share, crane.cautionPercent)) return [];
  const message = `${used}: from ${crane.cautionPercent} % on the weight is to be proven before the pick.`;
  return [{ rule: 'crane.cautionPercent', severity: 'caution', message, where: name, source }];
}

function reaches(share: Ratio, percent: number): boolean {
  const limit = typedRatio(percent);
  return share.over * 100n * limit.under >= limit.over * share.under;
}
