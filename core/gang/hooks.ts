// Lifting hooks: how many the gang's weight asks for, where they stand and what each carries.
import { type RuleTables, ruleSource } from '../catalogue/rules.ts';
import { ceilDivide, type Ratio, ratioNumber, roundHalfAway } from '../units/exact.ts';
import { formatWeight } from '../units/weight.ts';
import { type Finding, nothingTaken, type PointNm, type RuleResult, shown } from './findings.ts';
import { type HookPlace, hookPlaces, pairOfPlaces, placesByMean, usualHookPlaces } from './hook-places.ts';
import type { PanelJoint } from './joints.ts';
import type { Gang } from './placed.ts';

export interface PlacedHook extends PointNm {
  /** Its share of the gang's weight, rounded to the gram. */
  readonly loadGrams: number;
  /** The same, unrounded. */
  readonly loadKg: number;
}

export interface TakenHooks extends RuleResult {
  readonly hooks: readonly PlacedHook[];
  /** Everywhere that the table lets a hook stand, from left to right. */
  readonly places: readonly PointNm[];
}

type HookTable = NonNullable<RuleTables['hooks']>;

/**
 * n = max(minimum, ceil(weight / c)): c is the capacity for a hook rated by its share of the gang's weight, and
 * capacity x sin(flattest angle) for one rated by the pull along the sling. `weightGrams` is without hooks.
 */
export function takeHooks(
  gang: Gang,
  joints: readonly PanelJoint[],
  weightGrams: number,
  centre: Ratio,
  rules: RuleTables,
): TakenHooks {
  const table = rules.hooks;
  if (table === undefined) return { ...nothingTaken, hooks: [], places: [] };
  const count = hookCount(table, weightGrams);
  const places = hookPlaces(gang, joints, table.places);
  const findings: Finding[] = [];
  const stop = (rule: string, message: string): void => {
    findings.push({ rule, severity: 'stop', message, where: 'hooks', source: ruleSource(rules, rule) });
  };
  if (table.maximumHeightNm !== undefined && gang.heightNm > table.maximumHeightNm) {
    stop(
      'hooks.maximumHeight',
      `The gang is ${shown(gang.heightNm)} high, over the ${shown(table.maximumHeightNm)} of one pick: it takes several picks.`,
    );
  }
  if (count > 2 && !gang.equalised) {
    stop(
      'hooks.equalised',
      `The gang needs ${count} hooks. It is rigid, so two legs may take all of it, until rigging that equalises them is named.`,
    );
  }
  const chosen = choosePlaces(places, count, centre, gang.widthNm);
  if (places.length < count) {
    stop(
      'hooks.places',
      `${count} hooks are needed and ${places.length} ${places.length === 1 ? 'place is' : 'places are'} there (${(table.places ?? usualHookPlaces).map((place) => placeWords[place]).join(', ')}): ${count - places.length} missing.`,
    );
  } else if (chosen === undefined) {
    stop(
      'hooks.places',
      'No two places lie on both sides of the centre of gravity: one hook would carry less than nothing.',
    );
  }
  const hooks = loaded(chosen ?? [], weightGrams, centre, gang.extent.topNm);
  findings.push(...overloaded(hooks, table, rules));
  const why = `${formatWeight(weightGrams, 'metric')} (${formatWeight(weightGrams, 'us')}), at least ${table.minimum}`;
  return {
    taken: [{ component: table.component, rule: 'hooks', count, where: why }],
    findings,
    hooks,
    places: places.map((xNm) => ({ xNm, yNm: gang.extent.topNm })),
  };
}

const placeWords: Readonly<Record<HookPlace, string>> = {
  'panel-joint': 'upright joints that end at the top',
  'cross-member': 'cross members of panels on their side',
  'top-member': 'the top member of upright panels',
};

function hookCount(
  { capacityGrams, minimum, ratedFor, minimumAngleDeg }: HookTable,
  weightGrams: number,
): number {
  if (ratedFor === 'sling-tension' && minimumAngleDeg !== 30 && minimumAngleDeg !== 90) {
    // The sine of any other angle in whole or decimal degrees is irrational: no quotient is a whole number.
    return Math.max(minimum, Math.ceil(weightGrams / (capacityGrams * sine(minimumAngleDeg))));
  }
  const half = ratedFor === 'sling-tension' && minimumAngleDeg === 30;
  return Math.max(minimum, Number(ceilDivide(BigInt(weightGrams) * (half ? 2n : 1n), BigInt(capacityGrams))));
}

function sine(angleDeg = 90): number {
  if (angleDeg === 30) return 0.5;
  return angleDeg === 90 ? 1 : Math.sin((angleDeg * Math.PI) / 180);
}

function choosePlaces(
  places: readonly number[],
  count: number,
  centre: Ratio,
  widthNm: number,
): readonly number[] | undefined {
  if (count === 0 || places.length < count) return [];
  return count === 2 ? pairOfPlaces(places, centre, widthNm) : placesByMean(places, count, centre);
}

/** Two hooks by their lever arms about the centre of gravity, any other number evenly. */
function loaded(
  places: readonly number[],
  weightGrams: number,
  centre: Ratio,
  topNm: number,
): readonly PlacedHook[] {
  const [left = 0, right = 0] = places;
  return places.map((xNm, index): PlacedHook => {
    let [over, under] = [BigInt(weightGrams), BigInt(places.length)];
    if (places.length === 2) {
      const arm =
        index === 0 ? BigInt(right) * centre.under - centre.over : centre.over - BigInt(left) * centre.under;
      over *= arm;
      under = BigInt(right - left) * centre.under;
    }
    return {
      xNm,
      yNm: topNm,
      loadGrams: Number(roundHalfAway(over, under)),
      loadKg: ratioNumber(over, 1000n * under),
    };
  });
}

/** The count comes from the whole weight; where the places share it unevenly, one hook may carry too much. */
function overloaded(hooks: readonly PlacedHook[], table: HookTable, rules: RuleTables): readonly Finding[] {
  const mostGrams =
    table.capacityGrams * (table.ratedFor === 'gang-weight' ? 1 : sine(table.minimumAngleDeg));
  return hooks
    .filter(({ loadKg }) => loadKg > mostGrams / 1000)
    .map(({ xNm, yNm, loadGrams }) => ({
      rule: 'hooks.load',
      severity: 'stop' as const,
      message: `This hook carries ${formatWeight(loadGrams, 'metric')} (${formatWeight(loadGrams, 'us')}) and may carry ${formatWeight(Math.floor(mostGrams), 'metric')} (${formatWeight(Math.floor(mostGrams), 'us')}).`,
      where: { xNm, yNm },
      source: ruleSource(rules, 'hooks.capacityKg'),
    }));
}
