// The rows of the yard gathered by component or by location, with a column a condition. What is added up is
// exactly the rows that are shown; components are never netted against each other.
import { type Condition, type StockRow, weakestBasis } from './yard-words.ts';

export interface StockGroup {
  readonly key: string;
  readonly component: string | null;
  readonly location: string | null;
  /** Name of the component, or kind of the location. */
  readonly name: string;
  readonly quantities: Readonly<Record<Condition, number>>;
  readonly quantity: number;
  readonly weightGrams: number;
  readonly basis: StockRow['basis'];
  readonly basisDate: StockRow['basisDate'];
  readonly owners: readonly string[];
  readonly rows: readonly StockRow[];
}

export function groupsBy(
  rows: readonly StockRow[],
  by: 'component' | 'location',
  nameOf: (row: StockRow) => string,
): StockGroup[] {
  const gathered = new Map<string, StockRow[]>();
  for (const row of rows) {
    const key = row[by];
    const group = gathered.get(key);
    if (group === undefined) gathered.set(key, [row]);
    else group.push(row);
  }
  return [...gathered].map(([key, those]) => {
    const first = those[0];
    return {
      key,
      component: by === 'component' ? key : null,
      location: by === 'location' ? key : null,
      name: first === undefined ? '' : nameOf(first),
      quantities: {
        ready: inCondition(those, 'ready'),
        'ready-hidden': inCondition(those, 'ready-hidden'),
        'to-clean': inCondition(those, 'to-clean'),
        'to-repair': inCondition(those, 'to-repair'),
        quarantine: inCondition(those, 'quarantine'),
        scrapped: inCondition(those, 'scrapped'),
      },
      quantity: total(those.map((row) => row.quantity)),
      weightGrams: total(those.map((row) => row.weightGrams)),
      ...weakestBasis(those),
      owners: [...new Set(those.map((row) => row.owner))],
      rows: those,
    };
  });
}

function inCondition(rows: readonly StockRow[], condition: Condition): number {
  return total(rows.filter((row) => row.condition === condition).map((row) => row.quantity));
}

export function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
