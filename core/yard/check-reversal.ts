// A reversal takes one movement back: once, whole, and not before it happened.
import type { Refusal } from '../answer.ts';
import { momentMs } from './moment.ts';
import type { Movement } from './movement.ts';

/**
 * Codes: bad-reversal, unknown-movement, reverses-a-reversal, already-reversed, not-its-opposite,
 * reversed-before-it-happened.
 * @param earlier movements of the same list that come before this one, by id
 */
export function checkReversal(
  movement: Movement,
  earlier: ReadonlyMap<string, Movement>,
  booked: ReadonlyMap<string, { readonly movement: Movement; readonly reversedBy: string | null }>,
): Refusal | null {
  const { reverses, reason } = movement;
  if ((reason === 'reversal') !== (reverses !== null))
    return refusal('bad-reversal', 'A reversal, and only a reversal, names the movement that it takes back.');
  if (reverses === null) return null;
  const original = booked.get(reverses)?.movement ?? earlier.get(reverses);
  if (original === undefined)
    return refusal('unknown-movement', `There is no movement ${reverses} to take back.`);
  if (original.reverses !== null)
    return {
      ...refusal(
        'reverses-a-reversal',
        `Movement ${reverses} is a reversal itself and cannot be taken back.`,
      ),
      hint: `Maybe book anew what movement ${original.reverses} said.`,
    };
  const other = booked.get(reverses)?.reversedBy ?? reversedIn(earlier, reverses);
  if (other !== null)
    return refusal('already-reversed', `Movement ${reverses} was taken back already, by movement ${other}.`);
  if (!isOpposite(movement, original))
    return refusal(
      'not-its-opposite',
      `A reversal of movement ${reverses} takes ${original.quantity} of ${original.component} ` +
        `(${original.owner}) from ${original.to} back to ${original.from}, and nothing else.`,
    );
  if ((momentMs(movement.at) ?? 0) < (momentMs(original.at) ?? 0))
    return {
      code: 'reversed-before-it-happened',
      message: `Movement ${reverses} happened at ${original.at} and cannot be taken back at ${movement.at}.`,
      field: 'at',
    };
  return null;
}

function refusal(code: string, message: string): Refusal {
  return { code, message, field: 'reverses' };
}

function reversedIn(earlier: ReadonlyMap<string, Movement>, id: string): string | null {
  for (const each of earlier.values()) if (each.reverses === id) return each.id;
  return null;
}

function isOpposite(one: Movement, other: Movement): boolean {
  return (
    one.component === other.component &&
    one.owner === other.owner &&
    one.quantity === other.quantity &&
    one.from === other.to &&
    one.to === other.from &&
    one.condition === other.conditionAfter &&
    one.conditionAfter === other.condition
  );
}
