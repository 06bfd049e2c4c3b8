// Reads QR codes out of a picture with a reader that shares nothing with what drew them.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

// Its own file, so that nothing is fetched from anywhere.
const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
const bytes = readFileSync(wasm);
prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(bytes).buffer } });

/** @param picture as PNG or JPEG
 * @returns the texts of all QR codes, sorted */
export async function readQr(picture: Uint8Array): Promise<string[]> {
  const found = await readBarcodes(picture, {
    formats: ['QRCode'],
    tryHarder: true,
    maxNumberOfSymbols: 255,
  });
  return found.map(({ text }) => text).sort();
}
