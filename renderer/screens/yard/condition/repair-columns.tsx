// The columns of the table of repairs.
import type { Column } from '../../../parts/data-table.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { type RepairLine, standingWords } from './repair-lines.ts';

function dueWords({ repair }: RepairLine, words: TimeWords): string {
  if (repair === null || repair.state !== 'open') return '';
  return repair.dueAt === null ? 'not said' : words.full(repair.dueAt);
}

export function repairColumns(words: TimeWords): readonly Column<RepairLine>[] {
  return [
    {
      id: 'component',
      header: 'Component',
      value: (row) => row.component,
      show: (row) => <b>{row.component}</b>,
      width: 110,
    },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 170 },
    { id: 'quantity', header: 'Pieces', value: (row) => row.quantity, numeric: true, width: 76 },
    { id: 'place', header: 'Where', value: (row) => row.place, width: 90 },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 84 },
    {
      id: 'standing',
      header: 'Standing',
      value: standingWords,
      show: (row) =>
        row.repair?.late === true ? <span className="short-word">late</span> : standingWords(row),
      width: 90,
    },
    { id: 'fault', header: 'What is wrong', value: (row) => row.repair?.fault ?? '', width: 230 },
    {
      id: 'hours',
      header: 'Hours',
      value: (row) => row.repair?.hours ?? '',
      numeric: true,
      width: 70,
    },
    {
      id: 'parts',
      header: 'Parts from',
      value: (row) =>
        (row.repair?.partsFrom ?? []).map(({ quantity, component }) => `${quantity} ${component}`).join(', '),
      width: 110,
    },
    {
      id: 'due',
      header: 'Due back',
      value: (row) => row.repair?.dueAt ?? '',
      show: (row) => dueWords(row, words),
      text: (row) => dueWords(row, words),
      width: 150,
    },
  ];
}
