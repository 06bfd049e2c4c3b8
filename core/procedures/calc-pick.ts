// `regang calc pick`: hooks, slings and crane under one gang, from figures given.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import { lengthInput } from '../catalogue/rules-input.ts';
import type { Finding } from '../gang/findings.ts';
import { checkChart, craneAtRadii, craneFindings, greatestShare } from '../pick/crane-chart.ts';
import { liftHooks } from '../pick/lift.ts';
import { type Sling, slingAtAngle, slingFromLegs, typedRatio } from '../pick/sling.ts';
import { windFindings } from '../pick/wind.ts';
import type { Ratio } from '../units/exact.ts';
import { ratioNumber, roundHalfAway } from '../units/exact.ts';
import { lengthReader, type LengthReader } from '../units/length-reader.ts';
import { lengthMm } from '../units/length.ts';
import { calculation } from './procedure.ts';

const input = z.strictObject({
  weightKg: z.number(),
  centreOfGravityMm: z.exactOptional(lengthInput),
  hooks: z.strictObject({
    capacityKg: z.number(),
    ratedFor: z.enum(['sling-tension', 'gang-weight']).default('sling-tension'),
    minimum: z.int().min(0).max(1000),
    positionsMm: z.exactOptional(z.array(lengthInput).min(1).max(1000)),
  }),
  /** One of the two: degrees from the horizontal, or the length of both legs. */
  rigging: z.strictObject({
    angleDeg: z.exactOptional(z.number()),
    legLengthMm: z.exactOptional(lengthInput),
  }),
  equalised: z.boolean().default(false),
  gearKg: z.number().default(0),
  /** Share of the weight added for what clings to the gang. */
  allowance: z.number().min(0).max(10).default(0),
  crane: z.exactOptional(
    z.strictObject({
      chart: z
        .array(z.strictObject({ radiusM: z.number().gt(0).max(1000), capacityKg: z.number() }))
        .min(1)
        .max(1000),
      radiiM: z.array(z.number().gt(0).max(1000)).min(1).max(100),
      deductKg: z.number().default(0),
    }),
  ),
  windMps: z.exactOptional(z.number().min(0)),
  windLimitMps: z.exactOptional(z.number().min(0)),
});
type Input = z.output<typeof input>;

const output = z.strictObject({
  hooksRequired: z.int(),
  loadPerHookKg: z.array(z.number()),
  slingTensionKn: z.array(z.number()),
  horizontalKn: z.number(),
  hookUtilisation: z.number(),
  craneUtilisation: z.exactOptional(z.number()),
  headroomMm: z.exactOptional(z.number()),
  findings: z.array(
    z.strictObject({
      rule: z.string(),
      severity: z.enum(['stop', 'caution', 'note']),
      message: z.string(),
      where: z.exactOptional(z.string()),
      source: z.exactOptional(z.string()),
    }),
  ),
});
type Output = z.input<typeof output>;

export const calcPick = calculation({ name: 'pick', input, output, run: pickOf });

function pickOf(given: Input): Answer<Output> {
  const reader = lengthReader();
  const weightGrams = reader.weight(given.weightKg, 'weightKg');
  const capacityGrams = reader.weight(given.hooks.capacityKg, 'hooks.capacityKg');
  const positionsNm = given.hooks.positionsMm?.map((at, index) =>
    reader.any(at, `hooks.positionsMm[${index}]`),
  );
  const centreNm =
    given.centreOfGravityMm === undefined
      ? undefined
      : reader.any(given.centreOfGravityMm, 'centreOfGravityMm');
  const gearGrams = reader.weight(given.gearKg, 'gearKg');
  const refusal =
    reader.refusal() ??
    noWeight(weightGrams, 'weightKg', 'The gang') ??
    noWeight(capacityGrams, 'hooks.capacityKg', 'A hook');
  if (refusal !== undefined) return refusal;
  const sling = slingOf(given.rigging, positionsNm, reader);
  if (!sling.ok) return sling;
  const share = typedRatio(given.allowance);
  const load = { over: BigInt(weightGrams) * (share.under + share.over), under: share.under };
  const lifted = liftHooks({
    load,
    hooks: {
      capacityGrams,
      ratedFor: given.hooks.ratedFor,
      minimum: given.hooks.minimum,
      ...(positionsNm && { positionsNm }),
    },
    sling: sling.value,
    equalised: given.equalised,
    ...(centreNm !== undefined && { centre: { over: BigInt(centreNm), under: 1n } }),
  });
  if (!lifted.ok) return lifted;
  const crane = craneOf(given.crane, load, gearGrams, reader);
  if (!crane.ok) return crane;
  const { required, hooks, utilisation, horizontalGrams, findings } = lifted.value;
  const { headroomNm } = sling.value;
  return answer({
    hooksRequired: required,
    loadPerHookKg: hooks.map((hook) => ratioNumber(hook.load.over, hook.load.under * 1000n)),
    slingTensionKn: hooks.map((hook) => kilonewtons(hook.pullGrams)),
    horizontalKn: kilonewtons(horizontalGrams),
    hookUtilisation: utilisation,
    ...(crane.value.utilisation !== null && { craneUtilisation: crane.value.utilisation }),
    ...(headroomNm !== undefined && { headroomMm: lengthMm(headroomNm) }),
    findings: [
      ...findings,
      ...crane.value.findings,
      ...windFindings(given.windMps ?? null, given.windLimitMps ?? null, 'as entered'),
    ].map(plainFinding),
  });
}

/** Standard gravity is 9.80665 m/s2 by definition (3rd General Conference on Weights and Measures, 1901). */
function kilonewtons(weightGrams: number): number {
  return (weightGrams * 9.80665) / 1_000_000;
}

function noWeight(grams: number, field: string, what: string) {
  if (grams > 0) return undefined;
  return refuse('weight-zero', `${what} is given with ${grams} g: a pick needs a weight over zero.`, {
    field,
    hint: 'Maybe the weight is missing.',
  });
}

function slingOf(
  { angleDeg, legLengthMm }: Input['rigging'],
  positionsNm: readonly number[] | undefined,
  reader: LengthReader,
): Answer<Sling> {
  if ((angleDeg === undefined) === (legLengthMm === undefined)) {
    return refuse(
      'angle-or-legs',
      'Give either the angle of the sling or the length of its legs, one of them.',
      {
        field: 'rigging',
      },
    );
  }
  if (legLengthMm === undefined) return slingAtAngle(angleDeg ?? 0, 'rigging.angleDeg');
  const legLengthNm = reader.positive(legLengthMm, 'rigging.legLengthMm');
  const refusal = reader.refusal();
  if (refusal !== undefined) return refusal;
  const [one, other] = positionsNm ?? [];
  if (positionsNm?.length !== 2 || one === undefined || other === undefined) {
    return refuse(
      'legs-need-two',
      'The length of the legs gives an angle between two hooks: give both places.',
      {
        field: 'hooks.positionsMm',
      },
    );
  }
  return slingFromLegs(legLengthNm, Math.abs(other - one), 'rigging.legLengthMm');
}

interface CraneAnswer {
  readonly utilisation: number | null;
  readonly findings: readonly Finding[];
}

function craneOf(
  crane: Input['crane'],
  load: Ratio,
  gearGrams: number,
  reader: LengthReader,
): Answer<CraneAnswer> {
  if (crane === undefined) return answer({ utilisation: null, findings: [] });
  const chart = crane.chart.map(({ radiusM, capacityKg }, row) => ({
    radiusNm: radiusNm(radiusM),
    capacityGrams: reader.weight(capacityKg, `crane.chart[${row}].capacityKg`),
  }));
  const deductGrams = reader.weight(crane.deductKg, 'crane.deductKg');
  const empty = chart.findIndex(({ capacityGrams }) => capacityGrams === 0);
  const refusal =
    reader.refusal() ??
    (empty < 0 ? undefined : noWeight(0, `crane.chart[${empty}].capacityKg`, 'A row of the chart'));
  if (refusal !== undefined) return refusal;
  const checked = checkChart(chart, (row) => `crane.chart[${row}].radiusM`);
  if (!checked.ok) return checked;
  const hanging = { over: load.over + BigInt(gearGrams + deductGrams) * load.under, under: load.under };
  const radii = crane.radiiM.map((metres, index) => ({
    name: `radiiM[${index}]`,
    radiusNm: radiusNm(metres),
  }));
  const places = craneAtRadii(chart, hanging, radii);
  return answer({
    utilisation: greatestShare(places),
    findings: [...checked.value, ...craneFindings(chart, places, hanging)],
  });
}

/** Metres to the nearest nanometre. */
function radiusNm(metres: number): number {
  const { over, under } = typedRatio(metres);
  return Number(roundHalfAway(over * 1_000_000_000n, under));
}

function plainFinding({ where, ...finding }: Finding): Output['findings'][number] {
  return typeof where === 'string' ? { ...finding, where } : finding;
}
