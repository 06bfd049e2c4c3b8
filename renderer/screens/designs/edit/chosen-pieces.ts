// The chosen pieces as the edits of a design take them, what is copied of them, and where new ones come to stand.
import type { DesignGeometry } from '../../../../core/gang/design.ts';
import type { Selection } from '../../../../core/gang/edit-design.ts';
import type { PointNm, RectangleNm } from '../design-shapes.ts';
import { around, type DraftPiece } from './draft-pieces.ts';
import { type PieceId, pieceOf } from './editor-state.ts';

export function selectionOf(ids: readonly PieceId[]): Selection {
  const pieces = ids.map(pieceOf);
  const of = (wanted: 'panel' | 'filler'): number[] =>
    pieces.filter(({ kind }) => kind === wanted).map(({ index }) => index);
  return { panels: of('panel'), fillers: of('filler') };
}

export function idsOf({ panels, fillers }: Selection): readonly PieceId[] {
  return [
    ...panels.map((index): PieceId => `panel-${index}`),
    ...fillers.map((index): PieceId => `filler-${index}`),
  ];
}

/** Pieces taken along to be put down again, also after the ones they were copied from are gone. */
export type Copied = Pick<DesignGeometry, 'panels' | 'fillers'>;

export function copied(geometry: DesignGeometry, ids: readonly PieceId[]): Copied {
  const { panels, fillers } = selectionOf(ids);
  return {
    panels: geometry.panels.filter((_, index) => panels.includes(index)),
    fillers: geometry.fillers.filter((_, index) => fillers.includes(index)),
  };
}

/** The copied pieces put down `by` further on, and their ids. */
export function putDown(
  geometry: DesignGeometry,
  pieces: Copied,
  by: PointNm,
): { readonly geometry: DesignGeometry; readonly chosen: readonly PieceId[] } {
  const move = <T extends PointNm>(piece: T): T => ({
    ...piece,
    xNm: piece.xNm + by.xNm,
    yNm: piece.yNm + by.yNm,
  });
  const { panels, fillers } = geometry;
  return {
    geometry: {
      ...geometry,
      panels: [...panels, ...pieces.panels.map(move)],
      fillers: [...fillers, ...pieces.fillers.map(move)],
    },
    chosen: idsOf({
      panels: pieces.panels.map((_, index) => panels.length + index),
      fillers: pieces.fillers.map((_, index) => fillers.length + index),
    }),
  };
}

/** Where a piece pressed in the tray comes to stand: beside what is chosen, else at the end of the lowest row. */
export function besideChosen(pieces: readonly DraftPiece[], chosen: readonly PieceId[]): PointNm {
  const room = around(pieces.filter(({ id }) => chosen.includes(id)));
  if (room !== undefined) return { xNm: rightOf(room), yNm: room.yNm };
  const whole = around(pieces);
  if (whole === undefined) return { xNm: 0, yNm: 0 };
  const lowest = pieces.filter(({ yNm }) => yNm === whole.yNm);
  return { xNm: Math.max(...lowest.map(rightOf)), yNm: whole.yNm };
}

function rightOf(piece: RectangleNm): number {
  return piece.xNm + piece.widthNm;
}
