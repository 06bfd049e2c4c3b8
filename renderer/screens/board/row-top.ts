// Keeping the row that the keys have come to in sight.

/** Pixels: where to scroll so that a row stands whole in the window: not at all where it does already. */
export function rowTop(scroller: HTMLElement, top: number, height: number): number {
  const { scrollTop, clientHeight } = scroller;
  return Math.min(Math.max(scrollTop, top + height - clientHeight), top);
}
