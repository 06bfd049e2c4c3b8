// How the drawing of an open design is fitted and zoomed. It is fitted when it opens, while a row is typed, when
// asked, and when the gang has outgrown the sheet; else it stays where it is, so that nothing runs away from under
// the pointer.
import { type RefObject, useMemo, useState } from 'react';
import type { RectangleNm } from '../design-shapes.ts';
import {
  fit,
  fitted,
  type Frame,
  type Scale,
  seen,
  type View,
  viewByKey,
  zoomAt,
} from '../elevation-view.ts';
import { type Dragging, useDragging } from '../use-dragging.ts';
import { useWheel } from '../use-elevation-view.ts';

const margins = { leftPx: 112, rightPx: 84, topPx: 66, bottomPx: 96 };

export interface EditorView {
  readonly scale: Scale;
  readonly zoom: (factor: number) => void;
  readonly fitAgain: () => void;
  /** Answers whether the key was one of the drawing's. */
  readonly key: (key: string) => boolean;
  readonly panning: Dragging;
}

/** @param typed whether the design is being typed: then it is fitted at every letter */
export function useEditorView(
  frameRef: RefObject<HTMLElement | null>,
  frame: Frame,
  extent: RectangleNm,
  typed: boolean,
): EditorView {
  const [view, setView] = useState<View>(fitted);
  const [fittedTo, setFittedTo] = useState(extent);
  if (fittedTo !== extent && (typed || (view === fitted && isElsewhere(extent, fittedTo)))) {
    setFittedTo(extent);
    setView(fitted);
  }
  useWheel(frameRef, setView);
  const panning = useDragging(setView, 1);
  const scale = useMemo<Scale>(() => {
    const to = fittedTo;
    const whole = fit(to, frame, margins);
    const fromCorner = {
      pxPerNm: whole.pxPerNm,
      leftPx: whole.leftPx - to.xNm * whole.pxPerNm,
      bottomPx: whole.bottomPx + to.yNm * whole.pxPerNm,
    };
    return seen(fromCorner, view);
  }, [fittedTo, frame, view]);
  const fitAgain = (): void => {
    setFittedTo(extent);
    setView(fitted);
  };
  return {
    scale,
    zoom: (factor) => setView((old) => zoomAt(old, factor, frame.widthPx / 2, frame.heightPx / 2)),
    fitAgain,
    key: (key) => {
      const next = viewByKey(view, key, frame);
      if (next === undefined) return false;
      if (key === '0') fitAgain();
      else setView(next);
      return true;
    },
    panning,
  };
}

/** Far outside of what was fitted, or much smaller. */
function isElsewhere(extent: RectangleNm, to: RectangleNm): boolean {
  return (
    outside(extent.xNm, extent.widthNm, to.xNm, to.widthNm) ||
    outside(extent.yNm, extent.heightNm, to.yNm, to.heightNm) ||
    (extent.widthNm < 0.45 * to.widthNm && extent.heightNm < 0.45 * to.heightNm)
  );
}

function outside(fromNm: number, sizeNm: number, toFromNm: number, toSizeNm: number): boolean {
  return fromNm < toFromNm - 0.12 * toSizeNm || fromNm + sizeNm > toFromNm + 1.12 * toSizeNm;
}
