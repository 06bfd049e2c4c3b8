// One gang on one crane: what hangs there, what every hook carries and pulls, what the crane has left at both
// radii, the wind, and what of it refuses the pick. A gang that cannot be lifted still comes back whole, with
// its stops; nothing found against it is all that is ever said for it.
import { type Answer, answer } from '../answer.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { ruleSource } from '../catalogue/rules.ts';
import type { DesignGeometry } from '../gang/design.ts';
import type { Finding, Place, PointNm } from '../gang/findings.ts';
import { placeDesign } from '../gang/placed.ts';
import { type TakeOff, takeOff } from '../gang/take-off.ts';
import { centreOfGravity } from '../gang/weights.ts';
import { type Ratio, ratioNumber } from '../units/exact.ts';
import { attachmentNotes } from './attachments.ts';
import { checkCrane, type CranePlace } from './crane-check.ts';
import { flatNotes, type FromFlat, fromFlat } from './from-flat.ts';
import { type Lifted, liftHooks } from './lift.ts';
import { type PickWeights, pickWeights, type WeightLine } from './pick-weights.ts';
import type { Crane, PickSetup } from './setup.ts';
import { shownWeight } from './shown-weight.ts';
import { type Sling, slingAtAngle, slingFromLegs } from './sling.ts';
import { type SlingShape, slingShape } from './sling-shape.ts';
import { windFindings } from './wind.ts';

export interface PickHook extends PointNm {
  readonly loadGrams: number;
  /** Along the sling; null where the sling does not reach. */
  readonly pullGrams: number | null;
  /** Of what it is rated for. */
  readonly percent: number | null;
}

export interface PickSling extends SlingShape {
  readonly angleDeg: number;
  readonly horizontalGrams: number;
  /** Of one leg, where its capacity is entered. */
  readonly legPercent: number | null;
}

export interface PickCheck {
  readonly verdict: 'refused' | 'caution' | 'nothing-found';
  readonly weights: readonly WeightLine[];
  readonly gangGrams: number;
  readonly onHooksGrams: number;
  readonly onCraneGrams: number;
  readonly takeOff: TakeOff;
  /** Places are from the gang's lower left corner, seen from the back. */
  readonly centreOfGravity: PointNm;
  readonly hooks: readonly PickHook[];
  /** Null where no sling or no rule table tells. */
  readonly hooksRequired: number | null;
  readonly hookCapacityGrams: number | null;
  readonly hooksRatedFor: 'sling-tension' | 'gang-weight' | null;
  readonly sling: PickSling | null;
  readonly flat: FromFlat | null;
  readonly cranePlaces: readonly CranePlace[];
  readonly craneGoverns: CranePlace['place'] | null;
  /** Stops first. */
  readonly findings: readonly Finding[];
}

/**
 * Refuses what takeOff refuses. `crane` is the one that the setup names, null where it names none. Hooks stand
 * where the take-off puts them, with the load shared evenly only where equalising gear is named.
 */
export function checkPick(
  system: PanelSystem,
  geometry: DesignGeometry,
  setup: PickSetup,
  crane: Crane | null,
): Answer<PickCheck> {
  const asPicked = { ...geometry, equalised: setup.equalisingGear !== null };
  const taken = takeOff(system, asPicked);
  if (!taken.ok) return taken;
  const placed = placeDesign(system, asPicked);
  if (!placed.ok) return placed;
  const { origin } = taken.value;
  const centre = centreOfGravity(placed.value);
  const weights = pickWeights(taken.value, setup, crane);
  const hookPlaces = taken.value.hooks.map(({ xNm, yNm }) => ({
    xNm: xNm - origin.xNm,
    yNm: yNm - origin.yNm,
  }));
  const positionsNm = hookPlaces.map((hook) => hook.xNm);
  const sling = slingOf(setup, positionsNm);
  const findings: Finding[] = [...designFindings(taken.value), ...entryFindings(setup, weights)];
  if (!sling.ok) {
    const { code, message } = sling.error;
    findings.push({ rule: `sling.${code}`, severity: 'stop', message, where: 'sling' });
  }
  const along = shifted(centre.x, origin.xNm);
  const lifted = sling.ok ? lift(system, setup, weights, hookPlaces, along, sling.value) : null;
  findings.push(...(lifted?.findings ?? []));
  const table = system.rules.hooks;
  if (table === undefined) {
    const message = 'There is no rule table for hooks: nothing says what they carry.';
    findings.push({ rule: 'hooks', severity: 'stop', message, where: 'hooks' });
  }
  const onCrane = crane === null ? null : checkCrane(crane, setup, weights.onCrane);
  if (onCrane === null) {
    const message = 'No crane is named: no chart was looked at.';
    findings.push({ rule: 'crane', severity: 'caution', message, where: 'crane' });
  }
  findings.push(...(onCrane?.findings ?? []));
  findings.push(...windFindings(setup.windMps, crane?.windLimitMps ?? null, crane?.windWhose ?? ''));
  const upward = shifted(centre.y, origin.yNm);
  const flat = setup.pickedUpFrom === 'flat' ? fromFlat(weights.onHooks, upward, taken.value.heightNm) : null;
  if (flat !== null)
    findings.push(...flatNotes(taken.value.rails.filter((rail) => rail.neededFor !== 'placing').length));
  const centreOf = { xNm: rounded(along), yNm: rounded(upward) };
  const pulls = lifted?.hooks.map((hook) => hook.pullGrams) ?? [];
  if (pulls.length > 0) {
    const gear = setup.equalisingGear?.name ?? null;
    findings.push(...attachmentNotes(rounded(weights.onHooks), Math.max(...pulls), gear));
  }
  return answer({
    verdict: verdictOf(findings),
    weights: weights.lines,
    gangGrams: weights.gangGrams,
    onHooksGrams: rounded(weights.onHooks),
    onCraneGrams: rounded(weights.onCrane),
    takeOff: taken.value,
    centreOfGravity: centreOf,
    hooks: hookPlaces.map((place, index) => ({
      ...place,
      ...carried(lifted?.hooks[index], table, taken.value.hooks[index]?.loadGrams ?? 0),
    })),
    hooksRequired: lifted?.required ?? null,
    hookCapacityGrams: table?.capacityGrams ?? null,
    hooksRatedFor: table?.ratedFor ?? null,
    sling:
      sling.ok && lifted !== null
        ? {
            ...slingShape(sling.value, positionsNm, centreOf.xNm, taken.value.heightNm),
            angleDeg: sling.value.angleDeg,
            horizontalGrams: Math.round(lifted.horizontalGrams),
            legPercent:
              setup.legCapacityGrams === undefined
                ? null
                : (100 * Math.max(...pulls)) / setup.legCapacityGrams,
          }
        : null,
    flat,
    cranePlaces: onCrane?.places ?? [],
    craneGoverns: onCrane?.governs ?? null,
    findings: gravestFirst(findings),
  });
}

function slingOf({ rigging }: PickSetup, positionsNm: readonly number[]): Answer<Sling> {
  if (rigging.by === 'angle') return slingAtAngle(rigging.angleDeg, 'rigging');
  const spacingNm = positionsNm.length === 0 ? 0 : Math.max(...positionsNm) - Math.min(...positionsNm);
  return slingFromLegs(rigging.legLengthNm, spacingNm, 'rigging');
}

/** Null where there is no table for hooks, or no place for one. */
function lift(
  { rules }: PanelSystem,
  setup: PickSetup,
  { onHooks }: PickWeights,
  places: readonly PointNm[],
  centre: Ratio,
  sling: Sling,
): Lifted | null {
  const table = rules.hooks;
  if (table === undefined || places.length === 0 || onHooks.over === 0n) return null;
  const { capacityGrams, ratedFor, minimum, minimumAngleDeg } = table;
  const lifted = liftHooks({
    load: onHooks,
    hooks: { capacityGrams, ratedFor, minimum, positionsNm: places.map((place) => place.xNm) },
    placeOfHook: (index) => places[index] ?? 'hooks',
    sling,
    equalised: setup.equalisingGear !== null,
    centre,
    ...(minimumAngleDeg !== undefined && { flattestDeg: minimumAngleDeg }),
    ...(setup.legCapacityGrams !== undefined && { legCapacityGrams: setup.legCapacityGrams }),
  });
  if (!lifted.ok) throw new Error(`The take-off put two hooks in one place: ${lifted.error.message}`);
  const source = ruleSource(rules, 'hooks.capacityKg');
  return {
    ...lifted.value,
    findings: lifted.value.findings.map((finding) =>
      finding.rule.startsWith('hooks.') ? { source, ...finding } : finding,
    ),
  };
}

function carried(
  hook: Lifted['hooks'][number] | undefined,
  table: PanelSystem['rules']['hooks'],
  takenGrams: number,
): Omit<PickHook, 'xNm' | 'yNm'> {
  if (hook === undefined || table === undefined)
    return { loadGrams: takenGrams, pullGrams: null, percent: null };
  const load = ratioNumber(hook.load.over, hook.load.under);
  const rated = table.ratedFor === 'gang-weight' ? load : hook.pullGrams;
  return {
    loadGrams: Math.round(load),
    pullGrams: Math.round(hook.pullGrams),
    percent: (100 * rated) / table.capacityGrams,
  };
}

/** What the take-off itself says of hooks is said here again by the load; the rest of its stops are counted. */
function designFindings({ findings, origin }: TakeOff): readonly Finding[] {
  const own = findings.filter(({ rule }) => rule === 'hooks.maximumHeight' || rule === 'hooks.places');
  const stops = findings.filter(({ rule, severity }) => severity === 'stop' && !rule.startsWith('hooks'));
  if (stops.length === 0) return own;
  const message = `The design breaks ${stops.length === 1 ? 'a rule' : `${stops.length} rules`} of its own: ${stops[0]?.message ?? ''}`;
  return [
    ...own,
    { rule: 'design', severity: 'stop', message, where: fromCorner(stops[0]?.where ?? 'design', origin) },
  ];
}

function fromCorner(where: Place, origin: PointNm): Place {
  if (typeof where === 'string') return where;
  return { xNm: where.xNm - origin.xNm, yNm: where.yNm - origin.yNm };
}

/** Figures without which the sum is too small. */
function entryFindings(setup: PickSetup, { lines, gangGrams }: PickWeights): readonly Finding[] {
  const findings: Finding[] = [];
  const missing = (rule: string, severity: Finding['severity'], message: string): void => {
    findings.push({ rule, severity, message, where: 'weight' });
  };
  if (gangGrams === 0)
    missing('weight.gang', 'stop', 'The gang weighs nothing: the catalogue lacks its weights.');
  const without = lines.filter((line) => line.basis === 'catalogue' && line.weightGrams === 0);
  if (gangGrams > 0 && without.length > 0) {
    const names = without.map((line) => line.component).join(', ');
    missing(
      'weight.catalogue',
      'caution',
      `The catalogue has no weight for ${names}: they are missing from the sum.`,
    );
  }
  if (lines.some((line) => line.group === 'timber' && line.basis === 'not-entered'))
    missing('weight.fillers', 'caution', 'The fillers have no weight: their timber is missing from the sum.');
  if (setup.slingsGrams === 0) {
    const always = lines.find((line) => line.group === 'crane');
    if (always === undefined)
      missing(
        'weight.slings',
        'caution',
        'No weight of slings and shackles is entered: it is missing from the sum.',
      );
    else
      missing(
        'weight.slings',
        'note',
        `No weight of slings is entered beside the ${shownWeight(always.weightGrams)} always on the crane.`,
      );
  }
  if (setup.concreteLeftOn === 0)
    missing('weight.concrete', 'note', 'Nothing is added for concrete left on the gang.');
  return findings;
}

function verdictOf(findings: readonly Finding[]): PickCheck['verdict'] {
  if (findings.some(({ severity }) => severity === 'stop')) return 'refused';
  return findings.some(({ severity }) => severity === 'caution') ? 'caution' : 'nothing-found';
}

const gravity: Readonly<Record<Finding['severity'], number>> = { stop: 0, caution: 1, note: 2 };

function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  return findings.toSorted((one, other) => gravity[one.severity] - gravity[other.severity]);
}

function shifted({ over, under }: Ratio, byNm: number): Ratio {
  return { over: over - BigInt(byNm) * under, under };
}

function rounded({ over, under }: Ratio): number {
  return Math.round(ratioNumber(over, under));
}
