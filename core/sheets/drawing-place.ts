// Where on the paper a point of the gang comes to lie. Paper is in millimetres with y downwards; the gang is in
// nanometres with y upwards from its lower left corner.
import type { PointNm } from '../gang/findings.ts';
import type { DrawnPiece } from '../gang/take-off.ts';

export interface Place {
  readonly x: (xNm: number) => number;
  readonly y: (yNm: number) => number;
  /** A length of the gang in millimetres of paper. */
  readonly long: (lengthNm: number) => number;
}

/** `leftMm` and `topMm` are where the gang's upper left corner lies on the drawing. */
export function placeAt(leftMm: number, topMm: number, heightNm: number, ratio: number): Place {
  const long = (lengthNm: number): number => lengthNm / 1e6 / ratio;
  return {
    long,
    x: (xNm) => leftMm + long(xNm),
    y: (yNm) => topMm + long(heightNm - yNm),
  };
}

/** A rectangle on the paper, from its upper left corner. */
export interface BoxMm {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export function boxOf(place: Place, piece: DrawnPiece): BoxMm {
  return {
    x: place.x(piece.xNm),
    y: place.y(piece.yNm + piece.heightNm),
    width: place.long(piece.widthNm),
    height: place.long(piece.heightNm),
  };
}

/** A box of this size with a point of the gang in its middle. */
export function boxAround(place: Place, point: PointNm, width: number, height: number): BoxMm {
  return { x: place.x(point.xNm) - width / 2, y: place.y(point.yNm) - height / 2, width, height };
}

export function overlapMm2(one: BoxMm, other: BoxMm): number {
  const across = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const down = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return across > 0 && down > 0 ? across * down : 0;
}
