// Two halves of a column as a proposal: their designs, loose pieces, ties, score and what was found.
import type { PanelSystem } from '../catalogue/system.ts';
import { type Finding, shown } from '../gang/findings.ts';
import { isSymmetrical } from '../gang/hand-of.ts';
import { placeDesign } from '../gang/placed.ts';
import { takeOff, type TakeOff } from '../gang/take-off.ts';
import { formatLengthUs } from '../units/length.ts';
import { columnLoose } from './column-loose.ts';
import { columnTies } from './column-ties.ts';
import {
  type ColumnForm,
  type ColumnHalf,
  type ColumnHalves,
  type ColumnTask,
  cornerGrams,
} from './column.ts';
import { shortOf } from './wall-fill-leg.ts';
import type { ProposedDesign, WallProposal } from './wall.ts';

/** Not yet told which order it is the best of, nor whether that is proven. */
export type ColumnProposal = Omit<WallProposal, 'order' | 'proven'>;

export function columnProposal(task: ColumnTask, form: ColumnForm, halves: ColumnHalves): ColumnProposal {
  const { system } = task;
  const taken = [takenOff(system, halves[0]), takenOff(system, halves[1])] as const;
  const ties = columnTies(system, form, halves, task.tieToleranceNm);
  const designs = designsOf(task, halves, taken);
  const used = new Map<string, number>();
  for (const { geometry } of halves)
    for (const { panel } of geometry.panels) used.set(panel, (used.get(panel) ?? 0) + 1);
  const short = shortOf(used, task.stock);
  const halfNm = form.panelsNm.A + form.panelsNm.B;
  return {
    score: [
      halfNm * halves.filter(({ known }) => known === null).length,
      ties.alone.length,
      sum(Object.values(short)),
      sum(halves.flatMap(({ geometry }) => geometry.fillers.map(({ widthNm }) => widthNm))),
      sum(halves.map(({ geometry }) => geometry.panels.length)),
      sum(halves.map(uneven(system))),
    ],
    rowsNm: form.rowsNm,
    designs: designs.map(({ design }) => design),
    gangs: [],
    loose: columnLoose(system, form, taken, ties.pairs),
    alone: ties.alone,
    short,
    findings: [
      ...ties.findings,
      ...designs.flatMap(({ design, taken: ofDesign }) => [
        ...limitFindings(task, form, design),
        ...foldFindings(design, ofDesign),
        ...stopsOf(design, ofDesign),
      ]),
    ],
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, each) => all + each, 0);
}

function takenOff(system: PanelSystem, { geometry }: ColumnHalf): TakeOff {
  const taken = takeOff(system, geometry);
  if (!taken.ok) throw new Error(taken.error.message);
  return taken.value;
}

interface Described {
  readonly design: ProposedDesign;
  readonly taken: TakeOff;
}

/** Halves that are drawn alike are one design. */
function designsOf(
  task: ColumnTask,
  halves: ColumnHalves,
  taken: readonly [TakeOff, TakeOff],
): readonly Described[] {
  const texts = halves.map(({ known, geometry }) => JSON.stringify([known, geometry]));
  const different = halves.filter((_, index) => texts.indexOf(texts[index] ?? '') === index);
  const codes = freeCodes(task);
  return different.map((half, index) => {
    const placed = placeDesign(task.system, half.geometry);
    const ofHalf = taken[index];
    if (!placed.ok || ofHalf === undefined) throw new Error('A half of a column without a take-off.');
    const { widthNm, heightNm, weightGrams } = ofHalf;
    const known = task.designs.find(({ code }) => code === half.known);
    const faces = [half.foldNm, widthNm - half.foldNm].map(formatLengthUs).join(' and ');
    const design: ProposedDesign = {
      code: known?.code ?? codes[index] ?? '',
      name: known?.name ?? `Column half ${faces} by ${formatLengthUs(heightNm)}`,
      isNew: known === undefined,
      geometry: half.geometry,
      symmetrical: isSymmetrical(placed.value),
      widthNm,
      heightNm,
      weightGrams,
      foldNm: half.foldNm,
    };
    return { design, taken: ofHalf };
  });
}

/** Two codes that no design has. */
function freeCodes({ takenCodes, designs }: ColumnTask): readonly string[] {
  const used = new Set([...takenCodes, ...designs.map(({ code }) => code)]);
  const found: string[] = [];
  for (let number = 1; found.length < 2; number += 1) if (!used.has(`G${number}`)) found.push(`G${number}`);
  return found;
}

/** Pieces that do not stand as in a mirror at the middle of their face. */
function uneven(system: PanelSystem): (half: ColumnHalf) => number {
  return ({ geometry, foldNm }) => {
    const placed = placeDesign(system, geometry);
    if (!placed.ok) throw new Error(placed.error.message);
    const { panels, fillers, extent } = placed.value;
    const pieces = [
      ...panels.map(({ panel, ...rest }) => ({ ...rest, name: panel.code })),
      ...fillers.map((filler) => ({ ...filler, name: '' })),
    ].map(({ leftNm, rightNm, bottomNm, name }) => {
      const isFirst = rightNm <= extent.leftNm + foldNm;
      const fromNm = isFirst ? extent.leftNm : extent.leftNm + foldNm;
      const toNm = isFirst ? extent.leftNm + foldNm : extent.rightNm;
      const key = (atNm: number): string => `${isFirst} ${bottomNm} ${atNm} ${name}`;
      return { here: key(leftNm - fromNm), there: key(toNm - rightNm) };
    });
    const places = new Set(pieces.map(({ here }) => here));
    return pieces.filter(({ there }) => !places.has(there)).length;
  };
}

function over(mostNm: number | undefined, nm: number, what: string): readonly string[] {
  return mostNm !== undefined && nm > mostNm ? [`${shown(nm)} ${what}, over ${shown(mostNm)}`] : [];
}

/** A half flies folded and with the corner pieces of its fold: its length is that of its longer face. */
function limitFindings(
  { limits }: ColumnTask,
  { corner }: ColumnForm,
  { code, widthNm, heightNm, weightGrams, foldNm = 0 }: ProposedDesign,
): readonly Finding[] {
  const lengthNm = Math.max(foldNm, widthNm - foldNm);
  const grams = weightGrams + cornerGrams(corner.pieces);
  const passed = [
    ...over(limits.lengthNm, lengthNm, 'long'),
    ...over(limits.heightNm, heightNm, 'high'),
    ...(limits.weightGrams !== undefined && grams > limits.weightGrams
      ? [`${grams / 1000} kg with the corner pieces of its fold, over ${limits.weightGrams / 1000} kg`]
      : []),
  ];
  return passed.map((what) => ({
    rule: 'gang-limits',
    severity: 'stop',
    message: `The half of the column is ${what}.`,
    where: `design ${code}`,
  }));
}

/** The take-off reads the drawing as flat. */
function foldFindings({ code, foldNm = 0 }: ProposedDesign, { rails, origin }: TakeOff): readonly Finding[] {
  const atNm = origin.xNm + foldNm;
  const across = rails.filter(
    ({ direction, xNm, lengthNm }) => direction === 'level' && xNm < atNm && xNm + lengthNm > atNm,
  );
  if (across.length === 0) return [];
  return [
    {
      rule: 'column.rails-over-fold',
      severity: 'caution',
      message: `${across.length} rails of the take-off lie over the fold, since it is drawn flat: they end at the corner, each face has its own.`,
      where: `design ${code}`,
    },
  ];
}

function stopsOf({ code, isNew }: ProposedDesign, { findings }: TakeOff): readonly Finding[] {
  if (!isNew) return [];
  return findings
    .filter(({ severity }) => severity === 'stop')
    .map(({ rule, severity, message }) => ({ rule, severity, message, where: `design ${code}` }));
}
