// Lifting gear by serial number with its inspections: what is out of date is not ready.
import { z } from 'zod';
import { person, remark } from './paper-shapes.ts';

export const inspectionText = z.strictObject({
  /** YYYY-MM-DD: when it was looked at, and the last day on which that holds. */
  inspectedOn: z.iso.date(),
  goodUntil: z.iso.date(),
  passed: z.boolean(),
  by: person,
  remark: remark.nullable(),
});

export interface Inspection extends z.output<typeof inspectionText> {
  readonly number: number;
}

export interface LiftingGear {
  readonly serial: string;
  readonly component: string;
  readonly owner: string;
  /** The location where it is. */
  readonly place: string;
  /** The newest inspection; null where none was entered: then it is not ready either. */
  readonly last: Inspection | null;
}

/** @param date YYYY-MM-DD */
export function isGearReady(gear: LiftingGear, date: string): boolean {
  return gear.last !== null && gear.last.passed && date <= gear.last.goodUntil;
}
