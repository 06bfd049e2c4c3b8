// What a note moved, and what took any of it back.
import type { Output } from '../../../client/core.tsx';
import type { Column } from '../../../parts/data-table.tsx';
import type { TimeWords } from '../../../parts/time-words.ts';
import { conditionWords, reasonWords } from '../yard-words.ts';

export type Moved = Output<'note.read'>['movements'][number];

export function movedColumns(rows: readonly Moved[], words: TimeWords): readonly Column<Moved>[] {
  const numbers = new Map(rows.map(({ id, number }) => [id, number]));
  const standing = ({ reverses, reversedBy }: Moved): string => {
    if (reversedBy !== null) return `reversed by no. ${numbers.get(reversedBy) ?? 'elsewhere'}`;
    return reverses === null ? '' : `takes back no. ${numbers.get(reverses) ?? 'elsewhere'}`;
  };
  return [
    { id: 'number', header: 'No.', numeric: true, value: (row) => row.number, width: 70 },
    { id: 'component', header: 'Component', value: (row) => row.component, width: 104 },
    { id: 'name', header: 'Called', value: (row) => row.name, width: 160 },
    {
      id: 'quantity',
      header: 'Pieces',
      numeric: true,
      value: (row) => row.quantity,
      show: (row) => <span className="entry">{row.quantity}</span>,
      width: 70,
    },
    { id: 'places', header: 'From → to', value: (row) => `${row.from} → ${row.to}`, width: 130 },
    {
      id: 'standing',
      header: 'Reason',
      value: (row) => [reasonWords[row.reason], standing(row)].filter(Boolean).join(', '),
      width: 190,
    },
    { id: 'condition', header: 'Condition', value: (row) => conditionWords[row.conditionAfter], width: 100 },
    { id: 'owner', header: 'Whose', value: (row) => row.owner, width: 76 },
    {
      id: 'at',
      header: 'When',
      value: (row) => Date.parse(row.at),
      show: (row) => words.full(row.at),
      text: (row) => words.full(row.at),
      width: 152,
    },
    { id: 'who', header: 'Who', value: (row) => row.who, width: 90 },
    { id: 'remark', header: 'Remark', value: (row) => row.remark ?? '', width: 160 },
  ];
}
