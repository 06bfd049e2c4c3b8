// How an elevation is fitted into its frame, and how zooming and moving change that. Pixels go right and
// down, lengths right and up.
import type { PointNm } from './design-shapes.ts';

export interface Frame {
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface Margins {
  readonly leftPx: number;
  readonly rightPx: number;
  readonly topPx: number;
  readonly bottomPx: number;
}

/** Pixels of a length, and where the gang's lower left corner lies in the frame. */
export interface Scale {
  readonly pxPerNm: number;
  readonly leftPx: number;
  readonly bottomPx: number;
}

/** What a person did to the fitted picture: a factor, then a shift. */
export interface View {
  readonly zoom: number;
  readonly panXPx: number;
  readonly panYPx: number;
}

export const fitted: View = { zoom: 1, panXPx: 0, panYPx: 0 };
export const zoomStep = 1.25;
const [zoomLeast, zoomMost] = [0.5, 12];

/** The largest scale at which the gang fits between the margins, in their middle. */
export function fit(size: { widthNm: number; heightNm: number }, frame: Frame, margins: Margins): Scale {
  const roomX = Math.max(1, frame.widthPx - margins.leftPx - margins.rightPx);
  const roomY = Math.max(1, frame.heightPx - margins.topPx - margins.bottomPx);
  const pxPerNm = Math.min(roomX / Math.max(1, size.widthNm), roomY / Math.max(1, size.heightNm));
  return {
    pxPerNm,
    leftPx: margins.leftPx + (roomX - size.widthNm * pxPerNm) / 2,
    bottomPx: frame.heightPx - margins.bottomPx - (roomY - size.heightNm * pxPerNm) / 2,
  };
}

export function seen(scale: Scale, view: View): Scale {
  return {
    pxPerNm: scale.pxPerNm * view.zoom,
    leftPx: scale.leftPx * view.zoom + view.panXPx,
    bottomPx: scale.bottomPx * view.zoom + view.panYPx,
  };
}

/** Zooms by a factor, holding the point under (xPx, yPx) where it is. */
export function zoomAt(view: View, factor: number, xPx: number, yPx: number): View {
  const zoom = Math.min(zoomMost, Math.max(zoomLeast, view.zoom * factor));
  const by = zoom / view.zoom;
  return { zoom, panXPx: xPx - (xPx - view.panXPx) * by, panYPx: yPx - (yPx - view.panYPx) * by };
}

export function moved(view: View, dxPx: number, dyPx: number): View {
  return { ...view, panXPx: view.panXPx + dxPx, panYPx: view.panYPx + dyPx };
}

export function toPx(scale: Scale, point: PointNm): { x: number; y: number } {
  return { x: scale.leftPx + point.xNm * scale.pxPerNm, y: scale.bottomPx - point.yNm * scale.pxPerNm };
}

/** What a key does to the view, or undefined where the key is not one of the drawing's. */
export function viewByKey(view: View, key: string, frame: Frame): View | undefined {
  const [midX, midY] = [frame.widthPx / 2, frame.heightPx / 2];
  switch (key) {
    case '+':
    case '=':
      return zoomAt(view, zoomStep, midX, midY);
    case '-':
    case '_':
      return zoomAt(view, 1 / zoomStep, midX, midY);
    case '0':
      return fitted;
    case 'ArrowLeft':
      return moved(view, 40, 0);
    case 'ArrowRight':
      return moved(view, -40, 0);
    case 'ArrowUp':
      return moved(view, 0, 40);
    case 'ArrowDown':
      return moved(view, 0, -40);
    default:
      return undefined;
  }
}
