// What a PDF says, read back out of it by a reader that shares nothing with what wrote it: the words of each
// page in the order in which they stand in the file, the size of the paper, and how near to its edges they come.
import { getDocumentProxy } from 'unpdf';

export interface ReadPdf {
  /** A page each, runs of blanks as one. */
  readonly pages: readonly string[];
  readonly words: string;
  /** Of each page in points, 72 to the inch. */
  readonly sizes: readonly (readonly [width: number, height: number])[];
  /** The least distance of any words from the left and right edge of their page, and from its ends, in points. */
  readonly sidePt: number;
  readonly endPt: number;
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  // The reader takes the bytes it is given for itself.
  const document = await getDocumentProxy(new Uint8Array(bytes));
  const pages: string[] = [];
  const sizes: [number, number][] = [];
  let [sidePt, endPt] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    sizes.push([width, height]);
    const { items } = await page.getTextContent();
    const words: string[] = [];
    for (const item of items) {
      if (!('str' in item)) continue;
      words.push(item.str, item.hasEOL ? ' ' : '');
      const [x = 0, y = 0] = item.transform.slice(4) as number[];
      if (item.str.trim() === '') continue;
      sidePt = Math.min(sidePt, x, ...levelEnd(item, width));
      endPt = Math.min(endPt, y, height - y);
    }
    pages.push(words.join('').replaceAll(/\s+/gu, ' ').trim());
  }
  return { pages, words: pages.join(' '), sizes, sidePt, endPt };
}

/** What is left at the right of level words; turned ones end elsewhere. */
function levelEnd(item: { transform: unknown[]; width: number }, pageWidth: number): number[] {
  const [, turned, , , x] = item.transform as number[];
  return turned === 0 ? [pageWidth - (x ?? 0) - item.width] : [];
}

/** "20 LK Lock" in a list of pieces: how many it says of a component; undefined where it does not stand there. */
export function quantityIn(words: string, component: string, name: string): number | undefined {
  const at = words.indexOf(` ${component} ${name}`);
  const before = at < 0 ? null : /(\d+)$/u.exec(words.slice(0, at));
  return before === null ? undefined : Number(before[1]);
}
