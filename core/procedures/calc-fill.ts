// `regang calc fill`: proposals that fill one face with upright panels, from a stock where one is given; or both sides
// of a wall, or a column (fill-wall-input.ts).
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import { codeInput, lengthInput } from '../catalogue/rules-input.ts';
import { systemFromInput, systemInput } from '../catalogue/system-input.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { type FaceProposal, type FaceRequest, fillFace } from '../face/fill-face.ts';
import { lengthReader, type LengthReader } from '../units/length-reader.ts';
import { formatLengthMetric, lengthMm } from '../units/length.ts';
import { bothSidesAnswer, bothSidesOutput } from './fill-wall-answer.ts';
import { bothSidesInput, fillBothSides, unknownStock } from './fill-wall-input.ts';
import { calculation } from './procedure.ts';

const faceInput = z.strictObject({
  system: systemInput,
  face: z.strictObject({ length: lengthInput, height: lengthInput }),
  /** Panels there are; a code missing from it has none. Absent: nothing is short. */
  stock: z.exactOptional(z.record(codeInput, z.int().min(0).max(1_000_000))),
  maximumFiller: lengthInput,
  /** Heights from the bottom; absent: one row. */
  rows: z.exactOptional(z.array(lengthInput).min(1).max(200)),
  best: z.int().min(1).max(50).default(3),
});
type FaceInput = z.output<typeof faceInput>;

const placed = z.strictObject({ panel: z.string(), x: z.number(), y: z.number(), onSide: z.literal(false) });
const filler = z.strictObject({ x: z.number(), y: z.number(), width: z.number(), height: z.number() });

const faceOutput = z.strictObject({
  proposals: z.array(
    z.strictObject({
      /** As `calc takeoff` reads it, lengths in millimetres. */
      design: z.strictObject({ panels: z.array(placed), fillers: z.array(filler) }),
      fillerMm: z.number(),
      panelCount: z.int(),
      short: z.record(z.string(), z.int()),
      score: z.tuple([z.int(), z.number(), z.int()]),
    }),
  ),
  proven: z.boolean(),
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
type FaceOutput = z.input<typeof faceOutput>;

/** Read by the one form that is meant, so that what is wrong is told of that form alone. */
const input = z.preprocess(
  (read, context) => {
    const problems = (isBothSides(read) ? bothSidesInput : faceInput).safeParse(read).error?.issues ?? [];
    for (const problem of problems) context.issues.push(lastWord(problem, read));
    return problems.length > 0 ? z.NEVER : read;
  },
  z.union([faceInput, bothSidesInput]),
);

/** After unknown keys alone zod would go on and tell of the union as well: as an issue of ours they end it. */
function lastWord(problem: z.core.$ZodIssue, read: unknown): z.core.$ZodRawIssue {
  if (problem.code !== 'unrecognized_keys') return { ...problem, input: read } as z.core.$ZodRawIssue;
  const keys = problem.keys.map((key) => `"${key}"`).join(', ');
  const message = problem.keys.length === 1 ? `the key ${keys} is unknown` : `the keys ${keys} are unknown`;
  return { code: 'custom', path: problem.path, message, input: read };
}

const output = z.union([faceOutput, bothSidesOutput]);

export const calcFill = calculation({
  name: 'fill',
  input,
  output,
  run: async (asked): Promise<Answer<z.input<typeof output>>> => {
    if ('face' in asked) return fillOf(asked);
    const found = await fillBothSides(asked);
    return found.ok ? answer(bothSidesAnswer(found.value)) : found;
  },
});

function isBothSides(read: unknown): boolean {
  if (typeof read !== 'object' || read === null || 'face' in read) return false;
  return 'wall' in read || 'column' in read;
}

function fillOf(asked: FaceInput): Answer<FaceOutput> {
  const reader = lengthReader();
  const system = systemFromInput(asked.system, reader, 'system');
  if (!system.ok) return system;
  const request = requestOf(asked, reader);
  const problem = reader.refusal() ?? unequalRows(request) ?? unknownStock(asked.stock, system.value);
  if (problem !== undefined) return problem;
  const found = fillFace(system.value, request.face);
  if (!found.ok) return found;
  const { proposals, proven, findings } = found.value;
  return answer({
    proposals: proposals.map((proposal) => proposalAnswer(system.value, request.face, proposal)),
    proven,
    findings: findings.map(({ where, ...finding }) => ({
      ...finding,
      ...(typeof where === 'string' && { where }),
    })),
  });
}

interface Request {
  readonly heightNm: number;
  readonly face: FaceRequest;
}

function requestOf({ face, rows, stock, maximumFiller, best }: FaceInput, reader: LengthReader): Request {
  const lengthNm = reader.positive(face.length, 'face.length');
  const heightNm = reader.positive(face.height, 'face.height');
  const rowsNm = rows?.map((row, index) => reader.positive(row, `rows[${index}]`)) ?? [heightNm];
  const maximumFillerNm = reader.notNegative(maximumFiller, 'maximumFiller');
  return { heightNm, face: { lengthNm, rowsNm, stock: stock ?? null, maximumFillerNm, best } };
}

function unequalRows({ heightNm, face }: Request): Answer<never> | undefined {
  const sumNm = face.rowsNm.reduce((sum, row) => sum + row, 0);
  if (sumNm === heightNm) return undefined;
  return refuse(
    'rows-not-face',
    `The rows are ${formatLengthMetric(sumNm)} high together, the face is ${formatLengthMetric(heightNm)}.`,
    { field: 'rows', hint: 'Maybe a row is missing: rows are heights from the bottom that add up to it.' },
  );
}

function proposalAnswer(
  { panels }: PanelSystem,
  { lengthNm, rowsNm }: FaceRequest,
  { rows, fillersNm, short, score: [shortage, fillerNm, panelCount] }: FaceProposal,
): FaceOutput['proposals'][number] {
  const widths = new Map(panels.map(({ code, widthNm }) => [code, widthNm]));
  const placedPanels: FaceOutput['proposals'][number]['design']['panels'] = [];
  const fillers: FaceOutput['proposals'][number]['design']['fillers'] = [];
  let bottomNm = 0;
  for (const [index, row] of rows.entries()) {
    const heightNm = rowsNm[index] ?? 0;
    let atNm = 0;
    for (const panel of row) {
      placedPanels.push({ panel, x: lengthMm(atNm), y: lengthMm(bottomNm), onSide: false });
      atNm += widths.get(panel) ?? 0;
    }
    const widthNm = fillersNm[index] ?? 0;
    if (widthNm > 0) {
      const [x, width] = [lengthMm(lengthNm - widthNm), lengthMm(widthNm)];
      fillers.push({ x, y: lengthMm(bottomNm), width, height: lengthMm(heightNm) });
    }
    bottomNm += heightNm;
  }
  return {
    design: { panels: placedPanels, fillers },
    fillerMm: lengthMm(fillerNm),
    panelCount,
    short,
    score: [shortage, lengthMm(fillerNm), panelCount],
  };
}
