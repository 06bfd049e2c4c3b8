// What one pour draws on its two tracks: stretches of time with a kind each. A kind has a shape or pattern
// of its own, so that the board reads the same in grey.
import type { BoardPour } from './board-types.ts';

type BarKind = 'set' | 'wait' | 'closed' | 'cure' | 'stand' | 'strip';

export interface Bar {
  readonly kind: BarKind;
  readonly fromMs: number;
  readonly toMs: number;
}

export interface PourBars {
  readonly a: readonly Bar[];
  readonly b: readonly Bar[];
  readonly fromMs: number;
  readonly finishMs: number;
  readonly readyMs: number;
  readonly stripFromMs: number;
  readonly toMs: number;
}

/**
 * Side A and B of a pour: setting, waiting for steel or the other side, closed once both stand, curing from
 * the finish until strength, standing from then to the first shift in which it can be stripped, stripping.
 */
export function pourBars(row: BoardPour): PourBars {
  const { times } = row;
  const finishMs = Date.parse(times.finishAt);
  const readyMs = Date.parse(times.readyAt);
  const stripFromMs = Date.parse(times.stripFrom);
  const toMs = Date.parse(times.stripTo);
  const sides = times.sides.map((side) => ({
    side: side.side,
    fromMs: Date.parse(side.setFrom),
    setMs: Date.parse(side.setTo),
  }));
  const closedMs = Math.max(...sides.map((side) => side.setMs));
  const track = (name: 'A' | 'B'): readonly Bar[] => {
    const side = sides.find((one) => one.side === name);
    if (side === undefined) return [];
    const bars: Bar[] = [
      { kind: 'set', fromMs: side.fromMs, toMs: side.setMs },
      { kind: 'wait', fromMs: side.setMs, toMs: Math.min(closedMs, finishMs) },
      { kind: 'closed', fromMs: Math.max(side.setMs, closedMs), toMs: finishMs },
      { kind: 'cure', fromMs: finishMs, toMs: Math.min(readyMs, stripFromMs) },
      { kind: 'stand', fromMs: readyMs, toMs: stripFromMs },
      { kind: 'strip', fromMs: stripFromMs, toMs },
    ];
    return bars.filter((bar) => bar.toMs > bar.fromMs);
  };
  return {
    a: track('A'),
    b: track('B'),
    fromMs: Math.min(...sides.map((side) => side.fromMs)),
    finishMs,
    readyMs,
    stripFromMs,
    toMs,
  };
}
