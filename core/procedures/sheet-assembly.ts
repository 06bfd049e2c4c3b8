// The sheet from which a crew assembles a gang: what is in the book, laid out. When and by whom it was printed
// only the door knows: it puts that where the tree has a place for it.
import { answer } from '../answer.ts';
import { assemblySheet } from '../sheets/assembly-sheet.ts';
import { asData } from './as-data.ts';
import { query } from './procedure.ts';
import { readSheetFacts } from './sheet-facts.ts';
import { sheetInput, sheetOutput } from './sheet-shape.ts';
import { shownTakeOff } from './shown-takeoff.ts';

export const sheetAssembly = query({
  name: 'sheet.assembly',
  input: sheetInput,
  output: sheetOutput,
  run: async (book, asked) => {
    const read = await readSheetFacts(book, asked);
    if (!read.ok) return read;
    const { facts, ...rest } = read.value;
    const { takeOff, design } = facts;
    const drawn = shownTakeOff(takeOff, design.geometry.edges);
    return answer(asData(assemblySheet({ ...rest, drawn, assembleH: design.assembleH })));
  },
});
