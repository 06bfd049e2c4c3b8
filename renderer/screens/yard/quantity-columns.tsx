// Columns of the yard's quantities. Totals stand under the rows that are shown.
import { groupDigits } from '../../../core/units/weight.ts';
import type { Column } from '../../parts/data-table.tsx';
import type { Units } from '../../parts/units.tsx';
import { lineKey } from './standing-words.ts';
import { type StockGroup, total } from './yard-groups.ts';
import { basisWords, type Condition, conditionWords, type StockRow } from './yard-words.ts';

function pieces(count: number): string {
  return groupDigits(String(count));
}

function weightColumn<Row extends { readonly weightGrams: number }>(units: Units): Column<Row> {
  return {
    id: 'weight',
    header: 'Weight',
    numeric: true,
    value: (row) => row.weightGrams,
    show: (row) => units.weight(row.weightGrams),
    text: (row) => units.weight(row.weightGrams),
    total: (rows) => units.weight(total(rows.map((row) => row.weightGrams))),
    width: 104,
  };
}

function basisColumn<Row extends Pick<StockRow, 'basis' | 'basisDate'>>(header: string): Column<Row> {
  return {
    id: 'basis',
    header,
    value: basisWords,
    show: (row) => (
      <span className={row.basis === 'counted' ? undefined : 'basis-weak'}>{basisWords(row)}</span>
    ),
    width: 178,
  };
}

/** @param standing of lines that are not where they belong, by their keys */
export function lineColumns(
  units: Units,
  standing: ReadonlyMap<string, string>,
): readonly Column<StockRow>[] {
  return [
    { id: 'component', header: 'Component', value: (row) => row.component, width: 130, total: () => 'Shown' },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 210 },
    { id: 'kind', header: 'Kind', value: (row) => row.kind.replaceAll('-', ' '), width: 110, hidden: true },
    { id: 'owner', header: 'Owner', value: (row) => row.owner, width: 90 },
    { id: 'location', header: 'Location', value: (row) => row.location, width: 110 },
    { id: 'condition', header: 'Condition', value: (row) => conditionWords[row.condition], width: 100 },
    {
      id: 'quantity',
      header: 'Quantity',
      numeric: true,
      value: (row) => row.quantity,
      show: (row) => pieces(row.quantity),
      total: (rows) => pieces(total(rows.map((row) => row.quantity))),
      width: 90,
    },
    ...(standing.size === 0 ? [] : [standingColumn(standing)]),
    weightColumn(units),
    basisColumn('Opening figure'),
  ];
}

function standingColumn(standing: ReadonlyMap<string, string>): Column<StockRow> {
  const words = (row: StockRow): string => standing.get(lineKey(row)) ?? '';
  return {
    id: 'standing',
    header: 'Standing',
    value: words,
    show: (row) => <span className="standing">{words(row)}</span>,
    width: 214,
  };
}

function inCondition(condition: Condition, hidden = false): Column<StockGroup> {
  return {
    id: condition,
    header: conditionWords[condition],
    numeric: true,
    value: (row) => row.quantities[condition],
    show: (row) => (row.quantities[condition] === 0 ? '' : pieces(row.quantities[condition])),
    total: (rows) => pieces(total(rows.map((row) => row.quantities[condition]))),
    width: 96,
    hidden,
  };
}

/** Pieces that are in no condition's column: shown only where there are any. */
function apart(
  id: 'away' | 'notOurs',
  header: string,
  groups: readonly StockGroup[],
): readonly Column<StockGroup>[] {
  if (groups.every((group) => group[id] === 0)) return [];
  return [
    {
      id,
      header,
      numeric: true,
      value: (row) => row[id],
      show: (row) => (row[id] === 0 ? '' : pieces(row[id])),
      total: (rows) => pieces(total(rows.map((row) => row[id]))),
      width: 86,
    },
  ];
}

/** @param more further columns, after the quantities */
export function groupColumns(
  units: Units,
  by: 'component' | 'location',
  groups: readonly StockGroup[],
  more: readonly Column<StockGroup>[],
): readonly Column<StockGroup>[] {
  const hasHidden = groups.some((group) => group.quantities['ready-hidden'] !== 0);
  return [
    {
      id: 'key',
      header: by === 'component' ? 'Component' : 'Location',
      value: (row) => row.key,
      width: 126,
      total: () => 'Shown',
    },
    { id: 'name', header: 'Name', value: (row) => row.name, width: 210 },
    inCondition('ready'),
    inCondition('ready-hidden', !hasHidden),
    inCondition('to-clean'),
    inCondition('to-repair'),
    inCondition('quarantine'),
    inCondition('scrapped', true),
    ...apart('away', 'away', groups),
    ...apart('notOurs', 'not ours', groups),
    {
      id: 'quantity',
      header: 'all',
      numeric: true,
      value: (row) => row.quantity,
      show: (row) => <strong>{pieces(row.quantity)}</strong>,
      total: (rows) => pieces(total(rows.map((row) => row.quantity))),
      width: 72,
    },
    ...more,
    weightColumn(units),
    { id: 'owners', header: 'Owners', value: (row) => row.owners.join(', '), width: 110 },
    basisColumn('Weakest figure'),
  ];
}
