// The panels and fillers of a design as they are being edited, each as a rectangle: drawn at once, without
// waiting for the take-off.
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import type { RectangleNm } from '../design-shapes.ts';
import type { PieceId } from './editor-state.ts';

export interface PanelSize {
  readonly widthNm: number;
  readonly heightNm: number;
}

/** By code: the panels of a system. */
export type PanelSizes = ReadonlyMap<string, PanelSize>;

export interface DraftPiece extends RectangleNm {
  readonly id: PieceId;
  /** Code of a panel; null for a filler. */
  readonly panel: string | null;
  readonly onSide: boolean;
}

/** Panels of an unknown code are left out: the take-off refuses them by name. */
export function draftPieces(geometry: DesignGeometry, sizes: PanelSizes): readonly DraftPiece[] {
  return [
    ...geometry.panels.flatMap(({ panel, xNm, yNm, onSide }, index): DraftPiece[] => {
      const size = sizes.get(panel);
      if (size === undefined) return [];
      const [widthNm, heightNm] = onSide ? [size.heightNm, size.widthNm] : [size.widthNm, size.heightNm];
      return [{ id: `panel-${index}`, panel, onSide, xNm, yNm, widthNm, heightNm }];
    }),
    ...geometry.fillers.map((filler, index): DraftPiece => ({
      id: `filler-${index}`,
      panel: null,
      onSide: false,
      ...filler,
    })),
  ];
}

/** The rectangle around all of them; undefined where there are none. */
export function around(pieces: readonly RectangleNm[]): RectangleNm | undefined {
  if (pieces.length === 0) return undefined;
  const xNm = Math.min(...pieces.map((piece) => piece.xNm));
  const yNm = Math.min(...pieces.map((piece) => piece.yNm));
  return {
    xNm,
    yNm,
    widthNm: Math.max(...pieces.map((piece) => piece.xNm + piece.widthNm)) - xNm,
    heightNm: Math.max(...pieces.map((piece) => piece.yNm + piece.heightNm)) - yNm,
  };
}

/** Pieces that a box reaches into, in either direction of drawing it. */
export function within(pieces: readonly DraftPiece[], box: RectangleNm): readonly PieceId[] {
  const [left, right] = [Math.min(box.xNm, box.xNm + box.widthNm), Math.max(box.xNm, box.xNm + box.widthNm)];
  const [low, high] = [Math.min(box.yNm, box.yNm + box.heightNm), Math.max(box.yNm, box.yNm + box.heightNm)];
  return pieces
    .filter(
      (piece) =>
        piece.xNm < right &&
        piece.xNm + piece.widthNm > left &&
        piece.yNm < high &&
        piece.yNm + piece.heightNm > low,
    )
    .map(({ id }) => id);
}

/** Pieces as they are read: rows from the bottom, each from the left. */
export function inReadingOrder(pieces: readonly DraftPiece[]): readonly DraftPiece[] {
  return pieces.toSorted((one, other) => one.yNm - other.yNm || one.xNm - other.xNm);
}

/** The piece after (or before) the last chosen one in reading order, around the end; undefined without pieces. */
export function nextPiece(
  pieces: readonly DraftPiece[],
  chosen: readonly PieceId[],
  by: 1 | -1,
): PieceId | undefined {
  const order = inReadingOrder(pieces);
  const at = order.findIndex(({ id }) => id === chosen.at(-1));
  const next = at < 0 ? (by === 1 ? 0 : order.length - 1) : (at + by + order.length) % order.length;
  return order[next]?.id;
}
