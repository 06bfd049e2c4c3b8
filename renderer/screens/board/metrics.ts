// Sizes of the board in pixels: at a desk, and on the wall where it is read from ten feet.
export interface Metrics {
  readonly row: number;
  readonly runRow: number;
  readonly track: number;
  /** Top of side A's track and of side B's, from the row's top. */
  readonly a: number;
  readonly b: number;
  readonly head: number;
  /** Width of the words at the right. */
  readonly ends: number;
  readonly text: number;
}

export const desk: Metrics = { row: 42, runRow: 32, track: 12, a: 6, b: 24, head: 204, ends: 236, text: 12 };
export const wall: Metrics = { row: 84, runRow: 56, track: 22, a: 15, b: 47, head: 250, ends: 380, text: 20 };
/** At the narrowest windows the words beside the chart give way first. */
export const narrow: Metrics = { ...desk, head: 196, ends: 150 };
