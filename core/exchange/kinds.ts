// Every kind of file that can be imported, in the order in which they name each other, with its columns.
import type { Column } from './columns.ts';
import { componentColumns } from './components-csv.ts';
import { craneColumns } from './cranes-csv.ts';
import { designColumns } from './design-columns.ts';
import { jobColumns } from './jobs-csv.ts';
import { noteColumns } from './notes-csv.ts';
import { placeColumns } from './places-csv.ts';
import { pourColumns } from './pours-csv.ts';
import type { ImportKind } from './prepared.ts';
import { ruleColumns } from './rules-csv.ts';
import { stockColumns } from './stock-csv.ts';
import { truckColumns } from './trucks-csv.ts';

export const importColumns: Readonly<Record<ImportKind, readonly Column[]>> = {
  components: componentColumns,
  rules: ruleColumns,
  places: placeColumns,
  jobs: jobColumns,
  stock: stockColumns,
  designs: designColumns,
  pours: pourColumns,
  cranes: craneColumns,
  trucks: truckColumns,
  notes: noteColumns,
};
