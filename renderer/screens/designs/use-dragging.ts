// Moving the drawing with the pointer held down.
import { type PointerEvent, useRef } from 'react';
import { moved, type View } from './elevation-view.ts';

interface Handlers {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: (event: PointerEvent) => void;
}

export function useDragging(setView: (change: (view: View) => View) => void): Handlers {
  const from = useRef<{ x: number; y: number } | null>(null);
  return {
    onPointerDown: (event) => {
      if (event.button === 0) from.current = { x: event.clientX, y: event.clientY };
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
      setView((view) => moved(view, dx, dy));
    },
    onPointerUp: () => {
      from.current = null;
    },
  };
}
