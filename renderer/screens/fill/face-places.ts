// Both faces of a wall unfolded, leg by leg beside each other, side A over side B in one measure along the leg, so that
// what faces each other stands over each other. Side B is drawn as it lies along the wall, not from its own back.
import type { PanelSystem } from '../../../core/catalogue/system.ts';
import { wallCorners } from '../../../core/face/wall-corners.ts';
import { type FaceEnd, type Leg, wallLegs } from '../../../core/face/wall-legs.ts';
import type { SideName } from '../../../core/face/wall.ts';
import { type Box, type DrawnDesign, drawnDesign, mirrored } from './drawn-design.ts';
import type { Asked, Proposal } from './fill-shapes.ts';

export const sides: readonly SideName[] = ['A', 'B'];

export interface DrawnGang extends Box {
  readonly design: string;
  readonly isNew: boolean;
  readonly drawn: DrawnDesign;
}

/** A place in the leg's own measure, and above the foot of the form. */
interface Place {
  readonly xNm: number;
  readonly yNm: number;
}

export interface DrawnFace {
  readonly side: SideName;
  readonly fromNm: number;
  readonly toNm: number;
  /** The concrete to be poured; the form may be higher and longer. */
  readonly pour: Box;
  /** Where panels stand; what no gang covers of it is a closure made on the site. */
  readonly panels: Box;
  readonly insideCorners: readonly Box[];
  readonly gangs: readonly DrawnGang[];
  readonly cornerHoles: readonly Place[];
  readonly alone: readonly (Place & { readonly facesForm: boolean })[];
}

export interface DrawnLeg {
  readonly leg: number;
  readonly fromNm: number;
  readonly toNm: number;
  readonly faces: readonly DrawnFace[];
  /** Where a tie goes through from face to face. */
  readonly tiesNm: readonly number[];
}

export interface DrawnFaces {
  readonly legs: readonly DrawnLeg[];
  readonly rowsNm: readonly number[];
  readonly heightNm: number;
}

export function drawnFaces(
  proposal: Proposal,
  entered: NonNullable<Asked['wall']>,
  system: PanelSystem,
): DrawnFaces {
  const heightNm = proposal.rowsNm.reduce((sum, row) => sum + row, 0);
  const wall = { ...entered, turns: entered.turns.filter((turn) => typeof turn === 'string') };
  const { corners } = wallCorners(system, wall, heightNm);
  const designs = new Map(
    proposal.designs.map((design) => [design.code, { design, drawn: drawnDesign(design, system) }]),
  );
  const legs = wallLegs(wall, corners).map((leg): DrawnLeg => {
    const lengthNm = wall.legs[leg.index]?.lengthNm ?? 0;
    const faces = sides.map((side): DrawnFace => {
      const gangs = proposal.gangs
        .filter((gang) => gang.leg === leg.index && gang.side === side)
        .map((gang): DrawnGang => {
          const found = designs.get(gang.design);
          const drawn = found?.drawn ?? { panels: [], fillers: [], holes: [] };
          return {
            xNm: gang.fromNm,
            yNm: gang.bottomNm,
            widthNm: gang.widthNm,
            heightNm: found?.design.heightNm ?? 0,
            design: gang.design,
            isNew: found?.design.isNew ?? true,
            drawn: side === 'A' ? drawn : mirrored(drawn, gang.widthNm),
          };
        });
      const alone = proposal.alone.filter((hole) => hole.leg === leg.index && hole.side === side);
      return {
        ...faceBoxes(leg, side, lengthNm, wall.heightNm, heightNm),
        side,
        fromNm: Math.min(leg.from[side].atNm, ...gangs.map(({ xNm }) => xNm)),
        toNm: Math.max(leg.to[side].atNm, ...gangs.map(({ xNm, widthNm }) => xNm + widthNm)),
        gangs,
        alone: alone.map((hole) => ({
          xNm: hole.alongNm,
          yNm: hole.heightNm,
          facesForm: hole.facesForm,
        })),
      };
    });
    return {
      leg: leg.index,
      fromNm: Math.min(...faces.map(({ fromNm }) => fromNm)),
      toNm: Math.max(...faces.map(({ toNm }) => toNm)),
      faces,
      tiesNm: faces.flatMap((face) => (face.side === 'A' ? tiesOf(face) : [])),
    };
  });
  return { legs, rowsNm: proposal.rowsNm, heightNm };
}

function faceBoxes(
  leg: Leg,
  side: SideName,
  lengthNm: number,
  pourNm: number,
  formNm: number,
): Pick<DrawnFace, 'pour' | 'panels' | 'insideCorners' | 'cornerHoles'> {
  const [from, to] = [leg.from[side], leg.to[side]];
  const [panelsFromNm, panelsToNm] = [from.atNm + from.cornerLegNm, to.atNm - to.cornerLegNm];
  return {
    pour: span(isCorner(from) ? from.atNm : 0, isCorner(to) ? to.atNm : lengthNm, pourNm),
    panels: span(panelsFromNm, panelsToNm, formNm),
    insideCorners: [span(from.atNm, panelsFromNm, formNm), span(panelsToNm, to.atNm, formNm)].filter(
      ({ widthNm }) => widthNm > 0,
    ),
    cornerHoles: [
      ...from.cornerHoles.map((hole) => ({ xNm: panelsFromNm - hole.fromPanelsNm, yNm: hole.heightNm })),
      ...to.cornerHoles.map((hole) => ({ xNm: panelsToNm + hole.fromPanelsNm, yNm: hole.heightNm })),
    ],
  };
}

/** Along the leg, wherever a hole of the face is not alone. */
function tiesOf({ gangs, cornerHoles, alone }: DrawnFace): readonly number[] {
  const lonely = new Set(alone.map(({ xNm, yNm }) => `${xNm} ${yNm}`));
  const holes = [
    ...cornerHoles,
    ...gangs.flatMap(({ xNm, yNm, drawn }) =>
      drawn.holes.map((hole) => ({ xNm: xNm + hole.xNm, yNm: yNm + hole.yNm })),
    ),
  ];
  return [...new Set(holes.filter(({ xNm, yNm }) => !lonely.has(`${xNm} ${yNm}`)).map(({ xNm }) => xNm))];
}

function isCorner({ edge }: FaceEnd): boolean {
  return edge === 'inside-corner' || edge === 'outside-corner';
}

function span(fromNm: number, toNm: number, heightNm: number): Box {
  return { xNm: fromNm, yNm: 0, widthNm: Math.max(0, toNm - fromNm), heightNm };
}
