// Moving the drawing with the pointer held down.
import { type PointerEvent, useRef } from 'react';
import { moved, type View } from './elevation-view.ts';

export interface Dragging {
  /** Whether the pointer moved the drawing since it went down: then its click means nothing else. */
  readonly dragged: () => boolean;
  readonly handlers: Handlers;
}

interface Handlers {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: (event: PointerEvent) => void;
}

/** `button` is the one that moves it: the left one where nothing else is dragged, else the middle one. */
export function useDragging(setView: (change: (view: View) => View) => void, button: 0 | 1 = 0): Dragging {
  const from = useRef<{ x: number; y: number } | null>(null);
  const wayPx = useRef(0);
  const handlers: Handlers = {
    onPointerDown: (event) => {
      wayPx.current = 0;
      if (event.button === button) from.current = { x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event) => {
      const start = from.current;
      if (start === null) return;
      // The button may have been let go outside the window.
      if (event.buttons === 0) {
        from.current = null;
        return;
      }
      const [dx, dy] = [event.clientX - start.x, event.clientY - start.y];
      from.current = { x: event.clientX, y: event.clientY };
      wayPx.current += Math.abs(dx) + Math.abs(dy);
      setView((view) => moved(view, dx, dy));
    },
    onPointerUp: () => {
      from.current = null;
    },
  };
  return { dragged: () => wayPx.current > 4, handlers };
}
