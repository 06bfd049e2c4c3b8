// Hooks and slings under one load: how many hooks it takes, what each carries and pulls, and what that breaks.
// Weights in whole grams, places along the gang in nanometres.
import { type Answer, answer, refuse } from '../answer.ts';
import { type Finding, type Place, shown } from '../gang/findings.ts';
import { ceilDivide, type Ratio, ratioNumber } from '../units/exact.ts';
import { evenLoads, hookLoads, isGreater, isOffMean, isOutside, middleOf } from './hook-loads.ts';
import { shownWeight } from './shown-weight.ts';
import { isFlatterThan, legsNeeded, pullIsOver, type Sling } from './sling.ts';

export interface LiftHooks {
  readonly capacityGrams: number;
  /** The pull along the sling, or the hook's share of the gang's weight. */
  readonly ratedFor: 'sling-tension' | 'gang-weight';
  readonly minimum: number;
  /** Where they stand along the gang; absent: not known, sharing evenly. */
  readonly positionsNm?: readonly number[];
}

export interface Lift {
  /** The gang with whatever is added to it, in grams. */
  readonly load: Ratio;
  readonly hooks: LiftHooks;
  readonly sling: Sling;
  readonly equalised: boolean;
  /** Along the gang; absent: the middle between the outer hooks. */
  readonly centre?: Ratio;
  /** The flattest sling allowed, from the horizontal; 30 where nothing else is said. */
  readonly flattestDeg?: number;
  /** What one leg of the sling may pull, where it is entered. */
  readonly legCapacityGrams?: number;
  /** Where a hook is said to be in a finding; absent: by its number. */
  readonly placeOfHook?: (index: number) => Place;
}

export interface LiftedHook {
  /** Its share of the load in grams, exactly. */
  readonly load: Ratio;
  /** The pull along its sling, in grams. */
  readonly pullGrams: number;
}

export interface Lifted {
  readonly required: number;
  readonly hooks: readonly LiftedHook[];
  /** Greatest pull (or share, by what the hook is rated for) over the capacity. */
  readonly utilisation: number;
  /** Greatest sideways pull between the hooks, in grams. */
  readonly horizontalGrams: number;
  readonly findings: readonly Finding[];
}

/** More hooks than this are no gang but a slip of the pen. */
const mostHooks = 1000;

/** Refuses: hooks-same-place, hooks-too-many. Everything that lifts badly is a finding. */
export function liftHooks(lift: Lift): Answer<Lifted> {
  const { load, hooks, sling, equalised } = lift;
  const positions = hooks.positionsNm;
  const repeated = positions?.findIndex((at, index) => positions.indexOf(at) !== index) ?? -1;
  if (positions !== undefined && repeated >= 0) {
    const at = shown(positions[repeated] ?? 0);
    return refuse('hooks-same-place', `Two hooks stand at ${at}: they are one place and share nothing.`, {
      field: `hooks.positionsMm[${repeated}]`,
    });
  }
  const required = hooksRequired(load, hooks, sling);
  const count = positions?.length ?? (equalised ? required : 2);
  if (count > mostHooks) {
    return refuse('hooks-too-many', `${count} hooks are needed: more than ${mostHooks} are no pick.`, {
      field: 'hooks.capacityKg',
      hint: 'Maybe the capacity or the weight is in another unit.',
    });
  }
  const centre = lift.centre ?? (positions === undefined ? { over: 0n, under: 1n } : middleOf(positions));
  const loads =
    positions === undefined
      ? evenLoads(load, count, equalised)
      : hookLoads(load, positions, centre, equalised);
  const lifted = loads.map((each): LiftedHook => ({
    load: each,
    pullGrams: ratioNumber(each.over, each.under) / sling.sine,
  }));
  const greatest = loads.reduce((most, each) => (isGreater(each, most) ? each : most));
  const greatestGrams = ratioNumber(greatest.over, greatest.under);
  const carried = hooks.ratedFor === 'gang-weight' ? greatestGrams : greatestGrams / sling.sine;
  return answer({
    required,
    hooks: lifted,
    utilisation: carried / hooks.capacityGrams,
    horizontalGrams: Math.abs((greatestGrams * sling.cosine) / sling.sine),
    findings: [
      ...countFindings(required, positions, equalised),
      ...(positions === undefined ? [] : balanceFindings(positions, centre, equalised)),
      ...angleFindings(lift),
      ...overloaded(lift, loads),
    ],
  });
}

/** max(minimum, ceil(load / c)); c is the capacity, times the sine of the sling for a hook rated by its pull. */
function hooksRequired(load: Ratio, { capacityGrams, ratedFor, minimum }: LiftHooks, sling: Sling): number {
  const needed =
    ratedFor === 'sling-tension'
      ? legsNeeded(load, capacityGrams, sling)
      : Number(ceilDivide(load.over, load.under * BigInt(capacityGrams)));
  return Math.max(minimum, needed);
}

function countFindings(
  required: number,
  positions: readonly number[] | undefined,
  equalised: boolean,
): readonly Finding[] {
  const findings: Finding[] = [];
  if (required > 2 && !equalised) {
    const message = `The load needs ${required} hooks. A gang is rigid, so two legs may take all of it, until rigging that equalises them is named.`;
    findings.push({ rule: 'hooks.equalised', severity: 'stop', message, where: 'hooks' });
  }
  if (positions === undefined) return findings;
  if (positions.length < required) {
    const message = `The load needs ${required} hooks and ${positions.length} ${positions.length === 1 ? 'is' : 'are'} there.`;
    findings.push({ rule: 'hooks.count', severity: 'stop', message, where: 'hooks' });
  }
  if (positions.length > 2 && !equalised) {
    const message = `${positions.length} hooks are there and no rigging that equalises them is named: two of them may take all of it, so each is counted with half.`;
    findings.push({ rule: 'hooks.equalised', severity: 'note', message, where: 'hooks' });
  }
  return findings;
}

function balanceFindings(
  positions: readonly number[],
  centre: Ratio,
  equalised: boolean,
): readonly Finding[] {
  const at = shown(Math.round(ratioNumber(centre.over, centre.under)));
  if (isOutside(centre, positions)) {
    const span = `${shown(Math.min(...positions))} to ${shown(Math.max(...positions))}`;
    const message = `The centre of gravity at ${at} is outside the hooks, which stand from ${span}: one of them would carry less than nothing.`;
    return [{ rule: 'hooks.balance', severity: 'stop', message, where: 'centre of gravity' }];
  }
  if (positions.length > 2 && equalised && isOffMean(centre, positions)) {
    const message = `Hooks that share evenly have their middle off the centre of gravity at ${at}: the gang hangs out of level.`;
    return [{ rule: 'hooks.balance', severity: 'caution', message, where: 'hooks' }];
  }
  return [];
}

function angleFindings({ sling, flattestDeg = 30 }: Lift): readonly Finding[] {
  const angle = `${Number(sling.angleDeg.toFixed(2))} degrees from the horizontal`;
  if (isFlatterThan(sling, 30)) {
    const message = `The flattest leg stands at ${angle}: slings under 30 degrees are not used.`;
    return [{ rule: 'sling.angle', severity: 'stop', message, where: 'sling' }];
  }
  if (sling.angleDeg > 90) {
    const message = `The leg stands at ${angle}: no leg leans over 90.`;
    return [{ rule: 'sling.angle', severity: 'stop', message, where: 'sling' }];
  }
  if (!isFlatterThan(sling, flattestDeg)) return [];
  const message = `The flattest leg stands at ${angle}: the hooks allow none under ${flattestDeg} degrees.`;
  return [{ rule: 'hooks.minimumAngleDeg', severity: 'stop', message, where: 'sling' }];
}

/** One finding a hook over its capacity, and one a leg over its own. */
function overloaded(lift: Lift, loads: readonly Ratio[]): readonly Finding[] {
  const { hooks, sling, legCapacityGrams } = lift;
  const { capacityGrams, ratedFor } = hooks;
  return loads.flatMap((load, index): readonly Finding[] => {
    const place = hooks.positionsNm?.[index];
    const where = lift.placeOfHook?.(index) ?? `hook ${index + 1}`;
    const at = place === undefined ? '' : ` at ${shown(place)}`;
    const grams = ratioNumber(load.over, load.under);
    const pull = shownWeight(Math.ceil(grams / sling.sine));
    const isOver =
      ratedFor === 'sling-tension'
        ? pullIsOver(load, capacityGrams, sling)
        : load.over > BigInt(capacityGrams) * load.under;
    const does = ratedFor === 'sling-tension' ? `pulls ${pull}` : `carries ${shownWeight(Math.ceil(grams))}`;
    const findings: Finding[] = [];
    if (isOver) {
      const message = `The hook${at} ${does} and may take ${shownWeight(capacityGrams)}.`;
      findings.push({ rule: 'hooks.load', severity: 'stop', message, where });
    }
    if (legCapacityGrams !== undefined && pullIsOver(load, legCapacityGrams, sling)) {
      const message = `The leg at the hook${at} pulls ${pull} and may pull ${shownWeight(legCapacityGrams)}.`;
      findings.push({ rule: 'sling.capacity', severity: 'stop', message, where });
    }
    return findings;
  });
}
