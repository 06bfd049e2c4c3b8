// What the ledger has of one owner's component on a day, to stand beside a signed figure of that day.
import { isHeld, type Location } from './movement.ts';
import type { StockLine } from './quantities.ts';

export interface LedgerFigure {
  /** With us: in hand, out for repair, at other jobs. */
  readonly held: number;
  /** Scrapped or lost, and not yet paid or agreed: an owner still counts them. */
  readonly gone: number;
}

/** @param stock of that day, all places */
export function ledgerFigure(
  { owner, component }: { readonly owner: string; readonly component: string },
  stock: readonly StockLine[],
  places: ReadonlyMap<string, Pick<Location, 'kind'>>,
): LedgerFigure {
  let [held, gone] = [0, 0];
  for (const line of stock) {
    if (line.owner !== owner || line.component !== component) continue;
    const kind = places.get(line.location)?.kind;
    if (kind === undefined || kind === 'supplier' || kind === 'opening') continue;
    if (isHeld(kind)) held += line.quantity;
    else gone += line.quantity;
  }
  return { held, gone };
}
