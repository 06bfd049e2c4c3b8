// A count explained becomes movements: never an overwritten figure. Each bears the moment at which its line was
// counted, the count's id as its paper, and the explanation as its remark; after them the ledger has at that moment
// what was counted, but for what is booked elsewhere by its own paper, counted wrongly, or left open.
import { type Answer, answer, never, type Refusal } from '../answer.ts';
import type { LineToBook } from './count-explained.ts';
import { type CountPool, countPool, type TakenPart } from './count-pool.ts';
import { lineAt } from './explained-pairs.ts';
import { explanationRules } from './explanation-rules.ts';
import type { ConditionPart } from './condition-moves.ts';
import { splitOff } from './split-off.ts';
import { momentMs } from './moment.ts';
import type { Condition, Location, Movement, Owner, Reason } from './movement.ts';
import { conditionReason, reasonOf } from './count-reasons.ts';
import { outsidePlaces, type OutsidePlaces } from './outside-places.ts';
import type { StockLine } from './quantities.ts';
import { countName, type ExplanationLine } from './stock-count.ts';

export interface CountBooking {
  readonly count: { readonly id: string; readonly number: number };
  readonly who: string;
  readonly lines: readonly LineToBook[];
  readonly stockAt: (at: string) => readonly StockLine[];
  readonly locations: readonly Location[];
  readonly owners: readonly Owner[];
}

/** Pieces that leave one counted line for another: they are booked once, by the line that has them too many. */
type Handed = Map<string, (TakenPart & { readonly at: string })[]>;

/** Codes: not-enough-there, no-place, no-owner. */
export function countMovements(booking: CountBooking): Answer<readonly Movement[]> {
  const movements: Movement[] = [];
  const pools = new Map<string, CountPool>();
  const handed: Handed = new Map();
  // Those that are short first: what they hand on is what others have too many.
  const lines = [...booking.lines].sort((one, other) => one.line.difference - other.line.difference);
  for (const each of lines) {
    const at = each.line.stands?.at ?? '';
    const pool = pools.get(at) ?? countPool(booking.stockAt(at), booking.owners);
    pools.set(at, pool);
    const refusal = bookLine({ ...each, at, pool, handed, booking, movements });
    if (refusal !== null) return { ok: false, error: refusal };
  }
  return answer(movements);
}

interface LineBooking extends LineToBook {
  readonly at: string;
  readonly pool: CountPool;
  readonly handed: Handed;
  readonly booking: CountBooking;
  readonly movements: Movement[];
}

function bookLine(of: LineBooking): Refusal | null {
  const { line } = of;
  for (const { from, to, quantity } of line.changes.moves) {
    const taken = takeHere(of, { quantity, owner: line.owner, condition: from });
    if (!taken.ok) return taken.error;
    const own = of.explained.find(({ how }) => how === 'condition-changed');
    for (const part of taken.value)
      add(of, own, { ...part, to: line.location, after: to, reason: conditionReason(from, to) });
  }
  const parts = [...(line.difference < 0 ? line.changes.missing : line.changes.surplus)].map((part) => ({
    ...part,
  }));
  // Those that name an owner take first, so that they find that owner's pieces.
  const explained = [...of.explained].sort(
    (one, other) => Number(one.owner === undefined) - Number(other.owner === undefined),
  );
  for (const one of explained) {
    if (one.how === 'condition-changed') continue;
    for (const part of splitOff(parts, one.quantity)) {
      const refusal = line.difference < 0 ? bookShort(of, one, part) : bookOver(of, one, part);
      if (refusal !== null) return refusal;
    }
  }
  return null;
}

function bookShort(
  of: LineBooking,
  one: ExplanationLine,
  { condition, quantity }: ConditionPart,
): Refusal | null {
  const { line, handed, booking } = of;
  const to = shortTo(one, outsidePlaces(booking.locations, one.owner ?? line.owner));
  if (to === null) return null;
  if (typeof to !== 'string') return to.missing;
  // The owner that mixed pieces name is the other one.
  const owner = one.how === 'owner-mixed' ? line.owner : (one.owner ?? line.owner);
  const taken = takeHere(of, { quantity, owner, condition });
  if (!taken.ok) return taken.error;
  if (one.place !== undefined && lineAt(booking.lines, line, one.place) !== undefined) {
    const key = handKey(line.component, line.location, one.place);
    handed.set(key, [...(handed.get(key) ?? []), ...taken.value.map((part) => ({ ...part, at: of.at }))]);
    return null;
  }
  for (const part of taken.value)
    add(of, one, {
      ...part,
      to,
      after: one.how === 'scrapped' ? 'scrapped' : condition,
      reason: reasonOf(one.how),
    });
  return null;
}

/** Where missing pieces are booked to; null where they stay booked here. */
function shortTo(
  { how, place }: ExplanationLine,
  outside: OutsidePlaces,
): string | null | { readonly missing: Refusal } {
  switch (how) {
    case 'lost':
      return outside.lost;
    case 'scrapped':
      return outside.scrap;
    case 'owner-mixed':
      return outside.supplier;
    case 'moved-without-note':
    case 'at-other-job':
    case 'left-at-pour':
      return place ?? null;
    case 'stacked-with-look-alike':
    case 'miscounted':
    case 'found':
    case 'not-ours':
    case 'condition-changed':
      return null;
    default:
      return never(how);
  }
}

function bookOver(
  of: LineBooking,
  one: ExplanationLine,
  { condition, quantity }: ConditionPart,
): Refusal | null {
  const { line, booking } = of;
  const outside = outsidePlaces(booking.locations, one.owner ?? line.owner);
  switch (one.how) {
    case 'found':
    case 'not-ours':
    case 'owner-mixed': {
      const from = one.how === 'owner-mixed' ? outside.supplier : outside.lost;
      if (typeof from !== 'string') return from.missing;
      const owner = ownerOfFound(one, line.owner, booking.owners);
      if (owner === undefined) return noOwner(line.component, one.how === 'not-ours');
      const to = line.location;
      add(of, one, { owner, condition, quantity, from, to, after: condition, reason: reasonOf(one.how) });
      return null;
    }
    case 'moved-without-note':
    case 'at-other-job':
      return bringBack(of, one, { condition, quantity });
    case 'stacked-with-look-alike':
    case 'miscounted':
    case 'lost':
    case 'left-at-pour':
    case 'scrapped':
    case 'condition-changed':
      return null;
    default:
      return never(one.how);
  }
}

/** From the place that is named: what its own line handed on, else what is booked there. */
function bringBack(
  of: LineBooking,
  one: ExplanationLine,
  { condition, quantity }: ConditionPart,
): Refusal | null {
  const { line, handed, pool } = of;
  const from = one.place ?? '';
  const waiting = handed.get(handKey(line.component, from, line.location));
  if (waiting !== undefined) {
    // It had moved when the first of the two places was counted.
    for (const part of splitOff(waiting, quantity))
      add({ ...of, at: earlier(part.at, of.at) }, one, {
        ...part,
        from,
        to: line.location,
        after: condition,
        reason: 'transfer',
      });
    return null;
  }
  const owner = one.owner ?? line.owner;
  const wish = {
    component: line.component,
    location: from,
    quantity,
    owner,
    condition,
    isConditionFixed: false,
  };
  const taken = pool.take(wish);
  if (!taken.ok) return taken.error;
  for (const part of taken.value)
    add(of, one, { ...part, from, to: line.location, after: condition, reason: 'transfer' });
  return null;
}

function takeHere(
  { line, pool }: LineBooking,
  wish: { readonly quantity: number; readonly owner: string | null; readonly condition: Condition },
): Answer<readonly TakenPart[]> {
  return pool.take({ ...wish, component: line.component, location: line.location, isConditionFixed: true });
}

function add(
  { line, at, booking, movements }: LineBooking,
  one: ExplanationLine | undefined,
  part: TakenPart & {
    readonly from?: string;
    readonly to: string;
    readonly after: Condition;
    readonly reason: Reason;
  },
): void {
  const name = countName(booking.count);
  const words = explanationRules[one?.how ?? 'condition-changed'].words;
  const remark = one?.remark ?? '';
  movements.push({
    id: `${booking.count.id}-${movements.length + 1}`,
    component: line.component,
    quantity: part.quantity,
    owner: part.owner,
    from: part.from ?? line.location,
    to: part.to,
    condition: part.condition,
    conditionAfter: part.after,
    reason: part.reason,
    at,
    who: booking.who,
    noteNumber: name,
    remark: `Count ${name}: ${words}${remark === '' ? '' : `; ${remark}`}`,
    basis: null,
    basisDate: null,
    reverses: null,
    paper: booking.count.id,
  });
}

function ownerOfFound(
  { how, owner }: ExplanationLine,
  ofLine: string | null,
  owners: readonly Owner[],
): string | undefined {
  const first = (kind: Owner['kind']) => owners.find((each) => each.kind === kind)?.code;
  if (how === 'owner-mixed') return ofLine ?? undefined;
  if (how === 'not-ours') return owner ?? first('others');
  return owner ?? ofLine ?? first('ours');
}

function noOwner(component: string, isOthers: boolean): Refusal {
  return {
    code: 'no-owner',
    message: `The book has no owner to whom the ${component} that were found could be booked.`,
    field: 'explained',
    hint: isOthers ? 'Maybe enter an owner of kind others.' : 'Maybe name the owner.',
  };
}

function earlier(one: string, other: string): string {
  return (momentMs(one) ?? 0) <= (momentMs(other) ?? 0) ? one : other;
}

function handKey(component: string, from: string, to: string): string {
  return JSON.stringify([component, from, to]);
}
