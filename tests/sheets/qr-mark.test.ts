// A QR mark is read back by a reader that shares nothing with what drew it, from the path that stands on the sheet.
import { createCanvas, Path2D } from '@napi-rs/canvas';
import { describe, expect, test } from 'vitest';
import { nodeHtml } from '../../core/sheets/html.ts';
import type { SheetElement } from '../../core/sheets/node.ts';
import { qrMark } from '../../core/sheets/qr-mark.ts';
import { readQr } from '../doors/qr-reader.ts';
import { withTag } from './read-tree.ts';

const dotsAModule = 5;

/** Draws the mark's own path, with the view box that it names, and `smear` modules of its middle painted over. */
async function readBack(mark: SheetElement, smear = 0): Promise<string[]> {
  const [x = 0, y = 0, width = 0, height = 0] = (mark.attributes.viewBox ?? '').split(' ').map(Number);
  const canvas = createCanvas(width * dotsAModule, height * dotsAModule);
  const drawing = canvas.getContext('2d');
  drawing.fillStyle = '#fff';
  drawing.fillRect(0, 0, canvas.width, canvas.height);
  drawing.scale(dotsAModule, dotsAModule);
  drawing.translate(-x, -y);
  drawing.fillStyle = '#000';
  const paths = withTag(mark, 'path');
  expect(paths).toHaveLength(1);
  const path = new Path2D(paths[0]!.attributes.d);
  drawing.save();
  drawing.clip(path);
  drawing.fillRect(0, 0, width, height);
  drawing.restore();
  const middle = (width + 2 * x) / 2;
  drawing.fillRect(middle - smear / 2, middle - smear / 2, smear, smear);
  return readQr(canvas.toBuffer('image/png'));
}

describe('a QR mark', () => {
  test.each([
    'RG:G:TB26:GA-01',
    'RG:C::BIN%207',
    'RG:S:TB26:0198f3a2-7c41-7b6e-9d52-1f0c2b3a4d5e',
    `RG:L:TB26:${'LONG/'.repeat(24)}`,
    'RG:K::R%C3%BCck',
  ])('%s is read back', async (text) => {
    expect(await readBack(qrMark(text, 30))).toEqual([text]);
  });

  test('a smear of four modules square in its middle does not make it unreadable, one of half its width does', async () => {
    const mark = qrMark('RG:S:TB26:0198f3a2-7c41-7b6e-9d52-1f0c2b3a4d5e', 30);
    expect(await readBack(mark, 4)).toEqual(['RG:S:TB26:0198f3a2-7c41-7b6e-9d52-1f0c2b3a4d5e']);
    expect(await readBack(mark, 20)).toEqual([]);
  });

  test('is as large as asked, with four modules of white around it, and never with modules under 0.4 mm', () => {
    const mark = qrMark('RG:G:TB26:GA-01', 25);
    // 15 capital letters, digits and signs at level M: version 1, 21 modules a side (ISO/IEC 18004, from memory).
    expect(mark.attributes).toMatchObject({ viewBox: '-4 -4 29 29', width: '25mm', height: '25mm' });
    expect(qrMark('RG:G:TB26:GA-01', 5).attributes.width).toBe('11.6mm');
  });

  test('stands on a sheet like everything else there', () => {
    expect(nodeHtml(qrMark('RG:G:TB26:GA-01', 25))).toMatch(
      /^<svg class="sh-qr" role="img" aria-label="QR code RG:G:TB26:GA-01" .*><path d="M[^"]+"><\/path><\/svg>$/u,
    );
  });
});
