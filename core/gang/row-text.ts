// A design as the rows that a person would type for it, where rows say all of it.
import type { PanelSystem } from '../catalogue/system.ts';
import { footNm, formatLengthMetric, formatLengthUs, inchNm, type UnitSystem } from '../units/length.ts';
import type { DesignGeometry } from './design.ts';
import { placeDesign, type Gang, type Rectangle, type StandingPanel } from './placed.ts';
import { typedRow } from './typed-row.ts';

type Piece = Rectangle | StandingPanel;

/**
 * The text whose typed design has these panels and fillers, from its lower left corner; null where there is
 * none. Edges and whatever else stands in the design are not said by it.
 */
export function rowText(system: PanelSystem, design: DesignGeometry, units: UnitSystem): string | null {
  const placed = placeDesign(system, design);
  if (!placed.ok) return null;
  const gang = placed.value;
  const rows = rowsOf(gang).map((pieces) => ({
    widths: widthsText(pieces, units),
    height: heightText(pieces[0], units),
  }));
  const blocks: { widths: string; heights: string[] }[] = [];
  for (const { widths, height } of rows) {
    const last = blocks.at(-1);
    if (last?.widths === widths) last.heights.push(height);
    else blocks.push({ widths, heights: [height] });
  }
  const text = blocks.map(({ widths, heights }) => `${widths} | ${heights.join('+')}`).join(' / ');
  // Read again and compared: whatever rows cannot say, such as gaps, comes out in another place.
  const again = typedRow(system, text, units);
  const typed = again.ok ? placeDesign(system, again.value) : again;
  return typed.ok && piecesText(typed.value) === piecesText(gang) ? text : null;
}

/** From the bottom; the pieces of a row from the left. */
function rowsOf({ panels, fillers }: Gang): readonly (readonly Piece[])[] {
  const rows = new Map<number, Piece[]>();
  for (const piece of [...panels, ...fillers]) {
    const row = rows.get(piece.bottomNm) ?? [];
    row.push(piece);
    rows.set(piece.bottomNm, row);
  }
  return [...rows]
    .sort(([one], [other]) => one - other)
    .map(([, pieces]) => pieces.sort((one, other) => one.leftNm - other.leftNm));
}

function widthsText(pieces: readonly Piece[], units: UnitSystem): string {
  const texts = pieces.map((piece) => {
    const text = widthText(piece.rightNm - piece.leftNm, units);
    if (!('panel' in piece)) return `f${text}`;
    return piece.onSide ? `${text}s` : text;
  });
  const runs: { text: string; times: number }[] = [];
  for (const text of texts) {
    const last = runs.at(-1);
    if (last?.text === text) last.times += 1;
    else runs.push({ text, times: 1 });
  }
  // Up to three are quicker read than counted.
  return runs
    .map(({ text, times }) => (times > 3 ? `${times}x${text}` : Array(times).fill(text).join(' ')))
    .join(' ');
}

function widthText(lengthNm: number, units: UnitSystem): string {
  if (units === 'us' && lengthNm % inchNm === 0) return `${lengthNm / inchNm}`;
  return plainText(lengthNm, units);
}

function heightText(piece: Piece | undefined, units: UnitSystem): string {
  const lengthNm = piece === undefined ? 0 : piece.topNm - piece.bottomNm;
  if (units === 'us' && lengthNm % footNm === 0) return `${lengthNm / footNm}`;
  return plainText(lengthNm, units);
}

/** Whole millimetres bare, feet and inches where they are exact, else millimetres with their unit. */
function plainText(lengthNm: number, units: UnitSystem): string {
  const us = formatLengthUs(lengthNm);
  if (units === 'us' && !us.startsWith('~')) return us;
  const metric = formatLengthMetric(lengthNm).replace(' ', '');
  return units === 'metric' && !metric.includes('.') ? metric.replace('mm', '') : metric;
}

function piecesText({ panels, fillers, extent }: Gang): string {
  const place = ({ leftNm, bottomNm, rightNm, topNm }: Rectangle): string =>
    [
      leftNm - extent.leftNm,
      bottomNm - extent.bottomNm,
      rightNm - extent.leftNm,
      topNm - extent.bottomNm,
    ].join(' ');
  return JSON.stringify([
    panels.map((each) => `${each.panel.code} ${each.onSide} ${place(each)}`).sort(),
    fillers.map(place).sort(),
  ]);
}
