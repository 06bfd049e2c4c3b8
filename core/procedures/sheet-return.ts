// The sheet of a note of pieces that go back to their supplier.
import { query } from './procedure.ts';
import { sheetOfNote } from './sheet-note.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';

export const sheetReturn = query({
  name: 'sheet.return',
  input: paperSheetInput,
  output: sheetOutput,
  run: (book, asked) => sheetOfNote(book, asked, ['return', 'hire-off']),
});
