// Picking up a gang that lies face down. While its foot stays on the ground the gang turns about its lower edge:
// by lever arms the hooks take weight x (height of the centre of gravity / height of the hooks) at the start,
// half of it for an even gang, and the whole of it when the gang hangs. What is not even in this model: the sling
// pulls square to the gang at first, and the gang bends between its foot and its hooks.
import type { Finding } from '../gang/findings.ts';
import { type Ratio, ratioNumber } from '../units/exact.ts';

export interface FromFlat {
  /** Part of the weight that the hooks take when the top leaves the ground. */
  readonly startShare: number;
  /** All hooks together, in grams, when the top leaves the ground. */
  readonly startGrams: number;
  /** Which of the two is the greater; equal only where all the weight sits at the hooks. */
  readonly governs: 'hanging' | 'start';
}

/** @param heightNm of the hooks above the foot @param centreHeight of the centre of gravity above the foot */
export function fromFlat(onHooks: Ratio, centreHeight: Ratio, heightNm: number): FromFlat {
  const under = centreHeight.under * BigInt(heightNm);
  return {
    startShare: ratioNumber(centreHeight.over, under),
    startGrams: Math.round(ratioNumber(onHooks.over * centreHeight.over, onHooks.under * under)),
    governs: centreHeight.over > under ? 'start' : 'hanging',
  };
}

/** @param railsForPicking how many rails stiffen the gang for a pick */
export function flatNotes(railsForPicking: number): readonly Finding[] {
  const notes: Finding[] = [
    {
      rule: 'flat.direction',
      severity: 'note',
      message:
        "Picked up from flat, the slings pull square to the gang until it stands: whether these hooks may be pulled so is the maker's word.",
      where: 'hooks',
    },
  ];
  if (railsForPicking === 0) {
    notes.push({
      rule: 'flat.rails',
      severity: 'note',
      message:
        'No stiffening rail lies across the joints: picked up from flat, the joints alone take the bending.',
      where: 'rails',
    });
  }
  return notes;
}
