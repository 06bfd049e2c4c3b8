// The size of an element in pixels, followed as it changes.
import { type RefObject, useEffect, useRef, useState } from 'react';
import type { Frame } from './elevation-view.ts';

export function useSize<E extends Element>(): [RefObject<E | null>, Frame] {
  const ref = useRef<E>(null);
  const [frame, setFrame] = useState<Frame>({ widthPx: 0, heightPx: 0 });
  useEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      setFrame({ widthPx: Math.round(width), heightPx: Math.round(height) });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, frame];
}
