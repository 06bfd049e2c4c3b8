// The pick list as a sheet, by what it is for: design:GA, pour:TB26:P01, pour:TB26:P01:A, note:ID,
// with @PLACE where it takes from one place alone.
import { answer } from '../answer.ts';
import { pickListSheet } from '../sheets/pick-list-sheet.ts';
import { readPickId } from '../yard/pick-id.ts';
import { asData } from './as-data.ts';
import { query } from './procedure.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';
import { readPickList } from './shown-pick-list.ts';

export const sheetPicklist = query({
  name: 'sheet.picklist',
  input: paperSheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const picked = readPickId(asked.id);
    if (!picked.ok) return picked;
    const list = await readPickList(book, picked.value, undefined);
    if (!list.ok) return list;
    const units = asked.units ?? list.value.job?.units ?? 'us';
    return answer(asData(pickListSheet({ ...list.value, units })));
  },
});
