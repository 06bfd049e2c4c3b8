// Panels, fillers, joints with their locks, rails and tie holes, drawn from their marks. Sizes of small
// hardware are held in pixels: they are signs, and must be countable at any zoom.
import type { ReactNode } from 'react';
import type { Units } from '../../parts/units.tsx';
import type {
  FillerMark,
  FootMark,
  HoleMark,
  JointMark,
  Mark,
  PanelMark,
  RailMark,
} from './elevation-marks.ts';
import type { RectangleNm } from './design-shapes.ts';
import { type Scale, toPx } from './elevation-view.ts';
import { HookPiece, HookPlacePiece } from './elevation-hook.tsx';

export interface PieceProps<M extends Mark> {
  readonly mark: M;
  readonly scale: Scale;
  readonly units: Units;
  readonly lit: 'lit' | 'dim' | 'plain';
  readonly onPoint: (id: string | null) => void;
  readonly onPin: (id: string) => void;
  readonly hatch: string;
}

export function Piece(props: PieceProps<Mark>): ReactNode {
  const { mark } = props;
  return (
    <g
      className={`piece piece-${mark.kind} ${props.lit}`}
      onPointerEnter={() => props.onPoint(mark.id)}
      onPointerLeave={() => props.onPoint(null)}
      onClick={() => props.onPin(mark.id)}
    >
      <title>{markWords(mark, props.units)}</title>
      <PieceBody {...props} />
    </g>
  );
}

function PieceBody(props: PieceProps<Mark>): ReactNode {
  const { mark } = props;
  switch (mark.kind) {
    case 'panel':
      return <PanelPiece {...props} mark={mark} />;
    case 'filler':
      return <FillerPiece {...props} mark={mark} />;
    case 'joint':
      return <JointPiece {...props} mark={mark} />;
    case 'rail':
      return <RailPiece {...props} mark={mark} />;
    case 'hole':
      return <HolePiece {...props} mark={mark} />;
    case 'bracket':
    case 'brace':
      return <FootPiece mark={mark} scale={props.scale} />;
    case 'hook-place':
      return <HookPlacePiece mark={mark} scale={props.scale} />;
    case 'hook':
      return <HookPiece {...props} mark={mark} />;
    default:
      return null;
  }
}

const railUse: Readonly<Record<RailMark['neededFor'], string>> = {
  both: '',
  picking: ', for picking only',
  placing: ', for placing only',
};

/** What a mark is, in a line: its tooltip and what is read aloud when it is stepped to. */
export function markWords(mark: Mark, units: Units): string {
  const at = `${units.length(mark.xNm)} along, ${units.length(mark.yNm)} up`;
  switch (mark.kind) {
    case 'panel':
      return `${mark.panel} ${mark.onSide ? 'on its side' : 'upright'}, ${at}`;
    case 'filler':
      return `filler ${units.length(mark.widthNm)} × ${units.length(mark.heightNm)}, ${at}`;
    case 'joint': {
      const what =
        mark.spanNm > 0 ? 'filler joint' : mark.direction === 'level' ? 'level joint' : 'upright joint';
      return `${what} ${units.length(mark.lengthNm)}, ${mark.locks.length} ${
        mark.spanNm > 0 ? 'adjustable locks' : 'locks'
      }, ${at}`;
    }
    case 'rail':
      return `rail ${mark.component} ${mark.direction}${railUse[mark.neededFor]}, ${units.length(mark.lengthNm)}, ${mark.bolts} bolts, ${at}`;
    case 'hole':
      return `tie hole, ${at}`;
    case 'hook-place':
      return `place where a hook may stand, ${at}`;
    case 'bracket':
      return `walkway bracket, ${units.length(mark.xNm)} along`;
    case 'brace':
      return `brace with its shoe, ${units.length(mark.xNm)} along`;
    case 'hook':
      return `lifting hook, ${units.weight(mark.loadGrams)}, ${units.length(mark.xNm)} along`;
    default:
      return '';
  }
}

/** A mark's rectangle in pixels. */
export function box(
  scale: Scale,
  mark: RectangleNm,
): { x: number; y: number; width: number; height: number } {
  const { x, y } = toPx(scale, { xNm: mark.xNm, yNm: mark.yNm + mark.heightNm });
  return { x, y, width: mark.widthNm * scale.pxPerNm, height: mark.heightNm * scale.pxPerNm };
}

function PanelPiece(props: PieceProps<PanelMark>): ReactNode {
  const { mark } = props;
  const { x, y, width, height } = box(props.scale, mark);
  return (
    <>
      <rect className="panel-face" x={x} y={y} width={width} height={height} />
      {mark.onSide && width > 24 && height > 14 ? (
        <rect className="panel-on-side" x={x + 3} y={y + 3} width={width - 6} height={height - 6} />
      ) : null}
    </>
  );
}

function FillerPiece(props: PieceProps<FillerMark>): ReactNode {
  const { x, y, width, height } = box(props.scale, props.mark);
  return (
    <>
      <rect className="filler-ground" x={x} y={y} width={width} height={height} />
      <rect
        className="filler-hatch"
        x={x}
        y={y}
        width={width}
        height={height}
        fill={`url(#${props.hatch})`}
      />
    </>
  );
}

function JointPiece(props: PieceProps<JointMark>): ReactNode {
  const { mark, scale } = props;
  const upright = mark.direction === 'upright';
  const start = toPx(scale, mark);
  const length = mark.lengthNm * scale.pxPerNm;
  const span = mark.spanNm * scale.pxPerNm;
  const end = upright ? { x: start.x, y: start.y - length } : { x: start.x + length, y: start.y };
  // A lock reaches some 5 in over both panels; never smaller than a mark that can be counted.
  const half = Math.min(11, Math.max(6, 127_000_000 * scale.pxPerNm)) + span / 2;
  const thick = 4.5;
  return (
    <>
      {/* A wide line without ink, so that a joint can be pointed at. */}
      <line className="joint-reach" x1={start.x} y1={start.y} x2={end.x} y2={end.y} />
      {span === 0 ? <line className="joint-line" x1={start.x} y1={start.y} x2={end.x} y2={end.y} /> : null}
      {mark.locks.map((lock) => {
        const { x, y } = toPx(scale, lock);
        const [width, height] = upright ? [2 * half, thick] : [thick, 2 * half];
        return (
          <g key={`${lock.xNm} ${lock.yNm}`} className={span === 0 ? 'lock' : 'lock lock-adjustable'}>
            <rect x={x - width / 2} y={y - height / 2} width={width} height={height} />
            {span === 0 ? null : (
              <path
                d={
                  upright
                    ? `M${x - half} ${y - 5}v10M${x + half} ${y - 5}v10`
                    : `M${x - 5} ${y - half}h10M${x - 5} ${y + half}h10`
                }
              />
            )}
          </g>
        );
      })}
    </>
  );
}

function RailPiece(props: PieceProps<RailMark>): ReactNode {
  const { mark, scale } = props;
  const { x, y } = toPx(scale, mark);
  const length = mark.lengthNm * scale.pxPerNm;
  const upright = mark.direction === 'upright';
  const wide = 7;
  const shape = upright
    ? { x: x - wide / 2, y: y - length, width: wide, height: length }
    : { x, y: y - wide / 2, width: length, height: wide };
  return (
    <>
      <rect
        className={mark.neededFor === 'placing' ? 'rail-placing' : `rail rail-${mark.neededFor}`}
        {...shape}
        fill={mark.neededFor === 'placing' ? `url(#${props.hatch})` : undefined}
      />
      {mark.boltPlaces.map((place) => {
        const at = toPx(scale, place);
        return <circle key={`${place.xNm} ${place.yNm}`} className="rail-bolt" cx={at.x} cy={at.y} r={2.2} />;
      })}
    </>
  );
}

/** Brackets as a shelf on its prop over the top edge, braces as a prop on its shoe under the foot. */
export function FootPiece(props: { readonly mark: FootMark; readonly scale: Scale }): ReactNode {
  const { x, y } = toPx(props.scale, props.mark);
  return props.mark.kind === 'bracket' ? (
    <path
      className="foot-sign"
      d={`M${x - 8} ${y + 15}h16M${x} ${y + 28}V${y + 15}M${x} ${y + 26}l7 -11M${x} ${y + 26}l-7 -11`}
    />
  ) : (
    <path
      className="foot-sign"
      d={`M${x} ${y - 16}V${y + 4}M${x - 4} ${y - 8}h8M${x - 7} ${y + 4}h14v4h-14Z`}
    />
  );
}

function HolePiece(props: PieceProps<HoleMark>): ReactNode {
  const { x, y } = toPx(props.scale, props.mark);
  return (
    <>
      <circle className="hole" cx={x} cy={y} r={3} />
      <path className="hole-cross" d={`M${x - 5} ${y}h10M${x} ${y - 5}v10`} />
    </>
  );
}
