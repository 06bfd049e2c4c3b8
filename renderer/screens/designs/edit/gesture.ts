// What a pointer that is held down means: pieces moved, a piece brought from the tray, a box drawn. Worked out
// anew from where it was pressed and where it is.
import type { Guide } from '../../../../core/gang/snap.ts';
import type { PointNm, RectangleNm } from '../design-shapes.ts';
import type { Scale } from '../elevation-view.ts';
import type { DraftPiece } from './draft-pieces.ts';
import type { PieceId } from './editor-state.ts';
import { moveToPlace } from './to-place.ts';

/** What the tray holds: a panel upright, or a filler. */
export interface TrayPiece {
  readonly panel: string | null;
  readonly widthNm: number;
  readonly heightNm: number;
}

export type Gesture =
  | { readonly kind: 'move'; readonly dxNm: number; readonly dyNm: number; readonly guides: readonly Guide[] }
  | {
      readonly kind: 'place';
      readonly piece: TrayPiece;
      readonly at: PointNm;
      readonly guides: readonly Guide[];
    }
  | { readonly kind: 'box'; readonly box: RectangleNm };

/** What the pointer took hold of; what comes of it is worked out anew at every move. */
export type Hold = { readonly x: number; readonly y: number; begun: boolean } & (
  | { readonly kind: 'move'; readonly moving: readonly PieceId[]; readonly ifClick: readonly PieceId[] }
  | { readonly kind: 'place'; readonly piece: TrayPiece }
  | { readonly kind: 'box'; readonly adds: boolean }
);

/** The drawing that the pointer is over. */
export interface Sheet {
  readonly scale: Scale;
  /** Where no edge is near, what is dragged goes by these. */
  readonly stepNm: number;
  readonly pieces: readonly DraftPiece[];
}

export interface PointPx {
  readonly x: number;
  readonly y: number;
}

/** A piece within this many pixels of an edge goes to it. */
const reachPx = 10;

/** Null where a piece from the tray is not over the sheet. `rect` is the sheet in the window. */
export function gestureOf(held: Hold, pointer: PointPx, sheet: Sheet, rect: DOMRect): Gesture | null {
  const { scale, pieces, stepNm } = sheet;
  const reachNm = reachPx / scale.pxPerNm;
  const nm = (px: number): number => Math.round(px / scale.pxPerNm);
  const point = (x: number, y: number): PointNm => ({
    xNm: nm(x - rect.left - scale.leftPx),
    yNm: nm(scale.bottomPx - (y - rect.top)),
  });
  switch (held.kind) {
    case 'move': {
      const those = new Set(held.moving);
      const moving = pieces.filter(({ id }) => those.has(id));
      const still = pieces.filter(({ id }) => !those.has(id));
      const by = { dxNm: nm(pointer.x - held.x), dyNm: nm(held.y - pointer.y) };
      return { kind: 'move', ...moveToPlace(moving, still, by, reachNm, stepNm) };
    }
    case 'place': {
      const outside =
        pointer.x < rect.left || pointer.x > rect.right || pointer.y < rect.top || pointer.y > rect.bottom;
      if (outside) return null;
      // The pointer holds the piece in its middle.
      const at = point(pointer.x, pointer.y);
      const begin = {
        xNm: at.xNm - Math.round(held.piece.widthNm / 2),
        yNm: at.yNm - Math.round(held.piece.heightNm / 2),
      };
      const carried = { ...begin, widthNm: held.piece.widthNm, heightNm: held.piece.heightNm };
      const { dxNm, dyNm, guides } = moveToPlace([carried], pieces, { dxNm: 0, dyNm: 0 }, reachNm, stepNm);
      return {
        kind: 'place',
        piece: held.piece,
        at: { xNm: begin.xNm + dxNm, yNm: begin.yNm + dyNm },
        guides,
      };
    }
    case 'box': {
      const from = point(held.x, held.y);
      const to = point(pointer.x, pointer.y);
      return {
        kind: 'box',
        box: { ...from, widthNm: to.xNm - from.xNm, heightNm: to.yNm - from.yNm },
      };
    }
    default:
      return null;
  }
}
