// How the drawing of an open design is fitted and zoomed. It is fitted when it opens, when a row is typed and
// when asked; in between it stays where it is, so that nothing runs away from under the pointer.
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

/** @param fitKey a change of it fits the drawing anew */
export function useEditorView(
  frameRef: RefObject<HTMLElement | null>,
  frame: Frame,
  extent: RectangleNm,
  fitKey: string,
): EditorView {
  const [view, setView] = useState<View>(fitted);
  const [fittedTo, setFittedTo] = useState({ extent, fitKey });
  if (fittedTo.fitKey !== fitKey) {
    setFittedTo({ extent, fitKey });
    setView(fitted);
  }
  useWheel(frameRef, setView);
  const panning = useDragging(setView, 1);
  const scale = useMemo<Scale>(() => {
    const { extent: to } = fittedTo;
    const whole = fit(to, frame, margins);
    const fromCorner = {
      pxPerNm: whole.pxPerNm,
      leftPx: whole.leftPx - to.xNm * whole.pxPerNm,
      bottomPx: whole.bottomPx + to.yNm * whole.pxPerNm,
    };
    return seen(fromCorner, view);
  }, [fittedTo, frame, view]);
  const fitAgain = (): void => {
    setFittedTo({ extent, fitKey });
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
