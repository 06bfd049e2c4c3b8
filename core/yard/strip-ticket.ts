// A strip ticket: which gangs and loose pieces come back from a pour, where each gang goes next, and how many
// pieces are expected. Counts come in parts and add up; booking it moves everything at once.
import { z } from 'zod';
import {
  componentCode,
  conditionWord,
  moment,
  ownerCode,
  person,
  pieces,
  placeCode,
  remark,
  somePieces,
} from './paper-shapes.ts';

export const ticketStates = ['open', 'booked', 'dropped'] as const;
export type TicketState = (typeof ticketStates)[number];

/** Where a gang goes after the strip. */
export const nextOfGang = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('fly-on'), turn: z.string(), pour: z.string() }),
  z.strictObject({ how: z.literal('regang'), turn: z.string(), pour: z.string(), design: z.string() }),
  z.strictObject({ how: z.literal('stand-by'), place: placeCode }),
  z.strictObject({ how: z.literal('break-down'), place: placeCode }),
]);
export type NextOfGang = z.output<typeof nextOfGang>;

/** One part of a ticket: a gang of a turn, or the loose pieces of the pour. */
export const ticketPart = z.strictObject({
  /** `P01/A1` for a gang, `loose` for the loose pieces. */
  part: z.string().min(1).max(80),
  /** The turn's id; null for loose pieces. */
  turn: z.string().max(80).nullable(),
  /** The tag of the gang that stands there; null where none was booked as built. */
  gang: placeCode.nullable(),
  design: z.string().max(40).nullable(),
  /** Null for loose pieces: they go to the ticket's place. */
  next: nextOfGang.nullable(),
  /** Per component, and where the pieces are booked now: the gang, the pour, or the yard they were never issued from. */
  expected: z.array(
    z.strictObject({
      component: componentCode,
      /** Zero on a ticket of late finds: nothing more is due, what is found was missing. */
      quantity: pieces,
      from: placeCode,
      /** Pieces of the design that the book has nowhere: they cannot be expected of it. */
      unbooked: z.exactOptional(somePieces),
      /** On a ticket of late finds: how many are still missing. */
      sought: z.exactOptional(somePieces),
    }),
  ),
});
export type TicketPart = z.output<typeof ticketPart>;

export const ticketText = z.strictObject({
  parts: z.array(ticketPart).min(1).max(60),
  /** Where what is taken apart is laid. */
  place: placeCode,
  /** When it is to be stripped, by the plan or as entered. */
  plannedAt: moment,
  /** Who cleared it, when, under which clause and on what evidence; null while nobody has. A forecast is none. */
  cleared: z.strictObject({ by: person, at: moment, clause: remark, evidence: remark }).nullable(),
  remark: remark.nullable(),
});
export type TicketText = z.output<typeof ticketText>;

/**
 * What one person counted at one time. A figure below zero takes back what an earlier entry had too many; a zero
 * says that it was looked for and none was there, which is not the same as not counted.
 */
export const ticketEntry = z.strictObject({
  lines: z
    .array(
      z.strictObject({
        part: z.string().min(1).max(80),
        component: componentCode,
        condition: conditionWord,
        quantity: z.int().min(-1_000_000_000).max(1_000_000_000),
        /** Whose they were by their mark; absent where it was not looked at. */
        owner: z.exactOptional(ownerCode),
        /** More than is expected, or not expected at all: said on purpose, never by a slip of the keyboard. */
        extra: z.exactOptional(z.literal(true)),
      }),
    )
    .min(1)
    .max(500),
  at: moment,
  who: person,
  /** Where it was entered: `here`, or the name that a phone was given. */
  device: z.string().trim().min(1).max(60),
});
export interface TicketEntry extends z.output<typeof ticketEntry> {
  readonly id: string;
  readonly number: number;
}

/** What the booking found, a line a part and component; kept for loss and damage by turn. */
export const ticketResult = z.strictObject({
  at: moment,
  who: person,
  lines: z.array(
    z.strictObject({
      part: z.string(),
      component: componentCode,
      /** Pieces expected: as many piece-turns ended here. Zero on a ticket of late finds. */
      expected: pieces,
      ready: pieces,
      readyHidden: pieces,
      toClean: pieces,
      toRepair: pieces,
      quarantine: pieces,
      scrapped: pieces,
      missing: pieces,
      /** More than expected. */
      found: pieces,
      /** Nobody counted it: it was taken to have come back as expected, and says nothing of losses. */
      uncounted: z.exactOptional(z.literal(true)),
    }),
  ),
  /** Whose the missing pieces were. */
  missing: z.array(
    z.strictObject({ part: z.string(), component: componentCode, owner: ownerCode, quantity: somePieces }),
  ),
});
export type TicketResult = z.output<typeof ticketResult>;

export interface StripTicket extends TicketText {
  readonly id: string;
  /** Printed as S-7. */
  readonly number: number;
  readonly job: string;
  readonly pour: string;
  readonly state: TicketState;
  readonly result: TicketResult | null;
  /** The earlier ticket whose late finds this one counts. */
  readonly follows: string | null;
}

/** The part of a ticket that holds the loose pieces of the pour. */
export const loosePart = 'loose';

export function ticketName(ticket: { readonly number: number }): string {
  return `S-${ticket.number}`;
}
