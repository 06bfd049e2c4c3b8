// What is being dragged, and the guide lines of the edges that it has come to: the only part of the drawing
// that is drawn anew while the pointer moves.
import type { ReactNode } from 'react';
import type { Guide } from '../../../../core/gang/snap.ts';
import type { Units } from '../../../parts/units.tsx';
import { box } from '../elevation-pieces.tsx';
import { type Frame, type Scale, toPx } from '../elevation-view.ts';
import type { DraftPiece } from './draft-pieces.ts';
import type { PieceId } from './editor-state.ts';
import { ChosenEdges, PieceFace } from './pieces-layer.tsx';
import type { Gesture } from './gesture.ts';

export function GestureLayer(props: {
  readonly gesture: Gesture | null;
  readonly pieces: readonly DraftPiece[];
  readonly chosen: ReadonlySet<PieceId>;
  readonly scale: Scale;
  readonly frame: Frame;
  readonly units: Units;
  readonly hatch: string;
}): ReactNode {
  const { gesture, scale, frame } = props;
  if (gesture === null) return null;
  switch (gesture.kind) {
    case 'move': {
      const moving = props.pieces.filter(({ id }) => props.chosen.has(id));
      const [dx, dy] = [gesture.dxNm * scale.pxPerNm, -gesture.dyNm * scale.pxPerNm];
      return (
        <g className="dragging">
          <Guides guides={gesture.guides} scale={scale} frame={frame} />
          <g transform={`translate(${dx} ${dy})`}>
            {moving.map((piece) => (
              <PieceFace key={piece.id} piece={piece} scale={scale} hatch={props.hatch} state="chosen" />
            ))}
            <ChosenEdges pieces={moving} chosen={props.chosen} scale={scale} />
          </g>
          <Where {...props} moving={moving} dxNm={gesture.dxNm} dyNm={gesture.dyNm} />
        </g>
      );
    }
    case 'place': {
      const piece: DraftPiece = { id: 'panel-0', onSide: false, ...gesture.piece, ...gesture.at };
      return (
        <g className="dragging">
          <Guides guides={gesture.guides} scale={scale} frame={frame} />
          <PieceFace piece={piece} scale={scale} hatch={props.hatch} state="chosen" />
          <Where {...props} moving={[piece]} dxNm={0} dyNm={0} />
        </g>
      );
    }
    case 'box': {
      const { xNm, yNm, widthNm, heightNm } = gesture.box;
      const whole = {
        xNm: Math.min(xNm, xNm + widthNm),
        yNm: Math.min(yNm, yNm + heightNm),
        widthNm: Math.abs(widthNm),
        heightNm: Math.abs(heightNm),
      };
      return <rect className="choosing-box" {...box(scale, whole)} />;
    }
    default:
      return null;
  }
}

function Guides(props: {
  readonly guides: readonly Guide[];
  readonly scale: Scale;
  readonly frame: Frame;
}): ReactNode {
  return props.guides.map((guide) => {
    const at = toPx(props.scale, { xNm: guide.atNm, yNm: guide.atNm });
    return (
      <path
        key={`${guide.direction} ${guide.atNm}`}
        className="guide"
        d={
          guide.direction === 'upright'
            ? `M${at.x} 0V${props.frame.heightPx}`
            : `M0 ${at.y}H${props.frame.widthPx}`
        }
      />
    );
  });
}

/** Where the lower left corner of what is dragged would come to stand. */
function Where(props: {
  readonly moving: readonly DraftPiece[];
  readonly dxNm: number;
  readonly dyNm: number;
  readonly scale: Scale;
  readonly units: Units;
}): ReactNode {
  const first = props.moving[0];
  if (first === undefined) return null;
  const at = { xNm: first.xNm + props.dxNm, yNm: first.yNm + props.dyNm };
  const { x, y } = toPx(props.scale, at);
  return (
    <text className="dragging-words" x={x} y={y + 16}>
      {props.units.length(at.xNm)} along, {props.units.length(at.yNm)} up
    </text>
  );
}
