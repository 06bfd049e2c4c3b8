// Everything a job keeps around its plan besides pours: kind by kind with its shape.
import { z } from 'zod';
import { fixedChoice, instruction } from './choices.ts';
import { missReasons } from './day-end/reasons.ts';
import { calendarException, planChange, plannedStock } from './plan-changes.ts';
import { planningSettings } from './planning-settings.ts';
import { reportedKinds } from './steps.ts';
import { craneBooking } from './work/crane-booking.ts';

const code = z.string().trim().min(1).max(40);
const instant = z.iso.datetime({ offset: true });
const who = z.string().max(80);

/** The id is the pour's code. */
const pourFacts = z.strictObject({
  /** Its dates only say how long it takes: nobody has set a day yet, and no plan holds it. */
  dateOpen: z.boolean(),
  hold: z.strictObject({ reason: z.string(), who, since: instant, until: instant.nullable() }).nullable(),
  reach: z.strictObject({ crane: code, radiusNm: z.int().min(0) }).nullable(),
  /** The storey below whose concrete carries its brackets, and the hours after which that is strong enough. */
  standsOn: z.strictObject({ pour: code, strengthH: z.number().min(0).max(10_000) }).nullable(),
  /** null: as the job's settings have it. */
  laidDown: z.boolean().nullable(),
  /** Who approved another strip criterion, and the hours there were before. */
  stripApproval: z.strictObject({ approvedBy: who.nullable(), hoursBefore: z.number() }).nullable(),
});

/** What the crew was told, or (`released`) need not do any more. A record. */
const telling = z.strictObject({
  at: instant,
  who,
  /** The end of the last shift told. */
  until: instant,
  instructions: z.array(instruction),
  released: z.array(instruction),
});

/** A change that was carried out, with what takes it back. */
const appliedChange = z.strictObject({
  at: instant,
  who,
  about: z.string().max(300),
  changes: z.array(planChange).min(1),
  /** Entries and pours as they were, as JSON of `core/procedures/carried-out.ts`. */
  before: z.json(),
  takenBackAt: instant.nullable(),
});

const keptWhatIf = z.strictObject({
  name: z.string().trim().min(1).max(80),
  madeAt: instant,
  who,
  changes: z.array(planChange).min(1).max(60),
});

/** One step of a day and how it ended, with what was planned then: a plan made later does not change the record. */
const reportedStep = z.strictObject({
  kind: z.enum(reportedKinds),
  pour: code,
  toPour: code.nullable(),
  turns: z.array(z.string()),
  designs: z.array(z.strictObject({ design: code, quantity: z.int().min(1) })),
  /** Contact face of these gangs, in whole square nanometres. */
  areaNm2: z.string().regex(/^\d+$/u),
  plannedFrom: instant,
  plannedTo: instant,
  /** The date for which it was planned, where it was left over from that. */
  leftFrom: z.iso.date().nullable(),
  done: z.boolean(),
  reason: z.enum(missReasons).nullable(),
  /** Times typed once: they feed the strip clock, the labour rates and the hire. */
  from: instant.nullable(),
  to: instant.nullable(),
  people: z.number().min(0).max(1000).nullable(),
});

/** How a day ended. A record: what is corrected is ended once more. The id is the date and a number. */
const dayReport = z.strictObject({
  date: z.iso.date(),
  at: instant,
  who,
  steps: z.array(reportedStep),
  remark: z.string().max(500).nullable(),
  /** The applied change by which steps went on to another shift; null where nothing moved. */
  applied: z.string().nullable(),
  /** The report that counts as never made from here on. */
  takesBack: z.string().nullable(),
});

/** A sheet as it was printed. A record. */
const sheetPrint = z.strictObject({
  kind: z.enum(['week', 'day', 'shortfalls']),
  /** What of: the first date. */
  of: z.string(),
  revision: z.int().min(1),
  at: instant,
  who,
  given: z.array(z.string().max(80)),
  /** The lines that stood on it, so that the next can mark what has changed. */
  lines: z.array(z.strictObject({ key: z.string(), text: z.string() })),
});

/** The id is the component and the first instant. */
const shortfallDecision = z.strictObject({
  component: code,
  from: instant,
  to: instant,
  quantity: z.int().min(1),
  decision: z.enum(['ignored', 'hire-list']),
  reason: z.string().max(200),
  who,
  at: instant,
});

export const jobEntryShapes = {
  settings: planningSettings,
  'calendar-exception': calendarException,
  'crane-booking': craneBooking,
  'pour-facts': pourFacts,
  telling,
  'fixed-choice': fixedChoice,
  'planned-stock': plannedStock,
  'applied-change': appliedChange,
  'kept-what-if': keptWhatIf,
  'day-report': dayReport,
  'sheet-print': sheetPrint,
  'shortfall-decision': shortfallDecision,
};

export type JobEntryKind = keyof typeof jobEntryShapes;
export type JobEntry<Kind extends JobEntryKind> = z.output<(typeof jobEntryShapes)[Kind]>;
/** An entry as the book keeps it; `number` rises in the order in which entries were made. */
export interface KeptEntry<Kind extends JobEntryKind> {
  readonly id: string;
  readonly number: number;
  /** When it was last entered and by whom; null inside the command that enters it. */
  readonly entered: { readonly at: string; readonly who: string } | null;
  readonly entry: JobEntry<Kind>;
}
