// The elevation of a gang, to scale, seen from the back. Zoom by wheel, buttons or + and -, move by dragging
// or arrows, fit again by 0; Enter steps from piece to piece and says each.
import { type KeyboardEvent, type ReactNode, useEffect, useId, useMemo, useState } from 'react';
import { useUnits } from '../../parts/units.tsx';
import type { DesignDetail } from './design-shapes.ts';
import { dimensionChains } from './dimension-chains.ts';
import { Dimensions } from './elevation-dimensions.tsx';
import { CentreOfGravity } from './elevation-hook.tsx';
import { EdgeNames, ScaleBar } from './elevation-frame.tsx';
import type { Mark } from './elevation-marks.ts';
import { markWords, Piece } from './elevation-pieces.tsx';
import { PanelWords } from './panel-words.tsx';
import type { BoxPx } from './label-place.ts';
import {
  fit,
  fitted,
  type Scale,
  seen,
  toPx,
  type View,
  viewByKey,
  zoomAt,
  zoomStep,
} from './elevation-view.ts';
import { Pins } from './finding-pin.tsx';
import { type NumberedFinding, pins } from './finding-pins.ts';
import type { Lit, Pointed } from './lit.ts';
import { useDragging } from './use-dragging.ts';
import { useSize } from './use-size.ts';

const margins = { leftPx: 96, rightPx: 76, topPx: 64, bottomPx: 92 };

export function Elevation(props: {
  readonly design: DesignDetail;
  readonly marks: readonly Mark[];
  readonly findings: readonly NumberedFinding[];
  readonly lit: Lit;
  readonly onPoint: (pointed: Pointed | null) => void;
  readonly onPin: (pointed: Pointed | null) => void;
}): ReactNode {
  const { design, marks, lit, onPoint, onPin } = props;
  const { summary } = design;
  const units = useUnits();
  const hatch = useId();
  const keysId = useId();
  const [frameRef, frame] = useSize<HTMLDivElement>();
  const [view, setView] = useState<View>(fitted);
  const [stepped, setStepped] = useState(-1);
  const dragging = useDragging(setView);
  const chains = useMemo(() => dimensionChains([...design.panels, ...design.fillers]), [design]);
  const scale = seen(fit(summary, frame, margins), view);
  useWheel(frameRef, setView);
  const inTheWay = [...marks, { kind: 'centre' as const, ...design.centreOfGravity }].flatMap((mark) =>
    boxInTheWay(mark, scale),
  );

  const step = (by: 1 | -1): void => {
    const next = (stepped + by + marks.length) % Math.max(1, marks.length);
    const mark = marks[next];
    setStepped(next);
    if (mark !== undefined) onPin({ kind: 'mark', id: mark.id });
  };
  const pressed = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = viewByKey(view, event.key, frame);
    if (next !== undefined) setView(next);
    else if (event.key === 'Enter') step(event.shiftKey ? -1 : 1);
    else if (event.key === 'Escape') {
      setStepped(-1);
      onPin(null);
    } else return;
    event.preventDefault();
  };
  const zoom = (factor: number): void =>
    setView((old) => zoomAt(old, factor, frame.widthPx / 2, frame.heightPx / 2));
  const said = marks[stepped];
  const centre = `centre of gravity of the panels: ${units.length(design.centreOfGravity.xNm)} along, ${units.length(
    design.centreOfGravity.yNm,
  )} up`;

  return (
    <figure className="elevation">
      {/* The role says that the drawing takes keys of its own; the rule does not count it as interactive. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
      <div
        className="elevation-frame"
        ref={frameRef}
        role="application"
        aria-label={`Elevation of ${summary.code} seen from the back, ${units.length(summary.widthNm)} long, ${units.length(
          summary.heightNm,
        )} high, ${design.panels.length} panels; ${centre}`}
        aria-describedby={keysId}
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- as above
        tabIndex={0}
        onKeyDown={pressed}
        {...dragging.handlers}
        onClick={(event) => {
          // On the paper beside the pieces: nothing is pointed at any more.
          if (event.target instanceof SVGSVGElement && !dragging.dragged()) onPin(null);
        }}
      >
        {frame.widthPx === 0 ? null : (
          <svg width={frame.widthPx} height={frame.heightPx} aria-hidden="true">
            <defs>
              <pattern
                id={hatch}
                width="6"
                height="6"
                patternUnits="userSpaceOnUse"
                patternTransform="rotate(45)"
              >
                <line className="hatch-line" x1="0" y1="0" x2="0" y2="6" />
              </pattern>
            </defs>
            {chains === undefined ? null : <Dimensions chains={chains} scale={scale} units={units} />}
            <EdgeNames design={design} scale={scale} />
            <g className={lit.marks === null ? 'pieces' : 'pieces some-lit'}>
              {marks.map((mark) => (
                <Piece
                  key={mark.id}
                  mark={mark}
                  scale={scale}
                  units={units}
                  hatch={hatch}
                  lit={lit.marks === null ? 'plain' : lit.marks.has(mark.id) ? 'lit' : 'dim'}
                  onPoint={(id) => onPoint(id === null ? null : { kind: 'mark', id })}
                  onPin={(id) => {
                    if (!dragging.dragged()) onPin({ kind: 'mark', id });
                  }}
                />
              ))}
              {marks.map((mark) =>
                mark.kind === 'panel' ? (
                  <PanelWords
                    key={mark.id}
                    mark={mark}
                    scale={scale}
                    units={units}
                    lit={lit.marks?.has(mark.id) === true}
                    inTheWay={inTheWay}
                  />
                ) : null,
              )}
            </g>
            <CentreOfGravity at={design.centreOfGravity} scale={scale} words={centre} />
            <Pins
              pins={pins(props.findings)}
              scale={scale}
              lit={lit.finding}
              onPoint={(number) => onPoint(number === null ? null : { kind: 'finding', number })}
            />
          </svg>
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
        <button type="button" onClick={() => setView(fitted)}>
          Fit
        </button>
      </div>
      <p id={keysId} className="visually-hidden">
        Plus and minus zoom, arrows move, 0 fits, Enter goes from piece to piece, Escape leaves the piece.
      </p>
      <output className="visually-hidden">{said === undefined ? '' : markWords(said, units)}</output>
    </figure>
  );
}

/** What words on a panel must not hide: holes, level rails, the centre of gravity. */
function boxInTheWay(
  mark: Mark | (DesignDetail['centreOfGravity'] & { readonly kind: 'centre' }),
  scale: Scale,
): readonly BoxPx[] {
  const { x, y } = toPx(scale, mark);
  if (mark.kind === 'centre') return [{ x: x - 10, y: y - 10, width: 20, height: 20 }];
  if (mark.kind === 'hole') return [{ x: x - 6, y: y - 6, width: 12, height: 12 }];
  if (mark.kind !== 'rail' || mark.direction === 'upright') return [];
  return [{ x, y: y - 6, width: mark.lengthNm * scale.pxPerNm, height: 12 }];
}

/** The wheel zooms about the pointer. Listened to by hand, as the page must not scroll meanwhile. */
function useWheel(
  ref: { readonly current: HTMLElement | null },
  setView: (change: (view: View) => View) => void,
): void {
  useEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const turned = (event: WheelEvent): void => {
      event.preventDefault();
      const at = element.getBoundingClientRect();
      const factor = Math.exp(-event.deltaY * 0.0015);
      setView((old) => zoomAt(old, factor, event.clientX - at.left, event.clientY - at.top));
    };
    element.addEventListener('wheel', turned, { passive: false });
    return () => element.removeEventListener('wheel', turned);
  }, [ref, setView]);
}
