// What is owed to each supplier: what came less what went back, whatever has become of it here.
import { isReady, type Location, type LocationKind, type Owner } from './movement.ts';
import type { StockLine } from './quantities.ts';

/** What came from and went to places outside by deliveries, hire and opening figures, of one owner's component. */
export interface SupplierFlow {
  readonly component: string;
  readonly owner: string;
  /** Deliveries, hire on and opening figures, less what of them was taken back. */
  readonly received: number;
  /** Returns and hire off, less what of them was taken back. */
  readonly returned: number;
}

export interface Owed {
  readonly owner: string;
  readonly component: string;
  readonly received: number;
  readonly returned: number;
  /** Received less returned: it is asked for until it is back, paid or agreed. */
  readonly owed: number;
  /** Where the owed pieces are. The five add up to what is owed. */
  readonly ready: number;
  readonly notReady: number;
  readonly away: number;
  readonly scrapped: number;
  readonly lost: number;
}

/** A line an owner and component with anything received or returned, by those codes. */
export function owedTo(
  owners: readonly Owner[],
  locations: readonly Location[],
  flows: readonly SupplierFlow[],
  stock: readonly StockLine[],
): readonly Owed[] {
  const suppliers = new Set(owners.filter(({ kind }) => kind === 'supplier').map(({ code }) => code));
  const kinds = new Map(locations.map(({ code, kind }) => [code, kind]));
  const lines = new Map<string, StockLine[]>();
  for (const line of stock) {
    const key = JSON.stringify([line.owner, line.component]);
    lines.set(key, [...(lines.get(key) ?? []), line]);
  }
  return flows
    .filter((flow) => suppliers.has(flow.owner))
    .map(({ owner, component, received, returned }) => {
      const of = (share: Share): number =>
        (lines.get(JSON.stringify([owner, component])) ?? [])
          .filter((line) => shareOf(line, kinds.get(line.location)) === share)
          .reduce((sum, line) => sum + line.quantity, 0);
      return {
        owner,
        component,
        received,
        returned,
        owed: received - returned,
        ready: of('ready'),
        notReady: of('not-ready'),
        away: of('away'),
        scrapped: of('scrapped'),
        lost: of('lost'),
      };
    })
    .sort((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1));
}

type Share = 'ready' | 'not-ready' | 'away' | 'scrapped' | 'lost' | 'outside';

function shareOf(line: StockLine, kind: LocationKind | undefined): Share {
  if (kind === undefined || kind === 'supplier' || kind === 'opening') return 'outside';
  if (kind === 'lost') return 'lost';
  if (kind === 'scrap' || line.condition === 'scrapped') return 'scrapped';
  if (kind === 'repair' || kind === 'other-job') return 'away';
  return isReady(line.condition) ? 'ready' : 'not-ready';
}

function keyOf({ owner, component }: Owed): string {
  return `${owner}\n${component}`;
}
