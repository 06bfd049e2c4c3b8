// What is on screen as a PDF: laid out as it prints, to a file that a native dialog asks for.
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { dialog } from 'electron';
import type { BrowserWindow } from 'electron';
import type { Memory } from './remembered.ts';

/** Where it was saved, what went wrong, or null where nobody chose a file. */
export type SavedPdf = { readonly file: string } | { readonly error: string } | null;

/** Runtimes before this one leave out what a page's style puts in the margin of its sheets. */
const drawsMarginBoxes = Number(process.versions.chrome.split('.')[0]) >= 131;

/** There the runtime itself puts the screen's name and the page number at the foot. */
const footOfRuntime = {
  displayHeaderFooter: true,
  headerTemplate: '<span></span>',
  footerTemplate:
    '<div style="width:100%;margin:0 12mm;font:7.5pt sans-serif;display:flex;justify-content:space-between">' +
    '<span class="title"></span>' +
    '<span>page <span class="pageNumber"></span> of <span class="totalPages"></span></span></div>',
};

export async function savePdf(window: BrowserWindow, memory: Memory): Promise<SavedPdf> {
  const name = `${fileName(window.webContents.getTitle())}.pdf`;
  const { folder } = memory.values;
  const { canceled, filePath } = await dialog.showSaveDialog(window, {
    title: 'Save as PDF',
    defaultPath: folder === undefined ? name : path.join(folder, name),
    filters: [{ name: 'PDF', extensions: ['pdf'] }],
  });
  if (canceled || filePath === '') return null;
  memory.keep({ folder: path.dirname(filePath) });
  try {
    // The page's own style says which paper, and which way it lies.
    const pdf = await window.webContents.printToPDF({
      preferCSSPageSize: true,
      printBackground: true,
      ...(drawsMarginBoxes ? {} : footOfRuntime),
    });
    await writeFile(filePath, pdf);
    return { file: filePath };
  } catch (error) {
    return { error: `Not saved: ${error instanceof Error ? error.message : String(error)}` };
  }
}

/** Letters, figures and blanks of a title: what every system takes as a file's name. */
function fileName(title: string): string {
  const words = title.split(' · ')[0] ?? '';
  const plain = words
    .replaceAll(/[^\p{L}\p{N} _-]/gu, ' ')
    .replaceAll(/ +/gu, ' ')
    .trim();
  return plain === '' ? 'sheet' : plain.slice(0, 80);
}
