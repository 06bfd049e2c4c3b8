// The sheet of a note of pieces that come, or go from place to place of ours.
import { query } from './procedure.ts';
import { sheetOfNote } from './sheet-note.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';

export const sheetDelivery = query({
  name: 'sheet.delivery',
  input: paperSheetInput,
  output: sheetOutput,
  run: (book, asked) => sheetOfNote(book, asked, ['delivery', 'hire-on', 'transfer', 'issue']),
});
