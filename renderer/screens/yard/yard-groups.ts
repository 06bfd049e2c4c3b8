// The rows of the yard gathered by component or by location, with a column a condition. What is added up is
// exactly the rows that are shown; components are never netted against each other.
import { type Condition, type StockRow, weakestBasis } from './yard-words.ts';

export interface StockGroup {
  readonly key: string;
  readonly component: string | null;
  readonly location: string | null;
  /** Name of the component, or kind of the location. */
  readonly name: string;
  /** Gathered by component: of pieces in hand that no others own. */
  readonly quantities: Readonly<Record<Condition, number>>;
  /** At a repair shop or another job. */
  readonly away: number;
  /** Found with us and belonging to others. */
  readonly notOurs: number;
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
    const notOurs = by === 'component' ? those.filter((row) => row.ownerKind === 'others') : [];
    const away = by === 'component' ? those.filter((row) => isAway(row) && row.ownerKind !== 'others') : [];
    const inHand = those.filter((row) => !notOurs.includes(row) && !away.includes(row));
    return {
      key,
      component: by === 'component' ? key : null,
      location: by === 'location' ? key : null,
      name: first === undefined ? '' : nameOf(first),
      quantities: {
        ready: inCondition(inHand, 'ready'),
        'ready-hidden': inCondition(inHand, 'ready-hidden'),
        'to-clean': inCondition(inHand, 'to-clean'),
        'to-repair': inCondition(inHand, 'to-repair'),
        quarantine: inCondition(inHand, 'quarantine'),
        scrapped: inCondition(inHand, 'scrapped'),
      },
      away: total(away.map((row) => row.quantity)),
      notOurs: total(notOurs.map((row) => row.quantity)),
      quantity: total(those.map((row) => row.quantity)),
      weightGrams: total(those.map((row) => row.weightGrams)),
      ...weakestBasis(those),
      owners: [...new Set(those.map((row) => row.owner))],
      rows: those,
    };
  });
}

function isAway(row: StockRow): boolean {
  return row.locationKind === 'repair' || row.locationKind === 'other-job';
}

/** Components that are due or needed and of which nothing is there are rows as well. */
export function withUnstocked(
  groups: readonly StockGroup[],
  summary: readonly { readonly component: string; readonly name: string }[],
): readonly StockGroup[] {
  const there = new Set(groups.map(({ key }) => key));
  const missing = summary
    .filter(({ component }) => !there.has(component))
    .map(({ component, name }): StockGroup => ({ ...nothing, key: component, component, name }));
  return [...groups, ...missing];
}

const nothing = {
  location: null,
  quantities: {
    ready: 0,
    'ready-hidden': 0,
    'to-clean': 0,
    'to-repair': 0,
    quarantine: 0,
    scrapped: 0,
  },
  away: 0,
  notOurs: 0,
  quantity: 0,
  weightGrams: 0,
  basis: null,
  basisDate: null,
  owners: [],
  rows: [],
} as const;

function inCondition(rows: readonly StockRow[], condition: Condition): number {
  return total(rows.filter((row) => row.condition === condition).map((row) => row.quantity));
}

export function total(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0);
}
