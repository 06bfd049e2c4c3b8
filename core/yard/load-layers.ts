// From what is to be sent to what lies on a deck: pieces in bundles and boxes, racks and bins with what is in them,
// gangs laid down. No bundle is made larger than a truck takes.
import { type Deck, passedAlone } from './deck.ts';
import {
  bearersNm,
  type CataloguePiece,
  laidContainer,
  laidGangHeightNm,
  type LaidSize,
} from './laid-sizes.ts';
import type { LoadLayer } from './truck.ts';

export interface PiecesToSend {
  readonly piece: CataloguePiece;
  readonly quantity: number;
  readonly stop: number;
}

/** One bundle or box of some pieces of a component. */
export function bundleOf(piece: CataloguePiece, size: LaidSize, quantity: number, stop: number): LoadLayer {
  const isBox = size.how === 'box';
  const across = Math.min(size.across, quantity);
  const high = isBox ? 1 : Math.ceil(quantity / size.across);
  return {
    what: { component: piece.code, quantity },
    weightGrams: piece.weightGrams * quantity,
    lengthNm: size.lengthNm,
    widthNm: size.widthNm * across,
    heightNm: size.thicknessNm * high + bearersNm,
    carries: !isBox,
    stop,
  };
}

/**
 * Pieces of a component for a stop, in as few bundles as the yard's size allows; smaller ones where no truck takes
 * a whole one.
 */
export function bundlesOf(
  { piece, quantity, stop }: PiecesToSend,
  size: LaidSize,
  trucks: readonly Deck[],
): LoadLayer[] {
  const most = mostInBundle(piece, size, trucks, stop);
  const layers: LoadLayer[] = [];
  for (let rest = quantity; rest > 0; rest -= most)
    layers.push(bundleOf(piece, size, Math.min(most, rest), stop));
  return layers;
}

function mostInBundle(piece: CataloguePiece, size: LaidSize, trucks: readonly Deck[], stop: number): number {
  for (let pieces = size.pieces; pieces > 1; pieces -= 1) {
    const bundle = bundleOf(piece, size, pieces, stop);
    if (trucks.some((truck) => passedAlone(bundle, truck).length === 0)) return pieces;
  }
  const single = bundleOf(piece, size, 1, stop);
  return trucks.some((truck) => passedAlone(single, truck).length === 0) ? 1 : size.pieces;
}

export interface ContainerToSend {
  readonly container: string;
  /** Which piece it is itself. */
  readonly piece: CataloguePiece;
  readonly weightGrams: number;
  readonly stop: number;
}

export function containerLayer({ container, piece, weightGrams, stop }: ContainerToSend): LoadLayer {
  const sides = [piece.lengthNm, piece.widthNm].filter((each) => each !== undefined).sort((a, b) => b - a);
  return {
    what: { container },
    weightGrams,
    lengthNm: sides[0] ?? laidContainer.lengthNm,
    widthNm: sides[1] ?? laidContainer.widthNm,
    heightNm: piece.heightNm ?? laidContainer.heightNm,
    carries: false,
    stop,
  };
}

export interface GangToSend {
  readonly gang: string;
  readonly widthNm: number;
  readonly heightNm: number;
  readonly weightGrams: number;
  readonly stop: number;
}

/** Laid down, its longer side along the deck. */
export function gangLayer({ gang, widthNm, heightNm, weightGrams, stop }: GangToSend): LoadLayer {
  return {
    what: { gang },
    weightGrams,
    lengthNm: Math.max(widthNm, heightNm),
    widthNm: Math.min(widthNm, heightNm),
    heightNm: laidGangHeightNm + bearersNm,
    carries: false,
    stop,
  };
}
