// The lines on which stiffening rails stand, and the panels each line passes. Rails across horizontal joints are
// upright, on lines from left to right; rails across vertical joints are level, on lines from bottom to top.
// Here `along` is the axis of the joints on which the lines are spread, `way` the axis along the rail.
import type { Gang, Rectangle, StandingPanel } from './placed.ts';

/** A piece of the gang between two positions on a line. */
export interface Segment {
  readonly panel: StandingPanel;
  readonly fromNm: number;
  readonly toNm: number;
}

/** Where a line passes from one panel to the next: at a joint (from = to) or over a filler between them. */
export interface Passing {
  readonly first: StandingPanel;
  readonly second: StandingPanel;
  readonly fromNm: number;
  readonly toNm: number;
}

export interface RailLine {
  /** 0 ... n - 1, from the left (bottom). */
  readonly index: number;
  /** Its position along, to the nearest nanometre, for drawing only. */
  readonly atNm: number;
  readonly segments: readonly Segment[];
  readonly passings: readonly Passing[];
}

interface Spans {
  readonly alongFrom: number;
  readonly alongTo: number;
  readonly wayFrom: number;
  readonly wayTo: number;
}

/** More lines than this is a spacing typed wrongly; the take-off says so. */
export const mostLines = 2000;

/** n = ceil(D / spacing) + 1. Whole numbers within 1 km (placed.ts), so quotient and remainder are exact. */
export function lineCount(spanNm: number, spacingNm: number): number {
  return Math.floor(spanNm / spacingNm) + (spanNm % spacingNm === 0 ? 0 : 1) + 1;
}

/**
 * The lines at i x D / (n - 1). Positions are fractions: a line at i D / m is compared with a place p as i D with
 * p m, both under 2^53 within 1 km and 2000 lines, so the comparison is exact.
 */
export function railLines(gang: Gang, upright: boolean, count: number): readonly RailLine[] {
  const spans = (piece: Rectangle): Spans =>
    upright
      ? { alongFrom: piece.leftNm, alongTo: piece.rightNm, wayFrom: piece.bottomNm, wayTo: piece.topNm }
      : { alongFrom: piece.bottomNm, alongTo: piece.topNm, wayFrom: piece.leftNm, wayTo: piece.rightNm };
  const panels = gang.panels.map((panel) => ({ panel, ...spans(panel) }));
  const fillers = gang.fillers.map(spans);
  const whole = spans(gang.extent);
  const spaces = count - 1;
  return Array.from({ length: count }, (_, index): RailLine => {
    const product = index * (whole.alongTo - whole.alongFrom);
    const last = index === spaces;
    // On a seam a line belongs to what is at its right (above), the last line to what is at its left (below).
    const passes = ({ alongFrom, alongTo }: Spans): boolean => {
      const [from, to] = [(alongFrom - whole.alongFrom) * spaces, (alongTo - whole.alongFrom) * spaces];
      return last ? from < product && product <= to : from <= product && product < to;
    };
    const onLine = fillers.filter(passes);
    const filled = runsOf(onLine);
    const through = panels
      .filter(passes)
      .map(({ panel, wayFrom, wayTo }): Segment => ({ panel, fromNm: wayFrom, toNm: wayTo }));
    // What is passed like a joint is not also in the panels beside it: a line has one rail there, not two.
    const rooms = passingsOf(inOrder(through), filled).filter(({ fromNm, toNm }) => fromNm < toNm);
    const beside = onLine
      .filter(({ wayFrom, wayTo }) => !holds(rooms, wayFrom, wayTo))
      .flatMap((filler) => besideFiller(filler, panels));
    const joined = inOrder([...through, ...beside]);
    return {
      index,
      atNm: whole.alongFrom + Math.round(product / spaces),
      segments: joined,
      passings: passingsOf(joined, filled),
    };
  });
}

/** In a filler that does not stand between two panels of it, a line belongs to the panels at the filler's right (above). */
function besideFiller(
  filler: Spans,
  panels: readonly (Spans & { readonly panel: StandingPanel })[],
): readonly Segment[] {
  return panels.flatMap(({ panel, alongFrom, wayFrom, wayTo }) => {
    const [fromNm, toNm] = [Math.max(wayFrom, filler.wayFrom), Math.min(wayTo, filler.wayTo)];
    return alongFrom === filler.alongTo && fromNm < toNm ? [{ panel, fromNm, toNm }] : [];
  });
}

/** From the start of the line to its end; touching segments of one panel are one. */
function inOrder(segments: readonly Segment[]): readonly Segment[] {
  const joined: Segment[] = [];
  for (const segment of segments.toSorted((one, other) => one.fromNm - other.fromNm)) {
    const before = joined.at(-1);
    if (before?.panel === segment.panel && before.toNm >= segment.fromNm) {
      joined[joined.length - 1] = { ...before, toNm: Math.max(before.toNm, segment.toNm) };
    } else joined.push(segment);
  }
  return joined;
}

function passingsOf(segments: readonly Segment[], filled: readonly Stretch[]): readonly Passing[] {
  return segments.flatMap((segment, index) => {
    const next = segments[index + 1];
    if (next === undefined) return [];
    const [fromNm, toNm] = [segment.toNm, next.fromNm];
    const touches = fromNm === toNm || (fromNm < toNm && holds(filled, fromNm, toNm));
    return touches ? [{ first: segment.panel, second: next.panel, fromNm, toNm }] : [];
  });
}

interface Stretch {
  readonly fromNm: number;
  readonly toNm: number;
}

/** The stretches that fillers on the line fill without a break, in order. */
function runsOf(fillers: readonly Spans[]): readonly Stretch[] {
  const runs: Stretch[] = [];
  for (const { wayFrom, wayTo } of fillers.toSorted((one, other) => one.wayFrom - other.wayFrom)) {
    const before = runs.at(-1);
    if (before !== undefined && wayFrom <= before.toNm) {
      runs[runs.length - 1] = { fromNm: before.fromNm, toNm: Math.max(before.toNm, wayTo) };
    } else runs.push({ fromNm: wayFrom, toNm: wayTo });
  }
  return runs;
}

/** Does one of the stretches, which are in order and do not overlap, reach over everything between two positions? */
function holds(stretches: readonly Stretch[], fromNm: number, toNm: number): boolean {
  let [low, high] = [0, stretches.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((stretches[middle]?.fromNm ?? 0) <= fromNm) low = middle + 1;
    else high = middle;
  }
  const last = stretches[low - 1];
  return last !== undefined && last.toNm >= toNm;
}
