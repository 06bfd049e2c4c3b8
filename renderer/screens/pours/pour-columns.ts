// The columns of the pour table, in the order of the work: what it is, when each side is set, when it is
// poured, when its forecast lets it be stripped, what it waits for, what stands at it.
import { timeWords } from '../../parts/time-words.ts';
import { gangsCount } from './gangs-text.ts';
import { cells, isCellId } from './pour-cells.ts';
import type { CellContext, PourRow } from './pour-shapes.ts';
import { openGates } from './pour-words.ts';

export interface PourColumn {
  readonly id: string;
  readonly header: string;
  /** What the header means in full, for its tooltip. */
  readonly words: string;
  readonly widthPx: number;
  readonly numeric?: boolean;
}

export const pourColumns: readonly PourColumn[] = [
  { id: 'code', header: 'Pour', words: 'Code of the pour', widthPx: 72 },
  { id: 'name', header: 'Name', words: 'Name', widthPx: 172 },
  { id: 'element', header: 'Element', words: 'Kind of element', widthPx: 98 },
  {
    id: 'order',
    header: 'Order',
    words: 'Face first: side, steel, close. Steel first: steel, both sides.',
    widthPx: 82,
  },
  { id: 'setA', header: 'Set side A', words: 'Setting of side A begins', widthPx: 140 },
  { id: 'setAH', header: 'h', words: 'Shift hours that setting side A takes', widthPx: 40, numeric: true },
  {
    id: 'setB',
    header: 'Set side B',
    words: 'Setting of side B begins: the close where face comes first',
    widthPx: 140,
  },
  { id: 'setBH', header: 'h', words: 'Shift hours that setting side B takes', widthPx: 40, numeric: true },
  { id: 'finish', header: 'Finish', words: 'Planned finish of placing', widthPx: 140 },
  {
    id: 'minimumH',
    header: 'Min. h',
    words: 'Clock hours from the finish until it may be stripped',
    widthPx: 58,
    numeric: true,
  },
  {
    id: 'ready',
    header: 'Ready, forecast',
    words: 'Finish plus the minimum hours, by the clock',
    widthPx: 140,
  },
  { id: 'strip', header: 'First strip shift', words: 'Stripping can begin', widthPx: 140 },
  { id: 'stripH', header: 'Strip h', words: 'Shift hours that stripping takes', widthPx: 66, numeric: true },
  { id: 'after', header: 'After', words: 'Pours that must be poured before it', widthPx: 104 },
  { id: 'gates', header: 'Gates open', words: 'Work by others that is not done yet', widthPx: 104 },
  { id: 'gangsA', header: 'Gangs A', words: 'Gangs of side A', widthPx: 96 },
  { id: 'gangsB', header: 'Gangs B', words: 'Gangs of side B', widthPx: 96 },
  { id: 'findings', header: 'Findings', words: 'What is wrong or worth knowing', widthPx: 112 },
];

export const columnIds: readonly string[] = pourColumns.map(({ id }) => id);

export const noDateYet = 'no date yet';

/** What stands in a cell, as text: also what is copied and filtered. */
export function columnText(row: PourRow, id: string, context: CellContext): string {
  if (isCellId(id)) return cells[id].text(row.pour, context);
  const { pour, times } = row;
  switch (id) {
    case 'code':
      return pour.code;
    case 'ready':
      return row.dateOpen ? noDateYet : timeWords(context.timeZone).full(times.readyAt);
    case 'strip':
      return row.dateOpen ? '' : timeWords(context.timeZone).full(times.stripFrom);
    case 'gates': {
      const open = openGates(pour.gates).length;
      return open === 0 ? '' : `${open} of ${pour.gates.length}`;
    }
    case 'gangsA':
      return gangsCount(pour.sides[0].gangs);
    case 'gangsB':
      return gangsCount(pour.sides[1].gangs);
    case 'findings':
      return findingsText(row);
    default:
      return '';
  }
}

/** "1 stop, 2 cautions"; notes alone are counted too. */
function findingsText(row: PourRow): string {
  return (['stop', 'caution', 'note'] as const)
    .flatMap((severity) => {
      const count = row.findings.filter((finding) => finding.severity === severity).length;
      return count === 0 ? [] : [`${count} ${severity}${count === 1 ? '' : 's'}`];
    })
    .join(', ');
}

/** Every word typed must stand somewhere in the row. */
export function filteredPours(
  rows: readonly PourRow[],
  filter: string,
  context: CellContext,
): readonly PourRow[] {
  const words = filter.toLowerCase().split(/\s+/u).filter(Boolean);
  if (words.length === 0) return rows;
  return rows.filter((row) => {
    const text = columnIds
      .map((id) => columnText(row, id, context))
      .join(' ')
      .toLowerCase();
    return words.every((word) => text.includes(word));
  });
}
