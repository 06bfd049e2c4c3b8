// Dragging a pour along the days. Until the pointer is let go the move is only drawn; a press without a
// drag chooses the row.
import { type PointerEvent, useRef, useState } from 'react';
import type { PourRow } from './board-rows.ts';
import type { Move } from './board-types.ts';
import { type DayScale, workingDaysBetween } from './day-scale.ts';

export interface Drag {
  readonly move: Move | null;
  readonly down: (event: PointerEvent<SVGElement>, row: PourRow) => void;
  readonly moveTo: (event: PointerEvent<SVGElement>) => void;
  readonly up: () => void;
  readonly cancel: () => void;
}

/** Below this many pixels a press is a click. */
const slack = 5;

export function useDrag(
  scale: DayScale,
  onMove: (move: Move) => void,
  onSelect: (code: string) => void,
): Drag {
  const [move, setMove] = useState<Move | null>(null);
  const begun = useRef<{ readonly code: string; readonly startX: number; readonly atX: number } | null>(null);
  return {
    move,
    down: (event, row) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      begun.current = { code: row.code, startX: event.clientX, atX: scale.x(row.bars.finishMs) };
    },
    moveTo: (event) => {
      if (begun.current === null) return;
      const by = event.clientX - begun.current.startX;
      if (move === null && Math.abs(by) < slack) return;
      const workingDays = workingDaysBetween(scale, begun.current.atX, begun.current.atX + by);
      if (move?.workingDays !== workingDays) setMove({ pour: begun.current.code, workingDays });
    },
    up: () => {
      const code = begun.current?.code;
      begun.current = null;
      setMove(null);
      if (move !== null && move.workingDays !== 0) onMove(move);
      else if (move === null && code !== undefined) onSelect(code);
    },
    cancel: () => {
      begun.current = null;
      setMove(null);
    },
  };
}
