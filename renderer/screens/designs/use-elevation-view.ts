// Zooming, moving and stepping through an elevation by wheel, pointer, buttons and keys.
import { type KeyboardEvent, type RefObject, useEffect, useState } from 'react';
import type { Mark } from './elevation-marks.ts';
import { type Frame, fitted, type View, viewByKey, zoomAt } from './elevation-view.ts';
import type { Pointed } from './lit.ts';
import { type Dragging, useDragging } from './use-dragging.ts';

export interface ElevationView {
  readonly view: View;
  readonly zoom: (factor: number) => void;
  readonly fitAgain: () => void;
  readonly pressed: (event: KeyboardEvent) => void;
  readonly dragging: Dragging;
  /** The piece that keys stepped to last. */
  readonly stepped: Mark | undefined;
}

export function useElevationView(
  frameRef: RefObject<HTMLElement | null>,
  frame: Frame,
  marks: readonly Mark[],
  onPin: (pointed: Pointed | null) => void,
): ElevationView {
  const [view, setView] = useState<View>(fitted);
  const [at, setAt] = useState(-1);
  const dragging = useDragging(setView);
  useWheel(frameRef, setView);

  const step = (by: 1 | -1): void => {
    const next = (at + by + marks.length) % Math.max(1, marks.length);
    const mark = marks[next];
    setAt(next);
    if (mark !== undefined) onPin({ kind: 'mark', id: mark.id });
  };
  const pressed = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = viewByKey(view, event.key, frame);
    if (next !== undefined) setView(next);
    else if (event.key === 'Enter') step(event.shiftKey ? -1 : 1);
    else if (event.key === 'Escape') {
      setAt(-1);
      onPin(null);
    } else return;
    event.preventDefault();
  };
  return {
    view,
    zoom: (factor) => setView((old) => zoomAt(old, factor, frame.widthPx / 2, frame.heightPx / 2)),
    fitAgain: () => setView(fitted),
    pressed,
    dragging,
    stepped: marks[at],
  };
}

/** The wheel zooms about the pointer. Listened to by hand, as the page must not scroll meanwhile. */
export function useWheel(
  ref: RefObject<HTMLElement | null>,
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
