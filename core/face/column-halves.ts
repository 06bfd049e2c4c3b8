// Halves of a column: filled with upright panels in rows, or gangs on paper that cover just these two faces.
import { type Answer, answer } from '../answer.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { atCorner } from '../gang/at-corner.ts';
import type { DesignGeometry } from '../gang/design.ts';
import type { Finding } from '../gang/findings.ts';
import { placeDesign } from '../gang/placed.ts';
import {
  type ColumnForm,
  type ColumnHalf,
  type ColumnHalves,
  type ColumnTask,
  type FaceName,
  faceNames,
} from './column.ts';
import { type FaceProposal, type FaceProposals, fillFace } from './fill-face.ts';

/** Fillings of a face that are looked at. */
const fillings = 5;

export interface FilledHalves {
  readonly halves: readonly ColumnHalves[];
  /** Both faces of one half, were there always enough; undefined where that is not proven. */
  readonly least: { readonly fillerNm: number; readonly panelCount: number } | undefined;
  /** Is it proven that some face cannot be filled? */
  readonly impossible: boolean;
  readonly findings: readonly Finding[];
}

/**
 * One half twice, and the same with its faces as in a mirror opposite it, since ties then always meet. Refuses what
 * fillFace refuses.
 */
export function filledHalves(task: ColumnTask, form: ColumnForm): Answer<FilledHalves> {
  const { stock } = task;
  const free: FaceProposals[] = [];
  for (const face of faceNames) {
    const found = fill(task, form, face, null);
    if (!found.ok) return { ok: false, error: { ...found.error, field: `column.width${face}` } };
    free.push(found.value);
  }
  const findings = free.flatMap((found, index) =>
    found.findings.map((each) => ({ ...each, where: placeOf(each, faceNames[index] ?? 'A') })),
  );
  const [firsts, proven] = [free.map(({ proposals: [first] }) => first), free.every((each) => each.proven)];
  const [a, b] = firsts;
  if (a === undefined || b === undefined) {
    const impossible = free.some((each) => each.proven && each.proposals.length === 0);
    return answer({ halves: [], least: undefined, impossible, findings });
  }
  const least = proven
    ? { fillerNm: a.score[1] + b.score[1], panelCount: a.score[2] + b.score[2] }
    : undefined;
  // a half is made up twice
  const each =
    stock && Object.fromEntries(Object.entries(stock).map(([code, count]) => [code, Math.floor(count / 2)]));
  const halves: ColumnHalves[] = [];
  const ofA = fill(task, form, 'A', each);
  for (const first of ofA.ok ? ofA.value.proposals : []) {
    const ofB = fill(task, form, 'B', each && without(each, first.rows.flat()));
    for (const second of ofB.ok ? ofB.value.proposals : []) {
      const half = halfOf(task.system, form, { A: first, B: second }, false);
      halves.push([half, half], [half, halfOf(task.system, form, { A: first, B: second }, true)]);
    }
  }
  return answer({ halves, least, impossible: false, findings });
}

function without(stock: Readonly<Record<string, number>>, used: readonly string[]): Record<string, number> {
  const left = { ...stock };
  for (const code of used) left[code] = Math.max(0, (left[code] ?? 0) - 1);
  return left;
}

function placeOf({ where }: Finding, face: FaceName): string {
  return typeof where === 'string' ? `face ${face}, ${where}` : `face ${face}`;
}

function fill(
  { system, maximumFillerNm }: ColumnTask,
  { panelsNm, rowsNm }: ColumnForm,
  face: FaceName,
  stock: ColumnTask['stock'],
): Answer<FaceProposals> {
  return fillFace(system, { lengthNm: panelsNm[face], rowsNm, stock, maximumFillerNm, best: fillings });
}

function halfOf(
  system: PanelSystem,
  { rowsNm, panelsNm }: ColumnForm,
  found: Readonly<Record<FaceName, FaceProposal>>,
  mirrored: boolean,
): ColumnHalf {
  const panels: DesignGeometry['panels'] = [];
  const fillers: DesignGeometry['fillers'] = [];
  let yNm = 0;
  for (const [row, heightNm] of rowsNm.entries()) {
    for (const face of faceNames) {
      const startNm = face === 'A' ? 0 : panelsNm.A;
      const [codes, fillerNm] = [found[face].rows[row] ?? [], found[face].fillersNm[row] ?? 0];
      let atNm = 0;
      for (const unit of fromBothEnds(system, codes, fillerNm)) {
        const xNm = startNm + (mirrored ? panelsNm[face] - atNm - unit.widthNm : atNm);
        if (unit.code === null) fillers.push({ xNm, yNm, widthNm: unit.widthNm, heightNm });
        else panels.push({ panel: unit.code, xNm, yNm, onSide: false });
        atNm += unit.widthNm;
      }
    }
    yNm += heightNm;
  }
  const inOrder = panels.toSorted((one, other) => one.yNm - other.yNm || one.xNm - other.xNm);
  const geometry: DesignGeometry = {
    panels: inOrder,
    fillers,
    edges: { left: 'column', right: 'column' },
    equalised: false,
  };
  return { geometry, first: 'A', foldNm: panelsNm.A, known: null };
}

/** Pairs outside, wide ones first, what is left and the filler in the middle: as near a mirror as it can be. */
function fromBothEnds(
  { panels }: PanelSystem,
  codes: readonly string[],
  fillerNm: number,
): readonly { readonly code: string | null; readonly widthNm: number }[] {
  const units = panels
    .toSorted((one, other) => other.widthNm - one.widthNm)
    .map(({ code, widthNm }) => ({ code, widthNm, count: codes.filter((each) => each === code).length }))
    .filter(({ count }) => count > 0);
  const left = units.flatMap((unit) => Array.from({ length: Math.floor(unit.count / 2) }, () => unit));
  const single = units.filter(({ count }) => count % 2 === 1);
  const before = Math.ceil(single.length / 2);
  const filler = fillerNm > 0 ? [{ code: null, widthNm: fillerNm }] : [];
  return [...left, ...single.slice(0, before), ...filler, ...single.slice(before), ...left.toReversed()];
}

/** Gangs on paper with both edges at the column, as high and wide as the half, of which no piece crosses the fold. */
export function knownHalves(task: ColumnTask, form: ColumnForm): readonly ColumnHalves[] {
  const { panelsNm, formNm } = form;
  const isSquare = panelsNm.A === panelsNm.B;
  return (isSquare ? (['A'] as const) : faceNames).flatMap((first) => {
    const foldNm = panelsNm[first];
    const halves = task.designs.flatMap(({ code, geometry }): readonly ColumnHalf[] => {
      const placed = placeDesign(task.system, geometry);
      const { left, right } = geometry.edges;
      if (!placed.ok || left !== 'column' || right !== 'column') return [];
      const { panels, fillers, widthNm, heightNm, extent } = placed.value;
      if (widthNm !== panelsNm.A + panelsNm.B || heightNm !== formNm) return [];
      const atNm = extent.leftNm + foldNm;
      const crosses = [...panels, ...fillers].some(({ leftNm, rightNm }) => leftNm < atNm && rightNm > atNm);
      const { face: _, ...bare } = geometry;
      const moved = atCorner(bare, { xNm: extent.leftNm, yNm: extent.bottomNm });
      return crosses ? [] : [{ geometry: moved, first, foldNm, known: code }];
    });
    return halves.flatMap((one, index) => halves.slice(index).map((other): ColumnHalves => [one, other]));
  });
}
