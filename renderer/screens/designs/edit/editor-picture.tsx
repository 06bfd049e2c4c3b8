// The drawing of an open design: pieces from the design as it is now, hardware and findings from the last
// answer of the core. Drawn anew when one of them changes, and not while something is dragged over it.
import { memo, type ReactNode, useMemo } from 'react';
import type { Units } from '../../../parts/units.tsx';
import type { ShownTakeOff } from '../design-shapes.ts';
import { dimensionChains } from '../dimension-chains.ts';
import { Dimensions } from '../elevation-dimensions.tsx';
import { EdgeNames } from '../elevation-frame.tsx';
import { CentreOfGravity, HookPiece, HookPlacePiece } from '../elevation-hook.tsx';
import { elevationMarks, type Mark } from '../elevation-marks.ts';
import { FootPiece } from '../elevation-pieces.tsx';
import { boxInTheWay } from '../elevation-picture.tsx';
import type { Scale } from '../elevation-view.ts';
import { Pins } from '../finding-pin.tsx';
import { type NumberedFinding, pins } from '../finding-pins.ts';
import { type Layer, layerOf } from '../layers.ts';
import type { DraftPiece } from './draft-pieces.ts';
import type { PieceId } from './editor-state.ts';
import { HardwareLayer } from './hardware-layer.tsx';
import { ChosenEdges, PiecesLayer, WordsLayer } from './pieces-layer.tsx';
import type { TakenOff } from './use-taken-off.ts';

export interface EditorPictureProps {
  readonly pieces: readonly DraftPiece[];
  readonly chosen: ReadonlySet<PieceId>;
  readonly away: ReadonlySet<PieceId>;
  readonly takenOff: TakenOff | undefined;
  readonly edges: ShownTakeOff['edges'];
  readonly scale: Scale;
  readonly units: Units;
  readonly hatch: string;
  readonly hidden: ReadonlySet<Layer>;
}

const noMarks: readonly Mark[] = [];

export const EditorPicture = memo(function EditorPicture(props: EditorPictureProps): ReactNode {
  const { pieces, chosen, away, takenOff, scale, units, hatch, hidden } = props;
  const chains = useMemo(() => dimensionChains(pieces), [pieces]);
  const marks = useMemo(() => (takenOff === undefined ? noMarks : elevationMarks(takenOff)), [takenOff]);
  const answered = useMemo(() => cornerScale(scale, takenOff), [scale, takenOff]);
  const inTheWay = useMemo(
    () => (hidden.has('holes') ? [] : marks.flatMap((mark) => boxInTheWay(mark, answered))),
    [marks, answered, hidden],
  );
  return (
    <>
      {chains === undefined || hidden.has('dimensions') ? null : (
        <Dimensions chains={chains} scale={scale} units={units} />
      )}
      <PiecesLayer pieces={pieces} chosen={chosen} away={away} scale={scale} hatch={hatch} />
      <HardwareLayer marks={marks} scale={answered} hidden={hidden} hatch={hatch} />
      {hidden.has('words') ? null : (
        <WordsLayer pieces={pieces} away={away} scale={scale} units={units} inTheWay={inTheWay} />
      )}
      {away.size > 0 ? null : <ChosenEdges pieces={pieces} chosen={chosen} scale={scale} />}
      {takenOff === undefined ? null : (
        <>
          <EdgeNames
            edges={props.edges}
            widthNm={takenOff.widthNm}
            heightNm={takenOff.heightNm}
            scale={answered}
          />
          <g className="signs">{marks.map((mark) => sign(mark, answered, units, hidden))}</g>
          {hidden.has('centre') ? null : (
            <CentreOfGravity at={takenOff.centreOfGravity} scale={answered} words="centre of gravity" />
          )}
        </>
      )}
    </>
  );
});

/** Hooks, their free places, brackets and braces; each is there while its layer is. */
function sign(mark: Mark, scale: Scale, units: Units, hidden: ReadonlySet<Layer>): ReactNode {
  const layer = layerOf(mark.kind);
  if (layer !== null && hidden.has(layer)) return null;
  if (mark.kind === 'hook') return <HookPiece key={mark.id} mark={mark} scale={scale} units={units} />;
  if (mark.kind === 'hook-place') return <HookPlacePiece key={mark.id} mark={mark} scale={scale} />;
  if (mark.kind === 'bracket' || mark.kind === 'brace')
    return <FootPiece key={mark.id} mark={mark} scale={scale} />;
  return null;
}

/** The scale of places that are told from the gang's lower left corner as it was when it was taken off. */
function cornerScale(scale: Scale, takenOff: TakenOff | undefined): Scale {
  if (takenOff === undefined) return scale;
  const { xNm, yNm } = takenOff.origin;
  return {
    pxPerNm: scale.pxPerNm,
    leftPx: scale.leftPx + xNm * scale.pxPerNm,
    bottomPx: scale.bottomPx - yNm * scale.pxPerNm,
  };
}

/** Findings at their places; they light with their lines in the list. */
export const FindingPins = memo(function FindingPins(props: {
  readonly findings: readonly NumberedFinding[];
  readonly takenOff: TakenOff;
  readonly scale: Scale;
  readonly lit: number | null;
  readonly onPoint: (number: number | null) => void;
}): ReactNode {
  const { findings, takenOff, scale } = props;
  const placed = useMemo(() => pins(findings), [findings]);
  return <Pins pins={placed} scale={cornerScale(scale, takenOff)} lit={props.lit} onPoint={props.onPoint} />;
});
