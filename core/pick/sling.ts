// The legs of a sling between the gang's hooks and the crane's: how steep they stand. Angles are from the
// horizontal. Whether a hook is overloaded must not hang on the last digit of a sine, so the square of the
// sine is kept as a fraction wherever it is one: at 30, 45, 60 and 90 degrees, and from two lengths.
import { type Answer, answer, refuse } from '../answer.ts';
import { shown } from '../gang/findings.ts';
import { numberRatio, type Ratio, ratioNumber } from '../units/exact.ts';

export interface Sling {
  readonly angleDeg: number;
  readonly sine: number;
  readonly cosine: number;
  /** The sine's square, where it is a fraction. */
  readonly sineSquared?: Ratio;
  /** From the line of the hooks up to the crane hook, unrounded, where the length of the legs is known. */
  readonly headroomNm?: number;
}

/** By the fourth: the sine's square at these angles is 1/4, 2/4, 3/4, 4/4. */
const fourthsAt: ReadonlyMap<number, bigint> = new Map([
  [30, 1n],
  [45, 2n],
  [60, 3n],
  [90, 4n],
]);

/** A typed angle. Refuses `sling-angle` at or under 0 and from 180 degrees: no leg stands so. */
export function slingAtAngle(angleDeg: number, field: string): Answer<Sling> {
  if (!(angleDeg > 0 && angleDeg < 180)) {
    return refuse('sling-angle', `A sling at ${angleDeg} degrees from the horizontal carries nothing.`, {
      field,
      hint: 'Maybe 60: angles are from the horizontal, 90 is straight up.',
    });
  }
  const fourths = fourthsAt.get(angleDeg);
  const radians = (angleDeg * Math.PI) / 180;
  if (fourths === undefined) return answer({ angleDeg, sine: Math.sin(radians), cosine: Math.cos(radians) });
  return answer({ angleDeg, ...bySquare({ over: fourths, under: 4n }) });
}

/**
 * Two legs of one length over the middle between two hooks: sine = headroom / leg (rigging tables; the crane
 * hook stands over the middle). Refuses `legs-too-short` where the legs cannot meet over the hooks.
 */
export function slingFromLegs(legLengthNm: number, spacingNm: number, field: string): Answer<Sling> {
  if (2 * legLengthNm <= spacingNm) {
    return refuse(
      'legs-too-short',
      `Legs of ${shown(legLengthNm)} do not reach: the hooks stand ${shown(spacingNm)} apart, half of that is ${shown(Math.ceil(spacingNm / 2))}.`,
      { field, hint: 'Maybe longer legs, or hooks nearer to each other.' },
    );
  }
  const [leg, spacing] = [BigInt(legLengthNm), BigInt(spacingNm)];
  const under = 4n * leg * leg;
  const parts = bySquare({ over: under - spacing * spacing, under });
  const angleDeg = (Math.atan2(parts.sine, parts.cosine) * 180) / Math.PI;
  return answer({ angleDeg, ...parts, headroomNm: legLengthNm * parts.sine });
}

function bySquare(sineSquared: Ratio): Pick<Sling, 'sine' | 'cosine' | 'sineSquared'> {
  const { over, under } = sineSquared;
  return {
    sine: Math.sqrt(ratioNumber(over, under)),
    cosine: Math.sqrt(ratioNumber(under - over, under)),
    sineSquared,
  };
}

/** Does it stand flatter than this angle? Exact where both sines are known exactly. */
export function isFlatterThan({ angleDeg, sineSquared, headroomNm }: Sling, limitDeg: number): boolean {
  const fourths = fourthsAt.get(limitDeg);
  // A typed angle is compared as typed; one from lengths by its sine.
  if (headroomNm === undefined || sineSquared === undefined || fourths === undefined)
    return angleDeg < limitDeg;
  return 4n * sineSquared.over < fourths * sineSquared.under;
}

/** `load` in grams over one hook's share: does its pull along the sling pass `capacityGrams`? Exact where it can be. */
export function pullIsOver(load: Ratio, capacityGrams: number, sling: Sling): boolean {
  const capacity = BigInt(capacityGrams);
  const { sineSquared } = sling;
  if (sineSquared === undefined) return ratioNumber(load.over, load.under) > capacityGrams * sling.sine;
  if (load.over <= 0n) return false;
  return (
    load.over * load.over * sineSquared.under >
    capacity * capacity * sineSquared.over * load.under * load.under
  );
}

/** How many legs it takes so that none pulls more than `capacityGrams` under an evenly shared load. */
export function legsNeeded(load: Ratio, capacityGrams: number, sling: Sling): number {
  const capacity = BigInt(capacityGrams);
  const { sineSquared } = sling;
  if (sineSquared === undefined)
    return Math.ceil(ratioNumber(load.over, load.under) / (capacityGrams * sling.sine));
  const over = load.over * load.over * sineSquared.under;
  const under = capacity * capacity * sineSquared.over * load.under * load.under;
  return Number(rootRoundedUp(over, under));
}

/** The least whole number whose square is not under over / under. */
function rootRoundedUp(over: bigint, under: bigint): bigint {
  let root = BigInt(Math.floor(Math.sqrt(Number(over / under))));
  while (root * root * under >= over && root > 0n) root -= 1n;
  while (root * root * under < over) root += 1n;
  return root;
}

/** The decimal that a number prints as, for shares and angles that people typed. */
export function typedRatio(value: number): Ratio {
  const ratio = numberRatio(value);
  if (ratio === undefined) throw new Error(`${value} is no number that anybody can type.`);
  return ratio;
}
