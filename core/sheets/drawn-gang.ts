// What a sheet needs to know of a gang: its take-off from the lower left corner, as every door is shown it.
import type { Finding, PointNm } from '../gang/findings.ts';
import type { RailMove } from '../gang/rail-clash.ts';
import type { DrawnPanel, DrawnPiece, LockedJoint } from '../gang/take-off.ts';
import type { TakeOffLine } from '../gang/weights.ts';
import { formatLength, inchNm, millimetreNm, type UnitSystem } from '../units/length.ts';
import { formatWeight } from '../units/weight.ts';

export interface DrawnRail extends PointNm {
  readonly component: string;
  readonly direction: 'level' | 'upright';
  readonly lengthNm: number;
  readonly bolts: number;
  readonly boltPlaces: readonly PointNm[];
  readonly neededFor: 'picking' | 'placing' | 'both';
}

export interface DrawnHook extends PointNm {
  readonly loadGrams: number;
}

export interface DrawnGang {
  readonly widthNm: number;
  readonly heightNm: number;
  readonly areaM2: number;
  /** Of all lines but the hooks. */
  readonly weightGrams: number;
  readonly edges: { readonly left: string; readonly right: string };
  readonly panels: readonly DrawnPanel[];
  readonly fillers: readonly DrawnPiece[];
  readonly joints: readonly LockedJoint[];
  readonly rails: readonly DrawnRail[];
  readonly railMoves: readonly RailMove[];
  readonly hooks: readonly DrawnHook[];
  /** At the top, and at the foot where their shoes are. */
  readonly brackets: readonly PointNm[];
  readonly braces: readonly PointNm[];
  readonly holes: readonly PointNm[];
  readonly centreOfGravity: PointNm;
  readonly lines: readonly TakeOffLine[];
  readonly findings: readonly Finding[];
}

/** Amounts in the words of a unit system. */
export interface SheetUnits {
  readonly system: UnitSystem;
  readonly length: (lengthNm: number) => string;
  /** On a drawing: without its unit where all are the same. */
  readonly dimension: (lengthNm: number) => string;
  /** A computed length, to the quarter inch or 5 mm. */
  readonly about: (lengthNm: number) => string;
  /** The same, never under it. */
  readonly atLeastNm: (lengthNm: number) => number;
  readonly weight: (weightGrams: number) => string;
}

export function sheetUnits(system: UnitSystem): SheetUnits {
  const stepNm = system === 'us' ? inchNm / 4 : 5 * millimetreNm;
  const length = (lengthNm: number): string => formatLength(lengthNm, system);
  return {
    system,
    length,
    dimension: (lengthNm) => length(lengthNm).replace(/ mm$/u, ''),
    about: (lengthNm) => `about ${length(Math.round(lengthNm / stepNm) * stepNm)}`,
    atLeastNm: (lengthNm) => Math.ceil(lengthNm / stepNm) * stepNm,
    weight: (weightGrams) => formatWeight(weightGrams, system),
  };
}
