// `regang calc fill` of a wall or a column: as `fill.propose` is asked (fill-wall-shapes.ts), but without a book and in
// lengths with units.
import { z } from 'zod';
import { type Answer, answer, never, refuse } from '../answer.ts';
import { codeInput, lengthInput } from '../catalogue/rules-input.ts';
import { systemFromInput, systemInput } from '../catalogue/system-input.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { fillColumn } from '../face/fill-column.ts';
import { fillWall } from '../face/fill-wall.ts';
import { squareTurns } from '../face/wall-check.ts';
import type { Column, GangLimits, Wall, WallAnswer, WallEnd } from '../face/wall.ts';
import { lengthReader, type LengthReader } from '../units/length-reader.ts';
import { formatLengthMetric } from '../units/length.ts';
import { outOfScopeShape, turnShape } from './fill-wall-shapes.ts';

const endInput = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('free'), overhang: lengthInput.default(0) }),
  z.strictObject({ kind: z.literal('old-concrete'), lap: lengthInput.default(0) }),
  z.strictObject({ kind: z.literal('next-pour') }),
]);
type EndInput = z.output<typeof endInput>;
const freeEnd = { kind: 'free' as const, overhang: 0 };

const wallInput = z.strictObject({
  legs: z
    .array(z.strictObject({ length: lengthInput }))
    .min(1)
    .max(12),
  /** Between the legs, walking with side A at the right hand; of a closed wall one more. */
  turns: z.array(turnShape).max(12).default([]),
  closed: z.boolean().default(false),
  start: endInput.default(freeEnd),
  end: endInput.default(freeEnd),
  thickness: lengthInput,
  height: lengthInput,
  freeboard: lengthInput.default(0),
  rows: z.exactOptional(z.array(lengthInput).min(1).max(6)),
  insideCornerLeg: z.exactOptional(lengthInput),
  outsideCornerLeg: z.exactOptional(lengthInput),
  outOfScope: z.exactOptional(outOfScopeShape),
});
type WallInput = z.output<typeof wallInput>;

const columnInput = z.strictObject({
  widthA: lengthInput,
  widthB: lengthInput,
  height: lengthInput,
  freeboard: lengthInput.default(0),
});

export const bothSidesInput = z.strictObject({
  system: systemInput,
  /** One of the two. */
  wall: z.exactOptional(wallInput),
  column: z.exactOptional(columnInput),
  /** Panels there are; a code missing from it has none. Absent: nothing is short. */
  stock: z.exactOptional(z.record(codeInput, z.int().min(0).max(1_000_000))),
  /** Absent: the width that the rule table of adjustable locks allows. */
  maximumFiller: z.exactOptional(lengthInput),
  tieTolerance: lengthInput.default(0),
  limits: z.exactOptional(
    z.strictObject({
      length: z.exactOptional(lengthInput),
      height: z.exactOptional(lengthInput),
      weightKg: z.exactOptional(z.number().gt(0)),
    }),
  ),
  best: z.int().min(1).max(3).default(3),
});
type BothSidesInput = z.output<typeof bothSidesInput>;

/** Refuses what the lengths, fillWall and fillColumn refuse. Blocks while a wall with a stock is solved. */
export async function fillBothSides(input: BothSidesInput): Promise<Answer<WallAnswer>> {
  const reader = longestReader(lengthReader());
  const system = systemFromInput(input.system, reader, 'system');
  if (!system.ok) return system;
  const common = {
    system: system.value,
    stock: input.stock ?? null,
    designs: [],
    takenCodes: [],
    maximumFillerNm:
      input.maximumFiller === undefined
        ? (system.value.rules.fillerLocks?.maximumWidthNm ?? 0)
        : reader.notNegative(input.maximumFiller, 'maximumFiller'),
    tieToleranceNm: reader.notNegative(input.tieTolerance, 'tieTolerance'),
    limits: limitsOf(input, reader),
    best: input.best,
  };
  const wall = input.wall && wallOf(input.wall, reader);
  const column = input.column && columnOf(input.column, reader);
  const problem = reader.refusal() ?? unknownStock(input.stock, system.value);
  if (problem !== undefined) return problem;
  if (column !== undefined && wall === undefined) return fillColumn({ ...common, column });
  if (wall === undefined || column !== undefined)
    return refuse('wall-or-column', 'Give either the wall or the column that is to be formed.', {
      field: 'wall',
    });
  if (!wall.ok) return wall;
  if (common.stock === null) return fillWall({ ...common, wall: wall.value }, null);
  // loaded only where it is asked: other sums need not wait for it
  const { wholeSolver } = await import('./solve-whole.ts');
  return fillWall({ ...common, wall: wall.value }, await wholeSolver());
}

/** A code that is nothing of the system is a misspelling, and the panel meant would count as none. */
export function unknownStock(
  stock: Readonly<Record<string, number>> | undefined,
  { panels, components }: PanelSystem,
): Answer<never> | undefined {
  const known = new Set([...panels, ...components].map(({ code }) => code));
  const stray = Object.keys(stock ?? {}).find((code) => !known.has(code));
  if (stray === undefined) return undefined;
  return refuse('stock-unknown', `The stock names ${stray}, which is nothing of the system.`, {
    field: `stock.${stray}`,
    hint: 'Maybe the code is spelled in another way there.',
  });
}

const longestNm = 1_000_000_000_000;

/** As long as a screen takes: nothing that is formed in one pour is longer. */
function longestReader(reader: LengthReader): LengthReader {
  let first: ReturnType<LengthReader['refusal']>;
  const within = (nm: number, field: string): number => {
    if (nm > longestNm && reader.refusal() === undefined)
      first ??= refuse(
        'length-too-long',
        `${field} is ${formatLengthMetric(nm)}; ${formatLengthMetric(longestNm)} is the most.`,
        { field, hint: 'Maybe a unit is missing: plain numbers are millimetres.' },
      );
    return nm;
  };
  return {
    ...reader,
    positive: (value, field) => within(reader.positive(value, field), field),
    notNegative: (value, field) => within(reader.notNegative(value, field), field),
    refusal: () => first ?? reader.refusal(),
  };
}

function limitsOf({ limits = {} }: BothSidesInput, reader: LengthReader): GangLimits {
  const { length, height, weightKg } = limits;
  return {
    ...(length !== undefined && { lengthNm: reader.positive(length, 'limits.length') }),
    ...(height !== undefined && { heightNm: reader.positive(height, 'limits.height') }),
    ...(weightKg !== undefined && { weightGrams: reader.weight(weightKg, 'limits.weightKg') }),
  };
}

function wallOf(input: WallInput, reader: LengthReader): Answer<Wall> {
  const { rows, insideCornerLeg, outsideCornerLeg } = input;
  const wall = {
    legs: input.legs.map(({ length }, leg) => ({
      lengthNm: reader.positive(length, `wall.legs[${leg}].length`),
    })),
    closed: input.closed,
    start: endOf(input.start, reader, 'wall.start'),
    end: endOf(input.end, reader, 'wall.end'),
    thicknessNm: reader.positive(input.thickness, 'wall.thickness'),
    heightNm: reader.positive(input.height, 'wall.height'),
    freeboardNm: reader.notNegative(input.freeboard, 'wall.freeboard'),
    ...(rows && { rowsNm: rows.map((row, index) => reader.positive(row, `wall.rows[${index}]`)) }),
    ...(insideCornerLeg !== undefined && {
      insideCornerLegNm: reader.notNegative(insideCornerLeg, 'wall.insideCornerLeg'),
    }),
    ...(outsideCornerLeg !== undefined && {
      outsideCornerLegNm: reader.notNegative(outsideCornerLeg, 'wall.outsideCornerLeg'),
    }),
  };
  const turns = squareTurns(input.turns, input.outOfScope ?? []);
  return turns.ok ? answer({ ...wall, turns: turns.value }) : turns;
}

function endOf(end: EndInput, reader: LengthReader, at: string): WallEnd {
  switch (end.kind) {
    case 'free':
      return { kind: end.kind, overhangNm: reader.notNegative(end.overhang, `${at}.overhang`) };
    case 'old-concrete':
      return { kind: end.kind, lapNm: reader.notNegative(end.lap, `${at}.lap`) };
    case 'next-pour':
      return end;
    default:
      return never(end);
  }
}

function columnOf(input: z.output<typeof columnInput>, reader: LengthReader): Column {
  return {
    widthANm: reader.positive(input.widthA, 'column.widthA'),
    widthBNm: reader.positive(input.widthB, 'column.widthB'),
    heightNm: reader.positive(input.height, 'column.height'),
    freeboardNm: reader.notNegative(input.freeboard, 'column.freeboard'),
  };
}
