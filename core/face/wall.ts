// A wall to be formed on both sides: straight legs joined by square corners, measured on the face of side A. Along
// the wall, as seen from side A, one walks to the right, so side A is at the walker's right hand: at a turn to the
// left side A is the outer side of the corner, at a turn to the right the inner one.
import type { DesignGeometry } from '../gang/design.ts';
import type { Finding } from '../gang/findings.ts';
import type { PanelSystem } from '../catalogue/system.ts';

export type Turn = 'left' | 'right';
export type SideName = 'A' | 'B';

/**
 * What is at an end of the wall. At a free end a stop-end closes the form between the sides, which may reach beyond it
 * by at most `overhangNm`; on old concrete the form lies over it by `lapNm`; where the next pour goes on, its gangs
 * meet these.
 */
export type WallEnd =
  | { readonly kind: 'free'; readonly overhangNm: number }
  | { readonly kind: 'old-concrete'; readonly lapNm: number }
  | { readonly kind: 'next-pour' };

export interface Wall {
  /** Lengths of the pour on the face of side A, in walking order. */
  readonly legs: readonly { readonly lengthNm: number }[];
  /** Between the legs; of a closed wall one more, from the last leg back to the first. */
  readonly turns: readonly Turn[];
  readonly closed: boolean;
  readonly start: WallEnd;
  readonly end: WallEnd;
  readonly thicknessNm: number;
  /** Of the concrete. The form is at least `freeboardNm` higher. */
  readonly heightNm: number;
  readonly freeboardNm: number;
  /** Heights of the rows of panels from the bottom; absent: the least that reach, the fewest of them. */
  readonly rowsNm?: readonly number[];
  /** Leg of the corner pieces along each face; absent: from the system's corner pieces. */
  readonly insideCornerLegNm?: number;
  readonly outsideCornerLegNm?: number;
}

/** Four corners, two faces of each width; formed by two halves of an L. */
export interface Column {
  readonly widthANm: number;
  readonly widthBNm: number;
  readonly heightNm: number;
  readonly freeboardNm: number;
}

/** Greatest gang that may be made up; absent: any. */
export interface GangLimits {
  readonly lengthNm?: number;
  readonly heightNm?: number;
  readonly weightGrams?: number;
}

/** A gang already on paper or in the yard, that may stand in the wall as it is. */
export interface KnownDesign {
  readonly code: string;
  readonly name: string;
  readonly geometry: DesignGeometry;
}

export interface WallTask {
  readonly system: PanelSystem;
  readonly wall: Wall;
  /** Panels there are by code; a code missing from it has none. Null: nothing is short. */
  readonly stock: Readonly<Record<string, number>> | null;
  readonly designs: readonly KnownDesign[];
  /** Codes that a new design cannot have. */
  readonly takenCodes: readonly string[];
  readonly maximumFillerNm: number;
  /** How far apart, along the wall and in height, two holes may be and still take one tie. */
  readonly tieToleranceNm: number;
  readonly limits: GangLimits;
  /** Proposals at most. */
  readonly best: number;
}

/** What decides between proposals, the first before the second, and so on; each the less the better. */
export type WallScore = readonly [
  /** Length of form face, over both sides, that no design there already covers. */
  newFaceNm: number,
  /** Tie holes without a partner opposite, of those that face a form. */
  holesAlone: number,
  /** Panels beyond the stock. */
  shortage: number,
  /** Sum of the fillers and closures of all faces. */
  fillerNm: number,
  panelCount: number,
  /** Pieces that do not stand as in a mirror at the middle of their face; not part of the proof. */
  asymmetry: number,
];

export interface ProposedDesign {
  /** Of a design that is there, else a suggestion. */
  readonly code: string;
  readonly name: string;
  readonly isNew: boolean;
  readonly geometry: DesignGeometry;
  /** Is it its own mirror image? If not it has a hand, which the one who keeps it names. */
  readonly symmetrical: boolean;
  readonly widthNm: number;
  readonly heightNm: number;
  readonly weightGrams: number;
  /** Of the half of a column, drawn unfolded: how far from its left edge the corner is. */
  readonly foldNm?: number;
}

/** A gang in its place. */
export interface StandingGang {
  readonly side: SideName;
  /** Index of the leg. */
  readonly leg: number;
  readonly design: string;
  /** Its end nearer to the start, along the leg from where the leg's face of side A begins; negative before it. */
  readonly fromNm: number;
  readonly widthNm: number;
  /** Above the foot of the form: gangs may stand over each other. */
  readonly bottomNm: number;
}

export type LoosePurpose =
  | 'inside-corner'
  | 'outside-corner'
  | 'stop-end'
  | 'closure'
  | 'gang-locks'
  | 'ties'
  | 'opening-joint';

/** A loose piece of the pour, one line each; `component` is null for what is made on the site or was not found. */
export interface LooseItem {
  readonly side: SideName | 'both';
  readonly purpose: LoosePurpose;
  readonly component: string | null;
  readonly quantity: number;
  /** Where, in words. */
  readonly where: string;
  /** Of stop-ends and closures: what has to be made. */
  readonly made?: {
    readonly widthNm: number;
    readonly heightNm: number;
    readonly areaM2: number;
    readonly backing: string | null;
    readonly backingPieces: number;
    /** Null where there is no table of such pieces. */
    readonly hours: number | null;
  };
}

/** A tie hole without a partner opposite, in its place; `facesForm` is false where nothing stands opposite. */
export interface AloneHole {
  readonly side: SideName;
  readonly leg: number;
  readonly alongNm: number;
  /** Above the foot of the form. */
  readonly heightNm: number;
  readonly facesForm: boolean;
}

/** Why a proposal is there: by the whole order, by it among those without tie stops, or with new gangs only. */
export type ProposalOrder = 'first' | 'no-tie-stops' | 'new-gangs';

export interface WallProposal {
  readonly order: ProposalOrder;
  readonly score: WallScore;
  /** True where no arrangement has a lower score (its first five parts) in its order. */
  readonly proven: boolean;
  readonly rowsNm: readonly number[];
  readonly designs: readonly ProposedDesign[];
  readonly gangs: readonly StandingGang[];
  readonly loose: readonly LooseItem[];
  readonly alone: readonly AloneHole[];
  /** Panels beyond the stock, by code. */
  readonly short: Readonly<Record<string, number>>;
  /** Of this proposal; where they are is told in words: side, leg, along, up. */
  readonly findings: readonly Finding[];
}

export interface WallAnswer {
  readonly proposals: readonly WallProposal[];
  /** Is the first proposal proven the best? False as well where there is none and that is not proven. */
  readonly proven: boolean;
  readonly findings: readonly Finding[];
}
