// What `calc fill` answers of a wall or a column: the proposals of `fill.propose` with lengths in millimetres, weights in
// kilograms, and designs as `calc takeoff` reads them.
import { z } from 'zod';
import { edgeKinds } from '../catalogue/edges.ts';
import type { Finding } from '../gang/findings.ts';
import type { LooseItem, ProposedDesign, WallAnswer, WallProposal } from '../face/wall.ts';
import { lengthMm } from '../units/length.ts';
import { weightKg } from '../units/weight.ts';
import { wallProposal } from './fill-wall-shapes.ts';

const { order, loose, short } = wallProposal.shape;
const { side } = wallProposal.shape.gangs.element.shape;
const mm = z.number();

const design = z.strictObject({
  code: z.string(),
  name: z.string(),
  isNew: z.boolean(),
  symmetrical: z.boolean(),
  widthMm: mm,
  heightMm: mm,
  weightKg: z.number(),
  /** Of the half of a column, drawn unfolded: its corner, from its left edge. */
  foldMm: z.exactOptional(mm),
  /** As `calc takeoff` reads it. */
  geometry: z.strictObject({
    panels: z.array(z.strictObject({ panel: z.string(), x: mm, y: mm, onSide: z.boolean() })),
    fillers: z.array(z.strictObject({ x: mm, y: mm, width: mm, height: mm })),
    edges: z.strictObject({ left: z.enum(edgeKinds), right: z.enum(edgeKinds) }),
  }),
});

const made = z.strictObject({
  widthMm: mm,
  heightMm: mm,
  areaM2: z.number(),
  backing: z.string().nullable(),
  backingPieces: z.int(),
  hours: z.number().nullable(),
});

const finding = z.strictObject({
  rule: z.string(),
  severity: z.enum(['stop', 'caution', 'note']),
  message: z.string(),
  where: z.exactOptional(z.string()),
  source: z.exactOptional(z.string()),
});

export const bothSidesOutput = z.strictObject({
  proposals: z.array(
    z.strictObject({
      order,
      score: z.strictObject({
        newFaceMm: mm,
        holesAlone: z.int(),
        shortage: z.int(),
        fillerMm: mm,
        panelCount: z.int(),
        asymmetry: z.int(),
      }),
      proven: z.boolean(),
      rowsMm: z.array(mm),
      designs: z.array(design),
      /** Empty for a column: its halves go round it. */
      gangs: z.array(
        z.strictObject({ side, leg: z.int(), design: z.string(), fromMm: mm, widthMm: mm, bottomMm: mm }),
      ),
      loose: z.array(loose.element.omit({ made: true }).extend({ made: z.exactOptional(made) })),
      alone: z.array(
        z.strictObject({ side, leg: z.int(), alongMm: mm, heightMm: mm, facesForm: z.boolean() }),
      ),
      short,
      findings: z.array(finding),
    }),
  ),
  proven: z.boolean(),
  findings: z.array(finding),
});
type BothSidesOutput = z.input<typeof bothSidesOutput>;

export function bothSidesAnswer({ proposals, proven, findings }: WallAnswer): BothSidesOutput {
  return { proposals: proposals.map(proposalAnswer), proven, findings: findings.map(findingAnswer) };
}

function proposalAnswer(proposal: WallProposal): BothSidesOutput['proposals'][number] {
  const [newFaceNm, holesAlone, shortage, fillerNm, panelCount, asymmetry] = proposal.score;
  return {
    order: proposal.order,
    score: {
      newFaceMm: lengthMm(newFaceNm),
      holesAlone,
      shortage,
      fillerMm: lengthMm(fillerNm),
      panelCount,
      asymmetry,
    },
    proven: proposal.proven,
    rowsMm: proposal.rowsNm.map(lengthMm),
    designs: proposal.designs.map(designAnswer),
    gangs: proposal.gangs.map(({ fromNm, widthNm, bottomNm, ...gang }) => ({
      ...gang,
      fromMm: lengthMm(fromNm),
      widthMm: lengthMm(widthNm),
      bottomMm: lengthMm(bottomNm),
    })),
    loose: proposal.loose.map(looseAnswer),
    alone: proposal.alone.map(({ alongNm, heightNm, ...hole }) => ({
      ...hole,
      alongMm: lengthMm(alongNm),
      heightMm: lengthMm(heightNm),
    })),
    short: { ...proposal.short },
    findings: proposal.findings.map(findingAnswer),
  };
}

function designAnswer({ geometry, foldNm, ...found }: ProposedDesign): z.input<typeof design> {
  const { code, name, isNew, symmetrical, widthNm, heightNm, weightGrams } = found;
  return {
    code,
    name,
    isNew,
    symmetrical,
    widthMm: lengthMm(widthNm),
    heightMm: lengthMm(heightNm),
    weightKg: weightKg(weightGrams),
    ...(foldNm !== undefined && { foldMm: lengthMm(foldNm) }),
    geometry: {
      panels: geometry.panels.map(({ panel, xNm, yNm, onSide }) => ({
        panel,
        x: lengthMm(xNm),
        y: lengthMm(yNm),
        onSide,
      })),
      fillers: geometry.fillers.map((filler) => ({
        x: lengthMm(filler.xNm),
        y: lengthMm(filler.yNm),
        width: lengthMm(filler.widthNm),
        height: lengthMm(filler.heightNm),
      })),
      edges: geometry.edges,
    },
  };
}

function looseAnswer({
  made: piece,
  ...item
}: LooseItem): BothSidesOutput['proposals'][number]['loose'][number] {
  if (piece === undefined) return item;
  const { widthNm, heightNm, ...rest } = piece;
  return { ...item, made: { widthMm: lengthMm(widthNm), heightMm: lengthMm(heightNm), ...rest } };
}

function findingAnswer({ where, ...rest }: Finding): z.input<typeof finding> {
  return { ...rest, ...(typeof where === 'string' && { where }) };
}
