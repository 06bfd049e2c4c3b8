// The drawing itself: dimensions at the back, then pieces, the words on panels, the centre of gravity, pins.
import { type ReactNode, useId, useMemo } from 'react';
import type { Units } from '../../parts/units.tsx';
import type { ShownTakeOff } from './design-shapes.ts';
import { dimensionChains } from './dimension-chains.ts';
import { Dimensions } from './elevation-dimensions.tsx';
import { EdgeNames } from './elevation-frame.tsx';
import { CentreOfGravity } from './elevation-hook.tsx';
import type { Mark } from './elevation-marks.ts';
import { Piece } from './elevation-pieces.tsx';
import { type Frame, type Scale, toPx } from './elevation-view.ts';
import { Pins } from './finding-pin.tsx';
import { type NumberedFinding, pins } from './finding-pins.ts';
import type { BoxPx } from './label-place.ts';
import { type Layer, layerOf, useHiddenLayers } from './layers.ts';
import type { Lit, Pointed } from './lit.ts';
import { PanelWords } from './panel-words.tsx';

export interface PictureProps {
  readonly design: ShownTakeOff;
  readonly marks: readonly Mark[];
  readonly findings: readonly NumberedFinding[];
  readonly lit: Lit;
  readonly onPoint: (pointed: Pointed | null) => void;
  readonly onPin: (pointed: Pointed | null) => void;
}

export function ElevationPicture(
  props: PictureProps & {
    readonly frame: Frame;
    readonly scale: Scale;
    readonly units: Units;
    readonly centreWords: string;
  },
): ReactNode {
  const { design, marks, lit, onPoint, onPin, frame, scale, units } = props;
  const hatch = useId();
  const hidden = useHiddenLayers();
  const chains = useMemo(() => dimensionChains([...design.panels, ...design.fillers]), [design]);
  const inTheWay = [...marks, { kind: 'centre' as const, ...design.centreOfGravity }].flatMap((mark) =>
    boxInTheWay(mark, scale),
  );
  const parts = { scale, units };
  return (
    <svg width={frame.widthPx} height={frame.heightPx} aria-hidden="true">
      <Hatch id={hatch} />
      {chains === undefined || hidden.has('dimensions') ? null : <Dimensions chains={chains} {...parts} />}
      <EdgeNames edges={design.edges} widthNm={design.widthNm} heightNm={design.heightNm} scale={scale} />
      <g className={lit.marks === null ? 'pieces' : 'pieces some-lit'}>
        {marks
          .filter((mark) => isShown(mark, hidden))
          .map((mark) => (
            <Piece
              key={mark.id}
              mark={mark}
              hatch={hatch}
              lit={lit.marks === null ? 'plain' : lit.marks.has(mark.id) ? 'lit' : 'dim'}
              onPoint={(id) => onPoint(id === null ? null : { kind: 'mark', id })}
              onPin={(id) => onPin({ kind: 'mark', id })}
              {...parts}
            />
          ))}
        {marks.map((mark) =>
          mark.kind === 'panel' && !hidden.has('words') ? (
            <PanelWords
              key={mark.id}
              mark={mark}
              lit={lit.marks?.has(mark.id) === true}
              inTheWay={inTheWay}
              {...parts}
            />
          ) : null,
        )}
      </g>
      {hidden.has('centre') ? null : (
        <CentreOfGravity at={design.centreOfGravity} scale={scale} words={props.centreWords} />
      )}
      {hidden.has('findings') ? null : (
        <Pins
          pins={pins(props.findings)}
          scale={scale}
          lit={lit.finding}
          onPoint={(number) => onPoint(number === null ? null : { kind: 'finding', number })}
        />
      )}
    </svg>
  );
}

function isShown(mark: Mark, hidden: ReadonlySet<Layer>): boolean {
  const layer = layerOf(mark.kind);
  return layer === null || !hidden.has(layer);
}

export function Hatch(props: { readonly id: string }): ReactNode {
  return (
    <defs>
      <pattern id={props.id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className="hatch-line" x1="0" y1="0" x2="0" y2="6" />
      </pattern>
    </defs>
  );
}

/** What words on a panel must not hide: holes, level rails, the centre of gravity. */
export function boxInTheWay(
  mark: Mark | (ShownTakeOff['centreOfGravity'] & { readonly kind: 'centre' }),
  scale: Scale,
): readonly BoxPx[] {
  const { x, y } = toPx(scale, mark);
  if (mark.kind === 'centre') return [{ x: x - 10, y: y - 10, width: 20, height: 20 }];
  if (mark.kind === 'hole') return [{ x: x - 6, y: y - 6, width: 12, height: 12 }];
  if (mark.kind !== 'rail' || mark.direction === 'upright') return [];
  return [{ x, y: y - 6, width: mark.lengthNm * scale.pxPerNm, height: 12 }];
}
