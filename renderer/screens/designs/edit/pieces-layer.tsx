// Panels and fillers of an open design, drawn from the design itself and not from an answer of the core, so
// that they are there at once.
import { memo, type ReactNode } from 'react';
import type { Units } from '../../../parts/units.tsx';
import { box } from '../elevation-pieces.tsx';
import type { Scale } from '../elevation-view.ts';
import type { BoxPx } from '../label-place.ts';
import { panelLabel } from '../panel-label.ts';
import { sizeWords } from '../size-words.ts';
import type { DraftPiece } from './draft-pieces.ts';
import type { PieceId } from './editor-state.ts';

export const PiecesLayer = memo(function PiecesLayer(props: {
  readonly pieces: readonly DraftPiece[];
  readonly chosen: ReadonlySet<PieceId>;
  /** Being dragged: only their places are left. */
  readonly away: ReadonlySet<PieceId>;
  readonly scale: Scale;
  readonly hatch: string;
}): ReactNode {
  const { pieces, chosen, away, scale, hatch } = props;
  // What is chosen lies over its neighbours, so that it is what the pointer takes.
  const order = pieces.toSorted((one, other) => Number(chosen.has(one.id)) - Number(chosen.has(other.id)));
  return order.map((piece) => (
    <PieceFace
      key={piece.id}
      piece={piece}
      scale={scale}
      hatch={hatch}
      state={away.has(piece.id) ? 'away' : chosen.has(piece.id) ? 'chosen' : 'plain'}
    />
  ));
});

export const PieceFace = memo(function PieceFace(props: {
  readonly piece: DraftPiece;
  readonly scale: Scale;
  readonly hatch: string;
  readonly state: 'plain' | 'chosen' | 'away';
}): ReactNode {
  const { piece, state } = props;
  const { x, y, width, height } = box(props.scale, piece);
  const rectangle = { x, y, width, height };
  return (
    <g className={`draft-piece ${state}`} data-piece={piece.id}>
      {piece.panel === null ? (
        <>
          <rect className="filler-ground" {...rectangle} />
          <rect className="filler-hatch" {...rectangle} fill={`url(#${props.hatch})`} />
        </>
      ) : (
        <rect className="panel-face" {...rectangle} />
      )}
      {piece.onSide && width > 24 && height > 14 ? (
        <rect className="panel-on-side" x={x + 3} y={y + 3} width={width - 6} height={height - 6} />
      ) : null}
    </g>
  );
});

/** A heavy edge with marked corners around each chosen piece, over everything that crosses it. */
export function ChosenEdges(props: {
  readonly pieces: readonly DraftPiece[];
  readonly chosen: ReadonlySet<PieceId>;
  readonly scale: Scale;
}): ReactNode {
  return props.pieces
    .filter(({ id }) => props.chosen.has(id))
    .map((piece) => {
      const { x, y, width, height } = box(props.scale, piece);
      const corners = [x, x + width].flatMap((cx) =>
        [y, y + height].map((cy) => `M${cx - 3} ${cy - 3}h6v6h-6Z`),
      );
      return (
        <g key={piece.id} className="chosen-edge">
          <rect x={x} y={y} width={width} height={height} />
          <path d={corners.join('')} />
        </g>
      );
    });
}

/** Codes and sizes, written over everything that crosses the panels. */
export const WordsLayer = memo(function WordsLayer(props: {
  readonly pieces: readonly DraftPiece[];
  readonly away: ReadonlySet<PieceId>;
  readonly scale: Scale;
  readonly units: Units;
  readonly inTheWay: readonly BoxPx[];
}): ReactNode {
  const { scale, units } = props;
  return props.pieces.map((piece) => {
    if (piece.panel === null || props.away.has(piece.id)) return null;
    const face = box(scale, piece);
    const size = sizeWords(piece.widthNm, piece.heightNm, units.system);
    const near = props.inTheWay.filter(
      (one) =>
        one.x < face.x + face.width &&
        one.x + one.width > face.x &&
        one.y < face.y + face.height &&
        one.y + one.height > face.y,
    );
    const words = piece.onSide ? `${piece.panel} on its side` : piece.panel;
    const label = panelLabel(face, words, size, near) ?? panelLabel(face, piece.panel, size, []);
    if (label === undefined) return null;
    const two = label.lines.length > 1;
    return (
      <g
        key={piece.id}
        className="panel-words"
        transform={label.turned ? `rotate(-90 ${label.x} ${label.y})` : undefined}
        textAnchor="middle"
      >
        <text className="panel-code" x={label.x} y={label.y + (two ? -3 : 4)}>
          {label.lines[0]}
        </text>
        {two ? (
          <text className="panel-size" x={label.x} y={label.y + 11}>
            {label.lines[1]}
          </text>
        ) : null}
      </g>
    );
  });
});
