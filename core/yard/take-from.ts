// Whose pieces go when pieces are taken: ours first, then suppliers' by code; of one owner the better condition first.
// One function for gangs, pours, notes and loads, so that the same want always takes the same pieces.
import { answer, type Answer, refuse } from '../answer.ts';
import type { Condition, Owner } from './movement.ts';
import type { StockLine } from './quantities.ts';

export interface Wanted {
  readonly component: string;
  readonly quantity: number;
}

export interface TakingOrder {
  /** Owners whose pieces go first, in this order; the others after them by code. */
  readonly owners: readonly string[];
  /** Owners whose pieces are never taken. */
  readonly notOf?: readonly string[];
  /** Which conditions may go, the first first; ready and then ready-hidden if absent. */
  readonly conditions?: readonly Condition[];
  /** Which locations may be taken from, the first first; all if absent, by code. */
  readonly locations?: readonly string[];
}

export interface Taken {
  readonly owner: string;
  readonly location: string;
  readonly condition: Condition;
  readonly quantity: number;
}

/** Ours by code, then suppliers by code; what was found and is not ours is never taken. */
export function takingOrder(owners: readonly Owner[]): {
  readonly owners: string[];
  readonly notOf: string[];
} {
  const ofKind = (kind: Owner['kind']): string[] =>
    owners
      .filter((owner) => owner.kind === kind)
      .map((owner) => owner.code)
      .sort();
  return { owners: [...ofKind('ours'), ...ofKind('supplier')], notOf: ofKind('others') };
}

/** Refusal `not-enough`: how many there are, and where. */
export function takeFrom(
  lines: readonly StockLine[],
  wanted: Wanted,
  order: TakingOrder,
): Answer<readonly Taken[]> {
  const ofComponent = lines.filter(
    ({ component, quantity }) => component === wanted.component && quantity > 0,
  );
  const taken: Taken[] = [];
  let rest = wanted.quantity;
  for (const { owner, location, condition, quantity } of inOrder(ofComponent, order)) {
    if (rest <= 0) break;
    taken.push({ owner, location, condition, quantity: Math.min(quantity, rest) });
    rest -= Math.min(quantity, rest);
  }
  return rest > 0 ? notEnough(ofComponent, wanted, order) : answer(taken);
}

function inOrder(lines: readonly StockLine[], order: TakingOrder): readonly StockLine[] {
  const { owners, notOf = [], conditions = ['ready', 'ready-hidden'], locations } = order;
  return lines
    .filter(
      (line) =>
        conditions.includes(line.condition) &&
        !notOf.includes(line.owner) &&
        (locations === undefined || locations.includes(line.location)),
    )
    .sort(
      (one, other) =>
        placeOf(owners, one.owner) - placeOf(owners, other.owner) ||
        byText(one.owner, other.owner) ||
        placeOf(conditions, one.condition) - placeOf(conditions, other.condition) ||
        placeOf(locations ?? [], one.location) - placeOf(locations ?? [], other.location) ||
        byText(one.location, other.location),
    );
}

function placeOf(list: readonly string[], each: string): number {
  return list.includes(each) ? list.indexOf(each) : list.length;
}

function byText(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}

function notEnough(ofComponent: readonly StockLine[], wanted: Wanted, order: TakingOrder) {
  const fit = inOrder(ofComponent, order);
  const there = fit.reduce((sum, line) => sum + line.quantity, 0);
  const where = order.locations === undefined ? '' : ` at ${order.locations.join(', ')}`;
  const message = `${wanted.quantity} of ${wanted.component} are wanted${where}; there ${there === 1 ? 'is' : 'are'} ${
    there === 0 ? 'none' : `${there}: ${listed(fit)}`
  }.`;
  const other = ofComponent.filter((line) => !fit.includes(line));
  const hint =
    other.length === 0
      ? 'Maybe some have to be brought first.'
      : `Maybe others serve, once moved or made ready: ${listed(other)}.`;
  return refuse('not-enough', message, { field: 'quantity', hint });
}

function listed(lines: readonly StockLine[]): string {
  return lines
    .map(({ quantity, condition, location, owner }) => `${quantity} ${condition} at ${location} (${owner})`)
    .join(', ');
}
