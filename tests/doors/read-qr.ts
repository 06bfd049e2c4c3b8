// The QR codes that stand on the pages of a PDF, read as a telephone would: each page drawn as a picture, and the
// picture given to a reader that shares nothing with what drew the codes.
import { getDocumentProxy, renderPageAsImage } from 'unpdf';
import { readQr } from './qr-reader.ts';

/** About 200 dots to the inch, which a scan of the paper has. */
const scale = 200 / 72;

/** @returns a list a page: the texts of its codes, sorted */
export async function readQrOfPdf(bytes: Uint8Array): Promise<string[][]> {
  // The reader takes the bytes it is given for itself.
  const document = await getDocumentProxy(new Uint8Array(bytes));
  const pages: string[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const picture = await renderPageAsImage(new Uint8Array(bytes), number, {
      canvasImport: () => import('@napi-rs/canvas'),
      scale,
    });
    pages.push(await readQr(new Uint8Array(picture)));
  }
  return pages;
}
