// How pieces lie on a truck where the catalogue does not say it: how thick they are laid flat, how many make a bundle,
// what goes in a box. Every figure here is a default: common practice, no source; screens and sheets show it as one.

const inchNm = 25_400_000;
const poundGrams = 453.59237;

/** Of a kind of component that is bundled: pieces side by side, layer on layer. */
export interface BundledKind {
  readonly how: 'bundle';
  /** Where the catalogue has no width, or the width is not how it lies. */
  readonly widthNm: number;
  /** Where the catalogue has no length. */
  readonly lengthNm: number;
  readonly thicknessNm: number;
  readonly across: number;
  readonly pieces: number;
  /** Its catalogue width counts: it lies flat on its face. */
  readonly flat: boolean;
}

export interface BoxedKind {
  readonly how: 'box';
}

const flat = (thicknessIn: number, pieces: number): BundledKind => ({
  how: 'bundle',
  widthNm: 36 * inchNm,
  lengthNm: 96 * inchNm,
  thicknessNm: thicknessIn * inchNm,
  across: 1,
  pieces,
  flat: true,
});

const long = (widthIn: number, thicknessIn: number, across: number, pieces: number): BundledKind => ({
  how: 'bundle',
  widthNm: widthIn * inchNm,
  lengthNm: 120 * inchNm,
  thicknessNm: thicknessIn * inchNm,
  across,
  pieces,
  flat: false,
});

export const laidKinds: Readonly<Record<string, BundledKind | BoxedKind>> = {
  panel: flat(5, 10),
  'stop-end': flat(5, 8),
  closure: flat(6, 6),
  filler: long(8, 2, 4, 40),
  'inside-corner': long(13, 13, 2, 4),
  'outside-corner': long(5, 5, 6, 24),
  'stiffening-rail': long(5, 5, 6, 24),
  plank: long(10, 2, 4, 40),
  post: { ...long(4, 4, 8, 40), lengthNm: 48 * inchNm },
  guardrail: long(6, 2, 6, 60),
  brace: long(5, 5, 6, 24),
  bracket: { ...long(36, 6, 1, 8), lengthNm: 48 * inchNm },
};

/** A box for what is small: locks, bolts, ties, shoes, hooks. Filled to about a weight, not to the brim. */
export const laidBox = {
  lengthNm: 48 * inchNm,
  widthNm: 36 * inchNm,
  heightNm: 28 * inchNm,
  contentGrams: Math.round(1000 * poundGrams),
} as const;

/** A rack or container of which the catalogue has no size. */
export const laidContainer = {
  lengthNm: 96 * inchNm,
  widthNm: 48 * inchNm,
  heightNm: 48 * inchNm,
} as const;

/** A gang laid down, with its rails and its brackets folded or off. */
export const laidGangHeightNm = 16 * inchNm;

/** Timber under every bundle, box and rack, for the slings or the forks. */
export const bearersNm = 4 * inchNm;

export interface CataloguePiece {
  readonly code: string;
  readonly kind: string;
  readonly weightGrams: number;
  readonly widthNm?: number;
  readonly heightNm?: number;
  readonly lengthNm?: number;
}

/** How pieces of a component lie: in bundles of layers, or in boxes. */
export interface LaidSize {
  readonly how: 'bundle' | 'box';
  readonly lengthNm: number;
  /** Of one piece; of a box, its own. */
  readonly widthNm: number;
  /** Of one piece; of a box, its own. */
  readonly thicknessNm: number;
  readonly across: number;
  readonly pieces: number;
  /** Which of its figures are defaults, in words. */
  readonly defaults: readonly string[];
}

/** @param bundle pieces in a bundle, where the yard has set it */
export function laidSize(piece: CataloguePiece, bundle: number | undefined): LaidSize {
  const kind = laidKinds[piece.kind] ?? boxedOrSized(piece);
  const pieces = bundle === undefined ? ['pieces in a bundle'] : [];
  if (kind.how === 'box') {
    const fill = Math.max(1, Math.round(laidBox.contentGrams / Math.max(1, piece.weightGrams)));
    return {
      how: 'box',
      lengthNm: laidBox.lengthNm,
      widthNm: laidBox.widthNm,
      thicknessNm: laidBox.heightNm,
      across: 1,
      pieces: bundle ?? fill,
      defaults: ['size of its box', ...(bundle === undefined ? ['pieces in a box'] : [])],
    };
  }
  const [length, width] = lengthAndWidth(piece, kind);
  return {
    how: 'bundle',
    lengthNm: length ?? kind.lengthNm,
    widthNm: width ?? kind.widthNm,
    thicknessNm: kind.thicknessNm,
    across: kind.across,
    pieces: bundle ?? kind.pieces,
    defaults: [
      ...(length === undefined ? ['length'] : []),
      ...(width === undefined ? ['width'] : []),
      'thickness laid flat',
      ...pieces,
    ],
  };
}

/** The longer side lies along the deck. */
function lengthAndWidth(
  { widthNm, heightNm, lengthNm }: CataloguePiece,
  kind: BundledKind,
): readonly [number | undefined, number | undefined] {
  const sides = [widthNm, heightNm, lengthNm].filter((each) => each !== undefined).sort((a, b) => b - a);
  return [sides[0], kind.flat ? sides[1] : undefined];
}

/** A thing of no usual kind lies flat where its sizes are known, else it goes in a box. */
function boxedOrSized({ widthNm, heightNm, lengthNm }: CataloguePiece): BundledKind | BoxedKind {
  const known = [widthNm, heightNm, lengthNm].filter((each) => each !== undefined).length;
  return known >= 2 ? flat(12, 1) : { how: 'box' };
}
