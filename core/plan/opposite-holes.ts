// Ties of a wall: one for each pair of tie holes that face each other. A gang is drawn as seen from its
// back, so a hole of side B lies mirrored along the wall, which is measured as seen from side A.
import type { PointNm } from '../gang/findings.ts';
import { pairHoles } from '../gang/tie-pairs.ts';
import type { Pour, SideName } from './pours.ts';

/** A tie hole on the wall: along it from the pour's start, and above the foot of the form. */
interface Hole {
  readonly alongNm: number;
  readonly heightNm: number;
}

/** What the count needs of a design: its width, and its tie holes as seen from its back. */
export interface HoledDesign {
  readonly widthNm: number;
  readonly holes: readonly { readonly xNm: number; readonly yNm: number }[];
}

export interface OppositeHoles {
  readonly pairs: number;
  /** Holes without a partner, by side. */
  readonly alone: Readonly<Record<SideName, number>>;
  /** The first hole without a partner along the wall, to name a place. */
  readonly firstAlone: (Hole & { readonly side: SideName }) | null;
}

/**
 * As many pairs as there can be of holes opposite within the tolerance (none: to the nanometre); every place counts
 * once, also where two gangs share it.
 */
export function oppositeHoles(
  pour: Pour,
  designs: ReadonlyMap<string, HoledDesign>,
  toleranceNm = 0,
): OppositeHoles {
  const { pairs, alone } = pairHoles(
    sideHoles(pour, 'A', designs),
    sideHoles(pour, 'B', designs),
    toleranceNm,
  );
  const [first] = [
    ...alone[0].map((hole) => ({ ...holeOf(hole), side: 'A' as const })),
    ...alone[1].map((hole) => ({ ...holeOf(hole), side: 'B' as const })),
  ].sort((p, q) => p.alongNm - q.alongNm || p.heightNm - q.heightNm);
  return {
    pairs: pairs.length,
    alone: { A: alone[0].length, B: alone[1].length },
    firstAlone: first ?? null,
  };
}

function holeOf({ xNm, yNm }: PointNm): Hole {
  return { alongNm: xNm, heightNm: yNm };
}

/** On the wall: x along it, y above the foot. */
function sideHoles(
  pour: Pour,
  name: SideName,
  designs: ReadonlyMap<string, HoledDesign>,
): readonly PointNm[] {
  const places = new Map<string, PointNm>();
  for (const side of pour.sides) {
    if (side.side !== name) continue;
    for (const gang of side.gangs) {
      const design = designs.get(gang.design);
      for (const { xNm, yNm } of design?.holes ?? []) {
        const across = name === 'A' ? xNm : (design?.widthNm ?? 0) - xNm;
        const hole = { xNm: gang.atNm + across, yNm };
        places.set(`${hole.xNm}/${hole.yNm}`, hole);
      }
    }
  }
  return [...places.values()];
}
