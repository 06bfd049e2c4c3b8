// A gang as a thing: a design built from real pieces, which are booked to a location that bears its tag. What
// happens to it is a list of steps that only grows; the last one is how it stands.
import { z } from 'zod';
import { placeCode, remark } from './paper-shapes.ts';

export const gangStates = ['assembled', 'standing', 'stripped', 'standing-by', 'broken-down'] as const;
export type GangState = (typeof gangStates)[number];

/** How it lies: on the ground, or upright in a stand or at the wall. */
export const layings = ['laid-down', 'upright'] as const;

export const gangStepText = z.strictObject({
  design: z.string().trim().min(1).max(40),
  /** The saved state of the design that it was built to. */
  designState: z.int().min(0),
  /** The rule tables by which its pieces were counted; absent: those in force when that state was saved. */
  ruleVersion: z.exactOptional(z.int().min(0)),
  /** Where it is: a yard, a site, a pour. */
  place: placeCode,
  laying: z.enum(layings),
  job: z.string().max(40).nullable(),
  /** Of the turn that it stands for; null where it stands for none. */
  turn: z.string().max(80).nullable(),
  /** Where it goes next, in words of the plan: a turn, or null for none. */
  nextTurn: z.string().max(80).nullable(),
  remark: remark.nullable(),
});

export interface GangStep extends z.output<typeof gangStepText> {
  readonly gang: string;
  readonly number: number;
  readonly state: GangState;
  readonly at: string;
  readonly who: string;
}

/** A gang as its last step left it. */
export interface Gang {
  /** Its tag and the code of its location. */
  readonly code: string;
  readonly last: GangStep;
}
