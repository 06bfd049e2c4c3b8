// The size of an element in pixels, followed as it changes; on paper, where nothing is measured, a given one.
import { type RefObject, useEffect, useRef, useState } from 'react';
import { useIsPrinting } from '../../parts/printing.ts';
import type { Frame } from './elevation-view.ts';

export function useSize<E extends Element>(onPaper: Frame): [RefObject<E | null>, Frame] {
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
  return [ref, useIsPrinting() ? onPaper : frame];
}
