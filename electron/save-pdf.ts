// What is on screen as a PDF: laid out as it prints, to a file that a native dialog asks for.
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { dialog } from 'electron';
import type { BrowserWindow } from 'electron';
import type { Memory } from './remembered.ts';

/** Where it was saved, what went wrong, or null where nobody chose a file. */
export type SavedPdf = { readonly file: string } | { readonly error: string } | null;

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
    const pdf = await window.webContents.printToPDF({ preferCSSPageSize: true, printBackground: true });
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
