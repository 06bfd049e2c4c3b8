// What published rules ask of the attachments themselves, as notes beside the check: they bind where the law
// says so, and only a maker's paper or a test answers them.
import type { Finding } from '../gang/findings.ts';
import { shownWeight } from './shown-weight.ts';

/** Cal. Code Regs. Tit. 8, 1713(b)(1): of panels and forms over 500 lb, lifting attachments with a factor of 4. */
const attachmentFactor = 4;
/** 500 lb are 226 796.185 g. */
const attachmentOverGrams = 226_796;

/** Does the rule on attachments of forms over 500 lb speak of this weight? */
export function needsAttachmentFactor(weightGrams: number): boolean {
  return weightGrams > attachmentOverGrams;
}

/** Least ultimate strength of one attachment that pulls so much, in grams. */
export function leastUltimateGrams(pullGrams: number): number {
  return attachmentFactor * pullGrams;
}

/** 29 CFR 1926.251(a)(4): lifting accessories made for the purpose are proof-tested to 125 % of their rated load. */
export function proofLoadGrams(ratedGrams: number): number {
  return (ratedGrams * 5) / 4;
}

/** `greatestPullGrams` is that of one hook; `gear` the name of equalising gear, null where there is none. */
export function attachmentNotes(
  weightGrams: number,
  greatestPullGrams: number,
  gear: string | null,
): readonly Finding[] {
  const notes: Finding[] = [];
  if (needsAttachmentFactor(weightGrams)) {
    notes.push({
      rule: 'attachments.factor',
      severity: 'note',
      message: `The gang weighs over 500 lb: where the rule binds, its lifting attachments need a safety factor of 4, here at least ${shownWeight(Math.ceil(leastUltimateGrams(greatestPullGrams)))} before one breaks.`,
      where: 'hooks',
      source: 'Cal. Code Regs. Tit. 8, 1713(b)(1)',
    });
  }
  if (gear !== null) {
    notes.push({
      rule: 'gear.proof',
      severity: 'note',
      message: `${gear} carries ${shownWeight(weightGrams)}: it is to be marked with its rated load, and proof-tested to 125 % of it, at least ${shownWeight(Math.ceil(proofLoadGrams(weightGrams)))}.`,
      where: 'sling',
      source: '29 CFR 1926.251(a)(4)',
    });
  }
  return notes;
}
