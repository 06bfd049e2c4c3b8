// What is chosen, in words: read aloud when it changes and written over the tools.
import type { Units } from '../../../parts/units.tsx';
import type { DraftPiece } from './draft-pieces.ts';
import type { PieceId } from './editor-state.ts';

export function pieceName(piece: DraftPiece): string {
  if (piece.panel === null) return 'filler';
  return piece.onSide ? `${piece.panel} on its side` : piece.panel;
}

export function chosenWords(
  pieces: readonly DraftPiece[],
  chosen: readonly PieceId[],
  units: Pick<Units, 'length'>,
): string {
  if (chosen.length > 1) return `${chosen.length} pieces chosen`;
  const piece = pieces.find(({ id }) => id === chosen[0]);
  if (piece === undefined) return '';
  return `${pieceName(piece)}, ${units.length(piece.xNm)} along, ${units.length(piece.yNm)} up`;
}
