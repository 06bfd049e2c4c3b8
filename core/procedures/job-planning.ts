// What a job keeps around its plan, read at once and put in order: settings, exceptions, choices, facts of pours.
import type { BookReader } from '../book/book.ts';
import type { FixedChoice, Instruction } from '../plan/choices.ts';
import type { JobEntry, KeptEntry } from '../plan/job-entries.ts';
import type { CalendarException, PlannedStock } from '../plan/plan-changes.ts';
import { firstPlanningSettings, type PlanningSettings } from '../plan/planning-settings.ts';
import { toldNow } from '../plan/told-now.ts';

export type PourFacts = JobEntry<'pour-facts'>;
export type CraneBooking = JobEntry<'crane-booking'>;

export interface JobPlanning {
  readonly settings: PlanningSettings;
  readonly exceptions: readonly CalendarException[];
  readonly craneBookings: readonly CraneBooking[];
  /** By the code of the pour. */
  readonly pourFacts: ReadonlyMap<string, PourFacts>;
  /** What stands of all that was told, the last word for every arrival and departure of a gang. */
  readonly told: readonly Instruction[];
  readonly fixed: readonly FixedChoice[];
  readonly plannedStock: readonly PlannedStock[];
  readonly decisions: readonly KeptEntry<'shortfall-decision'>[];
}

export async function readJobPlanning(book: BookReader, job: string): Promise<JobPlanning> {
  const [settings, exceptions, craneBookings, pourFacts, tellings, fixed, plannedStock, decisions] =
    await Promise.all([
      book.jobEntries(job, 'settings'),
      book.jobEntries(job, 'calendar-exception'),
      book.jobEntries(job, 'crane-booking'),
      book.jobEntries(job, 'pour-facts'),
      book.jobEntries(job, 'telling'),
      book.jobEntries(job, 'fixed-choice'),
      book.jobEntries(job, 'planned-stock'),
      book.jobEntries(job, 'shortfall-decision'),
    ]);
  return {
    settings: settings[0]?.entry ?? firstPlanningSettings,
    exceptions: exceptions.map(({ entry }) => entry),
    craneBookings: craneBookings.map(({ entry }) => entry),
    pourFacts: new Map(pourFacts.map(({ id, entry }) => [id, entry])),
    told: toldNow(tellings.map(({ entry }) => entry)),
    fixed: fixed.map(({ entry }) => entry),
    plannedStock: plannedStock.map(({ entry }) => entry),
    decisions,
  };
}
