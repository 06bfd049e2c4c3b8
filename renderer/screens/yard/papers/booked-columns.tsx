// The lines of a booked note, its figures side by side.
import type { Column } from '../../../parts/data-table.tsx';
import { conditionWords } from '../yard-words.ts';
import { differsWords } from './note-line.tsx';
import { figureWords, type Note, type NoteKind } from './note-words.ts';

export interface BookedLine {
  readonly key: string;
  readonly component: string;
  readonly owner: string;
  readonly condition: string;
  readonly sent: number;
  readonly counted: number | null;
  readonly there: number | null;
  readonly container: string;
  readonly remark: string;
}

export function bookedLines(note: Note): readonly BookedLine[] {
  return note.lines.map((line, index) => ({
    key: String(index),
    component: line.component,
    owner: line.owner,
    condition: conditionWords[line.condition],
    sent: line.sent,
    counted: line.counted,
    there: note.countedThere?.[index] ?? null,
    container: line.container ?? '',
    remark: line.remark ?? '',
  }));
}

export function bookedColumns(kind: NoteKind, told: boolean): readonly Column<BookedLine>[] {
  const heads = figureWords(kind);
  return [
    { id: 'component', header: 'Component', value: (row) => row.component, width: 120 },
    { id: 'sent', header: heads.paper, numeric: true, value: (row) => row.sent, width: 80 },
    {
      id: 'counted',
      header: heads.ours,
      numeric: true,
      value: (row) => row.counted ?? -1,
      show: (row) => row.counted ?? '',
      text: (row) => String(row.counted ?? ''),
      width: 90,
    },
    {
      id: 'differs',
      header: 'Differs',
      value: (row) => (row.counted ?? row.sent) - row.sent,
      show: (row) =>
        differsWords({
          component: row.component,
          sent: String(row.sent),
          counted: row.counted === null ? '' : String(row.counted),
        }),
      width: 100,
    },
    ...(told ? [thereColumn] : []),
    { id: 'condition', header: 'Condition', value: (row) => row.condition, width: 130 },
    { id: 'owner', header: 'Whose', value: (row) => row.owner, width: 80 },
    { id: 'container', header: 'In', value: (row) => row.container, width: 80 },
    { id: 'remark', header: 'Remark', value: (row) => row.remark, width: 200 },
  ];
}

const thereColumn: Column<BookedLine> = {
  id: 'there',
  header: 'Depot counted',
  numeric: true,
  value: (row) => row.there ?? -1,
  show: (row) =>
    row.there !== null && row.counted !== null && row.there !== row.counted ? (
      <b className="short-word">{row.there}</b>
    ) : (
      (row.there ?? '')
    ),
  text: (row) => String(row.there ?? ''),
  width: 110,
};
