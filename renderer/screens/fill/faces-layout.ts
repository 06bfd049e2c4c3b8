// Where the legs of both faces are drawn: beside each other, and in further lines where the window is too narrow.
import type { DrawnFaces } from './face-places.ts';

export const margins = {
  left: 66,
  right: 10,
  /** For the codes and lengths of the gangs over side A and under side B. */
  labels: 36,
  /** From the foot of side A to the top of side B. */
  between: 34,
  betweenLegs: 36,
  foot: 22,
} as const;

const footPerNm = (pixels: number): number => pixels / 304_800_000;
const faceHighPx = 190;
const lowFaceHighPx = 140;
/** Smaller than that, legs are put into lines. */
const comfortable = footPerNm(10);
/** Below it the code of a common gang would not have room; a leg too long for that is scrolled. */
const least = footPerNm(7);
/** So that what is written under a leg has room. */
const leastLegPx = 160;

export interface LegPlace {
  /** Where the leg's own measure begins, in pixels. */
  readonly originPx: number;
  readonly middlePx: number;
  /** The top of its line. */
  readonly topPx: number;
  readonly isFirst: boolean;
}

export interface FacesLayout {
  readonly perNm: number;
  readonly legs: readonly LegPlace[];
  readonly lineHighPx: number;
  readonly widthPx: number;
  readonly heightPx: number;
}

export function facesLayout({ legs, heightNm }: DrawnFaces, roomPx: number): FacesLayout {
  const spans = legs.map(({ fromNm, toNm }) => toNm - fromNm);
  const all = spans.reduce((sum, span) => sum + span, 0);
  const room = roomPx - margins.left - margins.right;
  const inOneLine = (room - margins.betweenLegs * Math.max(0, legs.length - 1)) / Math.max(1, all);
  const isOneLine = legs.length === 1 || inOneLine >= comfortable;
  const byWidth = isOneLine ? inOneLine : room / Math.max(1, ...spans);
  const byHeight = (isOneLine ? faceHighPx : lowFaceHighPx) / Math.max(1, heightNm);
  const perNm = Math.max(least, Math.min(byWidth, byHeight));
  const lineHighPx = 2 * margins.labels + 2 * Math.ceil(heightNm * perNm) + margins.between + margins.foot;
  const places: LegPlace[] = [];
  let [atPx, topPx, widthPx] = [margins.left, 0, 0];
  for (const [index, { fromNm }] of legs.entries()) {
    const spanPx = (spans[index] ?? 0) * perNm;
    const slotPx = legs.length === 1 ? spanPx : Math.max(leastLegPx, spanPx);
    const isFirst = index === 0 || (!isOneLine && atPx + slotPx + margins.right > roomPx);
    if (isFirst && index > 0) [atPx, topPx] = [margins.left, topPx + lineHighPx];
    places.push({ originPx: atPx - fromNm * perNm, middlePx: atPx + spanPx / 2, topPx, isFirst });
    widthPx = Math.max(widthPx, atPx + slotPx + margins.right);
    atPx += slotPx + margins.betweenLegs;
  }
  return { perNm, legs: places, lineHighPx, widthPx: Math.ceil(widthPx), heightPx: topPx + lineHighPx };
}
