// Both faces of a wall unfolded, leg by leg beside each other, side A over side B in one measure along the leg, so that
// what faces each other stands over each other. Side B is drawn as it lies along the wall, not from its own back.
import type { Panel } from '../../../core/catalogue/component.ts';
import type { Proposal } from './fill-shapes.ts';

export type SideName = 'A' | 'B';

export interface Box {
  readonly xNm: number;
  /** Of the lower edge, above the foot. */
  readonly yNm: number;
  readonly widthNm: number;
  readonly heightNm: number;
}

export interface DrawnGang extends Box {
  readonly design: string;
  readonly isNew: boolean;
  readonly side: SideName;
  readonly panels: readonly (Box & { readonly code: string })[];
  readonly fillers: readonly Box[];
  readonly holes: readonly { readonly xNm: number; readonly yNm: number }[];
}

export interface DrawnLeg {
  readonly leg: number;
  /** Where the leg's own measure begins on the drawing. */
  readonly originNm: number;
  readonly fromNm: number;
  readonly toNm: number;
  readonly gangs: readonly DrawnGang[];
  readonly alone: readonly {
    readonly side: SideName;
    readonly xNm: number;
    readonly yNm: number;
    readonly facesForm: boolean;
  }[];
}

export interface DrawnFaces {
  readonly legs: readonly DrawnLeg[];
  readonly widthNm: number;
  readonly heightNm: number;
}

const gapNm = 900_000_000;

export function drawnFaces(proposal: Proposal, panels: ReadonlyMap<string, Panel>): DrawnFaces {
  const count = Math.max(-1, ...proposal.gangs.map(({ leg }) => leg)) + 1;
  const heightNm = proposal.rowsNm.reduce((sum, row) => sum + row, 0);
  const legs: DrawnLeg[] = [];
  let startNm = 0;
  for (let leg = 0; leg < count; leg += 1) {
    const gangs = proposal.gangs.filter((gang) => gang.leg === leg);
    const leastNm = Math.min(...gangs.map(({ fromNm }) => fromNm));
    const mostNm = Math.max(...gangs.map(({ fromNm, widthNm }) => fromNm + widthNm));
    const originNm = startNm - leastNm;
    legs.push({
      leg,
      originNm,
      fromNm: startNm,
      toNm: startNm + mostNm - leastNm,
      gangs: gangs.map((gang) => drawnGang(gang, proposal, panels, originNm)),
      alone: proposal.alone
        .filter((hole) => hole.leg === leg)
        .map(({ side, alongNm, heightNm: yNm, facesForm }) => ({
          side,
          xNm: originNm + alongNm,
          yNm,
          facesForm,
        })),
    });
    startNm += mostNm - leastNm + gapNm;
  }
  return { legs, widthNm: Math.max(1, startNm - gapNm), heightNm };
}

function drawnGang(
  gang: Proposal['gangs'][number],
  proposal: Proposal,
  panels: ReadonlyMap<string, Panel>,
  originNm: number,
): DrawnGang {
  const { side, widthNm, bottomNm } = gang;
  const xNm = originNm + gang.fromNm;
  const design = proposal.designs.find(({ code }) => code === gang.design);
  const along = (at: number, wide: number): number => xNm + (side === 'A' ? at : widthNm - at - wide);
  const drawn = (design?.geometry.panels ?? []).flatMap((placed) => {
    const panel = panels.get(placed.panel);
    if (panel === undefined) return [];
    const [wide, high] = placed.onSide ? [panel.heightNm, panel.widthNm] : [panel.widthNm, panel.heightNm];
    const holes = (panel.tieHolesNm ?? []).map(([x, y]): readonly [number, number] =>
      placed.onSide ? [panel.heightNm - y, x] : [x, y],
    );
    return [{ placed, wide, high, holes }];
  });
  return {
    design: gang.design,
    isNew: design?.isNew ?? true,
    side,
    xNm,
    yNm: bottomNm,
    widthNm,
    heightNm: design?.heightNm ?? 0,
    panels: drawn.map(({ placed, wide, high }) => ({
      code: placed.panel,
      xNm: along(placed.xNm, wide),
      yNm: bottomNm + placed.yNm,
      widthNm: wide,
      heightNm: high,
    })),
    fillers: (design?.geometry.fillers ?? []).map((filler) => ({
      xNm: along(filler.xNm, filler.widthNm),
      yNm: bottomNm + filler.yNm,
      widthNm: filler.widthNm,
      heightNm: filler.heightNm,
    })),
    holes: drawn.flatMap(({ placed, holes }) =>
      holes.map(([x, y]) => ({ xNm: along(placed.xNm + x, 0), yNm: bottomNm + placed.yNm + y })),
    ),
  };
}
