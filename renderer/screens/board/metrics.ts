// Sizes of the board in pixels: at a desk, and on the wall where it is read from ten feet. Rows grow into the
// height there is, so that a tall window shows the same two weeks larger and not emptier.
export interface Metrics {
  /** Least and greatest height of a pour's row. */
  readonly least: number;
  readonly most: number;
  readonly runRow: number;
  readonly head: number;
  /** Width of the words at the right. */
  readonly ends: number;
  /** Height of the letters. */
  readonly text: number;
}

/** A row of so many pixels, with its two tracks. */
export interface RowMetrics extends Metrics {
  readonly row: number;
  readonly track: number;
  /** Top of side A's track and of side B's, from the row's top. */
  readonly a: number;
  readonly b: number;
}

export const desk: Metrics = { least: 42, most: 62, runRow: 32, head: 224, ends: 236, text: 12 };
export const wall: Metrics = { least: 76, most: 108, runRow: 56, head: 320, ends: 350, text: 20 };
/** On a small screen the wall's letters give way, so that two weeks still fit. */
export const wallNear: Metrics = { least: 60, most: 84, runRow: 44, head: 262, ends: 268, text: 15 };
/** At the narrowest windows the words beside the chart give way first. */
export const narrow: Metrics = { ...desk, head: 204, ends: 150 };

/** All lines of words beside a row have room: on paper nothing can be pointed at to read the rest. */
export function onPaper(metrics: Metrics): Metrics {
  return { ...metrics, least: Math.max(metrics.least, 52) };
}

/** Rows as high as the window allows for so many of them. */
export function fitted(metrics: Metrics, height: number, rows: number): RowMetrics {
  const row = Math.max(metrics.least, Math.min(metrics.most, Math.floor(height / Math.max(rows, 1))));
  return {
    ...metrics,
    row,
    track: Math.round(row * 0.28),
    a: Math.round(row * 0.15),
    b: Math.round(row * 0.57),
  };
}
