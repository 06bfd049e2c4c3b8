// Ties of a wall: one for each pair of tie holes that face each other. A gang is drawn as seen from its
// back, so a hole of side B lies mirrored along the wall, which is measured as seen from side A.
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

/** Pairs holes that are opposite to the nanometre; every place counts once, also where two gangs share it. */
export function oppositeHoles(pour: Pour, designs: ReadonlyMap<string, HoledDesign>): OppositeHoles {
  const holes = { A: sideHoles(pour, 'A', designs), B: sideHoles(pour, 'B', designs) };
  const alone: { A: Hole[]; B: Hole[] } = { A: without(holes.A, holes.B), B: without(holes.B, holes.A) };
  const first = [
    ...alone.A.map((hole) => ({ ...hole, side: 'A' as const })),
    ...alone.B.map((hole) => ({ ...hole, side: 'B' as const })),
  ].sort((p, q) => p.alongNm - q.alongNm || p.heightNm - q.heightNm)[0];
  return {
    pairs: holes.A.size - alone.A.length,
    alone: { A: alone.A.length, B: alone.B.length },
    firstAlone: first ?? null,
  };
}

function sideHoles(pour: Pour, name: SideName, designs: ReadonlyMap<string, HoledDesign>): Map<string, Hole> {
  const places = new Map<string, Hole>();
  for (const side of pour.sides) {
    if (side.side !== name) continue;
    for (const gang of side.gangs) {
      const design = designs.get(gang.design);
      for (const { xNm, yNm } of design?.holes ?? []) {
        const across = name === 'A' ? xNm : (design?.widthNm ?? 0) - xNm;
        const hole = { alongNm: gang.atNm + across, heightNm: yNm };
        places.set(`${hole.alongNm}/${hole.heightNm}`, hole);
      }
    }
  }
  return places;
}

function without(these: Map<string, Hole>, those: Map<string, Hole>): Hole[] {
  return [...these].filter(([place]) => !those.has(place)).map(([, hole]) => hole);
}
