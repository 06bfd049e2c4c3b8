// What a difference is a part of. The same 16 locks are 4.7 % of 340 owned and 11.3 % of 142 expected in the yard, so
// a percentage is never told without its base.
//   expected in the yard = held - standing in forms - on the road - out for repair - at other jobs
import { isHeld, type LocationKind, type OwnerKind } from './movement.ts';
import type { StockLine } from './quantities.ts';
import type { CountLine } from './stock-count.ts';

export interface CountBases {
  /** Held by us, of every owner whose pieces we answer for. */
  readonly owned: number;
  readonly standing: number;
  readonly onTheRoad: number;
  readonly inRepair: number;
  readonly atOtherJobs: number;
  readonly expectedInYard: number;
}

interface BaseFacts {
  readonly locations: ReadonlyMap<string, LocationKind>;
  readonly owners: ReadonlyMap<string, OwnerKind>;
  readonly onTheRoad: (component: string) => number;
}

/** Of the line's owner alone where it names one. */
export function countBases(line: CountLine, stock: readonly StockLine[], facts: BaseFacts): CountBases {
  const at = (is: (kind: LocationKind) => boolean): number =>
    stock
      .filter(({ component, owner, location }) => {
        const kind = facts.locations.get(location);
        if (component !== line.component || kind === undefined || !is(kind)) return false;
        return line.owner === null ? facts.owners.get(owner) !== 'others' : owner === line.owner;
      })
      .reduce((sum, { quantity }) => sum + quantity, 0);
  const owned = at(isHeld);
  const standing = at((kind) => kind === 'gang' || kind === 'pour');
  const inRepair = at((kind) => kind === 'repair');
  const atOtherJobs = at((kind) => kind === 'other-job');
  const onTheRoad = line.owner === null ? facts.onTheRoad(line.component) : 0;
  return {
    owned,
    standing,
    onTheRoad,
    inRepair,
    atOtherJobs,
    expectedInYard: owned - standing - onTheRoad - inRepair - atOtherJobs,
  };
}

/** A part of a base in percent, to the tenth; null of a base of nothing. */
export function percentOf(part: number, base: number): number | null {
  return base === 0 ? null : Math.round((part / base) * 1000) / 10;
}
