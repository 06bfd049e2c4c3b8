// The pieces of a face put together to gangs: the fewest that keep within the greatest length, height and weight, then
// the most even ones. A gang already on paper stays a gang; a made-up closure stands between gangs; a filler stays
// between its panels. Gangs are drawn from their backs, so those of side B lie mirrored along the wall.
import { takeOff } from '../gang/take-off.ts';
import type { EdgeKind } from '../catalogue/edges.ts';
import type { PanelSystem } from '../catalogue/system.ts';
import type { DesignGeometry } from '../gang/design.ts';
import { type Finding, shown } from '../gang/findings.ts';
import type { WallPiece } from './wall-pieces.ts';
import type { GangLimits, SideName } from './wall.ts';

/** A piece, filler or closure in its place along the leg. */
export interface StandingUnit {
  readonly fromNm: number;
  readonly widthNm: number;
  readonly unit:
    | { readonly kind: 'piece'; readonly piece: WallPiece }
    | { readonly kind: 'filler' }
    | { readonly kind: 'closure' };
}

export interface FaceGang {
  readonly fromNm: number;
  readonly widthNm: number;
  readonly bottomNm: number;
  readonly geometry: DesignGeometry;
  /** Code of the gang on paper that it is. */
  readonly known: string | null;
}

export interface FaceToPart {
  readonly system: PanelSystem;
  readonly side: SideName;
  readonly units: readonly StandingUnit[];
  readonly edges: { readonly from: EdgeKind; readonly to: EdgeKind };
  readonly rowsNm: readonly number[];
  readonly limits: GangLimits;
  /** In words, for findings. */
  readonly where: string;
}

export function partToGangs(face: FaceToPart): { gangs: readonly FaceGang[]; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const tiers = tiersOf(face.rowsNm, face.limits.heightNm);
  const stretches = stretchesOf(face.units);
  const gangs = stretches.flatMap((stretch) => {
    const [only] = stretch;
    if (only?.unit.kind === 'piece' && only.unit.piece.made.kind === 'design') {
      const { design, geometry } = only.unit.piece.made;
      const { fromNm, widthNm } = only;
      return [{ fromNm, widthNm, bottomNm: 0, geometry, known: design.code }];
    }
    return tiers.flatMap((tier) => tierGangs(face, stretch, tier, findings));
  });
  return { gangs, findings };
}

interface Tier {
  readonly bottomNm: number;
  readonly heightNm: number;
}

/** Rows over each other that are one gang: the fewest tiers, then the most even, the higher one below. */
function tiersOf(rowsNm: readonly number[], mostNm: number | undefined): readonly Tier[] {
  const bottoms = rowsNm.map((_, row) => rowsNm.slice(0, row).reduce((sum, each) => sum + each, 0));
  const cuts = fewestMostEven(rowsNm.length, (from, to) => {
    const heightNm = rowsNm.slice(from, to).reduce((sum, each) => sum + each, 0);
    return { lengthNm: heightNm, isWithin: mostNm === undefined || heightNm <= mostNm || to - from === 1 };
  });
  return cuts.map(([from, to]) => ({
    bottomNm: bottoms[from] ?? 0,
    heightNm: rowsNm.slice(from, to).reduce((sum, each) => sum + each, 0),
  }));
}

/** Units between closures and gangs on paper; each of those gangs is a stretch of its own. */
function stretchesOf(units: readonly StandingUnit[]): readonly (readonly StandingUnit[])[] {
  const stretches: StandingUnit[][] = [[]];
  for (const standing of units) {
    if (standing.unit.kind === 'closure') stretches.push([]);
    else if (standing.unit.kind === 'piece' && standing.unit.piece.made.kind === 'design')
      stretches.push([standing], []);
    else stretches.at(-1)?.push(standing);
  }
  return stretches.filter((stretch) => stretch.some(({ unit }) => unit.kind === 'piece'));
}

function tierGangs(
  face: FaceToPart,
  stretch: readonly StandingUnit[],
  tier: Tier,
  findings: Finding[],
): readonly FaceGang[] {
  const { limits } = face;
  const gangOf = (from: number, to: number): FaceGang => gangFrom(face, stretch.slice(from, to), tier);
  const weights = new Map<string, number>();
  const gramsOf = (from: number, to: number): number => {
    const key = `${from} ${to}`;
    const known = weights.get(key);
    if (known !== undefined) return known;
    const taken = takeOff(face.system, gangOf(from, to).geometry);
    const grams = taken.ok ? taken.value.weightGrams : 0;
    weights.set(key, grams);
    return grams;
  };
  const cuts = fewestMostEven(stretch.length, (from, to) => {
    const [one, other] = [stretch[from], stretch[to - 1]];
    if (one === undefined || other === undefined) return { lengthNm: 0, isWithin: false };
    const lengthNm = other.fromNm + other.widthNm - one.fromNm;
    const keepsFillers =
      (from === 0 || one.unit.kind !== 'filler') && (to === stretch.length || other.unit.kind !== 'filler');
    const isLeast = stretch.slice(from, to).filter(({ unit }) => unit.kind === 'piece').length <= 1;
    const isWithin =
      (limits.lengthNm === undefined || lengthNm <= limits.lengthNm) &&
      (limits.weightGrams === undefined || gramsOf(from, to) <= limits.weightGrams);
    return { lengthNm, isWithin: isLeast || (keepsFillers && isWithin) };
  });
  return cuts.map(([from, to]) => {
    const gang = gangOf(from, to);
    findings.push(
      ...limitFindings(face, gang, tier, limits.weightGrams === undefined ? 0 : gramsOf(from, to)),
    );
    return gang;
  });
}

function limitFindings(face: FaceToPart, gang: FaceGang, tier: Tier, grams: number): readonly Finding[] {
  const { lengthNm, heightNm, weightGrams } = face.limits;
  const passed = [
    ...(lengthNm !== undefined && gang.widthNm > lengthNm
      ? [`${shown(gang.widthNm)} long, over ${shown(lengthNm)}`]
      : []),
    ...(heightNm !== undefined && tier.heightNm > heightNm
      ? [`${shown(tier.heightNm)} high, over ${shown(heightNm)}`]
      : []),
    ...(weightGrams !== undefined && grams > weightGrams
      ? [`${grams / 1000} kg, over ${weightGrams / 1000} kg`]
      : []),
  ];
  return passed.map((what) => ({
    rule: 'gang-limits',
    severity: 'stop',
    message: `The least gang there is ${what}.`,
    where: `${face.where}, ${shown(gang.fromNm)} along`,
  }));
}

/** Cuts 0 to n into stretches that are within limits: the fewest, then the least sum of squared lengths. */
function fewestMostEven(
  count: number,
  stretch: (from: number, to: number) => { readonly lengthNm: number; readonly isWithin: boolean },
): readonly (readonly [from: number, to: number])[] {
  interface Best {
    readonly gangs: number;
    readonly squares: number;
    readonly before: number;
  }
  const best: (Best | undefined)[] = [{ gangs: 0, squares: 0, before: 0 }];
  for (let to = 1; to <= count; to += 1) {
    for (let from = to - 1; from >= 0; from -= 1) {
      const before = best[from];
      if (before === undefined) continue;
      const { lengthNm, isWithin } = stretch(from, to);
      if (!isWithin) continue;
      const found = {
        gangs: before.gangs + 1,
        squares: before.squares + (lengthNm / 1e6) ** 2,
        before: from,
      };
      const known = best[to];
      if (
        known === undefined ||
        found.gangs < known.gangs ||
        (found.gangs === known.gangs && found.squares < known.squares)
      )
        best[to] = found;
    }
  }
  const cuts: [number, number][] = [];
  for (let to = count; to > 0;) {
    const from = best[to]?.before;
    if (from === undefined) throw new Error('A face could not be parted to gangs.');
    cuts.unshift([from, to]);
    to = from;
  }
  return cuts;
}

function gangFrom(face: FaceToPart, units: readonly StandingUnit[], tier: Tier): FaceGang {
  const fromNm = units[0]?.fromNm ?? 0;
  const last = units.at(-1);
  const toNm = last === undefined ? fromNm : last.fromNm + last.widthNm;
  const widthNm = toNm - fromNm;
  const drawn = (alongNm: number, pieceNm: number): number =>
    face.side === 'A' ? alongNm - fromNm : toNm - alongNm - pieceNm;
  const topNm = tier.bottomNm + tier.heightNm;
  const panels = units.flatMap(({ fromNm: at, unit }) =>
    unit.kind !== 'piece' || unit.piece.made.kind !== 'stack'
      ? []
      : unit.piece.made.rows
          .filter(({ bottomNm }) => bottomNm >= tier.bottomNm && bottomNm < topNm)
          .flatMap((row) =>
            row.panels.map(({ panel, alongNm }) => ({
              panel: panel.code,
              xNm: drawn(at + alongNm, panel.widthNm),
              yNm: row.bottomNm - tier.bottomNm,
              onSide: false,
            })),
          ),
  );
  const fillers = units
    .filter(({ unit }) => unit.kind === 'filler')
    .map((each) => ({
      xNm: drawn(each.fromNm, each.widthNm),
      yNm: 0,
      widthNm: each.widthNm,
      heightNm: tier.heightNm,
    }));
  const all = face.units;
  const from: EdgeKind = units[0] === all[0] ? face.edges.from : 'next-gang';
  const to: EdgeKind = last === all.at(-1) ? face.edges.to : 'next-gang';
  return {
    fromNm,
    widthNm,
    bottomNm: tier.bottomNm,
    known: null,
    geometry: {
      panels: panels.toSorted((one, other) => one.yNm - other.yNm || one.xNm - other.xNm),
      fillers,
      edges: face.side === 'A' ? { left: from, right: to } : { left: to, right: from },
      equalised: false,
    },
  };
}
