// The pointer on an open design: moving what is chosen, bringing a piece from the tray, drawing a box around
// pieces. Until the button is let go everything is only drawn, so that a dragged panel follows within a frame;
// the design changes once, at the end.
import {
  type PointerEvent as ReactPointerEvent,
  type RefObject,
  useCallback,
  useEffect,
  useRef,
  useState,
} from 'react';
import type { PointNm, RectangleNm } from '../design-shapes.ts';
import type { PieceId } from './editor-state.ts';
import { type Gesture, gestureOf, type Hold, type Sheet, type TrayPiece } from './gesture.ts';

export interface Gestures {
  readonly gesture: Gesture | null;
  readonly down: (event: ReactPointerEvent) => void;
  readonly takeFromTray: (event: ReactPointerEvent, piece: TrayPiece) => void;
}

interface Wanted extends Sheet {
  readonly frameRef: RefObject<HTMLElement | null>;
  readonly chosen: readonly PieceId[];
  readonly onChoose: (chosen: readonly PieceId[]) => void;
  readonly onMove: (dxNm: number, dyNm: number) => void;
  readonly onPlace: (piece: TrayPiece, at: PointNm) => void;
  readonly onBox: (box: RectangleNm, adds: boolean) => void;
}

/** Below this many pixels a press is a click. */
const slackPx = 4;

export function useGestures(wanted: Wanted): Gestures {
  const [gesture, setGesture] = useState<Gesture | null>(null);
  const hold = useRef<Hold | null>(null);
  const now = useRef(wanted);
  const last = useRef<Gesture | null>(null);
  useEffect(() => {
    now.current = wanted;
  });

  useEffect(() => {
    const draw = (next: Gesture | null): void => {
      last.current = next;
      setGesture(next);
    };
    const end = (kept: Gesture | null): void => {
      const held = hold.current;
      hold.current = null;
      draw(null);
      if (held !== null && kept !== null) keep(held, kept, now.current);
    };
    const moved = (event: PointerEvent): void => {
      const held = hold.current;
      const rect = now.current.frameRef.current?.getBoundingClientRect();
      if (held === null || rect === undefined) return;
      // The button may have been let go outside the window.
      if (event.buttons === 0) {
        end(null);
        return;
      }
      if (!held.begun && Math.hypot(event.clientX - held.x, event.clientY - held.y) < slackPx) return;
      held.begun = true;
      draw(gestureOf(held, { x: event.clientX, y: event.clientY }, now.current, rect));
    };
    const up = (): void => {
      const held = hold.current;
      if (held?.begun === true) end(last.current);
      else if (held !== null) {
        hold.current = null;
        click(held, now.current);
      }
    };
    const escape = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || hold.current === null) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      end(null);
    };
    const cancelled = (): void => end(null);
    addEventListener('pointermove', moved);
    addEventListener('pointerup', up);
    addEventListener('pointercancel', cancelled);
    addEventListener('keydown', escape, true);
    return () => {
      removeEventListener('pointermove', moved);
      removeEventListener('pointerup', up);
      removeEventListener('pointercancel', cancelled);
      removeEventListener('keydown', escape, true);
    };
  }, []);

  const takeFromTray = useCallback((event: ReactPointerEvent, piece: TrayPiece): void => {
    if (event.button !== 0) return;
    hold.current = { x: event.clientX, y: event.clientY, begun: false, kind: 'place', piece };
  }, []);

  return {
    gesture,
    takeFromTray,
    down: (event) => {
      if (event.button !== 0) return;
      const place = { x: event.clientX, y: event.clientY, begun: false };
      const id = pieceUnder(event.target);
      const { chosen, onChoose } = now.current;
      const adds = event.shiftKey || event.ctrlKey || event.metaKey;
      if (id === undefined) {
        hold.current = { ...place, kind: 'box', adds };
        return;
      }
      const isIn = chosen.includes(id);
      const pressed = adds ? [...chosen, id] : [id];
      // A press on one of several chosen pieces moves them all; let go without a move, it chooses that one.
      const moving = isIn ? chosen : pressed;
      if (!isIn) onChoose(pressed);
      const ifClick = isIn && adds ? chosen.filter((one) => one !== id) : pressed;
      hold.current = { ...place, kind: 'move', moving, ifClick };
    },
  };
}

function keep(held: Hold, kept: Gesture, { onMove, onPlace, onBox }: Wanted): void {
  if (kept.kind === 'place') onPlace(kept.piece, kept.at);
  else if (kept.kind === 'box') onBox(kept.box, held.kind === 'box' && held.adds);
  else if (kept.dxNm !== 0 || kept.dyNm !== 0) onMove(kept.dxNm, kept.dyNm);
}

function click(held: Hold, { onChoose }: Wanted): void {
  if (held.kind === 'move') onChoose(held.ifClick);
  else if (held.kind === 'box' && !held.adds) onChoose([]);
}

function pieceUnder(target: EventTarget): PieceId | undefined {
  if (!(target instanceof Element)) return undefined;
  const id = target.closest('[data-piece]')?.getAttribute('data-piece');
  return id === null || id === undefined ? undefined : (id as PieceId);
}
