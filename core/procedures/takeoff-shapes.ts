// What `calc takeoff` answers, and how the take-off's internal units become it.
import { z } from 'zod';
import type { Finding, Place } from '../gang/findings.ts';
import type { RailStand } from '../gang/rail-clash.ts';
import type { TakeOff } from '../gang/take-off.ts';
import type { Estimate } from '../gang/estimate.ts';
import type { TakeOffLine } from '../gang/weights.ts';
import { areaM2 } from '../units/area.ts';
import { lengthMm } from '../units/length.ts';
import { weightKg } from '../units/weight.ts';

const place = z.union([z.string(), z.strictObject({ xMm: z.number(), yMm: z.number() })]);

const railStand = z
  .strictObject({ xMm: z.number(), yMm: z.number(), direction: z.enum(['level', 'upright']) })
  .nullable();

export const takeoffOutput = z.strictObject({
  estimate: z.exactOptional(z.literal(true)),
  lines: z.array(
    z.strictObject({
      component: z.string(),
      quantity: z.int(),
      because: z.array(z.strictObject({ rule: z.string(), count: z.int(), where: place })),
    }),
  ),
  joints: z.array(
    z.strictObject({
      kind: z.enum(['vertical', 'horizontal', 'filler']),
      lengthMm: z.number(),
      xMm: z.number(),
      yMm: z.number(),
      locks: z.int(),
    }),
  ),
  findings: z.array(
    z.strictObject({
      rule: z.string(),
      severity: z.enum(['stop', 'caution', 'note']),
      message: z.string(),
      where: z.exactOptional(place),
      source: z.exactOptional(z.string()),
    }),
  ),
  /** Size and centre of gravity are left out of an estimate, which knows no places. */
  widthMm: z.exactOptional(z.number()),
  heightMm: z.exactOptional(z.number()),
  areaM2: z.number(),
  weightKg: z.number(),
  centreOfGravityMm: z.exactOptional(z.tuple([z.number(), z.number()])),
  hooks: z.array(z.strictObject({ xMm: z.number(), yMm: z.number(), loadKg: z.number() })),
  holes: z.exactOptional(z.array(z.tuple([z.number(), z.number()]))),
  /** Present where the catalogue tells it for every panel as it stands. */
  permittedPressureKpa: z.exactOptional(z.number()),
  /** Present where rails for picking and rails for placing cannot both stay on. */
  railMoves: z.exactOptional(
    z.array(
      z.strictObject({
        step: z.enum(['before-the-pour', 'before-the-pick']),
        component: z.string(),
        from: railStand,
        to: railStand,
      }),
    ),
  ),
});

export type TakeoffOutput = z.input<typeof takeoffOutput>;

export function takeOffAnswer(found: TakeOff): TakeoffOutput {
  return {
    lines: found.lines.map(lineAnswer),
    joints: found.joints.map(({ kind, lengthNm, xNm, yNm, locks }) => ({
      kind,
      lengthMm: lengthMm(lengthNm),
      xMm: lengthMm(xNm),
      yMm: lengthMm(yNm),
      locks,
    })),
    findings: found.findings.map(findingAnswer),
    widthMm: lengthMm(found.widthNm),
    heightMm: lengthMm(found.heightNm),
    areaM2: areaM2(found.areaNm2),
    weightKg: weightKg(found.weightGrams),
    centreOfGravityMm: [lengthMm(found.centreOfGravity.xNm), lengthMm(found.centreOfGravity.yNm)],
    hooks: found.hooks.map(({ xNm, yNm, loadKg }) => ({ xMm: lengthMm(xNm), yMm: lengthMm(yNm), loadKg })),
    ...(found.holes && {
      holes: found.holes.map(({ xNm, yNm }): [number, number] => [lengthMm(xNm), lengthMm(yNm)]),
    }),
    ...(found.permittedPressure && { permittedPressureKpa: found.permittedPressure.pa / 1000 }),
    ...(found.railMoves.length > 0 && {
      railMoves: found.railMoves.map(({ step, component, from, to }) => ({
        step,
        component,
        from: standAnswer(from),
        to: standAnswer(to),
      })),
    }),
  };
}

function standAnswer(stand: RailStand | null): z.input<typeof railStand> {
  return stand && { xMm: lengthMm(stand.xNm), yMm: lengthMm(stand.yNm), direction: stand.direction };
}

export function estimateAnswer(found: Estimate): TakeoffOutput {
  return {
    estimate: true,
    lines: found.lines.map(lineAnswer),
    joints: [],
    findings: found.findings.map(findingAnswer),
    areaM2: areaM2(found.areaNm2),
    weightKg: weightKg(found.weightGrams),
    hooks: [],
  };
}

function lineAnswer({ component, quantity, because }: TakeOffLine): TakeoffOutput['lines'][number] {
  return {
    component,
    quantity,
    because: because.map(({ rule, count, where }) => ({ rule, count, where: placeAnswer(where) })),
  };
}

function findingAnswer({ where, ...finding }: Finding): TakeoffOutput['findings'][number] {
  return where === undefined ? finding : { ...finding, where: placeAnswer(where) };
}

function placeAnswer(where: Place): string | { xMm: number; yMm: number } {
  return typeof where === 'string' ? where : { xMm: lengthMm(where.xNm), yMm: lengthMm(where.yNm) };
}
