// Where gangs stand along the two sides of a pour, for the plan: side A above, side B below the concrete.
import type { DesignSummary } from '../designs/design-shapes.ts';
import type { PourSide } from './pour-shapes.ts';

export interface PlanGang {
  readonly side: 'A' | 'B';
  readonly design: string;
  readonly fromNm: number;
  readonly toNm: number;
  /** How many gangs of its side it lies over in part: each is drawn on a line of its own. */
  readonly layer: number;
}

export interface PlanLayout {
  readonly gangs: readonly PlanGang[];
  readonly fromNm: number;
  readonly toNm: number;
  readonly layers: { readonly A: number; readonly B: number };
}

type Width = Pick<DesignSummary, 'code' | 'widthNm'>;

/** Undefined where no gang is placed. A design that is not known is drawn without width. */
export function planLayout(sides: readonly PourSide[], designs: readonly Width[]): PlanLayout | undefined {
  const widths = new Map(designs.map(({ code, widthNm }) => [code, widthNm]));
  const layers = { A: 1, B: 1 };
  const gangs = sides.flatMap(({ side, gangs: placed }) => {
    const ends: number[] = [];
    return [...placed]
      .sort((one, other) => one.atNm - other.atNm)
      .map(({ design, atNm }): PlanGang => {
        const toNm = atNm + (widths.get(design) ?? 0);
        const free = ends.findIndex((end) => end <= atNm);
        const layer = free < 0 ? ends.length : free;
        ends[layer] = toNm;
        layers[side] = Math.max(layers[side], layer + 1);
        return { side, design, fromNm: atNm, toNm, layer };
      });
  });
  if (gangs.length === 0) return undefined;
  return {
    gangs,
    fromNm: Math.min(...gangs.map(({ fromNm }) => fromNm)),
    toNm: Math.max(...gangs.map(({ toNm }) => toNm)),
    layers,
  };
}
