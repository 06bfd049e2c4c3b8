// How strip tickets are told: a ticket with its parts and what was counted of each, its entries, and what booking it
// did or would do.
import { z } from 'zod';
import { conditions, ownerKinds } from '../yard/movement.ts';
import { person, remark } from '../yard/paper-shapes.ts';
import { nextOfGang, ticketEntry, ticketStates } from '../yard/strip-ticket.ts';
import { code, instant } from './shapes.ts';

/** The id of a ticket, or its name, as S-7. */
export const ticketId = z.string().trim().min(1).max(80);
export const partName = z.string().min(1).max(80);
const pieces = z.int();

/** Every condition, also where it is zero. */
export const everyCondition = z.strictObject({
  ready: pieces,
  'ready-hidden': pieces,
  'to-clean': pieces,
  'to-repair': pieces,
  quarantine: pieces,
  scrapped: pieces,
});

export const clearance = z.strictObject({
  by: person,
  at: instant,
  clause: remark,
  evidence: remark,
});

export const ticketHead = z.strictObject({
  id: z.string(),
  number: z.int(),
  /** As it is printed: S-7. */
  name: z.string(),
  job: code,
  pour: code,
  state: z.enum(ticketStates),
  /** Where what is taken apart is laid. */
  place: code,
  plannedAt: instant,
  cleared: clearance.nullable(),
  /** The earlier ticket whose late finds this one counts. */
  follows: z.strictObject({ id: z.string(), name: z.string() }).nullable(),
  remark: z.string().nullable(),
});

export const expectedLine = z.strictObject({
  component: code,
  name: z.string(),
  kind: z.string(),
  /** Pieces that should come back; zero on a ticket of late finds. */
  quantity: pieces,
  /** On a ticket of late finds: how many were missing; else zero. */
  sought: pieces,
  /** Pieces of the design that the book has nowhere: they cannot be expected, and are entered as extra. */
  unbooked: pieces,
  /** Where they are booked: the gang, the pour, or the yard that they were never issued from. */
  from: code,
  /** What it is taken for, and what tells them apart. */
  lookAlike: z.string().nullable(),
  /** Whether anybody entered a figure for it, be it zero. */
  isCounted: z.boolean(),
  counted: everyCondition,
  missing: pieces,
});

/** Entered as more than expected, or as not expected at all. */
export const extraLine = z.strictObject({
  component: code,
  name: z.string(),
  kind: z.string(),
  counted: everyCondition,
});

export const shownPart = z.strictObject({
  part: partName,
  turn: z.string().nullable(),
  /** The tag of the gang; null where none was booked as built. */
  gang: code.nullable(),
  design: code.nullable(),
  /** "Gang GA-1 (GA) at P01 side A, nr 1" */
  title: z.string(),
  next: nextOfGang.nullable(),
  /** "Fly on to P05 side A, nr 1" */
  nextWords: z.string(),
  expected: z.array(expectedLine),
  extra: z.array(extraLine),
});

export const shownEntry = z.strictObject({
  id: z.string(),
  at: instant,
  who: z.string(),
  device: z.string(),
  /** How many lines it has. */
  lines: z.int(),
  /** How many pieces it adds; below zero where it takes back. */
  pieces,
});

/** Pieces that are missing, and whose they were. */
export const missingLine = z.strictObject({
  part: partName,
  component: code,
  name: z.string(),
  owner: code,
  ownerName: z.string(),
  ownerKind: z.enum(ownerKinds),
  quantity: z.int(),
  /** Of all of them, in minor units; null where nobody entered what a new one costs. */
  valueCents: z.int().nullable(),
});

/** What goes from one place to another in one condition. */
export const moveLine = z.strictObject({
  from: code,
  to: code,
  conditionAfter: z.enum(conditions),
  reason: z.string(),
  components: z.array(z.strictObject({ component: code, quantity: z.int() })),
});

/** What a booking did, or would do. */
export const ticketBooking = {
  ticket: z.string(),
  name: z.string(),
  at: instant,
  /** Movements in the ledger. */
  movements: z.int(),
  moves: z.array(moveLine),
  lines: z.array(
    z.strictObject({
      part: partName,
      component: code,
      expected: pieces,
      ready: pieces,
      readyHidden: pieces,
      toClean: pieces,
      toRepair: pieces,
      quarantine: pieces,
      scrapped: pieces,
      missing: pieces,
      found: pieces,
      uncounted: z.exactOptional(z.literal(true)),
    }),
  ),
  missing: z.array(missingLine),
  gangs: z.array(z.strictObject({ gang: code, state: z.string(), next: z.string() })),
  cautions: z.array(z.string()),
};

/** The lines that a person enters. */
export const enteredLines = ticketEntry.shape.lines;
