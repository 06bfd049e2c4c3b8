// Changes that can be asked about before anything is stored, and carried out in one step: a moved or dropped pour,
// other stock, a slipped delivery, a fixed choice, another strip criterion, another design, other working hours.
import { z } from 'zod';
import { fixedChoice } from './choices.ts';
import { craneBooking } from './work/crane-booking.ts';

const code = z.string().trim().min(1).max(40);
const instant = z.iso.datetime({ offset: true });
const hours = z.number().min(0).max(10_000);
const clockTime = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/u);

/** `off`: nobody works on the date. `extra`: work besides the usual shift; an end not after the start is on the next day. */
export const calendarException = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('off'),
    date: z.iso.date(),
    reason: z.enum(['weather', 'holiday', 'other']),
    remark: z.string().max(200).nullable(),
  }),
  z.strictObject({
    kind: z.literal('extra'),
    date: z.iso.date(),
    start: clockTime,
    end: clockTime,
    reason: z.enum(['saturday', 'night', 'other']),
    remark: z.string().max(200).nullable(),
  }),
]);
export type CalendarException = z.output<typeof calendarException>;

/** Pieces more (or fewer, below zero) from an instant on, until another or for good. */
export const plannedStock = z.strictObject({
  kind: z.enum(['hire', 'transfer', 'set-of-forms', 'other']),
  component: code,
  quantity: z.int().min(-1_000_000).max(1_000_000),
  from: instant,
  to: instant.nullable(),
  /** What it costs in all, in minor units: the hire of the stretch, the truck of a transfer. */
  costCents: z.int().min(0),
  /** The job or supplier they come from; null where that is open. */
  source: z.string().max(80).nullable(),
  remark: z.string().max(200).nullable(),
});
export type PlannedStock = z.output<typeof plannedStock>;

export const planChange = z.discriminatedUnion('kind', [
  /** By working days, later or (below zero) earlier; the time of day stays. */
  z.strictObject({ kind: z.literal('move'), pour: code, workingDays: z.int().min(-60).max(60) }),
  z.strictObject({ kind: z.literal('drop'), pour: code }),
  z.strictObject({ kind: z.literal('stock'), entry: plannedStock }),
  /** The pieces of so many gangs of each design, there from the instant on. */
  z.strictObject({
    kind: z.literal('set-of-forms'),
    gangs: z.array(z.strictObject({ design: code, quantity: z.int().min(1).max(100) })).min(1),
    from: instant,
  }),
  /** A draft note of the yard comes on another day; null: it does not come. */
  z.strictObject({ kind: z.literal('delivery'), note: z.string(), expectedAt: instant.nullable() }),
  z.strictObject({ kind: z.literal('fix'), choice: fixedChoice }),
  z.strictObject({ kind: z.literal('unfix'), choice: fixedChoice }),
  /** Another strip criterion, for approval by whoever answers for the strip. */
  z.strictObject({
    kind: z.literal('strip'),
    pour: code,
    stripMinimumH: hours,
    approvedBy: z.string().max(80).nullable(),
  }),
  z.strictObject({
    kind: z.literal('design'),
    pour: code,
    side: z.enum(['A', 'B']),
    /** The place of the gang on its side, counted from 1. */
    position: z.int().min(1),
    design: code,
  }),
  z.strictObject({ kind: z.literal('calendar'), exception: calendarException }),
  /** Hours of a crane that are taken or added. */
  z.strictObject({ kind: z.literal('crane'), booking: craneBooking }),
  /** When a pour finishes; its sides move with it. Also for a pour without a date. */
  z.strictObject({ kind: z.literal('date'), pour: code, finishAt: instant }),
  /** The sides named and the finish, each by itself: what really happened, or goes on to another shift. */
  z.strictObject({
    kind: z.literal('pour-times'),
    pour: code,
    sides: z.array(z.strictObject({ side: z.enum(['A', 'B']), setAt: instant, setH: hours })).max(2),
    finishAt: instant,
  }),
  /** A pour keeps its set standing (or, null, no longer). */
  z.strictObject({
    kind: z.literal('hold'),
    pour: code,
    hold: z
      .strictObject({
        reason: z.string().trim().min(1).max(200),
        who: z.string().max(80),
        /** Until when it is taken to last; null where nobody knows: to the end of the plan. */
        until: instant.nullable(),
      })
      .nullable(),
  }),
]);
export type PlanChange = z.output<typeof planChange>;
