// The lines of a pick list as rows of one table, in the order in which they are walked.
import type { Column } from '../../../parts/data-table.tsx';
import type { Units } from '../../../parts/units.tsx';
import { conditionWords } from '../yard-words.ts';
import type { PickList } from './pick-view.tsx';

type Place = PickList['places'][number];
export type PickRow = Place['lines'][number] & {
  readonly number: number;
  readonly location: string;
  readonly placeName: string;
};

export function linesOf(list: PickList): readonly PickRow[] {
  return list.places
    .flatMap((place) =>
      place.lines.map((line) => ({ ...line, location: place.location, placeName: place.name })),
    )
    .map((line, index) => ({ ...line, number: index + 1 }));
}

export function lineKey({ location, component, owner, condition }: PickRow): string {
  return JSON.stringify([location, component, owner, condition]);
}

const sum = (rows: readonly PickRow[], of: (row: PickRow) => number): number =>
  rows.reduce((total, row) => total + of(row), 0);

export function pickColumns(units: Units): readonly Column<PickRow>[] {
  return [
    { id: 'number', header: 'Walk', numeric: true, value: (row) => row.number, width: 62 },
    { id: 'place', header: 'Place', value: (row) => `${row.location} ${row.placeName}`, width: 210 },
    {
      id: 'quantity',
      header: 'Pieces',
      numeric: true,
      value: (row) => row.quantity,
      show: (row) => <b>{row.quantity}</b>,
      total: (rows) => sum(rows, (row) => row.quantity),
      width: 76,
    },
    { id: 'component', header: 'Component', value: (row) => row.component, width: 104 },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 210 },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 84 },
    { id: 'condition', header: 'Condition', value: (row) => conditionWords[row.condition], width: 120 },
    {
      id: 'each',
      header: 'Each',
      numeric: true,
      value: (row) => row.weightGrams / row.quantity,
      show: (row) => units.weight(row.weightGrams / row.quantity),
      text: (row) => units.weight(row.weightGrams / row.quantity),
      width: 84,
    },
    {
      id: 'together',
      header: 'Together',
      numeric: true,
      value: (row) => row.weightGrams,
      show: (row) => units.weight(row.weightGrams),
      text: (row) => units.weight(row.weightGrams),
      total: (rows) => units.weight(sum(rows, (row) => row.weightGrams)),
      width: 96,
    },
  ];
}
