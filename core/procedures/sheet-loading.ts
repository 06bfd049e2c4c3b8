// The loading list of a load.
import { answer } from '../answer.ts';
import { loadingSheet } from '../sheets/loading-sheet.ts';
import { checkLoad } from '../yard/check-load.ts';
import { asData } from './as-data.ts';
import { figuresOf } from './load-figures.ts';
import { readLoad } from './load-read.ts';
import { query } from './procedure.ts';
import { paperSheetInput, sheetOutput } from './sheet-shape.ts';

export const sheetLoading = query({
  name: 'sheet.loading',
  input: paperSheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const read = await readLoad(book, asked.id);
    if (!read.ok) return read;
    const { load, truck, names, number } = read.value;
    const [job] = await book.jobs();
    const sheet = loadingSheet({
      ...figuresOf(load.stacks, truck),
      number,
      names,
      leavesAt: load.leavesAt,
      tiedDownBy: load.tiedDownBy,
      remark: load.remark,
      passes: [...new Set(checkLoad(load.stacks, truck).map(({ rule }) => rule))],
      units: asked.units ?? job?.units ?? 'us',
    });
    return answer(asData(sheet));
  },
});
