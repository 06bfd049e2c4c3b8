// What the book can be asked and told of the yard's papers and things: the yard's part of its reader and writer.
import type { Answer } from '../answer.ts';
import type { Container, ContainerStep } from '../yard/container.ts';
import type { Gang, GangStep } from '../yard/gang.ts';
import type { Inspection, LiftingGear } from '../yard/lifting-gear.ts';
import type { Attachment, NoteState, YardNote } from '../yard/note.ts';
import type { SupplierFlow } from '../yard/owed.ts';
import type { RepairJob } from '../yard/repair-job.ts';
import type { SignedFigure } from '../yard/signed-figure.ts';
import type { CountEntry, CountState, LookAlike, StockCount } from '../yard/stock-count.ts';
import type { StripTicket, TicketEntry, TicketState } from '../yard/strip-ticket.ts';
import type { Truck, TruckLoad } from '../yard/truck.ts';
import type { YardSettings } from '../yard/yard-settings.ts';

export interface YardReader {
  notes(only?: { readonly id?: string; readonly state?: NoteState }): Promise<readonly YardNote[]>;
  attachments(paper?: string): Promise<readonly Attachment[]>;
  /** What an attachment holds. Codes: file-missing, file-changed. */
  attachedFile(attachment: Attachment): Promise<Answer<Uint8Array>>;
  /** What came from and went back to outside, up to `at` (all, if absent). */
  supplierFlows(at?: string): Promise<readonly SupplierFlow[]>;
  /** Oldest first. */
  signedFigures(): Promise<readonly SignedFigure[]>;
  /** As their last steps left them, those broken down too. */
  gangs(): Promise<readonly Gang[]>;
  gangSteps(gang?: string): Promise<readonly GangStep[]>;
  containers(): Promise<readonly Container[]>;
  containerSteps(container?: string): Promise<readonly ContainerStep[]>;
  liftingGear(): Promise<readonly LiftingGear[]>;
  inspections(): Promise<readonly (Inspection & { readonly serial: string })[]>;
  tickets(only?: {
    readonly id?: string;
    readonly state?: TicketState;
    readonly job?: string;
    /** Tickets of late finds of this one. */
    readonly follows?: string;
  }): Promise<readonly StripTicket[]>;
  ticketEntries(ticket: string): Promise<readonly TicketEntry[]>;
  /** The ticket on which an entry was made; null where there is no such entry. */
  ticketOfEntry(id: string): Promise<string | null>;
  nextTicketNumber(): Promise<number>;
  counts(only?: { readonly id?: string; readonly state?: CountState }): Promise<readonly StockCount[]>;
  countEntries(count: string): Promise<readonly CountEntry[]>;
  nextCountNumber(): Promise<number>;
  lookAlikes(): Promise<readonly LookAlike[]>;
  repairs(): Promise<readonly RepairJob[]>;
  trucks(): Promise<readonly Truck[]>;
  truckLoads(): Promise<readonly TruckLoad[]>;
  yardSettings(): Promise<YardSettings>;
}

/** `put` adds or replaces, `add` only adds. What may be written is decided before, by the pure core. */
export interface YardWriter {
  putNote(note: YardNote): Promise<void>;
  addAttachment(attachment: Attachment): Promise<void>;
  /** Kept beside the book, under the digest that is answered. */
  keepFile(content: Uint8Array, mediaType: Attachment['mediaType']): Promise<string>;
  addSignedFigure(figure: Omit<SignedFigure, 'number' | 'at'>): Promise<void>;
  /** The first step of a tag makes the gang; its location has to be there. */
  addGangStep(step: Omit<GangStep, 'number' | 'who'>): Promise<void>;
  addContainerStep(
    container: { readonly code: string; readonly component: string; readonly owner: string },
    step: Omit<ContainerStep, 'number' | 'who' | 'container'>,
  ): Promise<void>;
  putLiftingGear(gear: Omit<LiftingGear, 'last'>): Promise<void>;
  addInspection(serial: string, inspection: Omit<Inspection, 'number'>): Promise<void>;
  putTicket(ticket: StripTicket): Promise<void>;
  addTicketEntry(ticket: string, entry: Omit<TicketEntry, 'number'>): Promise<void>;
  putCount(count: StockCount): Promise<void>;
  addCountEntry(count: string, entry: Omit<CountEntry, 'number'>): Promise<void>;
  putLookAlike(pair: LookAlike): Promise<void>;
  removeLookAlike(one: string, two: string): Promise<void>;
  putRepair(repair: RepairJob): Promise<void>;
  putTruck(truck: Truck): Promise<void>;
  putTruckLoad(load: TruckLoad): Promise<void>;
  putYardSettings(settings: YardSettings): Promise<void>;
}
