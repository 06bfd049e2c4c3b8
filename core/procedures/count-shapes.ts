// How counts are told: a line, what each counter found, a difference with its bases and causes.
import { z } from 'zod';
import { conditions, locationKinds } from '../yard/movement.ts';
import { countClasses, countStates, explanationLine, explanations } from '../yard/stock-count.ts';
import { code, date, instant } from './shapes.ts';

/** The id of a count, or its name as it is printed: N-3. */
export const countId = z.string().min(1).max(80);
const pieces = z.int();
export const byCondition = z.partialRecord(z.enum(conditions), pieces);

export const countHead = z.strictObject({
  id: z.string(),
  number: z.int(),
  /** As it is printed: N-3. */
  name: z.string(),
  kind: z.enum(['spot', 'location']),
  state: z.enum(countStates),
  startedAt: instant,
  blind: z.boolean(),
  counters: z.union([z.literal(1), z.literal(2)]),
  remark: z.string().nullable(),
  places: z.array(code),
  lines: z.int(),
  /** Lines that every counter has entered. */
  counted: z.int(),
});

export const counterFigure = z.strictObject({
  counter: z.union([z.literal(1), z.literal(2)]),
  at: instant,
  who: z.string(),
  quantity: pieces,
  byCondition,
  uncertainty: pieces,
  notes: z.array(z.string()),
  recounts: z.int(),
});

export const lineOf = {
  location: code,
  component: code,
  owner: code.nullable(),
};

export const lineReason = z.discriminatedUnion('why', [
  z.strictObject({ why: z.literal('never-counted') }),
  z.strictObject({ why: z.literal('estimated') }),
  z.strictObject({ why: z.literal('from-a-list') }),
  z.strictObject({ why: z.literal('old'), date }),
  z.strictObject({ why: z.literal('class'), class: z.enum(countClasses) }),
  z.strictObject({ why: z.literal('moved'), movements: z.int() }),
  z.strictObject({ why: z.literal('look-alike'), other: code }),
]);

export const accuracy = z.strictObject({
  records: z.int(),
  within: z.int(),
  percent: z.number().nullable(),
});

const quantity = pieces;

export const likelyCause = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('look-alike'), other: code, otherDifference: pieces, quantity }),
  z.strictObject({ rule: z.literal('open-ticket'), ticket: z.string(), pour: z.string(), quantity }),
  z.strictObject({
    rule: z.literal('draft-note'),
    note: z.string(),
    kind: z.string(),
    way: z.enum(['in', 'out']),
    quantity,
  }),
  z.strictObject({ rule: z.literal('other-owner'), owner: code, otherDifference: pieces, quantity }),
  z.strictObject({ rule: z.literal('returned-as-other'), owner: code, at: instant, quantity }),
  z.strictObject({ rule: z.literal('other-place'), place: code, otherDifference: pieces, quantity }),
  z.strictObject({
    rule: z.literal('last-move'),
    place: code,
    kind: z.enum(locationKinds),
    way: z.enum(['came-from', 'went-to']),
    at: instant,
    quantity,
  }),
  z.strictObject({ rule: z.literal('other-job'), place: code, quantity }),
  z.strictObject({ rule: z.literal('losses'), lost: pieces, turns: pieces, quantity }),
]);

/** How a difference may be explained, and the places that it may name. */
export const offeredExplanation = z.strictObject({
  how: z.enum(explanations),
  places: z.array(code),
  isPlaceNeeded: z.boolean(),
});

export const differenceLine = z.strictObject({
  ...lineOf,
  name: z.string(),
  state: z.enum(['waiting', 'differ', 'counted']),
  figures: z.array(counterFigure),
  stands: counterFigure.nullable(),
  booked: pieces,
  bookedByCondition: byCondition,
  difference: pieces,
  /** Found in another condition than booked. */
  conditionMoves: z.array(
    z.strictObject({ from: z.enum(conditions), to: z.enum(conditions), quantity: pieces }),
  ),
  unclear: z.boolean(),
  bases: z.strictObject({
    owned: pieces,
    standing: pieces,
    onTheRoad: pieces,
    inRepair: pieces,
    atOtherJobs: pieces,
    expectedInYard: pieces,
    /** Of the difference without its sign, to the tenth; null of a base of nothing. */
    percentOfOwned: z.number().nullable(),
    percentOfExpected: z.number().nullable(),
    percentOfBooked: z.number().nullable(),
  }),
  valueCents: z.int().nullable(),
  class: z.enum(countClasses),
  tolerancePercent: z.number(),
  within: z.boolean(),
  recount: z.enum(['counters-differ', 'uncertain', 'out-of-tolerance']).nullable(),
  causes: z.array(likelyCause),
  offered: z.array(offeredExplanation),
});

export const explainedLine = z.strictObject({
  ...lineOf,
  explained: z.array(explanationLine).max(20),
  /** Pieces of the difference that nobody can explain yet. */
  leftOpen: z.int().min(0).default(0),
});

export const movedMeanwhile = z.strictObject({
  number: z.int(),
  component: code,
  owner: code,
  quantity: pieces,
  from: code,
  to: code,
  at: instant,
  who: z.string(),
  noteNumber: z.string().nullable(),
  /** After the line was counted: not in the booked figure that it is held against. */
  isAfter: z.boolean(),
});
