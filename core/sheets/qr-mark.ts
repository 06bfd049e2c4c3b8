// A QR code on a sheet: one path in millimetres of paper with four modules of white around it, as a reader wants
// (ISO/IEC 18004), and medium error correction or better, so that a smear of concrete does not make it unreadable.
import { correction, generate } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';
import { el, type SheetElement } from './node.ts';

const quietModules = 4;
/** Smaller modules are hard to print and to read at arm's length; common practice, no source. */
const leastModuleTenthsMm = 4;

/** @param sizeMm with the white around it; made larger where the modules would come out too small */
export function qrMark(text: string, sizeMm: number): SheetElement {
  const code = generate(text, { minCorrectionLevel: correction.M });
  const across = code.size + 2 * quietModules;
  const side = `${Math.max(sizeMm, (across * leastModuleTenthsMm) / 10)}mm`;
  return el(
    'svg',
    {
      class: 'qr',
      role: 'img',
      'aria-label': `QR code ${text}`,
      viewBox: `${-quietModules} ${-quietModules} ${across} ${across}`,
      width: side,
      height: side,
    },
    el('path', { d: toSvgPath(code) }),
  );
}
