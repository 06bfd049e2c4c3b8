// Shapes that several procedures speak in: instants, dates, lengths, steps, shortfalls. Written once so
// that the same thing looks the same in every answer.
import { z } from 'zod';

/** ISO 8601 with an offset, never a bare local time. */
export const instant = z.iso.datetime({ offset: true });
export const date = z.iso.date();
export const code = z.string().trim().min(1).max(40);
export const lengthNm = z.int();
export const hours = z.number().min(0).max(10_000);
export const quantity = z.int().min(1).max(1_000_000_000);

/** Every command carries an id made by the caller: sent twice, done once. */
export const commandId = z.string().min(8).max(64);

export const severity = z.enum(['stop', 'caution', 'note']);

/** A rule passed or broken at a place; `where` is a place in words or a point on the drawing. */
export const finding = z.strictObject({
  rule: z.string(),
  severity,
  message: z.string(),
  where: z.union([z.string(), z.strictObject({ xNm: lengthNm, yNm: lengthNm })]).optional(),
  source: z.string().optional(),
});

const toldMark = z.enum(['followed', 'changed']).nullable();

/** One gang standing at one pour, and what the plan does with it before and after. */
export const turn = z.strictObject({
  id: z.string(),
  pour: code,
  side: z.enum(['A', 'B']),
  design: code,
  from: instant,
  to: instant,
  /** Runs are numbered from 1 in the order in which they begin. */
  run: z.int(),
  /** How it came here: assembled from the yard, or from the turn before it in its run. */
  before: z.discriminatedUnion('how', [
    z.strictObject({ how: z.literal('assemble'), hours, from: instant }),
    z.strictObject({ how: z.literal('built') }),
    z.strictObject({ how: z.literal('fly-on'), turn: z.string() }),
    z.strictObject({ how: z.literal('regang'), turn: z.string(), hours }),
  ]),
  after: z.discriminatedUnion('how', [
    z.strictObject({ how: z.literal('break-down'), hours, until: instant }),
    z.strictObject({ how: z.literal('fly-on'), turn: z.string(), standsByH: hours }),
    z.strictObject({
      how: z.literal('regang'),
      turn: z.string(),
      hours,
      standsByH: hours,
      takenOut: z.record(z.string(), z.int()),
      putIn: z.record(z.string(), z.int()),
    }),
  ]),
  /** What the crew was told of how its gang comes and leaves, and whether the plan does so; null: nothing. */
  told: z.strictObject({ before: toldMark, after: toldMark }),
  /** What a person has fixed of it and the plan obeys. */
  fixed: z.strictObject({ before: z.boolean(), after: z.boolean(), noRegang: z.boolean() }),
});

export const stepKind = z.enum([
  'assemble',
  'set',
  'close',
  'pour',
  'strip',
  'fly-on',
  'regang',
  'break-down',
  'ready',
]);

/** Something that happens on one day. Work that runs over several days has a step on each. */
export const step = z.strictObject({
  date,
  from: instant,
  to: instant,
  kind: stepKind,
  pour: code.nullable(),
  toPour: code.nullable(),
  designs: z.array(z.strictObject({ design: code, quantity })),
  /** Hours of work on this day, done by the crew together. */
  hours,
  turns: z.array(z.string()),
});

export const shortfall = z.strictObject({
  id: z.string(),
  component: code,
  name: z.string(),
  from: instant,
  to: instant,
  quantity,
  stock: z.int(),
  held: z.int(),
  canBeHired: z.boolean(),
  /** What hiring the missing pieces for these days would cost in minor units; null where it cannot be. */
  hireCents: z.int().nullable(),
  turns: z.array(z.strictObject({ id: z.string(), pour: code, design: code, pieces: z.int() })),
  loose: z.array(z.strictObject({ id: z.string(), pour: code, purpose: z.string(), pieces: z.int() })),
  /** Days of it that rest on figures that were estimated or taken from a list, not counted. */
  restsOn: z.enum(['counted', 'taken-from-list', 'estimated', 'nothing']),
  /** The date of the oldest figure under it, and whether that is older than the yard's days. */
  restsOnDate: date.nullable(),
  restsOnOld: z.boolean(),
});

export const cost = z.strictObject({
  labourCents: z.int(),
  hireCents: z.int(),
  /** The told instructions that the plan changes, at the price of the job's settings. */
  changeCents: z.int(),
  totalCents: z.int(),
  /** Piece-days that are short and cannot be hired. */
  unmet: z.int(),
});

/** What a plan of a job answers wherever it is shown; to be spread into an answer's shape. */
export const planned = {
  turns: z.array(turn),
  steps: z.array(step),
  shortfalls: z.array(shortfall),
  cost,
  /** Hire, trucks and so on of pieces that are planned to come; not in the cost. */
  plannedCents: z.int(),
  /** How many told instructions the plan changes, those of turns that are gone among them. */
  changedTold: z.int(),
  /** No plan can cost less than this. */
  boundCents: z.int(),
  gapPercent: z.number(),
  proven: z.boolean(),
  milliseconds: z.number(),
};

export const gate = z.strictObject({
  name: z.string().min(1).max(80),
  who: z.string().min(1).max(80),
  before: z.enum(['set', 'close', 'pour']),
  promised: date,
  done: z.boolean(),
});

export const placedGang = z.strictObject({ design: code, atNm: lengthNm });

export const pourSide = z.strictObject({
  side: z.enum(['A', 'B']),
  setAt: instant,
  setH: hours,
  gangs: z.array(placedGang).max(60),
});

export const looseLine = z.strictObject({
  side: z.enum(['A', 'B', 'both']),
  component: code,
  quantity,
  purpose: z.string().min(1).max(80),
});

export const pour = z.strictObject({
  code,
  name: z.string().max(120),
  element: z.string().max(40),
  order: z.enum(['face-first', 'steel-first']),
  sides: z.tuple([pourSide, pourSide]),
  finishAt: instant,
  stripMinimumH: hours,
  stripH: hours,
  after: z.array(code).max(60),
  gates: z.array(gate).max(30),
  loose: z.array(looseLine).max(80),
  tieComponent: code.nullable(),
});

/** The instants of a pour that follow from what was entered. */
export const pourTimes = z.strictObject({
  pour: code,
  /** Per side: setting begins and ends. */
  sides: z.array(z.strictObject({ side: z.enum(['A', 'B']), setFrom: instant, setTo: instant })),
  finishAt: instant,
  /** Strip strength forecast: `finishAt` plus the minimum hours, by the clock. */
  readyAt: instant,
  stripFrom: instant,
  stripTo: instant,
  /** Its loose pieces and the pieces of gangs taken apart are ready again. */
  freeAt: instant,
});
