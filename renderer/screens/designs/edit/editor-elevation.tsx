// The drawing of an open design with everything that the pointer and the keys do on it.
import { type KeyboardEvent, type ReactNode, useId, useMemo } from 'react';
import { paperWidthPx } from '../../../parts/printing.ts';
import { useUnits } from '../../../parts/units.tsx';
import type { PointNm, RectangleNm, ShownTakeOff } from '../design-shapes.ts';
import { ScaleBar } from '../elevation-frame.tsx';
import { Hatch } from '../elevation-picture.tsx';
import { zoomStep } from '../elevation-view.ts';
import type { NumberedFinding } from '../finding-pins.ts';
import { useHiddenLayers } from '../layers.ts';
import { useSize } from '../use-size.ts';
import { around, type DraftPiece, type PanelSizes, within } from './draft-pieces.ts';
import { EditorPicture, FindingPins } from './editor-picture.tsx';
import { type EditorKey, editorKey } from './editor-keys.ts';
import type { PieceId } from './editor-state.ts';
import { GestureLayer } from './gesture-layer.tsx';
import { chosenWords } from './piece-words.ts';
import { stepNm } from './steps.ts';
import type { TrayPiece } from './gesture.ts';
import { Tray } from './tray.tsx';
import { useGestures } from './use-gestures.ts';
import { useEditorView } from './use-editor-view.ts';
import type { TakenOff } from './use-taken-off.ts';

/** The same in style/print.css. */
const onPaper = { widthPx: paperWidthPx, heightPx: 610 };
const nothingAway: ReadonlySet<PieceId> = new Set();
/** What an empty sheet shows: 12 ft by 8 ft. */
const emptySheet: RectangleNm = { xNm: 0, yNm: 0, widthNm: 3_657_600_000, heightNm: 2_438_400_000 };

export interface EditorElevationProps {
  readonly name: string;
  readonly pieces: readonly DraftPiece[];
  readonly chosen: readonly PieceId[];
  readonly edges: ShownTakeOff['edges'];
  readonly takenOff: TakenOff | undefined;
  readonly behind: boolean;
  readonly findings: readonly NumberedFinding[];
  readonly litFinding: number | null;
  readonly onPointFinding: (number: number | null) => void;
  /** Whether the design is being typed as a row. */
  readonly typed: boolean;
  readonly onChoose: (chosen: readonly PieceId[]) => void;
  readonly onMove: (dxNm: number, dyNm: number) => void;
  readonly onPlace: (piece: TrayPiece, at: PointNm) => void;
  readonly onKey: (key: EditorKey) => void;
  /** What the tray holds, and what is done when a piece of it is pressed. */
  readonly sizes: PanelSizes;
  readonly filler: TrayPiece;
  readonly onPress: (piece: TrayPiece) => void;
}

export function EditorElevation(props: EditorElevationProps): ReactNode {
  const { pieces, chosen, takenOff } = props;
  const units = useUnits();
  const [keysId, hatch] = [useId(), useId()];
  const [frameRef, frame] = useSize<HTMLDivElement>(onPaper);
  const hidden = useHiddenLayers();
  const extent = useMemo(() => around(pieces) ?? emptySheet, [pieces]);
  const view = useEditorView(frameRef, frame, extent, props.typed);
  const { scale } = view;
  const { gesture, down, takeFromTray } = useGestures({
    frameRef,
    scale,
    stepNm: stepNm(units.system),
    pieces,
    chosen,
    onChoose: props.onChoose,
    onMove: props.onMove,
    onPlace: props.onPlace,
    onBox: (box, adds) => props.onChoose([...(adds ? chosen : []), ...within(pieces, box)]),
  });
  const chosenSet = useMemo<ReadonlySet<PieceId>>(() => new Set(chosen), [chosen]);
  const moving = gesture?.kind === 'move';

  const pressed = (event: KeyboardEvent): void => {
    const key = editorKey(event, chosen.length);
    if (key !== undefined) props.onKey(key);
    else if (event.ctrlKey || event.metaKey || event.altKey || !view.key(event.key)) return;
    event.preventDefault();
  };
  const size =
    pieces.length === 0
      ? 'nothing placed yet'
      : `${units.length(extent.widthNm)} long, ${units.length(extent.heightNm)} high, ${pieces.length} pieces`;

  return (
    <div className="editor-drawing">
      <Tray
        sizes={props.sizes}
        filler={props.filler}
        units={units}
        onTake={takeFromTray}
        onPress={props.onPress}
      />
      <figure className="elevation">
        {/* The role says that the drawing takes keys of its own; the rule does not count it as interactive. */}
        {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
        <div
          className={`elevation-frame editing${gesture === null ? '' : ` ${gesture.kind}`}`}
          ref={frameRef}
          role="application"
          aria-label={`Drawing of ${props.name} seen from the back, ${size}`}
          aria-describedby={keysId}
          // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- as above
          tabIndex={0}
          onKeyDown={pressed}
          onPointerDown={(event) => {
            down(event);
            view.panning.handlers.onPointerDown(event);
          }}
          onPointerMove={view.panning.handlers.onPointerMove}
          onPointerUp={view.panning.handlers.onPointerUp}
        >
          {frame.widthPx === 0 ? null : (
            <svg
              width={frame.widthPx}
              height={frame.heightPx}
              aria-hidden="true"
              className={props.behind ? 'behind' : undefined}
            >
              <Hatch id={hatch} />
              <EditorPicture
                pieces={pieces}
                chosen={chosenSet}
                away={moving ? chosenSet : nothingAway}
                takenOff={takenOff}
                edges={props.edges}
                scale={scale}
                units={units}
                hatch={hatch}
                hidden={hidden}
              />
              {takenOff === undefined || hidden.has('findings') ? null : (
                <FindingPins
                  findings={props.findings}
                  takenOff={takenOff}
                  scale={scale}
                  lit={props.litFinding}
                  onPoint={props.onPointFinding}
                />
              )}
              <GestureLayer
                gesture={gesture}
                pieces={pieces}
                chosen={chosenSet}
                scale={scale}
                frame={frame}
                units={units}
                hatch={hatch}
              />
            </svg>
          )}
          {pieces.length === 0 ? (
            <p className="editor-empty">
              Type a row over the drawing, or bring panels from the tray: drag one here, or press it.
            </p>
          ) : null}
          <ScaleBar pxPerNm={scale.pxPerNm} />
        </div>
        <div className="elevation-tools">
          <button type="button" aria-label="Zoom in" onClick={() => view.zoom(zoomStep)}>
            +
          </button>
          <button type="button" aria-label="Zoom out" onClick={() => view.zoom(1 / zoomStep)}>
            −
          </button>
          <button type="button" onClick={view.fitAgain}>
            Fit
          </button>
        </div>
        <p id={keysId} className="visually-hidden">
          Enter chooses the next piece, Shift and Enter the one before, Control and Enter one more, Control
          and A all. Arrows move what is chosen, with Shift finely, with Control to the next edge. T turns, M
          mirrors, Control and C, X, V and D copy, cut, paste and double, Delete takes out. With nothing
          chosen arrows move the drawing; plus and minus zoom, 0 fits. Escape leaves the piece, then the
          editor.
        </p>
        <output className="visually-hidden">{chosenWords(pieces, chosen, units)}</output>
      </figure>
    </div>
  );
}
