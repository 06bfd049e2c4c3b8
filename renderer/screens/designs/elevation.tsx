// The elevation of a gang, to scale, seen from the back. Zoom by wheel, buttons or + and -, move by dragging
// or arrows, fit again by 0; Enter steps from piece to piece and says each.
import { type ReactNode, useId } from 'react';
import { paperWidthPx } from '../../parts/printing.ts';
import { useUnits } from '../../parts/units.tsx';
import { ScaleBar } from './elevation-frame.tsx';
import { ElevationPicture, type PictureProps } from './elevation-picture.tsx';
import { markWords } from './elevation-pieces.tsx';
import { fit, seen, zoomStep } from './elevation-view.ts';
import type { Pointed } from './lit.ts';
import { useElevationView } from './use-elevation-view.ts';
import { useSize } from './use-size.ts';

const margins = { leftPx: 96, rightPx: 76, topPx: 64, bottomPx: 92 };
/** The same in style/print.css. */
const onPaper = { widthPx: paperWidthPx, heightPx: 610 };

export function Elevation(props: PictureProps & { readonly name: string }): ReactNode {
  const { design, marks, onPin } = props;
  const { centreOfGravity } = design;
  const units = useUnits();
  const keysId = useId();
  const [frameRef, frame] = useSize<HTMLDivElement>(onPaper);
  const { view, zoom, fitAgain, pressed, dragging, stepped } = useElevationView(
    frameRef,
    frame,
    marks,
    onPin,
  );
  const scale = seen(fit(design, frame, margins), view);
  // The click that ends a drag points at nothing.
  const pin = (pointed: Pointed | null): void => {
    if (!dragging.dragged()) onPin(pointed);
  };
  const centreWords = `centre of gravity of the panels: ${units.length(centreOfGravity.xNm)} along, ${units.length(
    centreOfGravity.yNm,
  )} up`;
  const size = `${units.length(design.widthNm)} long, ${units.length(design.heightNm)} high`;

  return (
    <figure className="elevation">
      {/* The role says that the drawing takes keys of its own; the rule does not count it as interactive. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
      <div
        className="elevation-frame"
        ref={frameRef}
        role="application"
        aria-label={`Elevation of ${props.name} seen from the back, ${size}, ${design.panels.length} panels; ${centreWords}`}
        aria-describedby={keysId}
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- as above
        tabIndex={0}
        onKeyDown={pressed}
        {...dragging.handlers}
        onClick={(event) => {
          // On the paper beside the pieces: nothing is pointed at any more.
          if (event.target instanceof SVGSVGElement) pin(null);
        }}
      >
        {frame.widthPx === 0 ? null : (
          <ElevationPicture
            {...props}
            onPin={pin}
            frame={frame}
            scale={scale}
            units={units}
            centreWords={centreWords}
          />
        )}
        <ScaleBar pxPerNm={scale.pxPerNm} />
      </div>
      <div className="elevation-tools">
        <button type="button" aria-label="Zoom in" onClick={() => zoom(zoomStep)}>
          +
        </button>
        <button type="button" aria-label="Zoom out" onClick={() => zoom(1 / zoomStep)}>
          −
        </button>
        <button type="button" onClick={fitAgain}>
          Fit
        </button>
      </div>
      <p id={keysId} className="visually-hidden">
        Plus and minus zoom, arrows move, 0 fits, Enter goes from piece to piece, Escape leaves the piece.
      </p>
      <output className="visually-hidden">{stepped === undefined ? '' : markWords(stepped, units)}</output>
    </figure>
  );
}
