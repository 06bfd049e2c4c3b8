// The catalogue's facts about one component: what it is, what it weighs, how large it is. A component is an
// item of the catalogue of any kind; a piece is one counted item of it.

/** The trade's words for what a component is. Kinds below `tie` are loose pieces of a pour, not of a gang. */
export const componentKinds = [
  'panel',
  'lock',
  'adjustable-lock',
  'stiffening-rail',
  'rail-bolt',
  'bracket',
  'plank',
  'post',
  'guardrail',
  'brace',
  'brace-shoe',
  'hook',
  'tie',
  'inside-corner',
  'outside-corner',
  'stop-end',
  'filler',
  'closure',
  'other',
] as const;

export type ComponentKind = (typeof componentKinds)[number];

/** Lengths are whole nanometres; positions are from the lower left corner of the piece standing upright. */
export interface Component {
  readonly code: string;
  readonly name: string;
  readonly kind: ComponentKind;
  readonly weightGrams: number;
  readonly widthNm?: number;
  readonly heightNm?: number;
  /** Of things known by one length, such as rails. */
  readonly lengthNm?: number;
  /** Heights at which a panel has a cross member strong enough for a hook. */
  readonly crossMembersNm?: readonly number[];
  /** Places of the holes for ties, [x, y]. */
  readonly tieHolesNm?: readonly (readonly [number, number])[];
  /** Pressure of fresh concrete that a panel may take, upright and on its side. */
  readonly pressurePa?: number;
  readonly pressureOnSidePa?: number;
  /** Of corners and strips: can it be drawn in, so that a closed box comes off the concrete? */
  readonly canShrink?: boolean;
}

/** A component of kind panel whose size is known, so that it can stand in a gang. */
export interface Panel extends Component {
  readonly kind: 'panel';
  readonly widthNm: number;
  readonly heightNm: number;
}

const spellings: Readonly<Record<string, ComponentKind>> = {
  rail: 'stiffening-rail',
  stiffener: 'stiffening-rail',
  waler: 'stiffening-rail',
  strongback: 'stiffening-rail',
  bolt: 'rail-bolt',
  shoe: 'brace-shoe',
  'filler-lock': 'adjustable-lock',
  'lifting-hook': 'hook',
  'walkway-bracket': 'bracket',
};

/** The kind that a word names, however its parts are joined (railBolt, rail bolt, Rail-bolt); else undefined. */
export function readComponentKind(word: string): ComponentKind | undefined {
  const plain = word
    .trim()
    .replaceAll(/([a-z])([A-Z])/g, '$1-$2')
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-');
  return componentKinds.find((kind) => kind === plain) ?? spellings[plain];
}
