// The sheet on screen as a PDF: in the browser as its print dialog saves it, on the desktop by its own button and
// a native dialog.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { OpenDoor } from './doors.ts';
import { readPdf, type ReadPdf } from './read-pdf.ts';

/** @param folder for what the desktop saves */
export async function pdfOf(door: OpenDoor, folder: string): Promise<ReadPdf> {
  return readPdf(await pdfBytesOf(door, folder));
}

export async function pdfBytesOf(door: OpenDoor, folder: string): Promise<Uint8Array> {
  if (door.kind === 'local') return door.page.pdf({ preferCSSPageSize: true });
  const file = path.join(folder, `${Math.random()}.pdf`);
  await answerDialog(door, file);
  await door.page.getByRole('button', { name: 'Save as PDF…' }).click();
  await door.page.getByText(`Saved as ${file}`).waitFor();
  return readFileSync(file);
}

/** Native dialogs cannot be clicked: this is what was chosen in it; null where it was left. */
export async function answerDialog(door: OpenDoor, file: string | null): Promise<void> {
  await door.app!.evaluate(({ dialog }, chosen) => {
    dialog.showSaveDialog = () => Promise.resolve({ canceled: chosen === null, filePath: chosen ?? '' });
  }, file);
}
