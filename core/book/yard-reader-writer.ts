// The yard's part of the reader and the writer, bound to one transaction.
import type { Kysely } from 'kysely';
import { keepFile, readKeptFile } from './attached-files.ts';
import { msOf } from './ledger.ts';
import {
  addCountEntry,
  nextCountNumber,
  putCount,
  putLookAlike,
  readCountEntries,
  readCounts,
  readLookAlikes,
  removeLookAlike,
} from './stock-counts.ts';
import {
  addTicketEntry,
  nextTicketNumber,
  putTicket,
  readTicketEntries,
  readTicketOfEntry,
  readTickets,
} from './strip-tickets.ts';
import { readSupplierFlows } from './supplier-flows.ts';
import type { BookTables } from './tables.ts';
import type { YardReader, YardWriter } from './yard-book.ts';
import {
  putRepair,
  putTruck,
  putTruckLoad,
  putYardSettings,
  readRepairs,
  readTruckLoads,
  readTrucks,
  readYardSettings,
} from './yard-care.ts';
import {
  addAttachment,
  addSignedFigure,
  putNote,
  readAttachments,
  readNotes,
  readSignedFigures,
} from './yard-papers.ts';
import {
  addContainerStep,
  addGangStep,
  addInspection,
  putLiftingGear,
  readContainers,
  readContainerSteps,
  readGangs,
  readGangSteps,
  readInspections,
  readLiftingGear,
} from './yard-things.ts';

export function yardReaderOf(db: Kysely<BookTables>): YardReader {
  return {
    notes: (only) => readNotes(db, only),
    attachments: (paper) => readAttachments(db, paper),
    attachedFile: (attachment) => readKeptFile(db, attachment),
    supplierFlows: (at) => readSupplierFlows(db, at === undefined ? Number.MAX_SAFE_INTEGER : msOf(at)),
    signedFigures: () => readSignedFigures(db),
    gangs: () => readGangs(db),
    gangSteps: (gang) => readGangSteps(db, gang),
    containers: () => readContainers(db),
    containerSteps: (container) => readContainerSteps(db, container),
    liftingGear: () => readLiftingGear(db),
    inspections: () => readInspections(db),
    tickets: (only) => readTickets(db, only),
    ticketEntries: (ticket) => readTicketEntries(db, ticket),
    ticketOfEntry: (id) => readTicketOfEntry(db, id),
    nextTicketNumber: () => nextTicketNumber(db),
    counts: (only) => readCounts(db, only),
    countEntries: (count) => readCountEntries(db, count),
    nextCountNumber: () => nextCountNumber(db),
    lookAlikes: () => readLookAlikes(db),
    repairs: () => readRepairs(db),
    trucks: () => readTrucks(db),
    truckLoads: () => readTruckLoads(db),
    yardSettings: () => readYardSettings(db),
  };
}

/** @param commandId the command whose transaction this is: every row names it */
export function yardWriterOf(db: Kysely<BookTables>, commandId: string): YardWriter {
  return {
    putNote: (note) => putNote(db, commandId, note),
    addAttachment: (attachment) => addAttachment(db, commandId, attachment),
    keepFile: (content, mediaType) => keepFile(db, content, mediaType),
    addSignedFigure: (figure) => addSignedFigure(db, commandId, figure),
    addGangStep: (step) => addGangStep(db, commandId, step),
    addContainerStep: (container, step) => addContainerStep(db, commandId, container, step),
    putLiftingGear: (gear) => putLiftingGear(db, commandId, gear),
    addInspection: (serial, inspection) => addInspection(db, commandId, serial, inspection),
    putTicket: (ticket) => putTicket(db, commandId, ticket),
    addTicketEntry: (ticket, entry) => addTicketEntry(db, commandId, ticket, entry),
    putCount: (count) => putCount(db, commandId, count),
    addCountEntry: (count, entry) => addCountEntry(db, commandId, count, entry),
    putLookAlike: (pair) => putLookAlike(db, pair),
    removeLookAlike: (one, two) => removeLookAlike(db, one, two),
    putRepair: (repair) => putRepair(db, commandId, repair),
    putTruck: (truck) => putTruck(db, truck),
    putTruckLoad: (load) => putTruckLoad(db, commandId, load),
    putYardSettings: (settings) => putYardSettings(db, settings),
  };
}
