// Whether a list of movements may be booked. Pure: what the book knows is handed in, so that a trial run
// and the booking itself are judged by the same words. Checks come in a fixed order, one code a reason;
// the book's own constraints are the last line behind them.
import type { Refusal } from '../answer.ts';
import { checkReversal } from './check-reversal.ts';
import { checkEnough } from './check-enough.ts';
import { momentMs } from './moment.ts';
import { checkReason } from './check-reason.ts';
import type { LocationKind, Movement, OwnerKind } from './movement.ts';
import type { StockLine } from './quantities.ts';

/** What of a booked movement matters to whether there is enough. */
export type BookedChange = Pick<
  Movement,
  'id' | 'component' | 'owner' | 'quantity' | 'from' | 'to' | 'condition' | 'conditionAfter' | 'at'
>;

/** What the book knows that matters to the movements at hand. */
export interface LedgerView {
  readonly components: ReadonlySet<string>;
  readonly owners: ReadonlyMap<string, OwnerKind>;
  readonly locations: ReadonlyMap<string, LocationKind>;
  /** Booked movements by id: at least those whose id a new movement bears or reverses. */
  readonly booked: ReadonlyMap<string, { readonly movement: Movement; readonly reversedBy: string | null }>;
  /** Stock at some moment before the earliest new movement: at least where the new ones take from or bring to. */
  readonly before: readonly Omit<StockLine, 'basis' | 'basisDate'>[];
  /** Movements booked after that moment: at least of the same components and owners. */
  readonly since: readonly BookedChange[];
}

/**
 * The first refusal, or null where all may be booked.
 * Codes: movement-exists, bad-quantity, bad-instant, unknown-component, unknown-owner, unknown-location,
 * moves-nothing, bad-opening, wrong-place, not-theirs, those of reversals, not-enough, too-many.
 */
export function checkMovements(movements: readonly Movement[], view: LedgerView): Refusal | null {
  const seen = new Map<string, Movement>();
  for (const [index, movement] of movements.entries()) {
    const refusal =
      checkId(movement, seen, view) ??
      checkFigures(movement) ??
      checkCodes(movement, view) ??
      checkOpening(movement, view) ??
      checkReason(movement, view) ??
      checkReversal(movement, seen, view.booked);
    if (refusal !== null) return placed(refusal, index);
    seen.set(movement.id, movement);
  }
  const short = checkEnough(movements, view);
  return short === null ? null : placed(short.refusal, short.index);
}

function placed(refusal: Refusal, index: number): Refusal {
  return { ...refusal, field: `movements.${index}${refusal.field === undefined ? '' : `.${refusal.field}`}` };
}

function checkId(movement: Movement, seen: ReadonlyMap<string, Movement>, view: LedgerView): Refusal | null {
  if (!seen.has(movement.id) && !view.booked.has(movement.id)) return null;
  return {
    code: 'movement-exists',
    message: `Movement ${movement.id} is there already.`,
    field: 'id',
    hint: 'Maybe the same list was sent twice.',
  };
}

function checkFigures(movement: Movement): Refusal | null {
  const { quantity, component, at } = movement;
  if (!Number.isSafeInteger(quantity) || quantity < 1)
    return {
      code: 'bad-quantity',
      message: `${quantity} of ${component} cannot be moved: a quantity is a whole number of pieces from 1 on.`,
      field: 'quantity',
    };
  if (momentMs(at) === null)
    return {
      code: 'bad-instant',
      message: `"${at}" is not a moment with its offset, such as 2026-03-02T07:00:00-05:00.`,
      field: 'at',
    };
  return null;
}

function checkCodes(movement: Movement, view: LedgerView): Refusal | null {
  if (!view.components.has(movement.component)) return unknown('component', movement.component, 'component');
  if (!view.owners.has(movement.owner)) return unknown('owner', movement.owner, 'owner');
  if (!view.locations.has(movement.from)) return unknown('location', movement.from, 'from');
  if (!view.locations.has(movement.to)) return unknown('location', movement.to, 'to');
  if (movement.from !== movement.to || movement.condition !== movement.conditionAfter) return null;
  return {
    code: 'moves-nothing',
    message: `${movement.component} would go from ${movement.from} to ${movement.to} and stay ${movement.condition}.`,
    field: 'to',
    hint: 'Maybe another location or another condition is meant.',
  };
}

/** Opening figures come from a location of kind `opening`, and nothing else does but what takes them back. */
function checkOpening(movement: Movement, view: LedgerView): Refusal | null {
  if (movement.reason === 'reversal') return null;
  const isOpening = movement.reason === 'opening';
  const { basis, basisDate, component } = movement;
  if (isOpening !== (view.locations.get(movement.from) === 'opening'))
    return bad(
      `Opening figures, and only they, come from a location of kind opening; ${movement.from} of ${component} is not so.`,
      'from',
    );
  if (view.locations.get(movement.to) === 'opening')
    return bad(
      `Pieces of ${component} cannot go back to ${movement.to}: take the opening figure back.`,
      'to',
    );
  if (isOpening && (basis === null || basisDate === null))
    return bad(
      `The opening figure of ${component} does not say how it was got and of which date it is.`,
      'basis',
    );
  if (!isOpening && (basis !== null || basisDate !== null))
    return bad(`Only opening figures carry a basis; the reason here is ${movement.reason}.`, 'basis');
  return null;
}

function unknown(what: string, code: string, field: string): Refusal {
  return {
    code: `unknown-${what}`,
    message: `The book has no ${what} ${code}.`,
    field,
    hint: 'Maybe it is spelt in another way, or has to be entered first.',
  };
}

function bad(message: string, field: string): Refusal {
  return { code: 'bad-opening', message, field };
}
