// What a PDF says, read back out of it by a reader that shares nothing with what wrote it: the words of each
// page in the order in which they stand in the file, and the size of the paper.
import { extractText, getDocumentProxy } from 'unpdf';

export interface ReadPdf {
  /** A page each, runs of blanks as one. */
  readonly pages: readonly string[];
  readonly words: string;
  /** Of each page in points, 72 to the inch. */
  readonly sizes: readonly (readonly [width: number, height: number])[];
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocumentProxy(new Uint8Array(bytes));
  const { text } = await extractText(document, { mergePages: false });
  const pages = text.map((page) => page.replaceAll(/\s+/gu, ' ').trim());
  const sizes: [number, number][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { width, height } = (await document.getPage(number)).getViewport({ scale: 1 });
    sizes.push([width, height]);
  }
  return { pages, words: pages.join(' '), sizes };
}

/** "26 LK Lock" and the like: how many of a component a list of pieces says; undefined where it does not. */
export function quantityIn(words: string, component: string, name: string): number | undefined {
  const at = words.indexOf(` ${component} ${name}`);
  const before = at < 0 ? null : /(\d+)$/u.exec(words.slice(0, at));
  return before === null ? undefined : Number(before[1]);
}
