// The size of an element as it is now, and which part of a long list is in view.
import { type RefObject, useContext, useEffect, useLayoutEffect, useState } from 'react';
import { paperWidthPx, useIsPrinting } from '../../parts/printing.ts';
import { BandRange } from './band-range.ts';

export function useWidth(element: RefObject<HTMLElement | null>): number {
  const [width] = useSize(element);
  return useIsPrinting() ? paperWidthPx : width;
}

/**
 * Width and height in whole pixels, of an element without padding. Zero only until it stands in the page: known before
 * the first frame, so that nothing is drawn at a width it will not keep.
 */
export function useSize(element: RefObject<HTMLElement | null>): readonly [number, number] {
  const [size, setSize] = useState<readonly [number, number]>([0, 0]);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return undefined;
    // oxlint-disable-next-line react/set-state-in-effect -- only the page knows it, and only once it stands there
    setSize([watched.clientWidth, watched.clientHeight]);
    const observer = new ResizeObserver(([entry]) => {
      const { width = 0, height = 0 } = entry?.contentRect ?? {};
      const [wide, high] = [Math.floor(width), Math.floor(height)];
      setSize((old) => (old[0] === wide && old[1] === high ? old : [wide, high]));
    });
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return size;
}

/** First and last index in view, a few more on either side; all of them where they are few; on paper those of the band, or all. */
export function useRange(
  scroller: RefObject<HTMLElement | null>,
  count: number,
  height: number,
): readonly [number, number] {
  const isPrinting = useIsPrinting();
  const all = count <= 40 || isPrinting;
  const [range, setRange] = useState<readonly [number, number]>([0, 40]);
  useEffect(() => {
    const watched = scroller.current;
    if (all || watched === null) return undefined;
    const look = (): void => {
      const first = Math.max(0, Math.min(count, Math.floor(watched.scrollTop / height) - 6));
      const last = Math.ceil((watched.scrollTop + watched.clientHeight) / height) + 6;
      setRange((old) => (old[0] === first && old[1] === last ? old : [first, last]));
    };
    look();
    watched.addEventListener('scroll', look, { passive: true });
    return () => watched.removeEventListener('scroll', look);
  }, [scroller, all, height, count]);
  const band = useContext(BandRange);
  if (band !== null) return [band.first, band.last];
  return all ? [0, count - 1] : [range[0], Math.min(range[1], count - 1)];
}
