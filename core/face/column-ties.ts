// Tie holes of a column: a hole of a face and the one opposite on the other half take one tie. Opposite, a face is
// drawn the other way round.
import { never } from '../answer.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import { type Finding, type PointNm, shown } from '../gang/findings.ts';
import { placeDesign } from '../gang/placed.ts';
import { pairHoles } from '../gang/tie-pairs.ts';
import { holesOf } from '../gang/ties.ts';
import type { ColumnForm, ColumnHalf, ColumnHalves, FaceName } from './column.ts';
import { faceNames } from './column.ts';
import type { AloneHole } from './wall.ts';

export interface ColumnTies {
  readonly pairs: number;
  /** Side A is half 1 and side B half 2; leg 0 is face A, leg 1 face B, each along from its left edge at the back. */
  readonly alone: readonly AloneHole[];
  readonly findings: readonly Finding[];
}

export function columnTies(
  system: PanelSystem,
  { panelsNm }: ColumnForm,
  halves: ColumnHalves,
  toleranceNm: number,
): ColumnTies {
  const alone: AloneHole[] = [];
  const heights: Record<FaceName, Set<number>> = { A: new Set(), B: new Set() };
  let pairs = 0;
  for (const [leg, face] of faceNames.entries()) {
    const opposite = ({ xNm, yNm }: PointNm): PointNm => ({ xNm: panelsNm[face] - xNm, yNm });
    const [one, other] = halves.map((half) => faceHoles(system, half, face)) as [PointNm[], PointNm[]];
    const found = pairHoles(one, other.map(opposite), toleranceNm);
    pairs += found.pairs.length;
    for (const [{ yNm }] of found.pairs) heights[face].add(yNm);
    const hole = (side: 'A' | 'B', { xNm, yNm }: PointNm): AloneHole => ({
      side,
      leg,
      alongNm: xNm,
      heightNm: yNm,
      facesForm: true,
    });
    alone.push(...found.alone[0].map((each) => hole('A', each)));
    alone.push(...found.alone[1].map((each) => hole('B', opposite(each))));
  }
  const crossing = [...heights.A].filter((heightNm) => heights.B.has(heightNm));
  return { pairs, alone, findings: [...alone.map(aloneFinding), ...crossingFinding(crossing)] };
}

/** Of one face, from its left edge and the foot, each place once. */
function faceHoles(system: PanelSystem, half: ColumnHalf, face: FaceName): readonly PointNm[] {
  const placed = placeDesign(system, half.geometry);
  if (!placed.ok) throw new Error(placed.error.message);
  const { panels, extent } = placed.value;
  const foldNm = extent.leftNm + half.foldNm;
  const isFirst = half.first === face;
  const startNm = isFirst ? extent.leftNm : foldNm;
  const places = new Map<string, PointNm>();
  for (const panel of panels) {
    if (panel.rightNm <= foldNm !== isFirst) continue;
    for (const { xNm, yNm } of holesOf(panel)) {
      const hole = { xNm: xNm - startNm, yNm: yNm - extent.bottomNm };
      places.set(`${hole.xNm} ${hole.yNm}`, hole);
    }
  }
  return [...places.values()].sort((one, other) => one.xNm - other.xNm || one.yNm - other.yNm);
}

function aloneFinding({ side, leg, alongNm, heightNm }: AloneHole): Finding {
  return {
    rule: 'ties-through',
    severity: 'stop',
    message: 'The tie hole has no hole opposite on the other half.',
    where: `${halfName(side)}, face ${faceNames[leg] ?? 'A'}, ${shown(alongNm)} along, ${shown(heightNm)} up`,
  };
}

export function halfName(side: 'A' | 'B'): string {
  switch (side) {
    case 'A':
      return 'half 1';
    case 'B':
      return 'half 2';
    default:
      return never(side);
  }
}

/** Both directions go through the middle of the column, so at one height their ties meet. */
function crossingFinding(heightsNm: readonly number[]): readonly Finding[] {
  if (heightsNm.length === 0) return [];
  const heights = heightsNm.toSorted((one, other) => one - other).map(shown);
  return [
    {
      rule: 'ties-cross',
      severity: 'caution',
      message: `Ties of both directions at ${heights.join(', ')} up would cross in the column: one direction has to be left out, its holes plugged, and what they held is held otherwise.`,
      where: 'column',
    },
  ];
}
