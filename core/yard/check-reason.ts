// What a reason says of the two ends of a movement: a delivery comes from a supplier, a loss goes to the lost, a
// return goes back to whoever owns the pieces. A reversal goes wherever what it takes back came from.
import type { Refusal } from '../answer.ts';
import { never } from '../answer.ts';
import type { LocationKind, Movement, OwnerKind } from './movement.ts';

interface Places {
  readonly owners: ReadonlyMap<string, OwnerKind>;
  readonly locations: ReadonlyMap<string, LocationKind>;
}

/** Codes: wrong-place, not-theirs. The places and the owner are known to be there. */
export function checkReason(movement: Movement, places: Places): Refusal | null {
  const from = (...kinds: readonly LocationKind[]): Refusal | null => isAt(movement, 'from', kinds, places);
  const to = (...kinds: readonly LocationKind[]): Refusal | null => isAt(movement, 'to', kinds, places);
  const { reason } = movement;
  switch (reason) {
    case 'delivery':
    case 'hire-on':
      return from('supplier');
    case 'return':
    case 'hire-off':
      return to('supplier') ?? checkTheirs(movement, places);
    case 'issue':
      return to('gang', 'pour', 'site');
    case 'break-down':
      return from('gang');
    case 'strip':
      return movement.from === movement.to ? null : from('gang', 'pour', 'site');
    case 'scrap':
      return movement.conditionAfter === 'scrapped' ? null : to('scrap');
    case 'lost':
      return to('lost');
    case 'found':
      return from('lost');
    case 'opening':
    case 'transfer':
    case 'clean':
    case 'repair':
    case 'quarantine':
    case 'owner-swap':
    case 'reversal':
      return null;
    default:
      return never(reason);
  }
}

function isAt(
  movement: Movement,
  end: 'from' | 'to',
  kinds: readonly LocationKind[],
  { locations }: Places,
): Refusal | null {
  const kind = locations.get(movement[end]);
  if (kind !== undefined && kinds.includes(kind)) return null;
  const way = end === 'from' ? 'comes from' : 'goes to';
  return {
    code: 'wrong-place',
    message:
      `${movement.reason} of ${movement.component} ${way} ${listed(kinds)}; ` +
      `${movement[end]} is a location of kind ${kind ?? 'unknown'}.`,
    field: end,
    hint: 'Maybe another reason or another location is meant, or a transfer.',
  };
}

function listed(kinds: readonly LocationKind[]): string {
  return `a location of kind ${kinds.join(' or ')}`;
}

/** A supplier's depot bears the code of its owner; one that bears nobody's takes the pieces of any supplier. */
function checkTheirs({ component, owner, to, quantity }: Movement, { owners }: Places): Refusal | null {
  const isTheirs = owners.get(to) === 'supplier' ? owner === to : owners.get(owner) === 'supplier';
  if (isTheirs) return null;
  return {
    code: 'not-theirs',
    message: `${quantity} of ${component} belong to ${owner} and cannot go back to ${to}, from whom they never came.`,
    field: 'owner',
    hint: 'Maybe pieces of another owner went instead: book that as a swap between owners.',
  };
}
